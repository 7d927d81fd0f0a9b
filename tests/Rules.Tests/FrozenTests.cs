using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Findings;
using Kernel;
using Records;
using Visits.Judging;

namespace Rules.Tests;

/// <summary>
/// While the rooms are moved: every row (rule, subject, outcome, message, margin) of every case and sample record, as a hash for each, is
/// what it was before. FROZEN=folder writes the rows there, to be compared line by line; REWRITE_FROZEN=1 takes them as the new measure,
/// which needs a line in tests/frozen/CHANGES.md. Goes with the last move.
/// </summary>
public sealed class FrozenTests
{
    private static readonly string Folder = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "frozen"));

    [Fact]
    public void Every_row_is_what_it_was()
    {
        var hashes = new StringBuilder();
        var rows = new StringBuilder();
        foreach (var (name, record, lookup) in Records())
        {
            var said = string.Concat(RuleSet.Engine.Evaluate(record, lookup).Findings.Select(RowOf));
            hashes.Append(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(said)))[..16]).Append(' ').Append(name).Append('\n');
            rows.Append("== ").Append(name).Append('\n').Append(said);
        }

        if (Environment.GetEnvironmentVariable("FROZEN") is { Length: > 0 } folder)
            File.WriteAllText(Path.Combine(folder, "rows.txt"), rows.ToString());
        var file = Path.Combine(Folder, "rows.txt");
        if (Environment.GetEnvironmentVariable("REWRITE_FROZEN") == "1")
            File.WriteAllText(file, hashes.ToString());

        Assert.Equal(File.ReadAllLines(file), hashes.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    private static IEnumerable<(string Name, ServiceRecord Record, Visits.Lookup? Lookup)> Records()
    {
        foreach (var (rule, one) in RuleSet.Cases.OrderBy(entry => entry.Rule.Info.Id, StringComparer.Ordinal))
            yield return ($"{rule.Info.Id}: {one.Name}", RuleSet.RecordOf(one), one.Beside());
        foreach (var name in CorpusTests.Records.Cast<object[]>().Select(row => (string)row[0]))
            yield return (name, RuleSet.Read(File.ReadAllBytes(Path.Combine(Folder, "..", "records", name))), null);
    }

    private static string RowOf(Finding finding) => string.Create(
        CultureInfo.InvariantCulture, $"{finding.RuleId}\t{finding.Subject}\t{finding.Outcome}\t{finding.Message}\t{finding.Margin}\n");
}
