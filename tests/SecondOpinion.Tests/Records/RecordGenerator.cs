using System.Text.Json.Nodes;
using Records.Members;
using Records.Reading;

namespace SecondOpinion.Tests.Records;

/// <summary>Makes records by number: a base, then changes of some members, of few or of nearly all.</summary>
internal static class RecordGenerator
{
    private const int FirstSeed = 20260914;

    /// <summary>How many changes: mostly few, so that a rule is seen at the edge of what it demands; sometimes more than half of the record.</summary>
    private static readonly (double Share, int Least, int Most)[] Sizes = [(0.2, 1, 2), (0.2, 3, 6), (0.2, 7, 20), (0.15, 30, 80)];

    private static readonly IReadOnlyList<RecordMember> Leaves = [.. RecordMembers.All.Where(member => !member.IsSection && member.Pattern is not
        ("/recordId" or "/supersedes" or "/supersedesBecause/reason" or "/supersedesBecause/note" or "/finishedAt"))];

    private static readonly IReadOnlyList<RecordMember> Sections = [.. RecordMembers.All.Where(member => member is { IsSection: true, IsRequired: false })];

    private static readonly IReadOnlyList<RecordMember> Lists = [.. Sections.Where(member => member.IsList)];

    private static RecordMember DefectList => Lists.Single(list => list.Pattern == "/defects");

    /// <summary>The record of a number; what makes a draft impossible is removed, and where that cannot be another is drawn.</summary>
    public static GeneratedRecord Make(int number)
    {
        for (var attempt = 0; ; attempt++)
        {
            var draft = DraftOf(number, new Dice(unchecked(FirstSeed + (number * 31) + (attempt * 1_000_003))));
            for (var tries = 0; tries < 3; tries++)
            {
                var read = RecordReader.Read(draft.Bytes, KnownValues.Jurisdictions);
                if (read.Record is { } record)
                    return new GeneratedRecord(number, draft.Changes, draft.Root, record);
                foreach (var fault in read.Faults)
                    draft.Apply(fault.Pointer is "#/finishedAt" ? "/startedAt" : fault.Pointer[1..], null);
            }
        }
    }

    /// <summary>The record of a number as of a visit on which nobody got to the boiler, without its fuel and without what would ask for it.</summary>
    public static GeneratedRecord WithoutFuel(int number)
    {
        var made = Make(number);
        return With(number, [.. made.Changes, new("/work/result", number % 2 == 0 ? "noAccess" : "refused"), .. AskForFuel.Select(pointer => new Change(pointer, null))])!;
    }

    private static readonly string[] AskForFuel =
    [
        "/appliance/fuel", "/combustion/readings", "/combustion/airInlet", "/gasSupply/meterStandingMbar", "/gasSupply/meterOperatingMbar", "/gasSupply/applianceInletMbar",
        "/gasSupply/burnerMbar", "/gasSupply/rate", "/tightnessTests", "/partsFitted",
    ];

    /// <summary>The example record with only these changes; null where it would have a fault.</summary>
    public static GeneratedRecord? With(int number, IEnumerable<Change> changes)
    {
        var draft = new Draft();
        foreach (var change in changes)
            draft.Apply(change);
        return RecordReader.Read(draft.Bytes, KnownValues.Jurisdictions).Record is { } record ? new GeneratedRecord(number, draft.Changes, draft.Root, record) : null;
    }

    private static Draft DraftOf(int number, Dice dice)
    {
        var draft = Bases.Draft(number % Bases.Count);
        if (dice.Chance(0.15))
            MoveVisit(draft, dice);

        // Only a record that does not state its previous visit is given stored ones; dice of its own leave the other draws be.
        if (new Dice(number * 7).Chance(0.25))
            draft.Apply("/previousVisit", null);

        LayPartAndGap(draft, new Dice(unchecked(65_537 + (number * 13))));
        LayDefect(draft, new Dice(unchecked(90_001 + (number * 17))));
        var dangers = new Dice(unchecked(77_003 + (number * 19)));
        if (dangers.Chance(0.4))
            Dangers.LayUpon(draft, () => Item(DefectList, draft.Day, dangers), dangers);
        var work = new Dice(unchecked(40_487 + (number * 11)));
        if (work.Chance(0.4))
            Bases.LayWorkUpon(draft, work);

        var drawn = dice.UpTo(100) / 100.0;
        foreach (var (share, least, most) in Sizes)
        {
            if (drawn < share)
            {
                for (var left = least + dice.UpTo(most - least + 1); left > 0; left--)
                    Change(draft, dice);
                return draft;
            }

            drawn -= share;
        }

        foreach (var member in Leaves.Where(_ => dice.Chance(0.6)))
            ChangeLeaf(draft, member, dice);
        return draft;
    }

    /// <summary>A part of some kind for some gas, and an electrode gap of the maker's: chance seldom draws the members of either together.</summary>
    private static void LayPartAndGap(Draft draft, Dice dice)
    {
        if (dice.Chance(0.2) && draft.At("/partsFitted") is not JsonArray { Count: > 0 })
            draft.Apply("/partsFitted", new JsonArray(Item(Lists.Single(list => list.Pattern == "/partsFitted"), draft.Day, dice)));
        if (!dice.Chance(0.1))
            return;

        foreach (var member in Leaves.Where(leaf => leaf.Pattern is "/makerLimits/electrodeGapMmMin" or "/makerLimits/electrodeGapMmMax" or "/burner/electrodeGapMm"))
            ChangeLeaf(draft, member, dice);
    }

    /// <summary>A dangerous defect of which something was done: chance seldom draws its class, its action, its subject and its times together.</summary>
    private static void LayDefect(Draft draft, Dice dice)
    {
        if (!dice.Chance(0.15))
            return;

        var defect = Item(DefectList, draft.Day, dice);
        defect["class"] = dice.OneOf(["atRisk", "immediatelyDangerous"]);
        defect["action"] = dice.OneOf(["rectified", "rectified", "turnedOff", "disconnected"]);
        draft.Apply(Invariant($"/defects/{(draft.At("/defects") as JsonArray)?.Count ?? 0}"), defect);
    }

    private static void Change(Draft draft, Dice dice)
    {
        switch (dice.UpTo(20))
        {
            case 0:
                draft.Apply(Place(draft, dice.OneOf(Sections), dice), null);
                break;
            case 1:
                ChangeList(draft, dice.OneOf(Lists), dice);
                break;
            default:
                ChangeLeaf(draft, dice.OneOf(Leaves), dice);
                break;
        }
    }

    private static void ChangeLeaf(Draft draft, RecordMember member, Dice dice) =>
        draft.Apply(Place(draft, member, dice), States.Draw(member, draft.Day, dice));

    private static void ChangeList(Draft draft, RecordMember list, Dice dice)
    {
        var place = Place(draft, list, dice);
        var items = draft.At(place) as JsonArray ?? [];
        var anyItem = Invariant($"{place}/{dice.UpTo(Math.Max(1, items.Count))}");
        var end = Invariant($"{place}/{items.Count}");
        switch (dice.UpTo(4))
        {
            case 0:
                draft.Apply(place, new JsonArray());
                break;
            case 1:
                draft.Apply(anyItem, null);
                break;
            case 2 when items.Count > 0:
                draft.Apply(end, draft.At(anyItem)!.DeepClone());
                break;
            default:
                if (items.Count == 0)
                    draft.Apply(place, new JsonArray());
                draft.Apply(end, Item(list, draft.Day, dice));
                break;
        }
    }

    private static JsonObject Item(RecordMember section, DateOnly visit, Dice dice)
    {
        var item = new JsonObject();
        foreach (var member in section.Members.Where(_ => dice.Chance(0.8)))
        {
            JsonNode? value = member switch
            {
                { IsSection: true, IsList: true } => null,
                { IsSection: true } => Item(member, visit, dice),
                _ => States.Draw(member, visit, dice),
            };
            if (value is not null)
                item[member.Name] = value;
        }

        return item;
    }

    /// <summary>A place of the member in this draft: of a list, one of its items.</summary>
    private static string Place(Draft draft, RecordMember member, Dice dice)
    {
        var parts = member.Pattern.Split('/');
        for (var i = 1; i < parts.Length; i++)
        {
            if (parts[i] == "*")
                parts[i] = Invariant($"{dice.UpTo(Math.Max(1, (draft.At(string.Join('/', parts[..i])) as JsonArray)?.Count ?? 1))}");
        }

        return string.Join('/', parts);
    }

    /// <summary>Another day of the visit: with all other days along, or those that would then be impossible removed.</summary>
    private static void MoveVisit(Draft draft, Dice dice)
    {
        var to = dice.OneOf(States.ChangeDays);
        var days = to.DayNumber - draft.Day.DayNumber;
        if (dice.Chance(0.5))
        {
            draft.Apply("", days);
            return;
        }

        draft.Apply("/previousVisit", null);
        draft.Apply("/appliance/installedOn", null);
        draft.Apply("/startedAt", Invariant($"{to:yyyy-MM-dd}T09:00:00+01:00"));
        draft.Apply("/finishedAt", Invariant($"{to:yyyy-MM-dd}T10:25:00+01:00"));
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
