using System.Reflection;

namespace Architecture.Tests;

/// <summary>No namespace knows, by whatever way round, one that knows it: each can be read, and changed, without those above it.</summary>
public sealed class CircleTests
{
    public static TheoryData<string> Projects => [.. ArrowTests.Projects];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_namespaces_know_each_other_in_a_circle(string project)
    {
        var arrows = TypeArrows.Of(Assembly.Load(project).Location)
            .Where(arrow => IsOf(project, arrow.From.Namespace) && IsOf(project, arrow.To.Namespace) && arrow.From.Namespace != arrow.To.Namespace)
            .ToLookup(arrow => arrow.From.Namespace, StringComparer.Ordinal);

        if (Circle(arrows.ToDictionary(from => from.Key, from => from.Select(arrow => arrow.To.Namespace).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal)) is { } circle)
        {
            var why = circle.Zip(circle.Skip(1), (from, to) => $"{from} -> {to}: {string.Join(", ", arrows[from].Where(arrow => arrow.To.Namespace == to).Select(arrow => $"{arrow.From.Name} knows {arrow.To.Name}"))}");
            Assert.Fail($"{string.Join(" -> ", circle)}\n{string.Join('\n', why)}");
        }
    }

    /// <summary>A circle that is there is found, as a way that ends where it begins.</summary>
    [Fact]
    public void A_circle_is_found() => Assert.Equal(
        ["B", "C", "D", "B"],
        Circle(new Dictionary<string, HashSet<string>>(StringComparer.Ordinal) { ["A"] = ["B"], ["B"] = ["E", "C"], ["C"] = ["D"], ["D"] = ["B"] }));

    [Fact]
    public void Where_no_circle_is_none_is_found() => Assert.Null(
        Circle(new Dictionary<string, HashSet<string>>(StringComparer.Ordinal) { ["A"] = ["B", "C"], ["B"] = ["C", "D"], ["C"] = ["D"] }));

    private static bool IsOf(string project, string space) => space == project || space.StartsWith(project + ".", StringComparison.Ordinal);

    private static List<string>? Circle(Dictionary<string, HashSet<string>> arrows)
    {
        var (way, done) = (new List<string>(), new HashSet<string>(StringComparer.Ordinal));
        return arrows.Keys.Order(StringComparer.Ordinal).Select(Search).FirstOrDefault(found => found is not null);

        List<string>? Search(string space)
        {
            if (way.IndexOf(space) is >= 0 and var begin)
                return [.. way[begin..], space];
            if (!done.Add(space))
                return null;

            way.Add(space);
            var found = (arrows.GetValueOrDefault(space) ?? []).Order(StringComparer.Ordinal).Select(Search).FirstOrDefault(circle => circle is not null);
            way.RemoveAt(way.Count - 1);
            return found;
        }
    }
}
