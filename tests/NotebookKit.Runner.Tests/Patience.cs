namespace NotebookKit.Runner.Tests;

/// <summary>How long a test waits for what has to come: so long that only what hangs meets it, on however busy a machine.</summary>
internal static class Patience
{
    public const float Milliseconds = 600_000;

    public static readonly TimeSpan Limit = TimeSpan.FromMilliseconds(Milliseconds);
}
