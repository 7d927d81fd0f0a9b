using System.Diagnostics;
using System.Runtime.Loader;
using System.Text;
using Findings;
using Kernel.Catalogues;
using Rules;
using Visits;
using Visits.Judging;

namespace Kernel.Tests;

/// <summary>Two rule assemblies stand side by side in one process.</summary>
public sealed class TwoCataloguesTests : IDisposable
{
    private static readonly string Repository = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", ".."));

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("rules-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void The_same_rules_loaded_twice_judge_alike_by_the_same_hashes()
    {
        var (one, other) = (Load(typeof(RuleIds).Assembly.Location), Load(typeof(RuleIds).Assembly.Location));
        Assert.Empty(one.Catalogue.Rules.Select(rule => rule.Info.Member).Intersect(other.Catalogue.Rules.Select(rule => rule.Info.Member)));
        Assert.Equal(one.Catalogue.Info.LawHash, other.Catalogue.Info.LawHash);
        Assert.Equal(one.Catalogue.Info.CodeHash, other.Catalogue.Info.CodeHash);

        foreach (var record in Samples.CaseRecords.Where((_, number) => number % 25 == 0).Select(one => one.Record).Prepend(Samples.Example))
        {
            var judged = TextOf(Samples.Engine.Evaluate(record));
            Assert.Equal(judged, TextOf(one.Evaluate(record)));
            Assert.Equal(judged, TextOf(other.Evaluate(record)));
        }
    }

    [Fact]
    public void Another_build_of_the_same_rules_is_the_same_law_judged_by_another_program()
    {
        var plain = Build("plain", optimize: false);
        var other = Build("other", optimize: true, ("Cautions.cs", text => $"// A comment more.\n{text}"), ("limits.json", text => text.Replace("    ", "\t", StringComparison.Ordinal)));

        Assert.Equal(Samples.Catalogue.Info.LawHash, plain.Info.LawHash);
        Assert.Equal(Samples.Catalogue.Info.LawHash, other.Info.LawHash);
        Assert.NotEqual(plain.Info.CodeHash, other.Info.CodeHash);
    }

    private static string TextOf(Evaluation evaluation) => Encoding.UTF8.GetString(WireJson.ToBytes(evaluation, EvaluationJson.Default.Evaluation));

    private static ComplianceEngine Load(string path) => ComplianceEngine.Start(CatalogueOf(path));

    /// <summary>The rules of a file by themselves; what they rest on is that of this process.</summary>
    private static RuleCatalogue CatalogueOf(string path) => RuleCatalogue.Of(RecordModel.Instance, new AssemblyLoadContext(name: null).LoadFromAssemblyPath(path));

    /// <summary>Builds a copy of the rules, changed, against the assemblies of this test.</summary>
    private RuleCatalogue Build(string name, bool optimize, params (string File, Func<string, string> Change)[] changes)
    {
        var folder = Path.Combine(_folder.FullName, name, "rules");
        var rules = Path.Combine(Repository, "rules");
        foreach (var file in Directory.EnumerateFiles(rules, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".cs" or ".json" && Path.GetRelativePath(rules, file).Split('/')[0] is not ("bin" or "obj" or "packages.lock.json")))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(rules, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        foreach (var file in new[] { "Directory.Build.props", "Directory.Packages.props", "BannedSymbols.txt", "global.json" })
            File.Copy(Path.Combine(Repository, file), Path.Combine(folder, "..", file));
        foreach (var (file, change) in changes)
            File.WriteAllText(Path.Combine(folder, file), change(File.ReadAllText(Path.Combine(folder, file))));
        File.WriteAllText(Path.Combine(folder, "Rules.csproj"), File.ReadAllText(Path.Combine(rules, "Rules.csproj")).Replace(
            """<ProjectReference Include="../src/Visits/Visits.csproj" />""",
            string.Concat(new[] { "Visits", "Kernel", "Wire", "Records", "Findings", "Calculations", "NRules.Fluent", "NRules.RuleModel" }
                .Select(reference => $"""<Reference Include="{AppContext.BaseDirectory}{reference}.dll" />""")),
            StringComparison.Ordinal).Replace(
            """<ProjectReference Include="../src/Analyzers/Analyzers.csproj" OutputItemType="Analyzer" ReferenceOutputAssembly="false" />""",
            $"""<Analyzer Include="{Repository}/src/Analyzers/bin/{new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name}/netstandard2.0/Analyzers.dll" />""",
            StringComparison.Ordinal));

        using var build = Process.Start(new ProcessStartInfo(
            "dotnet", ["build", folder, "--nologo", "--verbosity", "quiet", "-p:RunAnalyzers=false", "-p:RestorePackagesWithLockFile=false", $"-p:Optimize={optimize}", "-nodeReuse:false"])
        { RedirectStandardOutput = true, UseShellExecute = false })!;
        var said = build.StandardOutput.ReadToEnd();
        build.WaitForExit();
        Assert.True(build.ExitCode == 0, said);
        return CatalogueOf(Directory.EnumerateFiles(Path.Combine(folder, "bin"), "Rules.dll", SearchOption.AllDirectories).First());
    }
}
