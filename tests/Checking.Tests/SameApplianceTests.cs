using Records;
using Records.Values;

namespace Checking.Tests;

public sealed class SameApplianceTests
{
    private const string Day = "2026-09-14T10:25:00+01:00";

    [Theory]
    [InlineData("QB-1", "Quillback", null, "qb-1 ", "QUILLBACK", null, true)]
    [InlineData("QB\uFF0D1", "Quillback", null, "QB-1", "Quillback", null, true)]
    [InlineData("QB 1", "Quill back", null, "QB1", "Quillback", null, true)]
    [InlineData("QB-1", "Quillback", "P", "QB-2", "Quillback", "P", false)]
    [InlineData("QB-1", "Quillback", "P", "QB-1", "Fernwright", "P", false)]
    [InlineData(null, "Quillback", "P", null, "Quillback", "p", true)]
    [InlineData("QB-1", null, "P", "QB-1", "Quillback", "P", true)]
    [InlineData("QB-1", null, "P", "QB-2", null, "P", false)]
    [InlineData(null, null, null, null, null, null, false)]
    [InlineData("QB-1", null, null, "QB-1", null, null, false)]
    [InlineData(" ", "Quillback", " ", " ", "Quillback", " ", false)]
    public void Two_records_are_of_one_appliance_only_where_they_say_so(
        string? serial, string? maker, string? premises, string? otherSerial, string? otherMaker, string? otherPremises, bool expected) =>
        Assert.Equal(expected, SameAppliance.Of(Record(serial, maker, premises), Record(otherSerial, otherMaker, otherPremises)));

    [Fact]
    public void Without_a_serial_number_the_day_must_be_the_same() =>
        Assert.False(SameAppliance.Of(Record(null, "Quillback", "P"), Record(null, "Quillback", "P", "2026-09-15T10:25:00+01:00")));

    private static ServiceRecord Record(string? serial, string? maker, string? premises, string finishedAt = Day) => new()
    {
        RecordId = "R",
        JobType = JobType.AnnualService,
        Jurisdiction = "GB-ENG",
        FinishedAt = Timestamp.Parse(finishedAt),
        Appliance = new Appliance { Fuel = Fuel.NaturalGas, Maker = maker, SerialNumber = serial },
        Premises = premises is null ? null : new Premises { Reference = premises },
    };
}
