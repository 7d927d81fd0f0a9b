namespace Calculations.Tests;

public class VectorTests
{
    public static TheoryData<int> Vectors => [.. Enumerable.Range(0, Vector.All.Count)];

    public static TheoryData<string> Names => [.. Computations.ByName.Keys];

    [Theory]
    [MemberData(nameof(Vectors))]
    public void A_computation_meets_the_value_from_outside(int index)
    {
        var vector = Vector.All[index];

        var actual = Computations.ByName[vector.Computation](vector);

        Assert.True(
            Math.Abs(actual - vector.Value) <= vector.Tolerance,
            $"{vector}, found {actual:G12}, allowed {vector.Tolerance}. Source: {vector.Source}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_computation_has_three_check_values_or_belongs_to_one_table_row(string name) =>
        Assert.True(Vector.All.Count(vector => string.Equals(vector.Computation, name, StringComparison.Ordinal)) >= Least(name), name);

    [Fact]
    public void Every_vector_is_used_tells_its_unit_and_source_and_is_strict_enough_to_fail() =>
        Assert.All(Vector.All, vector =>
        {
            Assert.True(Computations.ByName.ContainsKey(vector.Computation), vector.Computation);
            Assert.NotEmpty(vector.Unit);
            Assert.NotEmpty(vector.Source);
            Assert.InRange(vector.Tolerance, double.Epsilon, vector.Value == 0 ? 0.06 : 0.08 * Math.Abs(vector.Value));
        });

    // The five amounts of one published flue gas check one function together.
    private static int Least(string name) => name is "stoichiometry.airSupplied" or "stoichiometry.nitrogen" or "stoichiometry.oxygen"
        or "stoichiometry.water" or "stoichiometry.carbonDioxide" or "stoichiometry.o2Dry" ? 1 : 3;
}
