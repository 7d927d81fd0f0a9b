namespace Calculations.Tests;

public class VectorTests
{
    public static TheoryData<int> Vectors => [.. Enumerable.Range(0, Vector.All.Count)];

    [Theory]
    [MemberData(nameof(Vectors))]
    public void A_computation_meets_its_check_value(int index)
    {
        var vector = Vector.All[index];

        var actual = Computations.ByName[vector.Computation](vector);

        Assert.True(
            Math.Abs(actual - vector.Value) <= vector.Tolerance,
            $"{vector}, found {actual:G12}, allowed {vector.Tolerance}. Source: {vector.Source}");
    }

    [Theory]
    [MemberData(nameof(Vectors))]
    public void A_library_that_answers_the_same_agrees(int index)
    {
        var vector = Vector.All[index];
        if (!Oracles.ByName.TryGetValue(vector.Computation, out var oracle))
            return;

        var expected = oracle.Value(vector);
        var actual = Computations.ByName[vector.Computation](vector);

        Assert.True(
            Math.Abs(actual - expected) <= 1e-13 + oracle.Tolerance * Math.Abs(expected),
            $"{vector}, found {actual:G12}, {oracle.Call} gives {expected:G12}");
    }

    [Fact]
    public void Every_vector_is_used_tells_its_unit_and_source_and_is_strict_enough_to_fail() =>
        Assert.All(Vector.All, vector =>
        {
            Assert.True(Computations.ByName.ContainsKey(vector.Computation), vector.Computation);
            Assert.NotEmpty(vector.Unit);
            Assert.NotEmpty(vector.Source);
            Assert.InRange(vector.Tolerance, double.Epsilon, vector.Value == 0 ? 0.06 : 0.08 * Math.Abs(vector.Value));
        });

    [Theory]
    [InlineData(Standing.Memory, "from memory")]
    [InlineData(Standing.Recomputed, "recomput")]
    public void A_source_says_in_words_what_does_not_come_from_outside(Standing standing, string words) =>
        Assert.All(
            Vector.All.Where(vector => vector.Standing != Standing.Practice),
            vector => Assert.True(
                vector.Standing == standing || !vector.FromOutside || !vector.Source.Contains(words, StringComparison.Ordinal), vector.Source));
}
