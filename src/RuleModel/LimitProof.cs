using System.Globalization;
using Records;
using Records.Metadata;

namespace RuleModel;

/// <summary>
/// Proves a book of limits whole. The lines of an id span its scope: every fuel and every jurisdiction that one of them names, from the
/// first day of the earliest of them on without end. Inside that scope each fuel, jurisdiction and day must have exactly one answer.
/// </summary>
public static class LimitProof
{
    /// <summary>What is wrong with <paramref name="book"/>, every fault of it.</summary>
    public static IEnumerable<string> Faults(LimitBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var all = book.Definitions.Concat(book.Overrides).ToList();
        return book.Definitions.SelectMany(FaultsOfShipped)
            .Concat(book.Definitions.GroupBy(line => line.Id, StringComparer.Ordinal).SelectMany(lines => FaultsAmongShipped([.. lines])))
            .Concat(all.SelectMany(FaultsOfLine))
            .Concat(all.GroupBy(line => line.Id, StringComparer.Ordinal).SelectMany(lines => FaultsOfId(book, ScopeOf(lines))));
    }

    /// <summary>A shipped limit spans its own scope; what a deployer sets over it does not widen it.</summary>
    private static List<LimitDefinition> ScopeOf(IEnumerable<LimitDefinition> lines)
    {
        var shipped = lines.Where(line => line.Who is null).ToList();
        return shipped.Count > 0 ? shipped : [.. lines];
    }

    private static IEnumerable<string> FaultsOfShipped(LimitDefinition line)
    {
        if (line.Who is not null || line.Why is not null || line.Loosens is not null)
            yield return $"limit '{line.Id}' is shipped and says who, why or loosens, which is for overrides";
        if (line.IsBand || LimitBook.DeployersTables.Contains(line.Id, StringComparer.Ordinal))
            yield return $"limit '{line.Id}' is shipped as a table by installation volume, which only a deployer may fill";
    }

    private static IEnumerable<string> FaultsAmongShipped(List<LimitDefinition> lines)
    {
        if (lines.Any(line => line.Unit != lines[0].Unit || line.Tighter != lines[0].Tighter || line.Ceiling != lines[0].Ceiling))
            yield return $"limit '{lines[0].Id}' has lines that differ in unit, in what is tighter or in being a ceiling";
    }

    private static IEnumerable<string> FaultsOfLine(LimitDefinition line)
    {
        if (line.Min is null && line.Max is null)
            yield return $"limit '{line.Id}' has neither min nor max";
        if (line.Min > line.Max)
            yield return $"limit '{line.Id}' has a min above its max";
        if (line.Resolution <= 0)
            yield return $"limit '{line.Id}' has a resolution that is no step";
        if (line.Fuels is [] || line.Jurisdictions is [])
            yield return $"limit '{line.Id}' applies to nothing: a list that is there names at least one";
        if (line.InForceFrom > line.InForceTo)
            yield return $"limit '{line.Id}' goes out of force before it comes into force";
    }

    private static IEnumerable<string> FaultsOfId(LimitBook book, List<LimitDefinition> scope)
    {
        var id = scope[0].Id;
        var first = scope.Min(line => line.InForceFrom ?? DateOnly.MinValue);
        return
            from fuel in Enum.GetValues<Fuel>()
            where scope.Exists(line => line.Fuels?.Contains(fuel) != false)
            from place in Enum.GetValues<Jurisdiction>()
            where scope.Exists(line => line.Jurisdictions?.Contains(place) != false)
            // Nothing changes between two days of change, so the first day of each stretch answers for all of it.
            from day in book.Changes.Where(change => change > first).Prepend(first)
            let fault = FaultOf([.. book.InForce(fuel, place, day)[id]])
            where fault is not null
            select string.Create(CultureInfo.InvariantCulture, $"limit '{id}' has {fault} for {WireNames.Of(fuel)} in {WireNames.Of(place)} on {day:yyyy-MM-dd}");
    }

    /// <summary>What is wrong with the lines in force together, or null.</summary>
    private static string? FaultOf(List<LimitDefinition> inForce)
    {
        if (inForce.Count == 0)
            return "a gap: no line applies";
        if (!inForce.Exists(line => line.IsBand))
            return inForce.Count == 1 ? null : $"an overlap: {inForce.Count} lines apply";

        var end = (decimal?)0m;
        foreach (var line in inForce.OrderBy(line => line.VolumeAboveM3 ?? 0m))
        {
            if (end != (line.VolumeAboveM3 ?? 0m) || line.VolumeUpToM3 <= end)
                return "a table by installation volume with a gap or an overlap in it";
            end = line.VolumeUpToM3;
        }

        return null;
    }
}
