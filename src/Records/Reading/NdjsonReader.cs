using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;

namespace Records.Reading;

/// <summary>One line of a stream of records.</summary>
/// <param name="Number">Its number, counted from 1, blank lines included.</param>
/// <param name="Utf8">Its bytes without the line end; empty when it is too long.</param>
/// <param name="IsTooLong">Whether it was longer than allowed and thrown away.</param>
public sealed record NdjsonLine(long Number, ReadOnlyMemory<byte> Utf8, bool IsTooLong);

/// <summary>Splits a stream into lines, one record each. Lines end with LF or CR LF; the last may end with the stream.</summary>
public static class NdjsonReader
{
    /// <summary>
    /// Yields every line that is not blank. A line of more than <paramref name="maxLineBytes"/> bytes is yielded without its bytes,
    /// and reading goes on behind it; no more than that many bytes (and one buffer) are ever held.
    /// </summary>
    public static async IAsyncEnumerable<NdjsonLine> ReadAsync(
        Stream stream, int maxLineBytes, [EnumeratorCancellation] CancellationToken cancellationToken = default)
    {
        var reader = PipeReader.Create(stream, new StreamPipeReaderOptions(leaveOpen: true));
        var number = 1L;
        var isTooLong = false;
        while (true)
        {
            var read = await reader.ReadAsync(cancellationToken);
            var buffer = read.Buffer;
            while (TakeLine(ref buffer, read.IsCompleted, out var line))
            {
                isTooLong |= line.Length > maxLineBytes;
                if (isTooLong || !IsBlank(line))
                {
                    yield return new NdjsonLine(number, isTooLong ? default : line.ToArray(), isTooLong);
                }

                isTooLong = false;
                number++;
            }

            if (read.IsCompleted)
            {
                if (isTooLong)
                {
                    yield return new NdjsonLine(number, default, IsTooLong: true);
                }

                break;
            }

            // One byte more than a line may have, for the CR that is not counted.
            if (buffer.Length > maxLineBytes + 1L)
            {
                isTooLong = true;
                buffer = buffer.Slice(buffer.End);
            }

            reader.AdvanceTo(buffer.Start, buffer.End);
        }

        await reader.CompleteAsync();
    }

    private static bool TakeLine(ref ReadOnlySequence<byte> buffer, bool isLast, out ReadOnlySequence<byte> line)
    {
        line = buffer;
        if (buffer.PositionOf((byte)'\n') is { } end)
        {
            line = buffer.Slice(0, end);
            buffer = buffer.Slice(buffer.GetPosition(1, end));
        }
        else if (isLast && !buffer.IsEmpty)
        {
            buffer = buffer.Slice(buffer.End);
        }
        else
        {
            return false;
        }

        if (!line.IsEmpty && line.Slice(line.Length - 1).FirstSpan[0] == '\r')
        {
            line = line.Slice(0, line.Length - 1);
        }

        return true;
    }

    private static bool IsBlank(ReadOnlySequence<byte> line)
    {
        foreach (var segment in line)
        {
            if (segment.Span.ContainsAnyExcept(" \t\r"u8))
            {
                return false;
            }
        }

        return true;
    }
}
