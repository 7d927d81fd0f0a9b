using System.Text;
using Records.Faults;
using Records.Reading;

namespace Records.Tests;

public class HostileRecordTests
{
    [Theory]
    // Texts
    [InlineData("/recordId", "\"\"", "textLength")]
    [InlineData("/recordId", "\" \\u00a0\"", "textLength")]
    [InlineData("/recordId", "\"a\\u0000b\"", "textCharacters")]
    [InlineData("/recordId", "\"a\\tb\"", "textCharacters")]
    [InlineData("/recordId", "\"a\\u0085b\"", "textCharacters")]
    [InlineData("/recordId", "\"a\\ud800b\"", "textCharacters")]
    [InlineData("/recordId", "\"\\udc00\\ud800\"", "textCharacters")]
    [InlineData("/recordId", "7", "wrongType")]
    [InlineData("/recordId", "[\"7\"]", "wrongType")]
    [InlineData("/recordId", "null", "requiredMember")]
    // Enumerations
    [InlineData("/jobType", "\"AnnualService\"", "unknownValue")]
    [InlineData("/jobType", "\"annualService \"", "unknownValue")]
    [InlineData("/jobType", "\"annualService, repair\"", "unknownValue")]
    [InlineData("/jobType", "\"0\"", "unknownValue")]
    [InlineData("/jobType", "0", "wrongType")]
    [InlineData("/jobType", "\"\"", "unknownValue")]
    [InlineData("/jobType", "null", "requiredMember")]
    [InlineData("/jurisdiction", "\"england\"", "unknownValue")]
    [InlineData("/jurisdiction", "\"gb-eng\"", "unknownValue")]
    [InlineData("/jurisdiction", "\"GB-NIR\"", "unknownValue")]
    [InlineData("/appliance/fuel", "\"NATURALGAS\"", "unknownValue")]
    [InlineData("/appliance/fuel", "\"naturalGas, propane\"", "unknownValue")]
    [InlineData("/appliance/fuel", "null", "requiredMember")]
    [InlineData("/makerLimits/sealsToRenew/0", "null", "nullItem")]
    [InlineData("/makerLimits/sealsToRenew/1", "\"gasvalveinlet\"", "unknownValue")]
    // Date-times and dates
    [InlineData("/finishedAt", "\"2026-09-14T10:25:00\"", "notADateTime")]
    [InlineData("/finishedAt", "\"2026-09-14\"", "notADateTime")]
    [InlineData("/finishedAt", "1789377900", "wrongType")]
    [InlineData("/finishedAt", "\"0001-01-01T00:00:00+14:00\"", "notADateTime")]
    [InlineData("/finishedAt", "\"1066-09-14T10:25:00Z\"", "outOfRange")]
    [InlineData("/finishedAt", "\"2201-01-01T00:00:00Z\"", "outOfRange")]
    [InlineData("/appliance/installedOn", "\"2026-02-30\"", "notADate")]
    [InlineData("/appliance/installedOn", "\"2021-6-2\"", "notADate")]
    [InlineData("/appliance/installedOn", "\"2021-06-02T00:00:00Z\"", "notADate")]
    [InlineData("/appliance/installedOn", "\"02/06/2021\"", "notADate")]
    [InlineData("/appliance/installedOn", "\"\\u0662\\u0660\\u0662\\u0661-06-02\"", "notADate")]
    [InlineData("/appliance/installedOn", "\"1899-12-31\"", "outOfRange")]
    [InlineData("/paperwork/nextDueOn", "\"2201-01-01\"", "outOfRange")]
    // Numbers
    [InlineData("/combustion/readings/0/coPpm", "\"96\"", "wrongType")]
    [InlineData("/combustion/readings/0/coPpm", "true", "wrongType")]
    [InlineData("/combustion/readings/0/coPpm", "-1", "outOfRange")]
    [InlineData("/combustion/readings/0/coPpm", "1000001", "outOfRange")]
    [InlineData("/combustion/readings/0/co2Percent", "100.0000001", "outOfRange")]
    [InlineData("/combustion/readings/0/co2Percent", "1e-40", "notExact")]
    [InlineData("/combustion/readings/0/co2Percent", "1e400", "notExact")]
    [InlineData("/combustion/readings/0/co2Percent", "9.20000000000000000000000000001", "notExact")]
    [InlineData("/gasSupply/rate/seconds", "0", "outOfRange")]
    [InlineData("/electrical/fuseAmps", "false", "wrongType")]
    // Yes or no
    [InlineData("/electrical/polarityOk", "\"true\"", "wrongType")]
    [InlineData("/electrical/polarityOk", "1", "wrongType")]
    // Lists and sections
    [InlineData("/combustion/readings/0", "null", "nullItem")]
    [InlineData("/combustion/readings", "{}", "wrongType")]
    [InlineData("/combustion", "[]", "wrongType")]
    [InlineData("/combustion", "\"none\"", "wrongType")]
    [InlineData("/appliance", "7", "wrongType")]
    [InlineData("/disturbedJoints/2", "\"fan\"", "wrongType")]
    [InlineData("/makerLimits/sealsToRenew", "\"fan\"", "wrongType")]
    // Unknown members
    [InlineData("/recordID", "\"x\"", "unknownMember")]
    [InlineData("/combustion/readings/1/coPPM", "12", "unknownMember")]
    [InlineData("/combustion/coPpm", "null", "unknownMember")]
    [InlineData("/$type", "\"ServiceRecord\"", "unknownMember", "#/%24type")]
    // Contradictions
    [InlineData("/finishedAt", "\"2026-09-14T09:59:59+02:00\"", "outOfOrder")]
    [InlineData("/previousVisit/finishedAt", "\"2026-09-14T11:25:00+02:00\"", "outOfOrder")]
    [InlineData("/appliance/installedOn", "\"2026-09-16\"", "outOfOrder")]
    [InlineData("/instruments/1/calibrationDueOn", "\"2026-03-01\"", "outOfOrder")]
    [InlineData("/makerLimits/co2PercentMin", "9.81", "boundsCrossed")]
    [InlineData("/gasSupply/rate/volumeFt3", "3", "oneOnly")]
    [InlineData("/defects", "[{\"reportable\":{\"knownOn\":\"2026-09-14\",\"reportedOn\":\"2026-09-13\"}}]", "outOfOrder", "#/defects/0/reportable/reportedOn")]
    [InlineData("/defects", "[{\"subject\":\"/flues\"}]", "unknownReference", "#/defects/0/subject")]
    [InlineData("/instruments/3", "{\"kind\":\"flueGasAnalyser\",\"serialNumber\":\"FA-1\"}", "duplicateItem")]
    public void One_fault_is_named_at_its_place(string place, string json, string code, string? pointer = null)
    {
        var result = Bodies.Read(Bodies.With(place, json));
        Assert.Null(result.Record);
        Assert.Equal(FaultKind.Invalid, result.Kind);
        var fault = result.Faults.First(f => f.Code == code);
        Assert.Equal(pointer ?? "#" + place, fault.Pointer);
        Assert.All(result.Faults, f => Assert.DoesNotMatch("Records\\.|System\\.|Nullable|Decimal|DateOnly|Boolean|String", f.Detail));
    }

    [Theory]
    [InlineData("", "emptyBody")]
    [InlineData("\uFEFF", "emptyBody")]
    [InlineData(" \n", "notJson")]
    [InlineData("{", "notJson")]
    [InlineData("{}{}", "notJson")]
    [InlineData("{} x", "notJson")]
    [InlineData("{\"recordId\":\"x\",}", "notJson")]
    [InlineData("{/* why */}", "notJson")]
    [InlineData("{'recordId':'x'}", "notJson")]
    [InlineData("{\"recordId\":NaN}", "notJson")]
    [InlineData("{\"recordId\":01}", "notJson")]
    [InlineData("{\"recordId\":\"a\nb\"}", "notJson")]
    [InlineData("[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]", "tooDeep")]
    public void What_is_no_JSON_cannot_be_read(string body, string code)
    {
        var result = Bodies.Read(body);
        Assert.Equal(FaultKind.Unreadable, result.Kind);
        Assert.Equal(("#", code), (Assert.Single(result.Faults).Pointer, result.Faults[0].Code));
    }

    [Theory]
    [InlineData(new byte[] { 0x22, 0xC3, 0x28, 0x22 })]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x7B, 0x00, 0x7D, 0x00 })]
    [InlineData(new byte[] { 0x22, 0xED, 0xA0, 0x80, 0x22 })]
    public void What_is_not_UTF_8_cannot_be_read(byte[] body) => Assert.Equal("notUtf8", Assert.Single(RecordReader.Read(body).Faults).Code);

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("\"{}\"")]
    [InlineData("[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]")]
    public void A_record_is_an_object(string body)
    {
        var fault = Assert.Single(Bodies.Read(body).Faults);
        Assert.Equal(("#", "wrongType"), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData("recordId")]
    [InlineData("record\\u0049d")]
    public void A_member_given_twice_has_two_meanings_and_cannot_be_read(string again)
    {
        var result = Bodies.Read(Bodies.Example.Insert(1, $"\"{again}\":\"x\","));
        Assert.Equal(FaultKind.Unreadable, result.Kind);
        Assert.Equal(("#/recordId", "duplicateMember"), (Assert.Single(result.Faults).Pointer, result.Faults[0].Code));
    }

    [Theory]
    [InlineData("/combustion/readings/0/cOPpm", "'coPpm'")]
    [InlineData("/combustion/readings/0/co2", "'co2Percent'")]
    [InlineData("/gasSupply/aplianceInletMbar", "'applianceInletMbar'")]
    [InlineData("/engineer/licenseNumber", "'licenceNumber'")]
    [InlineData("/zzz", "Did you mean", false)]
    public void The_nearest_name_is_offered_for_an_unknown_one(string place, string offered, bool isOffered = true)
    {
        var detail = Assert.Single(Bodies.Read(Bodies.With(place, "1")).Faults).Detail;
        Assert.Equal(isOffered, detail.Contains($"{offered}", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_with_half_a_surrogate_pair_is_an_unknown_member()
    {
        var fault = Assert.Single(Bodies.Read(Bodies.Example.Insert(1, "\"a\\ud800/~\":1,")).Faults);
        Assert.Equal(("unknownMember", "#/a%5Cud800~1~0"), (fault.Code, fault.Pointer));
    }

    [Fact]
    public void A_list_of_millions_of_faults_costs_no_more_than_the_faults_that_are_read()
    {
        var body = Bodies.With("/partsFitted", "[" + string.Join(',', Enumerable.Repeat("7", 1_000_000)) + "]");
        Assert.Equal(201, Bodies.Read(body).Faults.Count);
    }

    [Fact]
    public void Long_names_and_long_lists_of_faults_are_cut_and_counted()
    {
        var body = "{" + string.Join(',', Enumerable.Range(0, 600).Select(i => $"\"{new string('n', 5000)}{i}\":1")) + "}";
        var faults = Bodies.Read(body).Faults;
        Assert.Equal((Fault.MostListed + 1, "moreFaults", "Not listed: 106 more."), (faults.Count, faults[^1].Code, faults[^1].Detail));
        Assert.All(faults, f => Assert.True(Encoding.UTF8.GetByteCount(f.Pointer + f.Detail) < 400));
    }
}
