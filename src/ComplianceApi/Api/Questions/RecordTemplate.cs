using System.Text;
using System.Text.Json;
using ComplianceApi.Api.Requests;
using ComplianceApi.Guard;
using Microsoft.AspNetCore.Http.HttpResults;
using Visits.Judging;

namespace ComplianceApi.Api.Questions;

/// <summary>The header of a CSV file of records.</summary>
public static class RecordTemplate
{
    /// <summary>Where it is served.</summary>
    internal const string Path = "/v1" + Route;

    private const string Route = "/record-template.csv";

    /// <summary>Maps the route.</summary>
    public static void MapRecordTemplate(this IEndpointRouteBuilder v1) => v1.MapGet(Route, Get).WithName("getRecordTemplate").WithTags("Questions").NeedsAnyKey().Revalidated()
        .Produces<Stream>(200, "text/csv");

    /// <summary>The members that a typical service fills, as the header of a CSV file.</summary>
    /// <remarks>
    /// One row, and nothing else: the path of each member that a complete record of an annual service has. Fill a row for each visit and
    /// post the file to /v1/audits as text/csv; an empty cell means "not recorded", and [] in the column of a list states "none". More
    /// columns may be added, for a third reading combustion.readings.2.coPpm.
    /// </remarks>
    private static FileContentHttpResult Get(ComplianceEngine engine) =>
        TypedResults.Bytes(Encoding.UTF8.GetBytes(Header(engine.Catalogue.ExampleRecord)), "text/csv; charset=utf-8", "record-template.csv");

    private static string Header(byte[] record)
    {
        using var example = JsonDocument.Parse(record);
        return string.Join(',', PathsOf(example.RootElement, "")) + "\r\n";
    }

    private static IEnumerable<string> PathsOf(JsonElement value, string path) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(member => PathsOf(member.Value, Below(path, member.Name))),
        JsonValueKind.Array when value.GetArrayLength() > 0 => value.EnumerateArray().SelectMany((item, index) => PathsOf(item, Below(path, $"{index}"))),
        _ => [path],
    };

    private static string Below(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";
}
