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
        var command = new Command("card", "Makes the flight card from the evidence in a club's folder: GO, or NO-GO with every reason.")
        {
            folder,
        };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var club = DesignRequest.Club(parsed.GetRequiredValue(folder));
            var card = club.Card();
            Console.Out.Write(ResultText.Of(card));
            Console.Out.WriteLine();
            Console.Out.WriteLine("What stands behind this card");
            foreach (var item in card.Shown)
                Console.Out.WriteLine($"  {(item.IsShown ? "shown    " : "NOT SHOWN")} {item.Name}: {item.What}");
            var (day, today) = (club.Day!.Day, DateOnly.FromDateTime(DateTime.Now));
            Console.Out.WriteLine(card.IsGo ? FormattableString.Invariant($"GO by the sums for {day:yyyy-MM-dd}, and for no other day. ")
                + "The range safety officer decides." : "NO-GO. The range safety officer decides, and never against these reasons.");
            if (day != today) Console.Out.WriteLine(FormattableString.Invariant($"Today is {today:yyyy-MM-dd}: this card allows no flight ")
                + "today. Write the day and what you measured into day.json.");
            return card.IsGo ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }
}
