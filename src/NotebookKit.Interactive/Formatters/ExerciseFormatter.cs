using NotebookKit.Interactive.Html;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Formatters;

/// <summary>An exercise and what it says to the answer; on paper a blank to write the answer into.</summary>
internal static class ExerciseFormatter
{
    public static void Html(ExerciseVerdict verdict, TextWriter writer) => Fragment.Write(writer, "exercise", w =>
    {
        var (kind, word) = verdict.State switch
        {
            ExerciseState.Right => ("nk-right", "Right"),
            ExerciseState.NotYet => ("nk-warning", "Not yet"),
            _ => ("nk-remark", "Your turn"),
        };
        w.Write($"<p>{Escape.Text(verdict.Question)}</p><div class=\"nk-finding {kind}\"><b>{word}.</b> "
            + $"{Escape.Text(verdict.Words)}</div>");
        if (verdict.State == ExerciseState.Open)
            w.Write("<p class=\"nk-paper\">Your answer: <span class=\"nk-blank\"></span></p>");
    });

    public static void Plain(ExerciseVerdict verdict, TextWriter writer) => writer.WriteLine(verdict.ToString());
}
