using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Fills;

public sealed class PadPlumbingTests
{
    private static readonly PadFill Fill = new()
    {
        Chamber = new Chamber(4.5.Litres(), 66.Millimetres(), 60.BarGauge()), Supply = 60.BarGauge(), Target = 58.BarGauge(),
        Restrictor = new Orifice(0.5.Millimetres(), 0.8),
    };

    private static PadPart Rated(PadPartKind kind, string name, double bar) => new(kind, name) { RatedTo = bar.BarGauge() };

    [Fact]
    public void Nothing_said_is_nothing_given()
    {
        var line = PadPlumbing.Of(Fill);
        Assert.Equal(10, line.Parts.Count);
        Assert.Equal("not given", line.Part(PadPartKind.Hose).RatingText);
        Assert.Equal("rating not given", line.Part(PadPartKind.Restrictor).RatingText);
        Assert.Equal("to 60 bar gauge", line.Part(PadPartKind.Vessel).RatingText);
        Assert.Contains(line.Findings, f => f.Message.Contains("No dump valve is given", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_below_what_stands_in_it_is_an_error_and_one_without_a_rating_a_warning()
    {
        var weak = PadPlumbing.Of(Fill, new() { Parts = [Rated(PadPartKind.Hose, "hose", 40),
            new(PadPartKind.CheckValve, "check valve")] });
        var error = Assert.Single(weak.Findings, f => f.Severity == FindingSeverity.Error);
        Assert.Contains("The hose is rated to 40 bar gauge, but 60 bar gauge may stand", error.Message, StringComparison.Ordinal);
        Assert.Contains(weak.Findings, f => f.Severity == FindingSeverity.Warning && f.Message.Contains("check valve",
            StringComparison.Ordinal));
        Assert.DoesNotContain(PadPlumbing.Of(Fill, new() { Parts = [Rated(PadPartKind.Hose, "hose", 60)] }).Findings,
            f => f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void Before_the_regulator_the_cylinder_counts()
    {
        var full = Fill with { Cylinder = new("A", 10.Litres(), 200.BarGauge()) };
        Assert.Contains(PadPlumbing.Of(full, new() { Parts = [Rated(PadPartKind.Regulator, "regulator", 150)] }).Findings,
            f => f.Severity == FindingSeverity.Error && f.Message.Contains("200 bar gauge may stand", StringComparison.Ordinal));
    }

    [Fact]
    public void The_cylinder_of_the_clubs_own_line_counts_as_that_of_the_fill()
    {
        var line = PadPlumbing.Of(Fill, new() { Cylinder = new("A", 10.Litres(), 200.BarGauge()),
            Parts = [Rated(PadPartKind.Regulator, "regulator", 199)] });
        Assert.Contains(line.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("200 bar gauge may stand",
            StringComparison.Ordinal));
        // Without a cylinder the regulator sees at least what it gives.
        Assert.Contains(PadPlumbing.Of(Fill, new() { Parts = [Rated(PadPartKind.Regulator, "regulator", 59)] }).Findings,
            f => f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void A_part_named_twice_is_refused() => Assert.Contains(new PadEquipment
    {
        Parts = [Rated(PadPartKind.Hose, "hose", 100), Rated(PadPartKind.Hose, "hose", 40)],
    }.Validate(), f => f.Severity == FindingSeverity.Error);
}
