namespace NotebookKit.Logs;

/// <summary>The cells of a line, trimmed and without their quotation marks; a separator between quotation marks parts nothing.</summary>
internal ref struct CellSplitter(ReadOnlySpan<char> line, char separator)
{
    private ReadOnlySpan<char> _rest = line;
    private bool _ended;

    /// <summary>The cell.</summary>
    public ReadOnlySpan<char> Current { get; private set; }

    /// <summary>Moves to the next cell.</summary>
    public bool MoveNext()
    {
        if (_ended) return false;
        var start = 0;
        while (start < _rest.Length && _rest[start] == ' ') start++;
        if (start < _rest.Length && _rest[start] == '"')
        {
            var close = start + 1;
            while (close < _rest.Length && (_rest[close] != '"' || (close + 1 < _rest.Length && _rest[close + 1] == '"')))
                close += _rest[close] == '"' ? 2 : 1;
            var after = close < _rest.Length ? _rest[(close + 1)..].IndexOf(separator) : -1;
            Take(after < 0 ? -1 : close + 1 + after);
            Current = Current.Trim().Trim('"').Trim();
            return true;
        }

        Take(_rest.IndexOf(separator));
        Current = Current.Trim();
        return true;
    }

    private void Take(int end)
    {
        Current = end < 0 ? _rest : _rest[..end];
        _ended = end < 0;
        _rest = end < 0 ? [] : _rest[(end + 1)..];
    }
}
