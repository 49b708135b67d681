namespace NotebookKit.Runner.Commands;

/// <summary>What the program's exit code says.</summary>
internal static class ExitCodes
{
    /// <summary>All went well.</summary>
    public const int Success = 0;

    /// <summary>A notebook failed, shards make no whole, a vessel is not to be filled, or a design doesn't keep what it
    /// requires.</summary>
    public const int Failed = 1;

    /// <summary>The command line asks for something that can't be done.</summary>
    public const int BadRequest = 2;

    /// <summary>Stopped from the keyboard: the shells' own number for it.</summary>
    public const int Stopped = 130;
}
