namespace Jobs.Tests;

/// <summary>How well planted things are found, as the README of Jobs states it.</summary>
internal static class Stated
{
    /// <summary>Fails unless that is what was measured.</summary>
    /// <param name="what">What was planted.</param>
    /// <param name="planted">How many times.</param>
    /// <param name="right">How many of them were found.</param>
    /// <param name="others">How many were found that nobody had planted.</param>
    public static void Holds(string what, int planted, int right, int others)
    {
        var (precision, recall) = ((double)right / (right + others), (double)right / planted);
        var line = FormattableString.Invariant($"| {what} | {planted:N0} | {right:N0} | {others:N0} | {precision:0.000} | {recall:0.000} |");
        Assert.True(File.ReadLines(Path.Combine(AppContext.BaseDirectory, "README.md")).Contains(line), $"The README of Jobs does not say {line}");
    }
}
