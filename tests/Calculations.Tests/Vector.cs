using System.Text.Json;
using System.Text.Json.Serialization;

namespace Calculations.Tests;

/// <summary>One check value from outside: what to compute, what to expect, how near, and who says so.</summary>
public sealed record Vector(
    string Computation, Dictionary<string, JsonElement> Inputs, double Value, string Unit, double Tolerance, Standing Standing, string Source)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    public static IReadOnlyList<Vector> All { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "vectors"), "*.json").Order(StringComparer.Ordinal)
            .SelectMany(file => JsonSerializer.Deserialize<Vector[]>(File.ReadAllText(file), Options)!)];

    /// <summary>Does it come from elsewhere than this project and its authors' memory?</summary>
    public bool FromOutside => Standing is Standing.Published or Standing.Library or Standing.Composed;

    public double Number(string name) => Inputs[name].GetDouble();

    public double Number(string name, double otherwise) => Inputs.ContainsKey(name) ? Number(name) : otherwise;

    public decimal Exact(string name) => Inputs[name].GetDecimal();

    public int Whole(string name) => Inputs[name].GetInt32();

    public double[] Numbers(string name) => Inputs[name].Deserialize<double[]>()!;

    public T Choice<T>(string name)
        where T : struct, Enum => Enum.Parse<T>(Inputs[name].GetString()!, ignoreCase: true);

    public FuelGas Gas() => Inputs["gas"] is { ValueKind: JsonValueKind.Object } mixture
        ? new FuelGas(mixture.EnumerateObject().Select(part =>
            KeyValuePair.Create(Enum.Parse<GasComponent>(part.Name, ignoreCase: true), part.Value.GetDouble())))
        : Inputs["gas"].GetString() switch
        {
            "G20" => FuelGas.G20,
            "G25" => FuelGas.G25,
            "G30" => FuelGas.G30,
            "G31" => FuelGas.G31,
            var other => throw new InvalidOperationException($"Unknown gas {other}."),
        };

    public CombustionAir Air() =>
        CombustionAir.Of(Number("o2InAirPercent"), Number("waterInAirPercent", 0), Number("co2InAirPercent", 0));

    public FlueProducts Products() => Stoichiometry.Burn(Gas(), Air(), Number("excessAirRatio"));

    public override string ToString() =>
        $"{Computation}({string.Join(", ", Inputs.Select(input => $"{input.Key} {input.Value}"))}) = {Value} {Unit}";
}
