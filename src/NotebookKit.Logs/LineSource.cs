using NotebookKit.Numerics;

namespace NotebookKit.Logs;

/// <summary>Lines of a text one after another, in one buffer; a line that no log has is refused before it is held.</summary>
internal sealed class LineSource(TextReader reader, string file)
{
    private const int LongestLine = 1_000_000;

    private readonly WorkRun _run = WorkRun.Current;
    private char[] _buffer = new char[1 << 16];
    private int _from, _to;
    private bool _ended, _skipsLineFeed;

    /// <summary>Number of the line read last; the first is 1.</summary>
    public int Number { get; private set; }

    /// <summary>The next line without its end; it is gone when the one after it is read.</summary>
    public bool Next(out ReadOnlySpan<char> line)
    {
        if ((Number & 0xFFF) == 0) _run.ThrowIfStopped();
        var looked = 0;
        while (true)
        {
            if (_skipsLineFeed && _from < _to)
            {
                if (_buffer[_from] == '\n') _from++;
                _skipsLineFeed = false;
            }

            var rest = _buffer.AsSpan(_from, _to - _from);
            var end = rest[looked..].IndexOfAny('\n', '\r');
            if (end >= 0)
            {
                line = rest[..(looked + end)];
                _skipsLineFeed = rest[looked + end] == '\r';
                _from += looked + end + 1;
                Number++;
                return true;
            }

            looked = rest.Length;
            if (_ended)
            {
                line = rest;
                _from = _to;
                if (rest.Length == 0) return false;
                Number++;
                return true;
            }

            Fill();
        }
    }

    private void Fill()
    {
        var held = _to - _from;
        if (held > LongestLine)
            throw new LogFormatException(file, Number + 1, "", $"the line is longer than {LongestLine / 1000} 000 characters",
                "a log has a line for each reading; is this the right file?");
        if (held > _buffer.Length / 2) Array.Resize(ref _buffer, 2 * _buffer.Length);
        Array.Copy(_buffer, _from, _buffer, 0, held);
        (_from, _to) = (0, held);
        var read = reader.Read(_buffer, _to, _buffer.Length - _to);
        if (read == 0) _ended = true;
        _to += read;
    }
}
