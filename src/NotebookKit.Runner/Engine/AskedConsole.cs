namespace NotebookKit.Runner.Engine;

/// <summary>A console input that asks the reader for each line, so that <c>Console.ReadLine()</c> works in a cell.</summary>
/// <param name="ask">Asks for one line; none where nobody can answer.</param>
internal sealed class AskedConsole(Func<InputRequest, string?> ask) : TextReader
{
    private string _rest = "";

    /// <inheritdoc />
    public override string? ReadLine() => ask(new InputRequest("", Hidden: false));

    /// <inheritdoc />
    public override int Peek() => _rest.Length > 0 ? _rest[0] : -1;

    /// <inheritdoc />
    public override int Read()
    {
        if (_rest.Length == 0)
        {
            if (ReadLine() is not { } line) return -1;
            _rest = line + "\n";
        }

        var first = _rest[0];
        _rest = _rest[1..];
        return first;
    }
}

/// <summary>A running cell asks its reader to type something.</summary>
/// <param name="Prompt">What to type.</param>
/// <param name="Hidden">Whether what is typed must not be shown.</param>
internal sealed record InputRequest(string Prompt, bool Hidden);
