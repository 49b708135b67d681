using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Results;
using NotebookKit.Filling.Fills;
using NotebookKit.Proofing.Plans;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Interactive.Formatters;

/// <summary>Results that are shown with their drawing below them.</summary>
internal static class DrawnResultFormatter
{
    public static void Register()
    {
        Registry.Add<PadPlumbing>((p, w) => Html(p, w, p.Draw()), ResultFormatter.Plain);
        Registry.Add<ProofPlan>((p, w) => Html(p, w, p.Draw()), ResultFormatter.Plain);
        Registry.Add<PressureVessel>((v, w) =>
        {
            DesignFormatter.Html(v, w);
            if (v.Validate().Any(f => f.Severity == Provenance.FindingSeverity.Error)) return;
            ChartFormatter.Html(v.DrawNozzleEnd(), w);
            ChartFormatter.Html(v.DrawForwardEnd(), w);
        }, DesignFormatter.Plain);
    }

    private static void Html(Provenance.IResult result, TextWriter writer, Drawing drawing)
    {
        ResultFormatter.Html(result, writer);
        ChartFormatter.Html(drawing, writer);
    }
}
