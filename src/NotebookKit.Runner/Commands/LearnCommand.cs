using System.CommandLine;
using NotebookKit.DesignFiles;
using NotebookKit.Interactive;
using NotebookKit.Logs.Learning;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that redoes every figure that rests on a new log.</summary>
internal static class LearnCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("file") { Description = "The design, for example notebooks/curlew.json, or a club's folder." };
        var log = new Option<string>("--log") { Description = "The new log: of an altimeter, a proof or a fill.", Required = true };
        var given = new Option<string[]>("--given")
        {
            Description = "A value of the day to use instead of the file's: \"fill pressure=55 bar gauge\".",
        };
        var use = new Option<LogUse?>("--as") { Description = "What it is the log of: flight, proof or fill; guessed if not given." };
        var write = new Option<bool>("--write") { Description = "Write what the log says into the design's file, remarks and order kept; "
            + "a proof into the folder's tests." };
        var command = new Command("learn", "Fits a new log, redoes every figure that rests on it, and says which numbers moved.") { file,
            log, given, use, write };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var (path, givens) = (parsed.GetRequiredValue(file), parsed.GetValue(given) ?? []);
            var learned = DesignRequest.Read(path, givens).Learn(parsed.GetRequiredValue(log), parsed.GetValue(use));
            Console.Out.Write(ResultText.Of(learned));
            Console.Out.WriteLine(parsed.GetValue(write) ? $"Written to {Written(learned, path)}."
                : "Nothing was written. Write it into the design with --write.");
            return learned.Moved.After.Holds ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }

    // The tests of a folder aren't the file's; a proof becomes one of them.
    private static string Written(LearnedFromLog learned, string path)
    {
        var file = Directory.Exists(path) ? Path.Combine(path, DesignRequest.InFolder) : path;
        if (learned.Use == LogUse.Proof && Directory.Exists(path))
        {
            var test = Path.Combine(path, "tests", $"{Path.GetFileNameWithoutExtension(learned.File)}.json");
            if (File.Exists(test)) throw new RequestException($"{test} is there already. Take it away first, or rename the log.");
            var last = learned.After.Evidence.Tests[^1];
            DesignRequest.Keep(test, $$"""
                // Held by the log {{learned.File}}.
                { "kind": "held proof", "vessel": {{System.Text.Json.JsonSerializer.Serialize(last.Id)}}, "pressure": "{{
                    FormattableString.Invariant($"{last.Pressure.Bar}")}} bar gauge"{{(last.Mark is { } mark ? $", \"made as\": \"{mark}\"" : "")}} }

                """);
            return test;
        }

        learned.Into(Design.Read(file)).Write(file);
        return file;
    }
}
