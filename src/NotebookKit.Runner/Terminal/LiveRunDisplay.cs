using System.Collections.Concurrent;
using NotebookKit.Runner.Reports;
using NotebookKit.Runner.Running;
using Spectre.Console;

namespace NotebookKit.Runner.Terminal;

/// <summary>A bar for each notebook, filled cell by cell.</summary>
/// <param name="area">The terminal's live area.</param>
internal sealed class LiveRunDisplay(ProgressContext area) : IRunDisplay
{
    private readonly ConcurrentDictionary<string, ProgressTask> _bars = new(StringComparer.Ordinal);

    /// <inheritdoc />
    public void Started(string name, int cells) => _bars[name] = area.AddTask(Markup.Escape(name), maxValue: Math.Max(1, cells));

    /// <inheritdoc />
    public void Running(string name, int cell, string? progress)
    {
        if (!_bars.TryGetValue(name, out var bar)) return;
        bar.Value = cell - 1;
        bar.Description = $"{Markup.Escape(name)}  [grey]cell {cell} of "
            + $"{bar.MaxValue:0}{(progress is null ? "" : $", {Markup.Escape(progress)}")}[/]";
    }

    /// <inheritdoc />
    public void Ended(NotebookReport report)
    {
        if (!_bars.TryGetValue(report.Name, out var bar)) bar = area.AddTask(Markup.Escape(report.Name), maxValue: 1);
        if (report.Passed) bar.Value = bar.MaxValue;
        bar.Description = Markup.Escape(report.Name) + (report.Passed ? "" : "  [red]failed[/]");
        bar.StopTask();
    }
}
