using NotebookKit.Charts;
using NotebookKit.Interactive.Html;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Everything of ours that shows itself.</summary>
internal static class FormatterSet
{
    public static void Register()
    {
        Registry.Add<IResult>(ResultFormatter.Html, ResultFormatter.Plain);
        Registry.Add<Working>(
            (working, w) => Fragment.Write(w, "working", inner =>
            {
                inner.Write($"<h4>{Escape.Text(working.Title)}</h4>");
                WorkingFormatter.Html(working, inner);
            }),
            WorkingFormatter.Plain);
        Registry.Add<ModelCard>(
            (card, w) => Fragment.Write(w, "model", inner =>
            {
                inner.Write($"<h4>{Escape.Text(card.Name)}</h4>");
                ModelCardFormatter.Html(card, inner);
            }),
            ModelCardFormatter.Plain);
        Registry.Add<Finding>((f, w) => Fragment.Write(w, "findings", inner => FindingFormatter.Html([f], inner)), (f, w) => FindingFormatter.Plain([f], w));
        Registry.Add<IEnumerable<Finding>>((f, w) => Fragment.Write(w, "findings", inner => FindingFormatter.Html(f, inner)), FindingFormatter.Plain);
        Registry.Add<Caution>((c, w) => Fragment.Write(w, "caution", inner => CautionFormatter.Html([c], inner)), (c, w) => CautionFormatter.Plain([c], w));
        Registry.Add<IEnumerable<Caution>>((c, w) => Fragment.Write(w, "caution", inner => CautionFormatter.Html(c, inner)), CautionFormatter.Plain);
        Registry.Add<IEnumerable<ResultLine>>((l, w) => Fragment.Write(w, "lines", inner => LinesFormatter.Html(l, inner)), LinesFormatter.Plain);
        Registry.Add<Source>((s, w) => Text(w, s.ToString()), (s, w) => w.WriteLine(s.ToString()));
        Registry.Add<IQuantity>((q, w) => Text(w, q.Show()), (q, w) => w.Write(q.Show()));
        Registry.Add<GaugePressure>((p, w) => Text(w, p.ToString()), (p, w) => w.Write(p.ToString()));
        Registry.Add<AbsolutePressure>((p, w) => Text(w, p.ToString()), (p, w) => w.Write(p.ToString()));
        Registry.Add<Series>(SeriesFormatter.Html, SeriesFormatter.Plain);
        Registry.Add<OutOfRangeException>((e, w) => Fragment.Write(w, "refusal", inner => FindingFormatter.Html([Finding.Error(e.Message)], inner)), (e, w) => w.WriteLine(e.Message));
        Registry.Add<InvalidDesignException>((e, w) => Fragment.Write(w, "refusal", inner => FindingFormatter.Html(e.Findings, inner)), (e, w) => w.WriteLine(e.Message));
        Registry.Add<EngineeringChart>((ChartFormatter.FigureMime, ChartFormatter.Figure), (Registry.Html, ChartFormatter.Html), (Registry.Plain, ChartFormatter.Plain));
    }

    private static void Text(TextWriter writer, string text) => writer.Write($"<span class=\"nk-quantity\">{Escape.Text(text)}</span>");
}
