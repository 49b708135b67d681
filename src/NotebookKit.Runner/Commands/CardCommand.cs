using System.CommandLine;
using NotebookKit.Interactive;

namespace NotebookKit.Runner.Commands;

/// <summary>The command that makes the flight card of a club's folder from the evidence that lies in it.</summary>
internal static class CardCommand
{
    /// <summary>Its description for the command line.</summary>
    public static Command Create()
    {
        var folder = new Argument<string>("folder") { Description = "The club's folder, with day.json in it." };
        var given = new Option<string[]>("--given")
        {
            Description = "A value to use instead of the file's, by its path or its plain name: \"fill pressure=40 bar gauge\".",
        };
        var command = new Command("card", "Makes the flight card from the evidence in a club's folder: GO, or NO-GO with every reason.")
        {
            folder, given,
        };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var club = DesignRequest.Club(parsed.GetRequiredValue(folder));
            var card = (club with { Design = DesignRequest.Changed(club.Design, parsed.GetValue(given) ?? []) }).Card();
            Console.Out.Write(ResultText.Of(card));
            Console.Out.WriteLine();
            Console.Out.WriteLine("What stands behind this card");
            foreach (var item in card.Shown)
                Console.Out.WriteLine($"  {(item.IsShown ? "shown    " : "NOT SHOWN")} {item.Name}: {item.What}");
            Console.Out.WriteLine(card.IsGo ? "GO by the sums. The range safety officer decides."
                : "NO-GO. The range safety officer decides, and never against these reasons.");
            return card.IsGo ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }
}
