using System.CommandLine;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Givens;
using NotebookKit.Runner.Running;
using NotebookKit.Runner.Terminal;
using Spectre.Console;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that runs notebooks.</summary>
internal static class RunCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var notebooks = new Argument<string[]>("notebooks")
        {
            Description = "Notebooks or folders of notebooks; all of the repository if none is named.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var output = new Option<string?>("--out") { Description = "Folder for executed notebooks and pages; 'out' in the repository "
            + "if not given." };
        var limit = new Option<TimeSpan>("--cell-limit")
        {
            Description = "Longest time one cell may run: 500ms, 60s, 2min, 3h.",
            DefaultValueFactory = _ => RunOptions.UsualCellLimit,
            CustomParser = result =>
            {
                var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
                if (TimeLimitText.Read(text) is { } time) return time;
                result.AddError($"--cell-limit {text} is not a time above zero. Write it with its unit: 500ms, 60s, 2min or 3h.");
                return default;
            },
        };
        var jobs = new Option<int>("--jobs") { Description = "How many notebooks run at a time.",
            DefaultValueFactory = _ => RunOptions.UsualJobs };
        jobs.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 64) result.AddError("--jobs must be between 1 and 64.");
        });
        var givens = new Option<string[]>("--given")
        {
            Description = "Another value for one of the design's givens, with its unit: \"fill pressure=25 bar gauge\". May be said "
                + "several times.",
        };
        givens.Validators.Add(result =>
        {
            try
            {
                GivenOverrides.Parse(result.Tokens.Select(t => t.Value));
            }
            catch (FormatException error)
            {
                result.AddError($"--given: {error.Message}");
            }
        });

        var shard = new Option<ShardNumber?>("--shard")
        {
            Description = "Fly only a part of every dispersion, such as 3/16, and write it below the --out folder for 'merge'; no pages.",
            CustomParser = result =>
            {
                try
                {
                    return ShardNumber.Parse(result.Tokens.Count > 0 ? result.Tokens[0].Value : "");
                }
                catch (FormatException error)
                {
                    result.AddError($"--shard: {error.Message}");
                    return null;
                }
            },
        };
        var flown = new Option<string?>("--flown") { Description = "Folder with merged dispersions, so that they aren't flown again." };
        flown.Validators.Add(result =>
        {
            if (result.Tokens is [var folder, ..] && !Directory.Exists(folder.Value)) result.AddError("--flown: there is no folder "
                + $"{folder.Value}. Write it with: merge.");
        });

        var last = new Option<string?>("--last-record") { Description = "Design record (JSON) to hold the requirements of the one notebook "
            + "against, instead of the record that its last run kept below the --out folder." };
        last.Validators.Add(result =>
        {
            if (result.Tokens is [var file, ..] && !File.Exists(file.Value))
                result.AddError($"--last-record: there is no file {file.Value}.");
        });

        var single = new Option<bool>("--single") { Description = "Write each page whole, to be mailed alone; without it the pages "
            + "share one copy of the chart library beside them." };
        var command = new Command("run", "Runs notebooks and writes the executed files and pages.") { notebooks, output, limit, jobs,
            givens, shard, flown, last, single };
        command.SetAction((parsed, _) => RunAsync(parsed.GetValue(givens) ?? [], new RunOptions(
            NotebookSelection.Choose(parsed.GetValue(notebooks) ?? []),
            Path.GetFullPath(parsed.GetValue(output) ?? RepositoryFolders.Find().Output),
            parsed.GetValue(limit),
            parsed.GetValue(jobs))
        {
            Shard = parsed.GetValue(shard),
            Flown = parsed.GetValue(flown) is { } folder ? Path.GetFullPath(folder) : null,
            Single = parsed.GetValue(single),
            LastRecord = parsed.GetValue(last) is { } record ? Path.GetFullPath(record) : null,
        }));
        return command;
    }

    /// <summary>Runs all notebooks of the repository with the usual limits.</summary>
    /// <returns>Exit code.</returns>
    public static Task<int> RunAllAsync() =>
        RunAsync([], new RunOptions(NotebookSelection.Choose([]), RepositoryFolders.Find().Output, RunOptions.UsualCellLimit,
            RunOptions.UsualJobs));

    private static Task<int> RunAsync(string[] givens, RunOptions options)
    {
        var overrides = RunGivens.Of(givens);
        var plan = GivenCheck.Of(overrides, options.Notebooks);
        foreach (var note in plan.Notes) AnsiConsole.Profile.Out.Writer.WriteLine(note);
        return RunAsync(options with { Givens = overrides, MustTake = plan.MustTake });
    }

    private static async Task<int> RunAsync(RunOptions options)
    {
        if (options.Notebooks.FirstOrDefault(n => Path.GetFullPath(options.ExecutedFile(Path.GetFileNameWithoutExtension(n))) == n)
            is { } own)
            throw new RequestException($"The result would overwrite {own} itself. Choose another --out.");
        if (options is { Shard: not null, Flown: not null }) throw new RequestException("--shard flies a part and --flown takes the "
            + "whole. Give one of them.");
        if (options.LastRecord is not null && options.Notebooks.Count != 1) throw new RequestException("--last-record is of one design: "
            + $"name the one notebook that it belongs to; this run has {options.Notebooks.Count}.");
        using var stop = new StopSignal();
        try
        {
            var result = await RunScreen.ShowAsync(options, stop.Token);
            return result.Passed ? ExitCodes.Success : ExitCodes.Failed;
        }
        catch (OperationCanceledException)
        {
            AnsiConsole.MarkupLine("[red]Stopped.[/] Notebooks that had ended are written; the others are as they were.");
            return ExitCodes.Stopped;
        }
    }
}
