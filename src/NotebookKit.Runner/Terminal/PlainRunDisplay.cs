using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;
using Spectre.Console;

namespace NotebookKit.Runner.Terminal;

/// <summary>One line for each notebook as it ends.</summary>
/// <param name="console">Where to write.</param>
internal sealed class PlainRunDisplay(IAnsiConsole console) : IRunDisplay
{
    private readonly Lock _door = new();

    /// <inheritdoc />
    public void Started(string name, int cells)
    {
    }

    /// <inheritdoc />
    public void Running(string name, int cell, string? progress)
    {
    }

    /// <inheritdoc />
    public void Ended(NotebookReport report)
    {
        lock (_door) console.Profile.Out.Writer.WriteLine(RunSummary.Line(report));
    }
}
