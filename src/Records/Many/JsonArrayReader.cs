using System.Globalization;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using Records.Faults;

namespace Records.Many;

/// <summary>Splits one JSON array into its items. It only looks for their ends; whether an item is right JSON, its reader finds out.</summary>
internal static class JsonArrayReader
{
    /// <summary>Yields every item; one of more than <paramref name="maxItemBytes"/> bytes without its bytes.</summary>
    /// <exception cref="ManyRecordsException">It is no array, has no end, or is followed by something.</exception>
    public static async IAsyncEnumerable<RecordLine> ReadAsync(Stream stream, int maxItemBytes, [EnumeratorCancellation] CancellationToken cancel)
    {
        var reader = PipeReader.Create(stream, new StreamPipeReaderOptions(leaveOpen: true));
        var splitter = new Splitter(maxItemBytes);
        var items = new List<RecordLine>();
        for (var isLast = false; !isLast;)
        {
            var read = await reader.ReadAsync(cancel);
            foreach (var segment in read.Buffer)
                splitter.Take(segment.Span, items);

            reader.AdvanceTo(read.Buffer.End);
            isLast = read.IsCompleted;
            foreach (var item in items)
                yield return item;
            items.Clear();
        }

        await reader.CompleteAsync();
        splitter.DemandEnd();
    }

    private sealed class Splitter(int maxItemBytes)
    {
        private const string NoArray = "The body is no JSON array of records.";

        private readonly List<byte> _item = [];
        private Place _place;
        private long _number = 1;
        private int _depth;
        private bool _inText;
        private bool _isEscaped;
        private bool _isTooLong;

        private enum Place
        {
            Before,
            Inside,
            Behind,
        }

        public void Take(ReadOnlySpan<byte> bytes, List<RecordLine> items)
        {
            foreach (var next in bytes)
            {
                if (_place == Place.Inside)
                    TakeInside(next, items);
                else if (_place == Place.Before && next == '[')
                    _place = Place.Inside;
                else if (!IsBlank(next) && !(_place == Place.Before && next is 0xEF or 0xBB or 0xBF))
                    throw Refused(_place == Place.Before ? NoArray : "Something follows the JSON array.");
            }
        }

        public void DemandEnd()
        {
            if (_place != Place.Behind)
                throw Refused(_place == Place.Before ? NoArray : string.Create(CultureInfo.InvariantCulture, $"The JSON array has no end: it stops within item {_number}."));
        }

        private void TakeInside(byte next, List<RecordLine> items)
        {
            if (_depth == 0 && !_inText && next is (byte)',' or (byte)']')
            {
                Finish(isLast: next == ']', items);
                return;
            }

            if (_inText)
            {
                _inText = _isEscaped || next != '"';
                _isEscaped = !_isEscaped && next == '\\';
            }
            else if (next == '"')
            {
                _inText = true;
            }
            else if (next is (byte)'{' or (byte)'[')
            {
                _depth++;
            }
            else if (next is (byte)'}' or (byte)']')
            {
                _depth--;
            }

            _isTooLong |= _item.Count == maxItemBytes;
            if (!_isTooLong && (_item.Count > 0 || !IsBlank(next)))
                _item.Add(next);
        }

        private void Finish(bool isLast, List<RecordLine> items)
        {
            // "[]" holds nothing; an empty item anywhere else is one that is not JSON.
            if (_item.Count > 0 || _isTooLong || !isLast || _number > 1)
                items.Add(_isTooLong ? RecordLine.TooLong(_number) : new RecordLine(_number, _item.ToArray()));
            _number++;
            _item.Clear();
            _isTooLong = false;
            _place = isLast ? Place.Behind : Place.Inside;
        }

        private static bool IsBlank(byte next) => next is (byte)' ' or (byte)'\n' or (byte)'\r' or (byte)'\t';

        private static ManyRecordsException Refused(string detail) => new(FaultCodes.NotJson, detail);
    }
}
