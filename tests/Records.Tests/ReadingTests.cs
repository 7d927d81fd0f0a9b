using Records.Members;

namespace Records.Tests;

public class ReadingTests
{
    [Fact]
    public void The_example_is_read_with_its_values()
    {
        var record = Bodies.Read(Bodies.Example).Record!;
        Assert.Equal((JobType.AnnualService, "GB-ENG", Fuel.NaturalGas), (record.JobType, record.Jurisdiction, record.Appliance.Fuel));
        Assert.Equal("2026-09-14T10:25:00+01:00", record.FinishedAt.Text);
        Assert.Equal((96m, 4.5m), (record.Combustion!.Readings![0].CoPpm, record.Combustion.Readings[0].O2Percent));
        Assert.Equal([JointPlace.GasValveInlet, JointPlace.GasValveOutlet], record.MakerLimits!.SealsToRenew!);
        Assert.Empty(record.Defects!);
        Assert.Null(record.Commissioning);
    }

    [Fact]
    public void A_byte_order_mark_is_skipped() => Assert.True(Bodies.Read("\uFEFF" + Bodies.Example).IsRecord);

    [Fact]
    public void Null_is_read_as_absent()
    {
        var record = Bodies.Read(Bodies.With(Bodies.With("/combustion", "null"), "/appliance/condensing", "null")).Record!;
        Assert.Null(record.Combustion);
        Assert.Null(record.Appliance.Condensing);
    }

    [Theory]
    [InlineData("/instruments/1", """{"kind":"pressureGauge","serialNumber":"FA-1"}""")] // One device of two kinds.
    [InlineData("/combustion/readings/1/instrument", "\"FA-2\"")] // Not listed: a question for the rules.
    [InlineData("/combustion/readings/1/takenAt", "\"2026-09-16T00:00:00+01:00\"")] // After the visit: for the rules, as the dates below.
    [InlineData("/previousVisit/readings", """[{"instrument":"FA-0"}]""")] // Another visit, other instruments.
    [InlineData("/water/returnTemperatureC", "90")] // Improbable, hence for the rules.
    [InlineData("/tightnessTests/0/testedOn", "\"2026-09-16\"")]
    [InlineData("/defects", """[{"description":"first line\nsecond"}]""")] // Prose has line breaks.
    [InlineData("/defects", """[{"subject":""}]""")] // The whole visit.
    [InlineData("/partsFitted", "[]")]
    [InlineData("/work", """{"touched":[],"notDone":[],"confirmed":[],"withdrawn":[]}""")] // Stated: none.
    [InlineData("/work", """{"notDone":[{"what":"/safetyDevices/7/tested","because":"other"},{"what":"/combustion"}]}""")] // Not listed: for the rules.
    [InlineData("/defects", """[{"foundAt":"2026-09-14T10:25:00+01:00","reexaminedAt":"2026-09-14T09:25:00Z"}]""")] // One moment.
    [InlineData("/premises", "{}")]
    public void What_is_possible_is_no_fault(string place, string json) => Assert.Empty(Bodies.Read(Bodies.With(place, json)).Faults);

    [Theory]
    [InlineData("/combustion/readings/1/coPpm", "12")]
    [InlineData("/combustion/readings/2/coPpm", null)]
    [InlineData("/commissioning/designFlowC", null)]
    [InlineData("/previousVisit/readings/0/coPpm", null)]
    public void A_value_is_found_by_its_place(string place, string? expected) =>
        Assert.Equal(expected, RecordValues.At(Bodies.Read(Bodies.Example).Record!, place)?.ToString());

    [Fact]
    public void A_place_that_no_record_has_holds_no_value() =>
        Assert.Throws<ArgumentException>(() => RecordValues.At(Bodies.Read(Bodies.Example).Record!, "/combustion/coPpm"));
}
