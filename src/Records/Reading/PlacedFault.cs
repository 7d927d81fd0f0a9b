using System.Globalization;
using FluentValidation.Results;
using Records.Faults;
using Records.Members;
using Wire;

namespace Records.Reading;

/// <summary>A fault with its place as a plain JSON Pointer, by which faults are sorted.</summary>
internal sealed record PlacedFault(string Place, string Code, string Detail)
{
    /// <summary>From a validator's failure, whose place is a path of C# names: <c>Combustion.Readings[0].CoPpm</c>.</summary>
    public static PlacedFault Of(ValidationFailure failure)
    {
        var parts = failure.PropertyName.Split(['.', '['], StringSplitOptions.RemoveEmptyEntries);
        var place = string.Concat(parts.Select(part => "/" + (part.EndsWith(']') ? part[..^1] : WireNames.OfMember(part))));
        return new(place, failure.ErrorCode, failure.ErrorMessage);
    }

    /// <summary>The faults as they are answered: sorted by place, and then a count of those that are not listed.</summary>
    public static List<Fault> Listed(List<PlacedFault> faults, int unlisted)
    {
        var listed = faults.OrderBy(f => f.Key(), KeyOrder).ThenBy(f => f.Place, StringComparer.Ordinal).ThenBy(f => f.Code, StringComparer.Ordinal)
            .Select(f => new Fault(f.Fragment(), f.Code, f.Detail)).ToList();
        if (unlisted > 0)
        {
            listed.Add(Fault.OfUnlisted(unlisted));
        }

        return listed;
    }

    private static Comparer<List<int>> KeyOrder { get; } = Comparer<List<int>>.Create(static (a, b) =>
    {
        var length = Math.Min(a.Count, b.Count);
        for (var i = 0; i < length; i++)
        {
            if (a[i] != b[i])
            {
                return a[i].CompareTo(b[i]);
            }
        }

        return a.Count.CompareTo(b.Count);
    });

    private string Fragment() => "#" + string.Concat(Place.Split('/').Skip(1).Select(part => "/" + Uri.EscapeDataString(part)));

    /// <summary>Along the pointer: the position of each member in its section, the index of each item; unknown members last.</summary>
    private List<int> Key()
    {
        var key = new List<int>();
        Section? section = RecordMembers.Record;
        RecordMember? list = null;
        foreach (var part in Place.Split('/').Skip(1))
        {
            if (list is not null)
            {
                key.Add(int.Parse(part, CultureInfo.InvariantCulture));
                section = list.Section;
                list = null;
                continue;
            }

            var member = section?.Find(part);
            key.Add(member is null ? int.MaxValue : section!.OrderOf(member));
            list = member is { IsList: true } ? member : null;
            section = list is null ? member?.Section : null;
        }

        return key;
    }
}
