using System.CommandLine;
using System.Globalization;
using NotebookKit.Runner.Notebooks;
using NotebookKit.Runner.Pages;
using Spectre.Console;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that lists notebooks.</summary>
internal static class ListCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var notebooks = new Argument<string[]>("notebooks")
        {
            Description = "Notebooks or folders of notebooks; all of the repository if none is named.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var command = new Command("list", "Lists notebooks with their titles and sizes.") { notebooks };
        command.SetAction(parsed => List(NotebookSelection.Choose(parsed.GetValue(notebooks) ?? [])));
        return command;
    }

    private static int List(IReadOnlyList<string> files)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns("notebook", "title", "code cells", "text cells", "median lines", "longest cell");
        var code = ExitCodes.Success;
        foreach (var file in files)
        {
            try
            {
                var notebook = NotebookFile.Read(file);
                var size = LessonSize.Of(notebook);
                table.AddRow([Markup.Escape(notebook.Name), Markup.Escape(NotebookOutline.Of(notebook).Title),
                    .. Numbers(size.CodeCells, size.TextCells, size.MedianLines, size.LongestLines)]);
            }
            catch (NotebookFormatException e)
            {
                table.AddRow(Markup.Escape(Path.GetFileNameWithoutExtension(file)), Markup.Escape(e.Message), "", "", "", "");
                code = ExitCodes.Failed;
            }
        }

        // Without a terminal there is no edge to break lines at.
        if (Console.IsOutputRedirected) AnsiConsole.Profile.Width = 240;
        AnsiConsole.Write(table);
        return code;
    }

    private static IEnumerable<string> Numbers(params double[] numbers)
        => numbers.Select(n => n.ToString("0.#", CultureInfo.InvariantCulture));
}
