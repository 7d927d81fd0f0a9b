using System.Text;
using CsCheck;
using Records.Reading;

namespace Records.Tests;

public class NdjsonReaderTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("\n \r\n\t\n", "")]
    [InlineData("{}", "1:{}")]
    [InlineData("a\nb\n", "1:a 2:b")]
    [InlineData("a\r\n\r\nb\r\n", "1:a 3:b")]
    [InlineData("a\rb", "1:a\rb")]
    [InlineData("12345678\n123456789\nab", "1:12345678 2:! 3:ab")]
    [InlineData("12345678\r\nab", "1:12345678 2:ab")]
    [InlineData("ab\n123456789", "1:ab 2:!")]
    [InlineData("123456789012345678901234567890", "1:!")]
    [InlineData("123456789012345678901234567890\nab", "1:! 2:ab")]
    public async Task Lines_are_numbered_and_long_ones_are_dropped(string text, string expected)
    {
        foreach (var chunk in (int[])[1, 3, 4096])
        {
            Assert.Equal(expected, await Lines(Encoding.UTF8.GetBytes(text), chunk));
        }
    }

    [Fact]
    public Task Lines_do_not_depend_on_how_the_stream_arrives() =>
        Gen.Select(Gen.OneOf((byte)'a', (byte)'\n', (byte)'\r', (byte)' ').Array[0, 60], Gen.Int[1, 20])
            .SampleAsync(async (bytes, chunk) => Assert.Equal(await Lines(bytes, 4096), await Lines(bytes, chunk)));

    private static async Task<string> Lines(byte[] bytes, int chunk)
    {
        using var stream = new Trickle(bytes, chunk);
        var lines = new List<string>();
        await foreach (var line in NdjsonReader.ReadAsync(stream, maxLineBytes: 8))
        {
            lines.Add($"{line.Number}:{(line.IsTooLong ? "!" : Encoding.UTF8.GetString(line.Utf8.Span))}");
        }

        return string.Join(' ', lines);
    }

    /// <summary>A stream that gives only a few bytes at a time.</summary>
    private sealed class Trickle(byte[] bytes, int chunk) : MemoryStream(bytes)
    {
        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            base.ReadAsync(buffer[..Math.Min(chunk, buffer.Length)], cancellationToken);
    }
}
