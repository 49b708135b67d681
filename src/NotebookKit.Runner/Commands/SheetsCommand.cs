using System.CommandLine;
using NotebookKit.Runner.Sheets;
using NotebookKit.Sheets;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that writes the sheets of a design for printing.</summary>
internal static class SheetsCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("design") { Description = "The design, for example notebooks/curlew.json, or a club's folder." };
        var output = new Option<string?>("--out") { Description = "Folder for the sheets; 'sheets' beside the design if not given." };
        var given = new Option<string[]>("--given")
        {
            Description = "A value to use instead of the file's, by its path or its plain name: \"fill pressure=40 bar gauge\".",
        };
        var command = new Command("sheets", "Writes flight card, proof sheet, pad sheet, templates and shopping list for printing.")
        {
            file, output, given,
        };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var path = parsed.GetRequiredValue(file);
            var folder = Directory.Exists(path) ? path : Path.GetDirectoryName(Path.GetFullPath(path))!;
            var design = DesignRequest.Read(path, parsed.GetValue(given) ?? []);
            var to = parsed.GetValue(output) ?? Path.Combine(folder, "sheets");
            // A card with other values than the files' is no card to fly by.
            var card = parsed.GetValue(given) is not { Length: > 0 } && Directory.Exists(path)
                && File.Exists(Path.Combine(path, "day.json"))
                ? FlightSheet.Of((DesignRequest.Club(path) with { Design = design }).Card()).Content : null;
            foreach (var written in SheetFolder.Write(design, SheetFolder.Shelf(folder), to, card)) Console.Out.WriteLine(written);
            return ExitCodes.Success;
        }));
        return command;
    }
}
