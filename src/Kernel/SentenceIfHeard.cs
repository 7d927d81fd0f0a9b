using System.ComponentModel;
using System.Runtime.CompilerServices;

namespace Kernel;

/// <summary>
/// The sentence of an answer that reports nothing, put together only where the look keeps it. Write it as <c>$"..."</c>. Its values are
/// worked out in any case, so that a rule that fails on one of them, or reads a limit there, does so in every look.
/// </summary>
[InterpolatedStringHandler]
[EditorBrowsable(EditorBrowsableState.Never)]
public ref struct SentenceIfHeard
{
    private readonly bool _isHeard;
    private DefaultInterpolatedStringHandler _words;

    /// <summary>Begins a sentence for <paramref name="look"/>.</summary>
    public SentenceIfHeard(int literalLength, int formattedCount, Look look)
    {
        ArgumentNullException.ThrowIfNull(look);
        _isHeard = !look.IsQuiet;
        _words = _isHeard ? WireText.Begin(literalLength, formattedCount) : default;
    }

    /// <summary>Adds words.</summary>
    public void AppendLiteral(string words)
    {
        if (_isHeard)
            _words.AppendLiteral(words);
    }

    /// <summary>Adds a value as a sentence says it.</summary>
    public void AppendFormatted<T>(T value, string? format = null)
    {
        if (_isHeard)
            _words.AppendFormatted(value, format);
    }

    /// <summary>The sentence.</summary>
    internal FormattableString Said => $"{_words.ToStringAndClear()}";
}
