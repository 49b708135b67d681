using NotebookKit.Interactive.Html;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Any result of the library: heading, numbers, findings, cautions, and folded below them what it rests on and how it was worked
/// out.</summary>
internal static class ResultFormatter
{
    public static void Html(IResult result, TextWriter writer) => Fragment.Write(writer, "result", w =>
    {
        w.Write($"<h4>{Escape.Text(result.Title)}</h4>");
        if (result.Status == ResultStatus.Failed)
            w.Write("<div class=\"nk-finding nk-error\"><b>Not completed.</b> The computation did not reach its end; numbers that are "
                + "missing below were not reached.</div>");
        LinesFormatter.Html(result.Lines, w);
        FindingFormatter.Html(result.Findings, w);
        CautionFormatter.Html(result.Cautions, w);
        w.Write($"<details><summary>Model: {Escape.Text(result.Model.Name)}</summary>");
        ModelCardFormatter.Html(result.Model, w);
        w.Write("</details>");
        if (result.Working.Steps.Count == 0) return;
        w.Write($"<details><summary>Working: {Escape.Text(result.Working.Title)}</summary>");
        WorkingFormatter.Html(result.Working, w);
        w.Write("</details>");
    }, Words.NameOf(result.GetType()));

    public static void Plain(IResult result, TextWriter writer)
    {
        writer.WriteLine(result.Title);
        if (result.Status == ResultStatus.Failed) writer.WriteLine("NOT COMPLETED: the computation did not reach its end.");
        LinesFormatter.Plain(result.Lines, writer);
        FindingFormatter.Plain(result.Findings, writer);
        CautionFormatter.Plain(result.Cautions, writer);
        writer.WriteLine($"Model: {result.Model.Name}. {result.Model.ValidRange}".TrimEnd());
    }
}
