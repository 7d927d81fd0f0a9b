using System.Collections.Concurrent;
using System.Globalization;
using System.Linq.Expressions;
using System.Text;
using NRules.Extensibility;
using RuleModel;

namespace RuleEngine;

/// <summary>
/// Compiles an expression once for all rules in which it is the same but for the rule itself: the rule becomes a parameter. All rules of
/// the first pass share one condition and one action, so that a start compiles two expressions and not hundreds. The few that
/// call no method of a rule are interpreted.
/// </summary>
internal sealed class SharedExpressions : IExpressionCompiler
{
    private static readonly ConcurrentDictionary<string, Delegate> Makers = new(StringComparer.Ordinal);

    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression) where TDelegate : Delegate
    {
        var shape = new Shape();
        Expression ofAnyRule = shape.Visit(expression)!;
        if (shape.Rule is null || !shape.IsWhole)
            return expression.Compile(preferInterpretation: true);

        var make = (Func<ComplianceRule, TDelegate>)Makers.GetOrAdd(
            shape.Text, static (_, lambda) => Expression.Lambda<Func<ComplianceRule, TDelegate>>(lambda.Body, lambda.Rule).Compile(), (Body: ofAnyRule, Rule: shape.AnyRule));
        return make(shape.Rule);
    }

    /// <summary>Puts a parameter in place of the rule, and writes down all else by which expressions differ.</summary>
    private sealed class Shape : ExpressionVisitor
    {
        private readonly StringBuilder _text = new();
        private readonly List<ParameterExpression> _parameters = [];

        public ParameterExpression AnyRule { get; } = Expression.Parameter(typeof(ComplianceRule), "rule");

        public ComplianceRule? Rule { get; private set; }

        /// <summary>False where something stands in it that is not written down.</summary>
        public bool IsWhole { get; private set; } = true;

        public string Text => _text.ToString();

        public override Expression? Visit(Expression? node)
        {
            _text.Append(CultureInfo.InvariantCulture, $"({node?.NodeType} {node?.Type.AssemblyQualifiedName} ");
            var visited = base.Visit(node);
            _text.Append(')');
            return visited;
        }

        protected override Expression VisitConstant(ConstantExpression node)
        {
            if (node.Value is ComplianceRule rule && (Rule is null || ReferenceEquals(Rule, rule)))
            {
                Rule = rule;
                return Expression.Convert(AnyRule, node.Type);
            }

            IsWhole &= node.Value is null or int or bool or string;
            _text.Append(CultureInfo.InvariantCulture, $"{node.Value}");
            return node;
        }

        protected override Expression VisitParameter(ParameterExpression node)
        {
            if (!_parameters.Contains(node))
                _parameters.Add(node);
            _text.Append(_parameters.IndexOf(node));
            return node;
        }

        protected override Expression VisitMethodCall(MethodCallExpression node)
        {
            _text.Append(CultureInfo.InvariantCulture, $"{node.Method.DeclaringType?.AssemblyQualifiedName} {node.Method}");
            return base.VisitMethodCall(node);
        }

        protected override Expression VisitMember(MemberExpression node)
        {
            _text.Append(CultureInfo.InvariantCulture, $"{node.Member.DeclaringType?.AssemblyQualifiedName} {node.Member}");
            return base.VisitMember(node);
        }

        // Nodes that carry more than their type and their operands.
        protected override Expression VisitDynamic(DynamicExpression node) => Unknown(node);

        protected override Expression VisitNew(NewExpression node) => Unknown(base.VisitNew(node));

        protected override Expression VisitIndex(IndexExpression node) => Unknown(base.VisitIndex(node));

        protected override Expression VisitExtension(Expression node) => Unknown(node);

        private Expression Unknown(Expression node)
        {
            IsWhole = false;
            return node;
        }
    }
}
