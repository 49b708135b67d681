using System.CommandLine;
using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Interactive;
using NotebookKit.Provenance;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that holds a design against its own requirements.</summary>
internal static class CheckCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("file") { Description = "The design, for example notebooks/curlew.json." };
        var given = new Option<string[]>("--given")
        {
            Description = "A value to use instead of the file's, by its path or its plain name: \"fill pressure=40 bar gauge\".",
        };
        var record = new Option<string?>("--record") { Description = "File to write the record of the check to." };
        var command = new Command("check", "Computes a design anew and says which of its requirements hold.") { file, given, record };
        command.SetAction(parsed => Check(parsed.GetRequiredValue(file), parsed.GetValue(given) ?? [], parsed.GetValue(record)));
        return command;
    }

    private static int Check(string file, string[] givens, string? record)
    {
        try
        {
            var check = givens.Aggregate(Design.Read(file), Changed).Check();
            Console.Out.Write(ResultText.Of(check));
            if (record is not null) File.WriteAllText(record, check.Record.ToJson());
            return check.Holds ? ExitCodes.Success : ExitCodes.Failed;
        }
        catch (DesignFileException error)
        {
            throw new RequestException(error.Message, [.. error.Mistakes.Skip(1).Select(m => m.Line > 0
                ? FormattableString.Invariant($"{error.File}, line {m.Line}, column {m.Column}: {m.Sentence}") : m.Sentence)]);
        }
        catch (Exception error) when (error is InvalidDesignException or IOException or UnauthorizedAccessException)
        {
            throw new RequestException(error.Message);
        }
    }

    private static Design Changed(Design design, string given)
    {
        var cut = given.IndexOf('=', StringComparison.Ordinal);
        return cut > 0 ? design.With(given[..cut].Trim(), given[(cut + 1)..].Trim())
            : throw new RequestException($"\"{given}\" isn't a value; write it as name=value with the unit, for example \"fill "
                + "pressure=40 bar gauge\".");
    }
}
