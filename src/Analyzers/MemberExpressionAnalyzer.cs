using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Analyzers;

/// <summary>
/// A look names a member of the record by the text of the expression that reads it, so that text must name one: <c>visit.Record.Water?.HotBar</c>,
/// <c>visit.Maker.CoPpmMax</c>, or a member of what the rule judges, such as <c>reading.CoPpm</c>. Anything else would give another member's
/// pointer, or none, and nothing would notice.
/// </summary>
[DiagnosticAnalyzer(LanguageNames.CSharp)]
public sealed class MemberExpressionAnalyzer : DiagnosticAnalyzer
{
    private const string Marker = "NamesMemberAttribute";

    /// <summary>The expression names no member of the record.</summary>
    public static DiagnosticDescriptor NamesNoMember { get; } = new(
        "RULE001", "The expression names no member of the record",
        "'{0}' does not name a member: {1}", "Rules", DiagnosticSeverity.Error, isEnabledByDefault: true);

    /// <inheritdoc />
    public override ImmutableArray<DiagnosticDescriptor> SupportedDiagnostics { get; } = [NamesNoMember];

    /// <inheritdoc />
    public override void Initialize(AnalysisContext context)
    {
        context.EnableConcurrentExecution();
        context.ConfigureGeneratedCodeAnalysis(GeneratedCodeAnalysisFlags.None);
        context.RegisterSyntaxNodeAction(Look, SyntaxKind.InvocationExpression);
    }

    private static void Look(SyntaxNodeAnalysisContext context)
    {
        var call = (InvocationExpressionSyntax)context.Node;
        if (context.SemanticModel.GetSymbolInfo(call, context.CancellationToken).Symbol is not IMethodSymbol method)
            return;

        for (var i = 0; i < method.Parameters.Length; i++)
        {
            if (!method.Parameters[i].GetAttributes().Any(attribute => attribute.AttributeClass?.Name == Marker))
                continue;

            var expression = ArgumentAt(call, method, i)?.Expression;
            if (expression is not null && FaultOf(BodyOf(expression), context) is { } fault)
                context.ReportDiagnostic(Diagnostic.Create(NamesNoMember, expression.GetLocation(), expression.ToString(), fault));
        }
    }

    private static ArgumentSyntax? ArgumentAt(InvocationExpressionSyntax call, IMethodSymbol method, int index)
    {
        var name = method.Parameters[index].Name;
        return call.ArgumentList.Arguments.FirstOrDefault(argument => argument.NameColon?.Name.Identifier.ValueText == name)
            ?? (index < call.ArgumentList.Arguments.Count && call.ArgumentList.Arguments[index].NameColon is null ? call.ArgumentList.Arguments[index] : null);
    }

    /// <summary>A row of a table gives a lambda that reads the member of each visit.</summary>
    private static ExpressionSyntax BodyOf(ExpressionSyntax expression) => expression is SimpleLambdaExpressionSyntax { ExpressionBody: { } body } ? body : expression;

    private static string? FaultOf(ExpressionSyntax expression, SyntaxNodeAnalysisContext context)
    {
        var names = new List<SimpleNameSyntax>();
        if (!Collect(expression, names))
            return "it must be names joined by dots and nothing else";
        if (names.Count < 2)
            return "it must begin with visit.Record, visit.Maker or what the rule judges";

        var root = context.SemanticModel.GetSymbolInfo(names[0], context.CancellationToken).Symbol;
        if (TypeOf(root) is not { } type)
            return "it must begin with a parameter or a variable";

        return type.Name == "Visit"
            ? names[0].Identifier.ValueText == "visit" && names.Count > 2 && names[1].Identifier.ValueText is "Record" or "Maker"
                ? null
                : "of the visit write visit.Record or visit.Maker, and the member"
            : FaultOfSubject(type, context);
    }

    /// <summary>What stands before the first dot is the subject, so it must be what the rule judges.</summary>
    private static string? FaultOfSubject(ITypeSymbol type, SyntaxNodeAnalysisContext context)
    {
        for (var rule = context.ContainingSymbol?.ContainingType; rule is not null; rule = rule.BaseType)
        {
            if (rule.Name == "SubjectRule")
                return SymbolEqualityComparer.Default.Equals(rule.TypeArguments[1], type) ? null : $"the rule judges a {rule.TypeArguments[1].Name} and not a {type.Name}";
            if (rule.Name == "WholeVisitRule")
                return "the rule judges the whole visit: begin with visit.Record or visit.Maker";
        }

        return type.ContainingNamespace?.Name == "Records" ? null : $"a {type.Name} is no part of the record";
    }

    /// <summary>The names of <c>a.B?.C!.D</c> in order; false where anything else stands among them.</summary>
    private static bool Collect(ExpressionSyntax expression, List<SimpleNameSyntax> names)
    {
        switch (expression)
        {
            case IdentifierNameSyntax name:
                names.Add(name);
                return true;
            case MemberAccessExpressionSyntax access when access.IsKind(SyntaxKind.SimpleMemberAccessExpression):
                return Collect(access.Expression, names) && Collect(access.Name, names);
            case MemberBindingExpressionSyntax binding:
                return Collect(binding.Name, names);
            case ConditionalAccessExpressionSyntax conditional:
                return Collect(conditional.Expression, names) && Collect(conditional.WhenNotNull, names);
            case PostfixUnaryExpressionSyntax sure when sure.IsKind(SyntaxKind.SuppressNullableWarningExpression):
                return Collect(sure.Operand, names);
            default:
                return false;
        }
    }

    private static ITypeSymbol? TypeOf(ISymbol? symbol) => symbol switch
    {
        IParameterSymbol parameter => parameter.Type,
        ILocalSymbol local => local.Type,
        _ => null,
    };
}
