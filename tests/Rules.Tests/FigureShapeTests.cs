using System.Globalization;
using Records.Members;
using Records.Reading;
using Visits.Computations;
using static Rules.Tests.FigureRecords;

namespace Rules.Tests;

/// <summary>What holds of every figure of every record.</summary>
public sealed class FigureShapeTests
{
    [Fact]
    public void Every_input_is_a_value_that_the_record_carries_and_every_unit_is_published()
    {
        foreach (var record in RuleSet.Cases.Select(pair => RuleSet.RecordOf(pair.Case)))
        {
            foreach (var figure in FiguresOf(record))
            {
                Assert.True((figure.Value is null) == (figure.Unit is null) && (figure.Value is null) != (figure.Date is null), figure.Name);
                Assert.Contains(figure.Unit ?? "1", Units.All);
                Assert.All(figure.Inputs, pointer => Assert.True(RecordValues.At(record, pointer) is not null, $"{figure.Name}: {pointer}"));
                Assert.True(figure.Subject.Length == 0 || RecordMembers.Find(figure.Subject) is not null, $"{figure.Name}: {figure.Subject}");
            }
        }
    }

    [Fact]
    public void Units_of_record_and_limits_are_on_the_published_list()
    {
        var known = Units.All.Append("{reading}").ToList();
        Assert.All(RecordMembers.All.Select(member => member.Unit).OfType<string>(), unit => Assert.Contains(unit, known));
        Assert.All(RuleSet.Catalogue.Limits.Definitions, limit => Assert.Contains(limit.Unit, known));
    }

    [Fact]
    public void No_subject_has_two_figures_of_one_name() => Assert.All(
        RuleSet.Cases.Select(pair => FiguresOf(RuleSet.RecordOf(pair.Case))),
        figures => Assert.Equal(figures.Count, figures.Select(figure => (figure.Name, figure.Subject)).Distinct().Count()));

    [Fact]
    public void No_possible_number_breaks_the_figures()
    {
        var numbers = RecordMembers.All.Where(member => member.Unit is not null).ToList();
        foreach (var member in numbers)
        {
            var pointer = member.Pattern.Replace("*", "0", StringComparison.Ordinal);
            if (RecordValues.At(Example(), pointer) is null)
                continue;

            foreach (var value in new[] { member.Minimum!.Value, member.Maximum!.Value, Math.Max(member.Minimum.Value, 0.0000000000000000000000001m), 20.8999999999999999999999999m })
            {
                if (value > member.Maximum || value < member.Minimum)
                    continue;
                var changed = JsonOf((pointer, value.ToString(CultureInfo.InvariantCulture)), ("/instruments/0/accuracies", AnalyserAccuracies));
                if (RecordReader.Read(changed).Record is { } record)
                    Assert.NotEmpty(FiguresOf(record));
            }
        }
    }
}
