using System.Text;

namespace ComplianceApi.Commands.Terminal;

/// <summary>Leaves out the blanks with which tables fill their lines.</summary>
internal sealed class TrimmingWriter(TextWriter inner) : TextWriter
{
    private int _blanks;

    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value)
    {
        if (value == ' ')
        {
            _blanks++;
            return;
        }

        if (value is not ('\n' or '\r'))
            inner.Write(new string(' ', _blanks));
        _blanks = 0;
        inner.Write(value);
    }

    public override void Flush() => inner.Flush();
}
