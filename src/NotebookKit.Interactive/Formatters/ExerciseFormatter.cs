using NotebookKit.Interactive.Html;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Formatters;

/// <summary>What an exercise says to an answer: the question, and below it where it stands.</summary>
internal static class ExerciseFormatter
{
    public static void Html(ExerciseVerdict verdict, TextWriter writer)
    {
        var kind = verdict.State == ExerciseState.NotYet ? "nk-warning" : "nk-remark";
        writer.Write($"<h4>{Escape.Text(verdict.Question)}</h4><div class=\"nk-finding {kind}\">{Escape.Text(verdict.Words)}</div>");
    }

    public static void Plain(ExerciseVerdict verdict, TextWriter writer) => writer.WriteLine(verdict.ToString());
}
