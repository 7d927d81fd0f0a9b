using System.Globalization;
using Wire;

namespace Rules.Tests;

/// <summary>
/// What falls due after a visit of 14 September 2026, the one before on 20 September 2025: by the maker's interval or twelve months (common practice, no source), by regulations
/// 36(3)(a) and 36A of the Gas Safety (Installation and Use) Regulations 1998, by BS 7593:2019 (five years), by what alarm, instrument and
/// category say of themselves.
/// </summary>
public sealed class DueDateTests
{
    private const string Service = "annualService 2027-09-14 QB-25-004711", Alarm = "coAlarmReplacement 2030-01-01 QB-25-004711", Inhibitor = "inhibitorDose 2030-09-10 QB-25-004711",
        Category = "engineerCategory 2028-05-01 7001234 naturalGas, domestic",
        Calibrations = "calibration 2027-03-02 FA-1; calibration 2027-03-02 PG-1; calibration 2027-03-02 MM-1; calibration 2027-03-02 TH-1";

    [Theory]
    [InlineData("{}", $"{Service}; {Alarm}; {Inhibitor}; {Calibrations}; {Category}")]
    [InlineData("""{ "/appliance/serialNumber": null }""", $"{Calibrations}; {Category}")]
    [InlineData("""{ "/engineer/licenceNumber": null, "/instruments": [] }""", $"{Service}; {Alarm}; {Inhibitor}")]
    [InlineData("""{ "/engineer": null, "/instruments": null, "/coAlarm": null, "/water": null }""", Service)]
    [InlineData("""{ "/coAlarm/present": false, "/water/inhibitorDosedOn": "2026-09-14", "/instruments": [], "/engineer/categories": [] }""", "annualService 2027-09-14 QB-25-004711; inhibitorDose 2031-09-14 QB-25-004711")]
    [InlineData("""{ "/coAlarm/present": null, "/water/inhibitorDosedOn": "2026-09-15", "/instruments": [], "/engineer/categories": [] }""", $"{Service}; {Alarm}")]
    public void What_the_record_gives_rise_to(string set, string expected) => Demand(set, expected);

    [Theory]
    [InlineData("""{ "/paperwork/nextDueOn": null }""", "annualService 2027-09-14")]
    [InlineData("""{ "/paperwork/nextDueOn": "2027-03-01" }""", "annualService 2027-03-01")]
    [InlineData("""{ "/paperwork/nextDueOn": "2027-09-15" }""", "annualService 2027-09-14")]
    [InlineData("""{ "/paperwork/nextDueOn": "2026-09-14" }""", "annualService 2027-09-14")]
    [InlineData("""{ "/paperwork/nextDueOn": null, "/makerLimits/serviceIntervalMonths": 6 }""", "annualService 2027-03-14")]
    [InlineData("""{ "/jobType": "commissioning" }""", "annualService 2027-09-14")]
    [InlineData("""{ "/jobType": "repair" }""", "")]
    [InlineData("""{ "/jobType": "landlordCheck" }""", "")]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "workplace" }""", "")]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": null }""", "landlordCheck 2027-09-20")]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/work/result": "noAccess" }""", "")]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/work/result": "partlyCarriedOut" }""", "")]
    [InlineData("""{ "/premises/use": "rented", "/work/result": "refused" }""", "annualService 2027-09-14")]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented" }""", "landlordCheck 2027-09-20")]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/previousVisit": null }""", "landlordCheck 2027-09-14")]
    [InlineData("""{ "/premises/use": "rented" }""", "annualService 2027-09-14; landlordCheck 2027-09-20")]
    [InlineData("""{ "/premises/use": "rented", "/jobType": "repair" }""", "")]
    [InlineData("""{ "/premises/use": null }""", "annualService 2027-09-14")]
    public void The_next_visit(string set, string expected) => Demand(
        $$"""{ "/coAlarm": null, "/water": null, "/instruments": [], "/engineer": null, {{set[1..^1]}} }""".Replace(",  }", " }", StringComparison.Ordinal),
        string.Join("; ", expected.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(one => $"{one} QB-25-004711")));

    [Theory]
    [InlineData("""{ "kind": "flueGasAnalyser", "serialNumber": "A", "calibratedOn": "2026-05-01" }""", "calibration 2027-05-01 A")]
    [InlineData("""{ "kind": "flueGasAnalyser", "serialNumber": "A", "calibratedOn": "2026-05-01", "calibrationDueOn": "2026-11-01" }""", "calibration 2026-11-01 A")]
    [InlineData("""{ "kind": "flueGasAnalyser", "serialNumber": "A" }""", "")]
    [InlineData("""{ "kind": "flueGasAnalyser", "calibratedOn": "2026-05-01" }""", "")]
    public void The_next_calibration(string instrument, string expected) =>
        Demand($$"""{ "/appliance/serialNumber": null, "/engineer": null, "/instruments": [{{instrument}}] }""", expected);

    [Theory]
    [InlineData("""{ "fuel": "naturalGas", "expiresOn": "2027-01-01" }""", "engineerCategory 2027-01-01 7001234 naturalGas, any scope")]
    [InlineData("""{ "scope": "domestic", "expiresOn": "2027-01-01" }""", "engineerCategory 2027-01-01 7001234 any fuel, domestic")]
    [InlineData("""{ "fuel": "naturalGas", "scope": "domestic" }""", "")]
    public void The_end_of_a_category(string category, string expected) =>
        Demand($$"""{ "/appliance/serialNumber": null, "/instruments": [], "/engineer/categories": [{{category}}] }""", expected);

    [Fact]
    public void By_what_a_day_is_reckoned_is_said()
    {
        Assert.Equal("the date that the record gives", Of("{}")[0].Basis);
        Assert.StartsWith("12 months after the visit", Of("""{ "/paperwork/nextDueOn": null }""")[0].Basis, StringComparison.Ordinal);
        Assert.Equal("the date on the instrument", Of("{}").First(due => due.Kind == Findings.DueKind.Calibration).Basis);
        Assert.StartsWith("12 months after the last calibration", Of("""{ "/instruments": [{ "kind": "pressureGauge", "serialNumber": "A", "calibratedOn": "2026-05-01" }] }""").First(due => due.Kind == Findings.DueKind.Calibration).Basis, StringComparison.Ordinal);
        var check = Of("""{ "/premises/use": "rented" }""").Single(due => due.Kind == Findings.DueKind.LandlordCheck);
        Assert.Equal((new DateOnly(2027, 7, 21), "Quillback", "Tarn 25", "P-77"), (check.WindowFrom, check.Maker, check.Model, check.PremisesReference));
    }

    /// <summary>Section 4 of the page of duties: what was left waits until it is put right, and a visit that did not get to the boiler changes nothing.</summary>
    [Theory]
    [InlineData("{}", "settled")]
    [InlineData("""{ "/appliance/stateOnLeaving": "turnedOff", "/appliance/leftOffBecause": "customerWish" }""", "the boiler was left off")]
    [InlineData("""{ "/appliance/stateOnLeaving": "turnedOff", "/defects/-": { "topic": "flue", "class": "atRisk", "action": "turnedOff", "isolatedAt": "applianceValve" } }""", "a danger was left")]
    [InlineData("""{ "/defects/-": { "topic": "flue", "class": "atRisk", "action": "rectified", "reexaminedAt": "2026-09-14T10:15:00+01:00" } }""", "settled")]
    [InlineData("""{ "/defects/-": { "topic": "flue", "class": "atRisk", "action": "rectified" } }""", "a danger was left")]
    [InlineData("""{ "/defects/-": { "topic": "tightness", "class": "atRisk", "action": "turnedOff", "concerns": "otherAppliance" } }""", "settled")]
    [InlineData("""{ "/work/result": "noAccess", "/combustion": null, "/disturbedJoints": null, "/tightnessTests": null, "/gasSupply": null, "/partsFitted": null }""", "untouched")]
    public void What_waits_until_the_boiler_is_used_again(string set, string expected)
    {
        var due = RuleSet.Engine.Law.DueDatesOf(RuleSet.Engine.VisitOf(RuleSet.Example(set))).SingleOrDefault(one => one.Kind == Findings.DueKind.BeforeUse);
        Assert.StartsWith(expected, due is null ? "untouched" : due.IsSettled ? "settled" : due.Basis, StringComparison.Ordinal);
    }

    /// <summary>Section 2 of the page of duties: what was broken off before everything of regulation 26(9) was examined is no check, and is never anybody's previous check.</summary>
    [Theory]
    [InlineData("""{ "/premises/use": "rented" }""", true)]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented" }""", true)]
    [InlineData("""{ "/jobType": "landlordCheck" }""", false)]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/appliance/ownedByTenant": true }""", false)]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/work": { "result": "noAccess" }, "/combustion": null, "/disturbedJoints": null, "/tightnessTests": null, "/gasSupply": null, "/partsFitted": null }""", false)]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/work/result": "gasOff", "/appliance/stateOnLeaving": "turnedOff", "/combustion": null, "/gasSupply": null, "/safetyDevices": null }""", false)]
    [InlineData("""{ "/jobType": "landlordCheck", "/premises/use": "rented", "/work/result": "partlyCarriedOut", "/gasSupply": null }""", false)]
    public void Only_a_check_that_was_made_counts_as_one(string set, bool counts)
    {
        var record = RuleSet.Example(set);
        var said = RuleSet.Engine.Evaluate(record);
        Assert.Equal(counts, Visits.Facts.VisitFacts.Of(record, said, RuleSet.Engine.Law).CheckCountedOn is not null);
        Assert.Equal(counts, RuleSet.Engine.Law.DueDatesOf(RuleSet.Engine.VisitOf(record), said).Any(due => due.Kind == Findings.DueKind.LandlordCheck));
    }

    private static void Demand(string set, string expected) => Assert.Equal(
        expected, string.Join("; ", Of(set).Select(due => string.Create(CultureInfo.InvariantCulture, $"{WireNames.Of(due.Kind)} {due.By:yyyy-MM-dd} {due.SerialNumber ?? due.LicenceNumber} {due.Category}").TrimEnd())));

    private static IReadOnlyList<Findings.DueDate> Of(string set) => [.. RuleSet.Engine.Law.DueDatesOf(RuleSet.Engine.VisitOf(RuleSet.Example(set))).Where(due => !due.IsSettled)];
}
