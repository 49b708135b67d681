using NotebookKit.Interactive.Html;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Shown working: a step a paragraph, formula, numbers, answer, source.</summary>
internal static class WorkingFormatter
{
    public static void Html(Working working, TextWriter writer)
    {
        writer.Write("<ol class=\"nk-steps\">");
        foreach (var step in working.Steps)
        {
            writer.Write($"<li class=\"nk-step\"><div>{Escape.Text(step.What)}</div><div>");
            writer.Write($"<span class=\"tex\">{Escape.Text(step.Formula)}</span><span "
                + $"class=\"nk-plain\">{Escape.Text(PlainFormula.From(step.Formula))}</span></div>");
            writer.Write($"<div>= {Escape.Text(step.Numbers)}</div><div>= <span "
                + $"class=\"nk-answer\">{Escape.Text(step.Answer)}</span></div>");
            writer.Write($"<div class=\"nk-source\">Source: {Escape.Text(step.Source.ToString())}</div></li>");
        }
        writer.Write("</ol>");
    }

    public static void Plain(Working working, TextWriter writer)
    {
        writer.WriteLine(working.Title);
        foreach (var step in working.Steps)
        {
            writer.WriteLine($"  {step.What}");
            writer.WriteLine($"    {PlainFormula.From(step.Formula)}");
            writer.WriteLine($"    = {step.Numbers}");
            writer.WriteLine($"    = {step.Answer}   [{step.Source}]");
        }
    }
}
