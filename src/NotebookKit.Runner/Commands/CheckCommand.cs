using System.CommandLine;
using NotebookKit.Clearance;
using NotebookKit.Interactive;
using NotebookKit.Logs;
using NotebookKit.Provenance;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that holds a design against its own requirements.</summary>
internal static class CheckCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("file") { Description = "The design, for example notebooks/curlew.json, or a club's folder." };
        var given = new Option<string[]>("--given")
        {
            Description = "A value to use instead of the file's, by its path or its plain name: \"fill pressure=40 bar gauge\".",
        };
        var record = new Option<string?>("--record") { Description = "File to write the record of the check to." };
        var command = new Command("check", "Computes a design anew and says which of its requirements hold.") { file, given, record };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var (path, givens) = (parsed.GetRequiredValue(file), parsed.GetValue(given) ?? []);
            var folder = Directory.Exists(path) ? ClubFolder.Read(path) : null;
            var of = folder is null ? null : (folder with { Design = DesignRequest.Changed(folder.Design, givens) })
                .Check(DateOnly.FromDateTime(DateTime.UtcNow));
            var check = of?.Design ?? DesignRequest.Read(path, givens).Check();
            Console.Out.Write(ResultText.Of(of ?? (IResult)check));
            if (parsed.GetValue(record) is { } kept) DesignRequest.Keep(kept, check.Record.ToJson());
            return check.Holds ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }
}
