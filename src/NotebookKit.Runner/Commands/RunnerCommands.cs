using System.CommandLine;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Interactive;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Batch;
using NotebookKit.Runner.Running;
using NotebookKit.Runner.Workers;
using Spectre.Console;

namespace NotebookKit.Runner.Commands;

/// <summary>The command line as a whole. Without a command it does the main job: run every notebook.</summary>
internal static class RunnerCommands
{
    /// <summary>Reads the command line and does what it says.</summary>
    /// <param name="args">Command line.</param>
    /// <returns>Exit code.</returns>
    public static async Task<int> InvokeAsync(string[] args)
    {
        var root = new RootCommand("Runs NotebookKit's notebooks and writes them as pages. Without a command: runs all of them.")
        {
            RunCommand.Create(),
            ListCommand.Create(),
            MergeCommand.Create(),
            KernelCommand.Create(),
            VesselCommand.Create(),
            CheckCommand.Create(),
            CardCommand.Create(),
            SweepCommand.Create(),
            SheetsCommand.Create(),
            NewCommand.Create(),
            LearnCommand.Create(),
            WorkerCommand(),
        };
        root.SetAction(_ => RunCommand.RunAllAsync());
        try
        {
            // Signals are our own business, so that workers end first.
            var configuration = new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null };
            var parsed = root.Parse(args);
            CommandMistakes.ThrowIfAny(parsed);
            return await parsed.InvokeAsync(configuration);
        }
        catch (RequestException e)
        {
            AnsiConsole.MarkupLineInterpolated($"[red]{e.Message}[/]");
            // Never wrapped, so that a list stays one.
            foreach (var line in e.Details) AnsiConsole.Profile.Out.Writer.WriteLine(line);
            return ExitCodes.BadRequest;
        }
        catch (Exception e) when (args is not [WorkerProgram.Command, ..] && e is IOException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync($"The program can't go on: {RunFiles.Words(e)}.");
            return ExitCodes.Failed;
        }
    }

    private static Command WorkerCommand()
    {
        var limit = new Option<long>("--output-limit") { DefaultValueFactory = _ => WorkerOptions.UsualOutputLimitBytes };
        var live = new Option<bool>("--live");
        var shard = new Option<string?>("--shard");
        var keep = new Option<string?>("--keep-in");
        var flown = new Option<string?>("--flown-in");
        var given = new Option<string[]>("--given");
        var command = new Command(WorkerProgram.Command, "Runs cells for another process.") { limit, live, shard, keep, flown, given };
        command.Hidden = true;
        command.SetAction((parsed, _) => WorkerHost.ServeAsync(
            parsed.GetValue(limit), parsed.GetValue(live),
            new Session(
                GivenOverrides.Parse(parsed.GetValue(given) ?? []),
                parsed.GetValue(shard) is { } part ? new NotebookBatch(new(ShardNumber.Parse(part), parsed.GetValue(keep),
                    parsed.GetValue(flown))) : null)));
        return command;
    }
}
