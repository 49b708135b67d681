using NotebookKit.Charts;
using NotebookKit.Charts.Engineering;
using NotebookKit.Charts.Notes;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Tests;

/// <summary>Things to show, some of them hostile.</summary>
public static class Samples
{
    public const string Hostile = "<script>alert('x')</script> & \"quoted\"";

    public static Sample Result() => new("Hoop stress, test tube", "6.00 MPa");

    public static Sample HostileResult() => new(Hostile, Hostile);

    public static EngineeringChart Chart() => ThrustChart.Draw(
        new Series("Time", "s", [0, 0.05, 0.1, 0.15]), new Series("Thrust", "N", [400, 320, 250, 0]), [new EventLine(0.1, "water out")]);

    public static NotebookKit.Charts.Drawings.Drawing Drawing()
        => NotebookKit.Charts.Drawings.ProofDrawing.Draw(GaugePressure.FromBar(82.5), 30.Metres());

    public static NotebookKit.Charts.Explorers.Explorer Explorer() => NotebookKit.Charts.Explorers.Explorer.Build(
        "Line", new Axis("x", "m"), new Axis("y", "m"), [new("Slope", "-", 0, 2, 5, 1)], [new("End", "m")],
        s => new() { X = [0, 1], Y = [0, s[0]], Numbers = [s[0]] }) with { Cautions = Provenance.Cautions.ForFlight };

    public static Series HostileSeries() => new(Hostile, "<b>", [1, double.NaN, 3]);

    public static EngineeringChart HostileChart() => LineChart.Draw(Hostile, new Series(Hostile, "</script>", [0, 1]),
        new Series("y", "-", [0, 1]));

    public static RecordComparison Comparison() => Record(2).ComparedWith(Record(1));

    public static DesignRecord Record(int version)
    {
        var builder = new DesignRecordBuilder("Sample", GivenOverrides.None);
        for (var i = 1; i <= 6; i++) builder.Given($"given {i}", (double)version, 0, 9, "");
        builder.Evidence("proof", new string((char)('0' + version), 64), "<b> of C-1");
        builder.Require("bore", 1.0, Limit.AtMost, 2.0, "", ["proof"]);
        return builder.Build();
    }

    /// <summary>A result with something in every place.</summary>
    public sealed record Sample(string Title, string Value) : IResult
    {
        public ModelCard Model => new(Title + " model", ["thin wall", Value], "wall to radius below 1/10",
            [new Source("A. Author", Title, 1999, "eq. 1")]);
        public ResultStatus Status { get; init; }
        public IReadOnlyList<ResultLine> Lines => [new("Hoop stress", Value, "inner wall"), new("Radius", "50.0 mm")];
        public IReadOnlyList<Finding> Findings => [Finding.Note("a note"), Finding.Warning(Title), Finding.Error("an error")];
        public IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;
        public Working Working => new("Hoop stress", [new WorkingStep("Hoop stress", @"\sigma_h = \frac{p\,r}{t}", "6 MPa × 50 mm / 1 mm",
            Value, new Source("A. Author", Title, 1999))]);
    }
}
