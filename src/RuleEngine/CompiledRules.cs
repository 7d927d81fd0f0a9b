using System.Collections.Concurrent;
using NRules;
using NRules.Fluent;
using NRules.RuleModel;
using RuleModel;

namespace RuleEngine;

/// <summary>
/// One compiled part of the rule set with its pool of sessions. A session serves one visit at a time; one in which a rule threw is
/// thrown away, since what the engine then holds in memory is not to be trusted.
/// </summary>
internal sealed class CompiledRules
{
    private readonly ConcurrentBag<RuleSession> _idle = [];
    private readonly ISessionFactory _factory;

    public CompiledRules(IReadOnlyList<ComplianceRule> rules)
    {
        var byType = rules.ToDictionary(rule => rule.GetType());
        var repository = new RuleRepository(new Instances(byType));
        if (rules.Count > 0)
            repository.Load(load => load.From(byType.Keys));
        _factory = new RuleCompiler { ExpressionCompiler = new SharedExpressions() }.Compile(repository.GetRules());
        ByDefinition = repository.GetRules().ToDictionary(
            definition => definition, definition => byType[(Type)definition.Properties[RuleProperties.ClrType]!]);
    }

    /// <summary>How many rules there are.</summary>
    public int Count => ByDefinition.Count;

    /// <summary>The rule behind each definition that the engine names.</summary>
    public IReadOnlyDictionary<IRuleDefinition, ComplianceRule> ByDefinition { get; }

    /// <summary>Runs the rules over <paramref name="facts"/> of one visit; gives the rules that threw, with what they threw.</summary>
    public IReadOnlyDictionary<ComplianceRule, Exception> Run(IReadOnlyList<object> facts)
    {
        if (!_idle.TryTake(out var session))
            session = new RuleSession(_factory.CreateSession(), this);

        var failures = session.Run(facts);
        if (failures.Count == 0)
            _idle.Add(session);

        return failures;
    }

    private sealed class Instances(Dictionary<Type, ComplianceRule> byType) : IRuleActivator
    {
        public IEnumerable<NRules.Fluent.Dsl.Rule> Activate(Type type) => [byType[type]];
    }
}

/// <summary>One engine session, used by one thread at a time.</summary>
internal sealed class RuleSession
{
    private readonly ISession _session;
    private readonly CompiledRules _rules;
    private readonly Dictionary<ComplianceRule, Exception> _failures = [];

    public RuleSession(ISession session, CompiledRules rules)
    {
        _session = session;
        _rules = rules;

        // Unhandled, one throwing condition would end the insert and every other rule with it. Handled, the rule would look like one
        // that did not match. So: handled, and remembered.
        session.Events.LhsExpressionFailedEvent += (_, failure) =>
        {
            foreach (var rule in failure.Rules)
                Remember(rule, failure.Exception);
            failure.IsHandled = true;
        };
        session.Events.RhsExpressionFailedEvent += (_, failure) =>
        {
            Remember(failure.Match.Rule, failure.Exception);
            failure.IsHandled = true;
        };
    }

    public IReadOnlyDictionary<ComplianceRule, Exception> Run(IReadOnlyList<object> facts)
    {
        _session.InsertAll(facts);
        _session.Fire();
        if (_failures.Count == 0)
            _session.RetractAll([.. _session.Query<object>()]);

        return _failures;
    }

    private void Remember(IRuleDefinition rule, Exception? exception) => _failures[_rules.ByDefinition[rule]] = Cause(exception);

    // The engine wraps what a rule threw; the wrapper only repeats the expression.
    private static Exception Cause(Exception? exception) =>
        exception?.InnerException ?? exception ?? new InvalidOperationException("The engine reported a failure without a cause.");
}
