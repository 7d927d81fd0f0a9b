using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;

namespace Findings;

/// <summary>A number that the service worked out, with its working.</summary>
public sealed class Figure
{
    private IWorking? _working;

    /// <summary>A figure that is given part by part.</summary>
    [JsonConstructor]
    public Figure()
    {
    }

#pragma warning disable CS8618 // The working has formula, inputs and source.
    /// <summary>A figure of which the parts are known.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="subject">JSON Pointer of what it is a figure of.</param>
    /// <param name="working">How it was worked out.</param>
    [SetsRequiredMembers]
    public Figure(string name, string subject, IWorking working)
    {
        Name = name;
        Subject = subject;
        _working = working;
    }
#pragma warning restore CS8618

    /// <summary>What it is.</summary>
    public required string Name { get; init; }

    /// <summary>JSON Pointer of what it is a figure of, empty for the visit.</summary>
    public required string Subject { get; init; }

    /// <summary>The number, unrounded as far as a decimal holds it.</summary>
    public decimal? Value { get; init; }

    /// <summary>Or the date.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Unit of the number (UCUM).</summary>
    public string? Unit { get => _working?.Unit; init => Given.Unit = value; }

    /// <summary>Standard uncertainty in the same unit, where the instruments' accuracy is stated.</summary>
    [WholeOnly]
    public decimal? Uncertainty { get; init; }

    /// <summary>The formula in words.</summary>
    [WholeOnly]
    public required string Formula { get => _working!.Formula; init => Given.Formula = value; }

    /// <summary>JSON Pointers of the values that went in.</summary>
    [WholeOnly]
    public required IReadOnlyList<string> Inputs { get => _working!.Inputs; init => Given.Inputs = value; }

    /// <summary>Constants that went in, each as "name = value unit".</summary>
    [WholeOnly]
    public IReadOnlyList<string>? Constants { get => _working?.Constants; init => Given.Constants = value; }

    /// <summary>Where the formula stands.</summary>
    [WholeOnly]
    public required string Source { get => _working!.Source; init => Given.Source = value; }

    private GivenWorking Given => (GivenWorking)(_working ??= new GivenWorking());

    /// <summary>A working that was read back, part by part.</summary>
    private sealed class GivenWorking : IWorking
    {
        public string? Unit { get; set; }

        public string Formula { get; set; } = "";

        public IReadOnlyList<string> Inputs { get; set; } = [];

        public IReadOnlyList<string>? Constants { get; set; }

        public string Source { get; set; } = "";
    }
}
