using System.Diagnostics;
using System.Globalization;
using NotebookKit.Runner.Running;
using Spectre.Console;

namespace NotebookKit.Runner.Terminal;

/// <summary>Shows a run from its start to its summary: with live bars in a terminal, with plain lines elsewhere.</summary>
internal static class RunScreen
{
    /// <summary>Runs and shows.</summary>
    /// <param name="options">What to run.</param>
    /// <param name="cancellation">Stops the run.</param>
    public static async Task<RunResult> ShowAsync(RunOptions options, CancellationToken cancellation)
    {
        var clock = Stopwatch.StartNew();
        var console = AnsiConsole.Console;
        console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{options.Notebooks.Count} notebooks, {options.Jobs} at a time, at most {options.CellLimit.TotalSeconds:0.#} s a cell"));

        var result = console.Profile.Capabilities.Interactive && console.Profile.Out.IsTerminal
            ? await RunLiveAsync(console, options, cancellation)
            : await new NotebookRunner(options, new PlainRunDisplay(console)).RunAsync(cancellation);
        RunSummary.Write(console, options, result, clock.Elapsed);
        return result;
    }

    private static Task<RunResult> RunLiveAsync(IAnsiConsole console, RunOptions options,
        CancellationToken cancellation) =>
        console.Progress()
            .Columns(new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn(), new ElapsedTimeColumn(),
                new SpinnerColumn())
            .StartAsync(progress => new NotebookRunner(options, new LiveRunDisplay(progress)).RunAsync(cancellation));
}
