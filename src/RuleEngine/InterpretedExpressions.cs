using System.Linq.Expressions;
using NRules.Extensibility;

namespace RuleEngine;

/// <summary>
/// Interprets the expressions of conditions and actions in place of compiling them. Each is a call of one method that is compiled
/// already, so that compiling the call costs more at every start than it ever gives back.
/// </summary>
internal sealed class InterpretedExpressions : IExpressionCompiler
{
    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate => expression.Compile(preferInterpretation: true);
}
