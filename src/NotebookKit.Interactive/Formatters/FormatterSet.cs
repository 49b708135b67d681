using NotebookKit.Clearance.Cards;
using NotebookKit.Interactive.Html;
using NotebookKit.Interactive.Live;
using NotebookKit.Interactive.Tables;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Record.Givens;
using NotebookKit.Sheets;
using UnitsNet;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Everything of ours that shows itself.</summary>
internal static class FormatterSet
{
    /// <summary>Registers everything; gives a sentence where this kernel can't show all of it.</summary>
    /// <param name="passesFigures">Whether figures reach the front-end as objects.</param>
    /// <param name="givens">What the run was asked to change: a card says so.</param>
    public static string? Register(bool passesFigures, GivenOverrides givens)
    {
        // First what has no form of its own: a later, closer form takes its place.
        Registry.AddAll(typeof(IResult).Assembly, DesignFormatter.Html, DesignFormatter.Plain);
        Registry.Add<IResult>(ResultFormatter.Html, ResultFormatter.Plain);
        Registry.Add<FlightCard>((c, w) => FlightCardFormatter.Html(c, givens, w), (c, w) => FlightCardFormatter.Plain(c, givens, w));
        Registry.Add<CardWithoutFlight>((c, w) => FlightCardFormatter.Html(c, givens, w),
            (c, w) => FlightCardFormatter.Plain(c, givens, w));
        Registry.Add<TwoStageFlightCard>((c, w) => FlightCardFormatter.Html(c, givens, w),
            (c, w) => FlightCardFormatter.Plain(c, givens, w));
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
        Registry.Add<Finding>((f, w) => Fragment.Write(w, "findings", inner => FindingFormatter.Html([f], inner)),
            (f, w) => FindingFormatter.Plain([f], w));
        Registry.Add<IEnumerable<Finding>>((f, w) => Fragment.Write(w, "findings", inner => FindingFormatter.Html(f, inner)),
            FindingFormatter.Plain);
        Registry.Add<Caution>((c, w) => Fragment.Write(w, "caution", inner => CautionFormatter.Html([c], inner)),
            (c, w) => CautionFormatter.Plain([c], w));
        Registry.Add<IEnumerable<Caution>>((c, w) => Fragment.Write(w, "caution", inner => CautionFormatter.Html(c, inner)),
            CautionFormatter.Plain);
        Registry.Add<ResultLine>((l, w) => Fragment.Write(w, "lines", inner => LinesFormatter.Html([l], inner)),
            (l, w) => LinesFormatter.Plain([l], w));
        Registry.Add<IEnumerable<ResultLine>>((l, w) => Fragment.Write(w, "lines", inner => LinesFormatter.Html(l, inner)),
            LinesFormatter.Plain);
        Registry.Add<ExerciseVerdict>(ExerciseFormatter.Html, ExerciseFormatter.Plain);
        Registry.Add<Requirement>((r, w) => Fragment.Write(w, "lines", inner => LinesFormatter.Html([Line(r)], inner)),
            (r, w) => LinesFormatter.Plain([Line(r)], w));
        Registry.Add<RecordComparison>(RecordComparisonFormatter.Html, RecordComparisonFormatter.Plain);
        Registry.Add<Source>((s, w) => Text(w, s.ToString()), (s, w) => w.WriteLine(s.ToString()));
        Registry.Add<IQuantity>((q, w) => Text(w, q.Show()), (q, w) => w.Write(q.Show()));
        Registry.Add<GaugePressure>((p, w) => Text(w, p.ToString()), (p, w) => w.Write(p.ToString()));
        Registry.Add<AbsolutePressure>((p, w) => Text(w, p.ToString()), (p, w) => w.Write(p.ToString()));
        Registry.Add<ProgressState>(ProgressFormatter.Html, ProgressFormatter.Plain);
        Registry.Add<TextTable>(TableFormatter.Html, TableFormatter.Plain);
        Registry.Add<IEnumerable<string>>(ListFormatter.Html, ListFormatter.Plain);
        Registry.Add<Series>(SeriesFormatter.Html, SeriesFormatter.Plain);
        Registry.Add<OutOfRangeException>((e, w) => Fragment.Write(w, "refusal",
            inner => FindingFormatter.Html([Finding.Error(e.Message)], inner)), (e, w) => w.WriteLine(e.Message));
        Registry.Add<InvalidDesignException>((e, w) => Fragment.Write(w, "refusal", inner => FindingFormatter.Html(e.Findings, inner)),
            (e, w) => w.WriteLine(e.Message));
        Registry.Add<Headline>((Registry.Html, (h, w) => HeadlineFormatter.Html([h], w)),
            (Registry.Plain, (h, w) => HeadlineFormatter.Plain([h], w)),
            (HeadlineFormatter.Mime, (h, w) => HeadlineFormatter.Json([h], w)));
        Registry.Add<IEnumerable<Headline>>((Registry.Html, HeadlineFormatter.Html), (Registry.Plain, HeadlineFormatter.Plain),
            (HeadlineFormatter.Mime, HeadlineFormatter.Json));
        // A list is never cut short.
        Microsoft.DotNet.Interactive.Formatting.Formatter.ListExpansionLimit = int.MaxValue;
        Registry.Add<ISheet>(SheetFormatter.Html, SheetFormatter.Plain);
        VerdictFormatter.Register(givens);
        return ChartFormatters.Register(passesFigures);
    }

    private static ResultLine Line(Requirement requirement) => new($"Required: {requirement.Name}", requirement.LiveValue,
        $"{(requirement.Holds ? "holds" : "does not hold")}: {requirement.Condition}. {requirement.Why}");

    private static void Text(TextWriter writer, string text) => writer.Write($"<span class=\"nk-quantity\">{Escape.Text(text)}</span>");
}
