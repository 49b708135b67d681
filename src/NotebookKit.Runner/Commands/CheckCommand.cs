using System.CommandLine;
using NotebookKit.Clearance;
using NotebookKit.Interactive;

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
            var check = DesignRequest.Read(parsed.GetRequiredValue(file), parsed.GetValue(given) ?? []).Check();
            Console.Out.Write(ResultText.Of(check));
            if (parsed.GetValue(record) is { } path) File.WriteAllText(path, check.Record.ToJson());
            return check.Holds ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }
}
