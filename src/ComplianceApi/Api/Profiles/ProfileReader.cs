using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;
using ComplianceApi.Api.Requests;
using ComplianceApi.Problems;
using Records;
using Records.Faults;
using Records.Reading;

namespace ComplianceApi.Api.Profiles;

/// <summary>
/// Reads makers' limits posted on their own exactly as those of a record are read: they are put into the smallest record there is, and
/// what the record's reader says of them is said of the body.
/// </summary>
public static class ProfileReader
{
    /// <summary>In the record that they are put into they stand one level down.</summary>
    private const int MaxDepth = RecordReader.MaxDepth - 1;

    private const string Section = "#/makerLimits";
    private const string Decision = "#/decisionReference";

    private const string Opening = """{"recordId":"profile","jobType":"annualService","jurisdiction":"none","finishedAt":"2000-01-01T00:00:00Z","appliance":{"fuel":"naturalGas"},"makerLimits":""";

    /// <summary>The limits, or every fault of the body.</summary>
    public static bool TryRead(ReadOnlyMemory<byte> utf8, [NotNullWhen(true)] out MakerLimits? limits, [NotNullWhen(false)] out ProblemResult? problem)
    {
        limits = null;

        // What is no JSON on its own must not be put into other JSON.
        utf8 = BodyText.WithoutMark(utf8);
        if (JsonText.Unreadable(utf8.Span, MaxDepth) is { } unreadable)
        {
            problem = ProblemResult.Of(FaultKind.Unreadable, [unreadable]);
            return false;
        }

        var read = RecordReader.Read(Encoding.UTF8.GetBytes(Opening).Concat(utf8.ToArray()).Append((byte)'}').ToArray());
        // The last of very many faults counts the rest, and is of the whole body as it stands.
        List<Fault> faults = [.. read.Faults.Select(fault => fault.Pointer == "#" ? fault : fault with { Pointer = "#" + fault.Pointer[Section.Length..] })];
        limits = read.Record?.MakerLimits;
        if (read.IsRecord && limits is null)
            faults.Add(new Fault("#", FaultCodes.WrongType, "Expected an object, found null."));
        if (HasDecision(utf8))
        {
            faults.RemoveAll(fault => fault.Pointer == Decision);
            faults.Add(new Fault(Decision, FaultCodes.UnknownMember, "A maker's decision is about one reading; give it in that record's makerLimits."));
        }

        problem = faults.Count > 0 ? ProblemResult.Of(read.Kind ?? FaultKind.Invalid, faults) : null;
        return problem is null;
    }

    private static bool HasDecision(ReadOnlyMemory<byte> json)
    {
        using var document = JsonDocument.Parse(json);
        return document.RootElement.ValueKind == JsonValueKind.Object
            && document.RootElement.TryGetProperty(Decision[2..], out var value) && value.ValueKind != JsonValueKind.Null;
    }
}
