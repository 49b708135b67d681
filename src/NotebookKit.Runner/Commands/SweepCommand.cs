using System.CommandLine;
using System.Globalization;
using System.Text;
using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.Interactive;
using NotebookKit.Numerics;
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
        var table = new Option<string?>("--table") { Description = "File to write all figures to, as comma-separated values." };
        var command = new Command("sweep", "Computes a design for every combination of some of its values, and says which meet every "
            + "requirement.") { file, over, given, table };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var design = DesignRequest.Read(parsed.GetRequiredValue(file), parsed.GetValue(given) ?? []);
            var sweep = Shown(design, parsed.GetRequiredValue(over));
            Console.Out.Write(ResultText.Of(sweep));
            if (parsed.GetValue(table) is { } path) File.WriteAllText(path, Csv(sweep));
            return sweep.Designs.Any(d => d.Holds) ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }

    private static DesignSweep Shown(Design design, string[] over) => Console.IsOutputRedirected ? design.Sweep(over)
        : AnsiConsole.Progress().Start(screen =>
        {
            var bar = screen.AddTask("designs");
            using var run = WorkRun.Begin(CancellationToken.None, new Told(done => bar.Value = 100.0 * done.Done / Math.Max(1, done.Of)));
            return design.Sweep(over);
        });

    private static string Csv(DesignSweep sweep)
    {
        var text = new StringBuilder();
        var columns = DesignSweep.FigureNames.Select(sweep.Column).Where(c => c.Values.Any(double.IsFinite)).ToList();
        text.AppendJoin(',', sweep.Axes.Select(a => Quoted(a.Name)).Concat(columns.Select(c => Quoted($"{c.Name} [{c.Unit}]")))
            .Append("against")).Append('\n');
        for (var i = 0; i < sweep.Designs.Count; i++)
        {
            var design = sweep.Designs[i];
            text.AppendJoin(',', design.Values.Select(Quoted)
                .Concat(columns.Select(c => double.IsFinite(c[i]) ? c[i].ToString("G6", CultureInfo.InvariantCulture) : ""))
                .Append(Quoted(design.Against))).Append('\n');
        }

        return text.ToString();
    }

    // A cell that begins like a formula would be run by a spreadsheet.
    private static string Quoted(string text) =>
        $"\"{(text is ['=' or '+' or '-' or '@', ..] ? "'" : "")}{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";

    private sealed class Told(Action<WorkDone> tell) : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => tell(value);
    }
}
