using System.Collections.Concurrent;
using NRules;
using NRules.Fluent;
using NRules.Fluent.Dsl;
using NRules.RuleModel;

namespace Kernel.Engine;

/// <summary>
/// One compiled part of the rule set with its pool of sessions. A session serves one visit at a time; one in which a rule threw is
/// thrown away, since what the engine then holds in memory is not to be trusted.
/// </summary>
internal sealed class CompiledRules
{
    private readonly ConcurrentBag<RuleSession> _idle = [];
    private readonly ISessionFactory _factory;
    private readonly Dictionary<IRuleDefinition, Rule> _rules;
    private readonly IReadOnlyList<object> _standingFacts;
    private readonly bool _infers;

    /// <summary>The first pass.</summary>
    public CompiledRules(IReadOnlyList<FirstPassRule> rules)
        : this([new AskEachRule()], rules, infers: false)
    {
    }

    /// <summary>The situation: what is inferred of dangers, and what is concluded from it.</summary>
    public CompiledRules(IReadOnlyList<SituationRule> inferring, IReadOnlyList<InferenceRule> concluding)
        : this([.. inferring, .. concluding], [], infers: true)
    {
    }

    /// <summary>The duties.</summary>
    public CompiledRules(IReadOnlyList<DutyRule> rules)
        : this(AskEachDutyRule.All, rules, infers: true)
    {
    }

    private CompiledRules(IReadOnlyList<Rule> rules, IReadOnlyList<object> standingFacts, bool infers)
    {
        var definitions = new RuleDefinitionFactory();
        _rules = rules.ToDictionary(definitions.Create, rule => rule);
        _factory = new RuleCompiler().Compile(_rules.Keys);
        (_standingFacts, _infers) = (standingFacts, infers);
    }

    /// <summary>Runs the rules over <paramref name="facts"/> of one visit; gives the rules that threw, with what they threw.</summary>
    public IReadOnlyDictionary<IComplianceRule, Exception> Run(IReadOnlyList<object> facts)
    {
        if (!_idle.TryTake(out var session))
            session = new RuleSession(_factory.CreateSession(), _rules, _standingFacts, _infers);

        var failures = session.Run(facts);
        if (failures.Count == 0)
            _idle.Add(session);

        return failures;
    }
}

/// <summary>One engine session, used by one thread at a time.</summary>
internal sealed class RuleSession
{
    private readonly ISession _session;
    private readonly Dictionary<IRuleDefinition, Rule> _rules;
    private readonly IReadOnlyList<IComplianceRule> _asked;
    private readonly bool _infers;
    private readonly Dictionary<IComplianceRule, Exception> _failures = [];

    public RuleSession(ISession session, Dictionary<IRuleDefinition, Rule> rules, IReadOnlyList<object> standingFacts, bool infers)
    {
        (_session, _rules, _infers) = (session, rules, infers);
        _asked = [.. rules.Values.Concat(standingFacts).OfType<IComplianceRule>()];
        session.InsertAll(standingFacts);

        // Unhandled, one throwing condition would end the insert and every other rule with it. Handled, the rule would look like one
        // that did not match. So: handled, and remembered.
        session.Events.LhsExpressionFailedEvent += (_, failure) =>
        {
            Remember(failure.Rules, failure.Facts, failure.Exception);
            failure.IsHandled = true;
        };
        session.Events.RhsExpressionFailedEvent += (_, failure) =>
        {
            Remember([failure.Match.Rule], failure.Match.Facts, failure.Exception);
            failure.IsHandled = true;
        };
    }

    public IReadOnlyDictionary<IComplianceRule, Exception> Run(IReadOnlyList<object> facts)
    {
        _session.InsertAll(facts);
        _session.Fire();

        // What was inferred goes with the facts; the rules among the facts stay.
        if (_failures.Count == 0)
            _session.RetractAll(_infers ? [.. _session.Query<object>().AsEnumerable().Where(fact => fact is not IComplianceRule)] : facts);

        return _failures;
    }

    /// <summary>Of the inference it is a rule of the engine that failed, else a fact. Where neither is known it may be any, and so it is every one.</summary>
    private void Remember(IEnumerable<IRuleDefinition> definitions, IEnumerable<IFact> facts, Exception? exception)
    {
        List<IComplianceRule> failed = [.. definitions.Select(definition => _rules[definition]).Concat(facts.Select(fact => fact.Value)).OfType<IComplianceRule>()];
        foreach (var rule in failed.Count > 0 ? failed : _asked)
            _failures[rule] = Cause(exception);
    }

    // The engine wraps what a rule threw; the wrapper only repeats the expression.
    private static Exception Cause(Exception? exception) =>
        exception?.InnerException ?? exception ?? new InvalidOperationException("The engine reported a failure without a cause.");
}
