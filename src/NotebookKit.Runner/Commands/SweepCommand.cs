using System.CommandLine;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Designs;
using NotebookKit.DesignFiles;
using NotebookKit.Interactive;
using NotebookKit.Numerics;
using NotebookKit.Runner.Reports;
using Spectre.Console;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that computes a design for every combination of some of its values.</summary>
internal static class SweepCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("file") { Description = "The design, for example notebooks/curlew.json." };
        var over = new Option<string[]>("--over")
        {
            Description = "A value and what it is to be: \"fill pressure=20..60 bar gauge/9\", \"throat=11 mm; 13 mm\". Several make every "
                + "combination.",
            Required = true,
        };
        var given = new Option<string[]>("--given")
        {
            Description = "A value to use instead of the file's, by its path or its plain name: \"water fraction=35 %\".",
        };
        var table = new Option<string?>("--table") { Description = "File to write all figures to, as comma-separated values, "
            + "instead of the one in the --out folder." };
        var output = new Option<string?>("--out") { Description = "Folder for the page with charts and for the table; 'out' in a "
            + "club's folder, for a file 'out' in the repository, if not given." };
        var command = new Command("sweep", "Computes a design for every combination of some of its values, says which meet every "
            + "requirement, and draws them with the limits.") { file, over, given, table, output };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var path = parsed.GetRequiredValue(file);
            var design = DesignRequest.Read(path, parsed.GetValue(given) ?? []);
            var axes = parsed.GetRequiredValue(over).Select(SweepAxis.Parse).ToList();
            // So many are refused before anything is looked at.
            if (axes.Aggregate(1.0, (n, a) => n * a.Values.Count) <= DesignSweep.MostDesigns)
                foreach (var axis in axes) DesignRequest.Changed(design, axis.Name, axis.Values[0]);
            var sweep = Shown(design, axes);
            Console.Out.Write(ResultText.Of(sweep));
            var stem = Free(Path.Combine(parsed.GetValue(output) ?? (Directory.Exists(path) ? Path.Combine(path, "out")
                : DesignRequest.Output()), $"{DesignRequest.NameOf(path)}-sweep-{string.Join('-', axes.Select(a => Plain(a.Name)))}"));
            var csv = parsed.GetValue(table) ?? $"{stem}.csv";
            DesignRequest.Keep(csv, SweepReport.Csv(sweep));
            DesignRequest.Keep($"{stem}.html", SweepReport.Page(sweep));
            Console.Out.WriteLine($"Charts: {stem}.html");
            Console.Out.WriteLine($"Table: {csv}");
            return sweep.Designs.Any(d => d.Holds) ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }

    // An earlier sweep stays: its page may be the one that a decision rests on.
    private static string Free(string stem) => Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? stem
        : FormattableString.Invariant($"{stem}-{n}")).First(s => !File.Exists($"{s}.html") && !File.Exists($"{s}.csv"));

    private static string Plain(string name) => string.Join('-', new string([.. name.Take(60).Select(c => char.IsAsciiLetterOrDigit(c)
        ? char.ToLowerInvariant(c) : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static DesignSweep Shown(Design design, IReadOnlyList<SweepAxis> over) => Console.IsOutputRedirected ? design.Sweep(over)
        : AnsiConsole.Progress().Start(screen =>
        {
            var bar = screen.AddTask("designs");
            using var run = WorkRun.Begin(CancellationToken.None, new Told(done => bar.Value = 100.0 * done.Done / Math.Max(1, done.Of)));
            return design.Sweep(over);
        });

    private sealed class Told(Action<WorkDone> tell) : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => tell(value);
    }
}
