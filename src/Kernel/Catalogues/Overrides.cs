using System.Globalization;
using System.Text.Json;
using Findings;

namespace Kernel.Catalogues;

/// <summary>
/// The deployer's own limits: lines in the schema of limits.json, each with who set it and why. A line may only tighten, unless it says
/// that it loosens; a ceiling and a limit of law are never loosened.
/// </summary>
public static class Overrides
{
    /// <summary>Unit of the tables that only a deployer fills.</summary>
    private const string UnitOfTables = "mbar";

    private const string Opening = "override ";

    /// <summary>Which line a gap of a <see cref="CatalogueException"/> is about, from 1; null where it is about several or none.</summary>
    public static int? LineOf(string gap) => gap.StartsWith(Opening, StringComparison.Ordinal)
        && int.TryParse(string.Concat(gap[Opening.Length..].TakeWhile(char.IsAsciiDigit)), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The bytes of the file at <paramref name="path"/>; null without a path.</summary>
    /// <exception cref="CatalogueException">A path is given and the file cannot be read: limits that were meant to hold would not.</exception>
    public static byte[]? ReadFile(string? path)
    {
        if (string.IsNullOrWhiteSpace(path))
            return null;

        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new CatalogueException([$"the overrides '{path}' cannot be read ({fault.Message})"]);
        }
    }

    /// <summary>The lines in <paramref name="json"/>, all of which fit what is shipped.</summary>
    /// <exception cref="CatalogueException">Something does not fit; every fault is named.</exception>
    internal static IReadOnlyList<LimitDefinition> Read(byte[]? json, IReadOnlyList<LimitDefinition> shipped, IReadOnlyList<string> deployersTables)
    {
        var faults = new List<string>();
        var lines = new List<LimitDefinition>();
        foreach (var (element, number) in Elements(json).Select((element, index) => (element, index + 1)))
        {
            var misfits = OverrideShape.FaultsOf(element);
            if (misfits.Count == 0)
            {
                var line = element.Deserialize<LimitDefinition>(CatalogueJson.Options)!;
                lines.Add(line);
                faults.AddRange(FaultsOf(line, shipped, deployersTables).Select(fault => $"{Opening}{number} ('{line.Id}') {fault}"));
            }

            faults.AddRange(misfits.Select(fault => $"{Opening}{number} {fault}"));
        }

        return faults.Count == 0 ? lines : throw new CatalogueException(faults);
    }

    private static List<JsonElement> Elements(byte[]? json)
    {
        if (json is null)
            return [];

        try
        {
            var all = JsonElement.Parse(json);
            return all.ValueKind == JsonValueKind.Array ? [.. all.EnumerateArray()] : throw new JsonException("they begin otherwise.");
        }
        catch (JsonException fault)
        {
            throw new CatalogueException([$"the overrides are no JSON list: {fault.Message}"]);
        }
    }

    private static IEnumerable<string> FaultsOf(LimitDefinition line, IReadOnlyList<LimitDefinition> shipped, IReadOnlyList<string> deployersTables)
    {
        if (string.IsNullOrWhiteSpace(line.Who) || string.IsNullOrWhiteSpace(line.Why) || string.IsNullOrWhiteSpace(line.Source))
            yield return "must say who set it, why, and from which source";
        if (line.Origin != LimitOrigin.Deployer)
            yield return "must say \"origin\": \"deployer\"";
        if (line.StatedVerified is null)
            yield return "does not say 'verified'";
        if (line.Tighter is not null || line.Ceiling is not null || line.Kind is not null || line.Strength is not null || line.Inputs is not null)
            yield return "says tighter, ceiling, kind, strength or inputs, which only the shipped limit says";

        var faults = deployersTables.Contains(line.Id, StringComparer.Ordinal)
            ? FaultsOfTable(line)
            : FaultsAgainst(line, [.. shipped.Where(limit => limit.Id == line.Id)]);
        foreach (var fault in faults)
            yield return fault;
    }

    private static IEnumerable<string> FaultsOfTable(LimitDefinition line)
    {
        if (!line.IsBand)
            yield return "must say for which installation volume it is (volumeAboveM3, volumeUpToM3)";
        if (line.Unit != UnitOfTables || line.Max is null || line.Min is not null)
            yield return $"must give a max, and no min, in {UnitOfTables}";
        if (line.Loosens is not null)
            yield return "replaces no shipped limit, so it cannot loosen one";
    }

    private static IEnumerable<string> FaultsAgainst(LimitDefinition line, IReadOnlyList<LimitDefinition> shipped)
    {
        if (shipped.Count == 0)
        {
            yield return "has an id that no shipped limit has";
            yield break;
        }

        var replaced = shipped.Where(line.Meets).ToList();
        if (replaced.Count == 0)
            yield return "applies where the shipped limit does not exist";
        if (line.IsBand)
            yield return "says an installation volume, which this limit does not depend on";
        if (shipped[0].Tighter == Tightening.Neither)
            yield return "tells apart which rules apply, and cannot be replaced";
        if (line.Unit != shipped[0].Unit)
            yield return $"is in {line.Unit}; the limit is in {shipped[0].Unit}";
        if (replaced.Exists(limit => limit.Min is null != line.Min is null || limit.Max is null != line.Max is null))
            yield return "must state min and max where the shipped limit does, and only there";

        var isLooser = replaced.Exists(line.IsLooserThan);
        if (isLooser && line.Loosens != true)
            yield return "is looser than the shipped limit and does not say \"loosens\": true";
        if (!isLooser && line.Loosens == true)
            yield return "says that it loosens, and does not";
        if (isLooser && shipped[0].Ceiling == true)
            yield return "loosens a ceiling, which nobody may";
        if (isLooser && replaced.Exists(limit => limit.Origin == LimitOrigin.Law))
            yield return "loosens a limit of law, which nobody may";
    }
}
