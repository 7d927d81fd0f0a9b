using Records.Faults;
using Records.Members;

namespace Records.Tests;

public class FaultListTests
{
    [Fact]
    public void An_empty_record_is_told_everything_that_is_required()
    {
        var result = Bodies.Read("{}");
        Assert.Equal(["#/recordId", "#/jobType", "#/jurisdiction", "#/finishedAt", "#/appliance", "#/appliance/fuel"], result.Faults.Select(f => f.Pointer));
        Assert.All(result.Faults, f => Assert.Equal("requiredMember", f.Code));
        Assert.Equal(FaultKind.Invalid, result.Kind);
    }

    [Fact]
    public void The_least_that_can_be_asked_about_is_a_record() => Assert.True(Bodies.Read(
        """{"recordId":"x","jobType":"repair","jurisdiction":"GB-SCT","finishedAt":"2026-09-14T10:25:00Z","appliance":{"fuel":"propane"}}""").IsRecord);

    [Fact]
    public void A_faulty_node_is_cut_out_and_the_rest_still_checked()
    {
        var result = Bodies.Read(
            """
            {
              "paperwork": {"nextDueOn": "2026-13-01", "signed": true},
              "recordId": "x", "jobType": "service", "jurisdiction": "GB-ENG",
              "startedAt": "2026-09-14T11:00:00+01:00", "finishedAt": "2026-09-14T10:25:00+01:00",
              "appliance": {"fuel": "gas", "ratedInputKw": -26},
              "combustion": {
                "readings": [null, {"coPpm": -1, "co2Percent": "9"}, 7, {"co2Percent": 101, "takenAt": "2026-09-14T10:00:00"}],
                "airInlet": []
              },
              "makerLimits": {"co2PercentMin": 9, "co2PercentMax": 8, "sealsToRenew": ["fan", "lid", null]}
            }
            """);
        Assert.Equal(
            [
                "#/jobType unknownValue",
                "#/finishedAt outOfOrder",
                "#/appliance/fuel unknownValue",
                "#/appliance/ratedInputKw outOfRange",
                "#/makerLimits/co2PercentMin boundsCrossed",
                "#/makerLimits/sealsToRenew/1 unknownValue",
                "#/makerLimits/sealsToRenew/2 nullItem",
                "#/combustion/readings/0 nullItem",
                "#/combustion/readings/1/coPpm outOfRange",
                "#/combustion/readings/1/co2Percent wrongType",
                "#/combustion/readings/2 wrongType",
                "#/combustion/readings/3/takenAt notADateTime",
                "#/combustion/readings/3/co2Percent outOfRange",
                "#/combustion/airInlet wrongType",
                "#/paperwork/nextDueOn notADate",
                "#/paperwork/signed unknownMember",
            ],
            result.Faults.Select(f => $"{f.Pointer} {f.Code}"));
    }

    [Fact]
    public void What_is_wrong_about_the_work_and_what_was_done_about_a_danger_is_named_with_its_place()
    {
        var result = Bodies.Read(
            """
            {
              "recordId": "x", "jobType": "repair", "jurisdiction": "GB-ENG", "finishedAt": "2026-09-14T10:25:00+01:00",
              "work": {
                "kind": "service", "result": "NoAccess", "touched": ["gasPath", "boiler"], "purged": "yes", "tried": "",
                "notDone": [{"what": "/gasSupply/rates", "because": "noTime"}, {"what": "#/gasSupply/rate"}, {"what": "/combustion/readings/*/coPpm"}, null],
                "confirmed": [{"group": " "}],
                "withdrawn": [{"what": "", "because": "measuredAgain"}],
                "done": true
              },
              "appliance": {"fuel": "propane", "kind": "regular", "burnerKind": "premixed", "leftOffBecause": "holiday"},
              "makerLimits": {"electrodeGapMmMin": 5, "electrodeGapMmMax": 4.2, "flueTemperatureCMax": 3000},
              "ambientCo": {"afterAiringPpm": -1},
              "gasSupply": {"pressureBy": "guess"},
              "disturbedJoints": [{"place": "meter"}],
              "water": {"systemType": "vented"},
              "flue": {"material": "steel"},
              "partsFitted": [{"kind": "valve"}],
              "escape": {"isolatedAt": "street", "told": ["neighbour", null]},
              "defects": [{"foundAt": "2026-09-14T10:00:00+01:00", "concerns": "meter", "reexaminedAt": "2026-09-14T09:59:59+01:00", "told": "owner"}]
            }
            """);
        Assert.Equal(
            [
                "#/work/kind unknownValue",
                "#/work/result unknownValue",
                "#/work/touched/1 unknownValue",
                "#/work/purged wrongType",
                "#/work/notDone/0/what unknownReference",
                "#/work/notDone/0/because unknownValue",
                "#/work/notDone/1/what unknownReference",
                "#/work/notDone/2/what unknownReference",
                "#/work/notDone/3 nullItem",
                "#/work/confirmed/0/group textLength",
                "#/work/withdrawn/0/what textLength",
                "#/work/withdrawn/0/what unknownReference",
                "#/work/withdrawn/0/because unknownValue",
                "#/work/tried textLength",
                "#/work/done unknownMember",
                "#/appliance/kind unknownValue",
                "#/appliance/burnerKind unknownValue",
                "#/appliance/leftOffBecause unknownValue",
                "#/makerLimits/electrodeGapMmMin boundsCrossed",
                "#/makerLimits/flueTemperatureCMax outOfRange",
                "#/ambientCo/afterAiringPpm outOfRange",
                "#/gasSupply/pressureBy unknownValue",
                "#/disturbedJoints/0/place unknownValue",
                "#/water/systemType unknownValue",
                "#/flue/material unknownValue",
                "#/partsFitted/0/kind unknownValue",
                "#/escape/isolatedAt unknownValue",
                "#/escape/told/0 unknownValue",
                "#/escape/told/1 nullItem",
                "#/defects/0/concerns unknownValue",
                "#/defects/0/reexaminedAt outOfOrder",
                "#/defects/0/told wrongType",
            ],
            result.Faults.Select(f => $"{f.Pointer} {f.Code}"));
    }

    [Fact]
    public void One_duplicate_makes_the_body_unreadable_and_the_other_faults_are_named_all_the_same()
    {
        var result = Bodies.Read(Bodies.With("/electrical/fuseAmps", "3,\"fuseAmps\":13").Replace("\"HB-0001\"", "1", StringComparison.Ordinal));
        Assert.Equal(FaultKind.Unreadable, result.Kind);
        Assert.Equal(["#/recordId", "#/electrical/fuseAmps"], result.Faults.Select(f => f.Pointer));
    }

    [Theory]
    [InlineData("/recordId", 100)]
    [InlineData("/defects/*/description", 1000)]
    public void A_text_as_long_as_allowed_is_read_and_a_longer_one_is_not(string pattern, int maxLength)
    {
        var place = pattern.Replace("*", "0", StringComparison.Ordinal);
        Assert.Equal(maxLength, RecordMembers.Find(pattern)!.MaxLength);
        Assert.True(Bodies.Read(Bodies.With(Bodies.Full, place, $"\"{new string('x', maxLength)}\"")).IsRecord);
        Assert.Equal("textLength", Assert.Single(Bodies.Read(Bodies.With(Bodies.Full, place, $"\"{new string('x', maxLength + 1)}\"")).Faults).Code);
    }

    [Fact]
    public void A_list_as_long_as_allowed_is_read_and_a_longer_one_is_not()
    {
        static string Parts(int count) => Bodies.With("/partsFitted", "[" + string.Join(',', Enumerable.Repeat("{}", count)) + "]");
        Assert.True(Bodies.Read(Parts(200)).IsRecord);
        Assert.Equal(("#/partsFitted", "tooManyItems"), (Assert.Single(Bodies.Read(Parts(201)).Faults).Pointer, Bodies.Read(Parts(201)).Faults[0].Code));
    }

    public static TheoryData<string> NumberPatterns => [.. RecordMembers.All.Where(m => m.Unit is not null && m.Name != "volumeFt3").Select(m => m.Pattern)];

    [Theory]
    [MemberData(nameof(NumberPatterns))]
    public void Every_number_is_held_to_its_possible_range(string pattern)
    {
        var member = RecordMembers.Find(pattern)!;
        var place = pattern.Replace("*", "0", StringComparison.Ordinal);
        string Body(decimal number) => Bodies.With(Bodies.Full, place, FormattableString.Invariant($"{number}"));
        Assert.DoesNotContain(Bodies.Read(Body(member.Minimum!.Value)).Faults.Concat(Bodies.Read(Body(member.Maximum!.Value)).Faults), f => f.Code == "outOfRange");
        foreach (var outside in (decimal[])[member.Minimum.Value - 0.0001m, member.Maximum.Value + 0.0001m])
        {
            Assert.Contains(Bodies.Read(Body(outside)).Faults, f => f.Code == "outOfRange" && f.Pointer == "#" + place && f.Detail.Contains(member.Unit!, StringComparison.Ordinal));
        }
    }
}
