using Records.Members;
using Records.Metadata;
using Records.Values;

namespace Records.Tests;

public class RecordMembersTests
{
    [Theory]
    [InlineData("/combustion/readings/0/coPpm", "/combustion/readings/*/coPpm", "[ppm]")]
    [InlineData("/combustion/readings/12", "/combustion/readings", null)]
    [InlineData("/defects/*/reportable/reportedOn", "/defects/*/reportable/reportedOn", null)]
    [InlineData("/gasSupply/rate/volumeFt3", "/gasSupply/rate/volumeFt3", "[cft_i]")]
    [InlineData("/jobType", "/jobType", null)]
    public void A_place_in_a_record_is_found_with_its_unit(string place, string pattern, string? unit)
    {
        var member = RecordMembers.Find(place)!;
        Assert.Equal((pattern, unit), (member.Pattern, member.Unit));
    }

    [Theory]
    [InlineData("")]
    [InlineData("combustion")]
    [InlineData("/Combustion")]
    [InlineData("/combustion/readings/coPpm")]
    [InlineData("/combustion/readings/0/0/coPpm")]
    [InlineData("/combustion/readings/-1/coPpm")]
    [InlineData("/combustion/")]
    [InlineData("/jobType/0")]
    public void A_place_that_no_record_has_is_not_found(string place) => Assert.Null(RecordMembers.Find(place));

    public static TheoryData<string> Patterns => [.. RecordMembers.All.Select(m => m.Pattern)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_member_says_what_it_may_hold_and_how_to_ask_for_it(string pattern)
    {
        var member = RecordMembers.Find(pattern)!;
        Assert.Equal(member.ClrType == typeof(decimal), member.Unit is not null && member.Minimum < member.Maximum);
        Assert.Equal(member.ClrType == typeof(string), member.MaxLength > 0);
        Assert.Equal(member.IsList, member.MaxItems > 0);
        Assert.Equal(member.ClrType.IsEnum, member.AllowedValues.Count > 0);
        Assert.Matches("^[A-Z].*[^ ]\\?$", member.Ask);
        Assert.Equal(1, member.Ask.Count(c => c == '?'));
        Assert.Contains(member.ClrType, (Type[])[typeof(decimal), typeof(string), typeof(bool), typeof(DateOnly), typeof(Timestamp), .. Sections, .. Enums]);
    }

    [Fact]
    public void Only_what_no_check_can_do_without_is_required() => Assert.Equal(
        ["/recordId", "/supersedesBecause/reason", "/jobType", "/jurisdiction", "/finishedAt", "/appliance"],
        RecordMembers.All.Where(m => m.IsRequired).Select(m => m.Pattern));

    /// <summary>The compiler allows one class and the metadata demands one; that no section is classed by a slip, the whole of the small classes shows.</summary>
    [Fact]
    public void What_is_volunteered_is_known_by_name() => Assert.Equal(
        [
            "/premises/alteredSinceLastVisit",
            "/appliance/modified",
            "/combustion/readings/*/statedRatio",
            "/combustion/readings/*/statedEfficiencyPercent",
            "/tightnessTests/*/gasSmell",
            "/coAlarm/activatedSinceLastVisit",
            "/pipework/damageOrCorrosion",
            "/escape",
            "/escape/reported",
            "/defects",
            "/defects/*/description",
            "/defects/*/location",
            "/defects/*/topic",
            "/defects/*/subject",
            "/defects/*/class",
            "/defects/*/mechanism",
            "/previousVisit/readings/*/statedRatio",
            "/previousVisit/readings/*/statedEfficiencyPercent",
        ],
        PlacesOf(MemberClass.Volunteered));

    [Fact]
    public void Every_trace_of_work_is_known_by_name() => Assert.Equal(
        [
            "/work",
            "/work/touched",
            "/disturbedJoints",
            "/disturbedJoints/*/place",
            "/heatExchanger/cleaned",
            "/heatExchanger/method",
            "/heatExchanger/topPlateRemoved",
            "/heatExchanger/minutesSpent",
            "/water/filterCleaned",
            "/condensate/trapCleaned",
            "/partsFitted",
            "/partsFitted/*/kind",
        ],
        PlacesOf(MemberClass.WorkDone));

    /// <summary>A day or a moment is a time, whatever else it shows.</summary>
    [Fact]
    public void Every_day_and_moment_is_classed_as_time() => Assert.All(
        RecordMembers.All.Where(m => m.ClrType == typeof(DateOnly) || m.ClrType == typeof(Timestamp)),
        m => Assert.Equal(MemberClass.Time, m.Class));

    /// <summary>Each is an expression of the Unified Code for Units of Measure (ucum.org); in braces stands an annotation, which has no unit.</summary>
    [Fact]
    public void Every_unit_is_one_of_the_published_list() => Assert.Equal(
        [
            "%", "1", "A", "Cel", "L", "MJ/m3", "MOhm", "Ohm", "[cft_i]", "[ppm]", "bar", "cm2", "kW", "m", "m3", "m3/(h.m2)", "mbar", "min", "mm",
            "mm/m", "mo", "s", "uA", "{reading}",
        ],
        RecordMembers.All.Select(m => m.Unit).OfType<string>().Distinct().Order(StringComparer.Ordinal));

    private static IEnumerable<string> PlacesOf(MemberClass one) => RecordMembers.All.Where(m => m.Class == one).Select(m => m.Pattern);

    private static IEnumerable<Type> Sections => RecordMembers.All.Where(m => m.IsSection).Select(m => m.ClrType);

    private static IEnumerable<Type> Enums => typeof(ServiceRecord).Assembly.GetExportedTypes().Where(t => t.IsEnum);
}
