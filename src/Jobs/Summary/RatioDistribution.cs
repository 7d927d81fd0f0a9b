using Records;

namespace Jobs.Summary;

/// <summary>How often which CO/CO2 ratio was read after the work, in classes of one width. A ratio belongs to the class at whose start it lies.</summary>
public sealed class RatioDistribution
{
    private const decimal Width = 0.0005m;

    private const decimal Last = 0.012m;

    private const string RatioName = "coCo2Ratio";

    /// <summary>Width of a class.</summary>
    public required decimal ClassWidth { get; init; }

    /// <summary>Start of the last class, which takes every larger ratio as well.</summary>
    public required decimal LastFrom { get; init; }

    /// <summary>The classes that hold a reading, smallest first.</summary>
    public required IReadOnlyList<RatioClass> Classes { get; init; }

    /// <summary>Adds each reading of <paramref name="record"/> after the work whose ratio could be worked out to <paramref name="classes"/>, by number of the class.</summary>
    internal static void Add(SortedDictionary<int, int> classes, ServiceRecord record, Findings.Evaluation evaluation)
    {
        foreach (var (index, _) in (record.Combustion?.Readings ?? []).Index().Where(reading => reading.Item.Stage == WorkStage.AfterWork))
        {
            var subject = $"/combustion/readings/{index}";
            if (evaluation.Figures.FirstOrDefault(figure => figure.Name == RatioName && figure.Subject == subject)?.Value is { } ratio)
            {
                var number = (int)(Math.Min(ratio, Last) / Width);
                classes[number] = classes.GetValueOrDefault(number) + 1;
            }
        }
    }

    internal static RatioDistribution Of(SortedDictionary<int, int> classes) => new()
    {
        ClassWidth = Width,
        LastFrom = Last,
        Classes = [.. classes.Select(pair => new RatioClass { From = pair.Key * Width, Readings = pair.Value })],
    };
}

/// <summary>Readings whose ratio lies in one class.</summary>
public sealed class RatioClass
{
    /// <summary>Where it begins.</summary>
    public required decimal From { get; init; }

    /// <summary>How many readings.</summary>
    public required int Readings { get; init; }
}
