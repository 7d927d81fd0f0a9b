using System.Globalization;
using Findings;

namespace Kernel;

/// <summary>
/// Proves a book of limits whole. The lines of an id span its scope: every fuel and every jurisdiction that one of them names, from the
/// first day of the earliest of them on without end. Inside that scope each fuel, jurisdiction and day must have exactly one answer.
/// </summary>
public static class LimitProof
{
    /// <summary>What is wrong with a book, every fault of it.</summary>
    /// <param name="book">The limits.</param>
    /// <param name="fuels">Every fuel that a record can name.</param>
    /// <param name="jurisdictions">Every jurisdiction whose law the rules hold.</param>
    public static IEnumerable<string> Faults(LimitBook book, IReadOnlyList<string> fuels, IReadOnlyList<string> jurisdictions)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(fuels);
        ArgumentNullException.ThrowIfNull(jurisdictions);
        var all = book.Definitions.Concat(book.Overrides).ToList();
        return book.Definitions.SelectMany(line => FaultsOfShipped(line, book))
            .Concat(book.Definitions.GroupBy(line => line.Id, StringComparer.Ordinal).SelectMany(lines => FaultsAmongShipped([.. lines])))
            .Concat(all.SelectMany(line => FaultsOfLine(line, fuels, jurisdictions)))
            .Concat(all.GroupBy(line => line.Id, StringComparer.Ordinal).SelectMany(lines => FaultsOfId(book, ScopeOf(lines), fuels, jurisdictions)));
    }

    /// <summary>A shipped limit spans its own scope; what a deployer sets over it does not widen it.</summary>
    private static List<LimitDefinition> ScopeOf(IEnumerable<LimitDefinition> lines)
    {
        var shipped = lines.Where(line => line.Who is null).ToList();
        return shipped.Count > 0 ? shipped : [.. lines];
    }

    private static IEnumerable<string> FaultsOfShipped(LimitDefinition line, LimitBook book)
    {
        if (line.Who is not null || line.Why is not null || line.Loosens is not null)
            yield return $"limit '{line.Id}' is shipped and says who, why or loosens, which is for overrides";
        if (line.IsBand || book.DeployersTables.Contains(line.Id, StringComparer.Ordinal))
            yield return $"limit '{line.Id}' is shipped as a table by installation volume, which only a deployer may fill";
        foreach (var fault in FaultsOfStrength(line))
            yield return $"limit '{line.Id}' {fault}";
    }

    /// <summary>Nothing is called read that names no document and no day, and nothing a judgement or worked out that is not said to be.</summary>
    private static IEnumerable<string> FaultsOfStrength(LimitDefinition line)
    {
        if (line.Kind is null || line.Strength is null)
            yield return "does not say its kind and its strength";
        if (line.StatedVerified is not null)
            yield return "says 'verified', which follows from its strength";
        if (line.Strength is { } strength && strength.IsRead() && (string.IsNullOrWhiteSpace(line.Document) || line.ReadOn is null))
            yield return "counts as read, and does not say in which document and on which day";
        if (line.ReadOn is not null && line.Strength?.IsRead() == false)
            yield return "says when it was read, and does not count as read";
        if ((line.Kind == LimitKind.Judgement) != (line.Strength == LimitStrength.Judgement) || (line.Kind == LimitKind.Derived) != (line.Strength == LimitStrength.Derived))
            yield return "has a kind and a strength that do not agree";
        if ((line.Strength == LimitStrength.Derived) != (line.Inputs is not null) || line.Inputs == LimitStrength.Derived)
            yield return "is worked out and does not say how well its weakest input is known, or says it and is not";
    }

    private static IEnumerable<string> FaultsAmongShipped(List<LimitDefinition> lines)
    {
        if (lines.Any(line => line.Unit != lines[0].Unit || line.Tighter != lines[0].Tighter || line.Ceiling != lines[0].Ceiling))
            yield return $"limit '{lines[0].Id}' has lines that differ in unit, in what is tighter or in being a ceiling";
    }

    private static IEnumerable<string> FaultsOfLine(LimitDefinition line, IReadOnlyList<string> fuels, IReadOnlyList<string> jurisdictions)
    {
        if (line.Min is null && line.Max is null)
            yield return $"limit '{line.Id}' has neither min nor max";
        if (line.Min > line.Max)
            yield return $"limit '{line.Id}' has a min above its max";
        if (line.Resolution <= 0)
            yield return $"limit '{line.Id}' has a resolution that is no step";
        if (line.Fuels is [] || line.Jurisdictions is [])
            yield return $"limit '{line.Id}' applies to nothing: a list that is there names at least one";
        foreach (var unknown in (line.Fuels ?? []).Except(fuels, StringComparer.Ordinal))
            yield return $"limit '{line.Id}' names the fuel '{unknown}', which no record can";
        foreach (var unknown in (line.Jurisdictions ?? []).Except(jurisdictions, StringComparer.Ordinal))
            yield return $"limit '{line.Id}' names the jurisdiction '{unknown}', whose law the rules do not hold";
        if (line.InForceFrom > line.InForceTo)
            yield return $"limit '{line.Id}' goes out of force before it comes into force";
    }

    private static IEnumerable<string> FaultsOfId(
        LimitBook book, List<LimitDefinition> scope, IReadOnlyList<string> fuels, IReadOnlyList<string> jurisdictions)
    {
        var id = scope[0].Id;
        var first = scope.Min(line => line.InForceFrom ?? DateOnly.MinValue);
        return
            from fuel in fuels
            where scope.Exists(line => line.Fuels?.Contains(fuel, StringComparer.Ordinal) != false)
            from place in jurisdictions
            where scope.Exists(line => line.Jurisdictions?.Contains(place, StringComparer.Ordinal) != false)
            // Nothing changes between two days of change, so the first day of each stretch answers for all of it.
            from day in book.Changes.Where(change => change > first).Prepend(first)
            let fault = FaultOf([.. book.InForce(fuel, place, day)[id]])
            where fault is not null
            select string.Create(CultureInfo.InvariantCulture, $"limit '{id}' has {fault} for {fuel} in {place} on {day:yyyy-MM-dd}");
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
