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

    /// <summary>The first pass.</summary>
    public CompiledRules(IReadOnlyList<FirstPassRule> rules)
        : this([new AskEachRule()], rules)
    {
    }

    /// <summary>The situation: what is inferred of dangers, and what is concluded from it.</summary>
    public CompiledRules(IReadOnlyList<SituationRule> inferring, IReadOnlyList<InferenceRule> concluding)
        : this([.. inferring, .. concluding], [])
    {
    }

    /// <summary>The duties.</summary>
    public CompiledRules(IReadOnlyList<DutyRule> rules)
        : this(rules, [])
    {
    }

    private CompiledRules(IReadOnlyList<Rule> rules, IReadOnlyList<object> standingFacts)
    {
        var definitions = new RuleDefinitionFactory();
        _rules = rules.ToDictionary(definitions.Create, rule => rule);
        _factory = new RuleCompiler().Compile(_rules.Keys);
        _standingFacts = standingFacts;
    }

    /// <summary>Runs the rules over <paramref name="facts"/> of one visit; gives the rules that threw, with what they threw.</summary>
    public IReadOnlyDictionary<IComplianceRule, Exception> Run(IReadOnlyList<object> facts)
    {
        if (!_idle.TryTake(out var session))
            session = new RuleSession(_factory.CreateSession(), _rules, _standingFacts);

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
    private readonly bool _hasStandingFacts;
    private readonly Dictionary<IComplianceRule, Exception> _failures = [];

    public RuleSession(ISession session, Dictionary<IRuleDefinition, Rule> rules, IReadOnlyList<object> standingFacts)
    {
        _session = session;
        _rules = rules;
        _hasStandingFacts = standingFacts.Count > 0;
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

        // Inference adds its conclusions to the facts; the first pass adds nothing.
        if (_failures.Count == 0)
            _session.RetractAll(_hasStandingFacts ? facts : [.. _session.Query<object>()]);

        return _failures;
    }

    /// <summary>Of the first pass it is a fact that failed, of the inference a rule of the engine.</summary>
    private void Remember(IEnumerable<IRuleDefinition> definitions, IEnumerable<IFact> facts, Exception? exception)
    {
        foreach (var rule in definitions.Select(definition => _rules[definition]).Concat(facts.Select(fact => fact.Value)).OfType<IComplianceRule>())
            _failures[rule] = Cause(exception);
    }

    // The engine wraps what a rule threw; the wrapper only repeats the expression.
    private static Exception Cause(Exception? exception) =>
        exception?.InnerException ?? exception ?? new InvalidOperationException("The engine reported a failure without a cause.");
}
