using System.Collections.Immutable;
using Analyzers;
using Kernel;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Records;
using Visits;

namespace Architecture.Tests;

/// <summary>The compiler refuses a rule that names a member by an expression from which no right pointer could come.</summary>
public sealed class MemberExpressionTests
{
    [Theory]
    [InlineData("look.Lacks(visit.Record.Water?.HotBar, out _)")]
    [InlineData("look.Note(visit.Record.Water!.HotBar) is null")]
    [InlineData("look.Note(visit.Maker.CoPpmMax) is null")]
    [InlineData("look.Lacks(reading.CoPpm, out _)")]
    [InlineData("look.DoubtOf(visit, reading.CoPpm) is null")]
    public async Task What_names_a_member_is_let_pass(string expression) => Assert.Empty(await FaultsOf(expression));

    [Theory]
    [InlineData("look.Lacks(v.Record.Water?.HotBar, out _)", "of the visit write visit.Record or visit.Maker, and the member")]
    [InlineData("look.Note(visit.Date) is var day", "of the visit write visit.Record or visit.Maker, and the member")]
    [InlineData("look.Note(water.HotBar) is null", "the rule judges a CombustionReading and not a Water")]
    [InlineData("look.Note(bar) is null", "it must begin with visit.Record, visit.Maker or what the rule judges")]
    [InlineData("look.Note(visit.Record.Water?.HotBar + 1) is null", "it must be names joined by dots and nothing else")]
    [InlineData("look.Note(visit.Record.Combustion!.Readings![0].CoPpm) is null", "it must be names joined by dots and nothing else")]
    public async Task What_names_none_is_refused(string expression, string because)
    {
        var fault = Assert.Single(await FaultsOf(expression));
        Assert.EndsWith(because, fault.GetMessage(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Equal(DiagnosticSeverity.Error, fault.Severity);
    }

    [Fact]
    public async Task A_rule_on_the_whole_visit_has_no_element_to_begin_with()
    {
        const string code = "public sealed class SomeRule : VisitRule { protected override Verdict Assess(Visit visit, Look look) { var water = visit.Record.Water!; look.Note(water.HotBar); return look.Missing(); } }";
        Assert.Contains("begin with visit.Record or visit.Maker", Assert.Single(await Analyzed(code)).GetMessage(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("visit => visit.Record.Flue?.SupportsOk", null)]
    [InlineData("v => v.Record.Flue?.SupportsOk", "of the visit write visit.Record or visit.Maker, and the member")]
    [InlineData("visit => visit.IsAnnualService", "of the visit write visit.Record or visit.Maker, and the member")]
    [InlineData("visit => !visit.Record.Flue?.SupportsOk", "it must be names joined by dots and nothing else")]
    [InlineData("visit => { return visit.Record.Flue?.SupportsOk; }", "it must be names joined by dots and nothing else")]
    public async Task A_row_of_a_table_names_the_member_by_the_lambda_that_reads_it(string lambda, string? because)
    {
        var faults = await Analyzed($$"""public sealed class Rows : StatementTable { public Statement Row => Ask({{lambda}}, yes: Pass("so"), no: Advisory("not so", "Mend it.")); }""");
        Assert.Equal(because is null, faults.IsEmpty);
        Assert.All(faults, fault => Assert.EndsWith(because!, fault.GetMessage(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal));
    }

    private static Task<ImmutableArray<Diagnostic>> FaultsOf(string expression) => Analyzed($$"""
        public sealed class SomeRule : ComplianceRule<CombustionReading>
        {
            protected override IEnumerable<Subject<CombustionReading>>? Subjects(Visit visit) => visit.Readings;

            protected override Verdict Assess(CombustionReading reading, Visit visit, Look look)
            {
                var (v, water, bar) = (visit, visit.Record.Water!, visit.Record.Water?.HotBar);
                _ = {{expression}};
                return look.Missing();
            }
        }
        """);

    private static async Task<ImmutableArray<Diagnostic>> Analyzed(string code)
    {
        var usings = "using System.Collections.Generic; using Kernel; using Records; using Visits;\n";
        var assemblies = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Concat(new[] { typeof(Look), typeof(Visit), typeof(ServiceRecord) }.Select(type => type.Assembly.Location)).Distinct(StringComparer.Ordinal);
        var compilation = CSharpCompilation.Create(
            "One", [CSharpSyntaxTree.ParseText(usings + code)], assemblies.Select(path => MetadataReference.CreateFromFile(path)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
        Assert.Empty(compilation.GetDiagnostics().Where(fault => fault.Severity == DiagnosticSeverity.Error));
        return await compilation.WithAnalyzers([new MemberExpressionAnalyzer()]).GetAnalyzerDiagnosticsAsync();
    }
}
