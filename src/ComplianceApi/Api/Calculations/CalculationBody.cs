using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;
using System.Text.Json;
using Calculations;
using ComplianceApi.Api.Requests;
using ComplianceApi.Problems;
using Records.Faults;
using Records.Reading;
using Records.Values;
using Visits.Computations;
using Wire;

namespace ComplianceApi.Api.Calculations;

/// <summary>Reads the inputs of a computation from a body, as strictly as a record is read: exact numbers, exact names, nothing unknown.</summary>
internal static class CalculationBody
{
    /// <summary>The inputs by name, or every fault of the body.</summary>
    public static bool TryRead(ReadOnlyMemory<byte> utf8, Computation computation, [NotNullWhen(true)] out IReadOnlyDictionary<string, object>? given, [NotNullWhen(false)] out ProblemResult? problem)
    {
        given = null;

        using var document = BodyText.Parse(utf8, out var unreadable);
        if (document is null)
        {
            problem = ProblemResult.Of(FaultKind.Unreadable, [unreadable!]);
            return false;
        }

        List<Fault> faults = [.. BodyText.Duplicates(document.RootElement)];
        var kind = faults.Count > 0 ? FaultKind.Unreadable : FaultKind.Invalid;
        given = Read(document.RootElement, computation, faults);
        problem = faults.Count > 0 ? ProblemResult.Of(kind, Fault.Listed(faults)) : null;
        return problem is null;
    }

    private static Dictionary<string, object> Read(JsonElement body, Computation computation, List<Fault> faults)
    {
        var given = new Dictionary<string, object>(StringComparer.Ordinal);
        var unknown = $"'{computation.Name}' takes only {string.Join(", ", computation.Inputs.Select(known => known.Name))}.";
        if (body.ValueKind != JsonValueKind.Object)
            faults.Add(new Fault("#", FaultCodes.WrongType, "Expected an object with the inputs as its members."));
        else
        {
            foreach (var member in body.EnumerateObject().Where(member => member.Value.ValueKind != JsonValueKind.Null))
                ReadMember(member);
        }

        // What could not be read has its own fault and is not called missing as well.
        var named = faults.Select(fault => fault.Pointer).ToHashSet(StringComparer.Ordinal);
        if (!named.Contains("#"))
            faults.AddRange(computation.FaultsOf(computation.Complete(given)).Where(fault => !named.Contains(fault.Pointer)));
        return given;

        void ReadMember(JsonProperty member)
        {
            var name = JsonNames.Of(member);
            var input = computation.Inputs.FirstOrDefault(input => input.Name == name);
            if (input is null)
                faults.Add(new Fault(BodyText.Below("#", name), FaultCodes.UnknownMember, unknown));
            else if (ValueOf(member.Value, input, out var fault) is { } value)
                given[input.Name] = value;
            else
                faults.Add(fault!);
        }
    }

    private static object? ValueOf(JsonElement json, ComputationInput input, out Fault? fault)
    {
        fault = null;
        var text = json.ValueKind == JsonValueKind.String ? JsonText.Of(json) : null;
        switch (input.Kind)
        {
            case InputKind.Number when json.ValueKind == JsonValueKind.Number:
                if (ExactDecimal.TryParse(JsonMarshal.GetRawUtf8Value(json), out var number))
                    return number;
                return Fail(FaultCodes.NotExact, "The number cannot be held exactly: at most 28 digits, and at most 28 of them after the point.", out fault);
            case InputKind.Fuel when text is not null:
                foreach (var fuel in Enum.GetValues<GasFamily>().Where(fuel => WireNames.Of(fuel) == text))
                    return fuel;
                return Fail(FaultCodes.UnknownValue, $"Expected one of {string.Join(", ", WireNames.OfValues(typeof(GasFamily)))}.", out fault);
            case InputKind.Day when text is not null:
                if (CalendarDay.TryParse(text, out var day))
                    return day;
                return Fail(FaultCodes.NotADate, $"Expected {CalendarDay.Expected}.", out fault);
            default:
                return Fail(FaultCodes.WrongType, input.Kind == InputKind.Number ? $"Expected a number, unit {input.Unit}." : "Expected a text.", out fault);
        }

        object? Fail(string code, string detail, out Fault? made)
        {
            made = new Fault($"#/{input.Name}", code, detail);
            return null;
        }
    }
}
