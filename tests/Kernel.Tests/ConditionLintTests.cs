using System.Linq.Expressions;
using System.Reflection;
using Kernel.Engine;
using NRules.Fluent;
using NRules.Fluent.Dsl;
using NRules.RuleModel;

namespace Kernel.Tests;

/// <summary>
/// Conditions that the engine's expression comparer would confuse, or that would read a clock. In a condition stands a plain method
/// call or a plain comparison; everything else belongs into a method.
/// </summary>
public sealed class ConditionLintTests
{
    [Fact]
    public void No_condition_has_a_form_that_the_engine_confuses() =>
        Assert.Empty(Samples.Catalogue.Rules.OfType<Rule>().Prepend(new AskEachRule()).Concat(AskEachDutyRule.All).SelectMany(rule => Lint.Faults(rule).Select(fault => $"{rule.GetType().Name}: {fault}")));

    [Fact]
    public void The_lint_sees_each_of_the_forms()
    {
        Expression<Func<object, bool>> typeTest = x => x is string;
        Expression<Func<int, bool>> memberOfNew = x => new DateOnly(x, 1, 1).DayNumber > 1;
        Expression<Func<string?, bool>> memberOfCoalesce = x => (x ?? "").Length > 1;
        Expression<Func<bool>> clock = () => TimeProvider.System.GetUtcNow().Year > 2000;
        Assert.All(new LambdaExpression[] { typeTest, memberOfNew, memberOfCoalesce, clock }, form => Assert.Single(Lint.Faults(form)));
        Expression<Func<string, bool>> plain = x => x.Length > 1 && x.Contains('a', StringComparison.Ordinal);
        Assert.Empty(Lint.Faults(plain));
    }

    private sealed class Lint : ExpressionVisitor
    {
        private readonly List<string> _faults = [];

        public static IEnumerable<string> Faults(Rule rule)
        {
            var definition = new RuleDefinitionFactory().Create(rule);
            return Conditions(definition.LeftHandSide).SelectMany(Faults);
        }

        public static IReadOnlyList<string> Faults(LambdaExpression condition)
        {
            var lint = new Lint();
            lint.Visit(condition);
            return lint._faults;
        }

        protected override Expression VisitTypeBinary(TypeBinaryExpression node)
        {
            _faults.Add($"type test in {node}");
            return base.VisitTypeBinary(node);
        }

        protected override Expression VisitMember(MemberExpression node)
        {
            if (node.Expression is NewExpression or BinaryExpression { NodeType: ExpressionType.Coalesce })
                _faults.Add($"member of a new or coalesced value in {node}");
            if (IsClock(node.Member))
                _faults.Add($"clock in {node}");
            return base.VisitMember(node);
        }

        private static bool IsClock(MemberInfo member) =>
            member.DeclaringType == typeof(TimeProvider)
            || ((member.DeclaringType == typeof(DateTime) || member.DeclaringType == typeof(DateTimeOffset)) && member.Name is "Now" or "UtcNow" or "Today");

        private static IEnumerable<LambdaExpression> Conditions(RuleElement element) => element switch
        {
            PatternElement pattern => pattern.Expressions.Select(named => named.Expression)
                .Concat(pattern.Source is null ? [] : Conditions(pattern.Source)),
            GroupElement group => group.ChildElements.SelectMany(Conditions),
            NotElement not => Conditions(not.Source),
            ExistsElement exists => Conditions(exists.Source),
            AggregateElement aggregate => aggregate.Expressions.Select(named => named.Expression).Concat(Conditions(aggregate.Source)),
            _ => throw new NotSupportedException($"The lint does not know {element.GetType().Name}."),
        };
    }
}
