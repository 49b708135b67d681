using NotebookKit.DesignFiles;
using NotebookKit.Sheets;
using NotebookKit.Tests.DesignFiles;

namespace NotebookKit.Tests.Sheets;

public sealed class TemplateTests
{
    private static readonly Design Curlew = Design.Parse(DesignFixture.CurlewText, "curlew.json");
    private static readonly TemplateSheet Made = TemplateSheet.Of("Curlew", CutList.Of(Curlew.Vessel.Layup()), Curlew.Stage.Body);

    [Fact]
    public void The_fin_has_the_sizes_of_the_design()
    {
        var outline = Made.Templates.Single(t => t.Name.StartsWith("fin,", StringComparison.Ordinal)).Lines.Single(l => l.IsClosed).Points;
        Assert.Equal([(0.0, 0.0), (60, 80), (130, 0), (130, 80)], outline.Select(p => (Math.Round(p.Along.Millimeters, 6),
            Math.Round(p.Across.Millimeters, 6))).Order());
        Assert.Contains(Made.Templates.SelectMany(t => t.Lines), l => l.Kind == TemplateLineKind.Grain);
    }

    [Fact]
    public void The_jig_takes_body_and_fins_and_the_marks_stand_a_third_apart()
    {
        var jig = Made.Templates.Single(t => t.Name.StartsWith("jig", StringComparison.Ordinal));
        Assert.Equal(71.5, jig.Circles.Min(c => c.Diameter.Millimeters), 6);
        Assert.Equal(3, jig.Lines.Count(l => l.Kind == TemplateLineKind.Cut));
        Assert.All(jig.Lines.Where(l => l.Kind == TemplateLineKind.Cut), l => Assert.Equal(2.2, Math.Sqrt(
            Math.Pow(l.Points[0].Along.Millimeters - l.Points[3].Along.Millimeters, 2)
            + Math.Pow(l.Points[0].Across.Millimeters - l.Points[3].Across.Millimeters, 2)), 6));
        var marks = Made.Templates.Single(t => t.Name.StartsWith("fin marks", StringComparison.Ordinal));
        Assert.Equal(Math.PI * 71, marks.Length.Millimeters, 6);
        var at = marks.Lines.Where(l => l.Kind == TemplateLineKind.Mark).Select(l => l.Points[0].Along.Millimeters).ToList();
        Assert.Equal(Math.PI * 71 / 3, at[1] - at[0], 6);
    }

    [Fact]
    public void Sleeves_are_cut_where_the_cut_list_says()
    {
        var strip = Made.Templates.Single(t => t.Name.StartsWith("strip", StringComparison.Ordinal));
        var cuts = CutList.Of(Curlew.Vessel.Layup()).Pieces.Where(p => p.Material == "carbon sleeve 65 mm heavy").Select(p =>
            p.Along.Millimeters);
        Assert.Equal(cuts.Order(), strip.Lines.Where(l => l is { Kind: TemplateLineKind.Cut, IsClosed: false })
            .Select(l => l.Points[0].Along.Millimeters).Order());
    }

    [Fact]
    public void Discs_have_the_diameter_that_the_cut_list_gives_them_and_their_absence_is_said()
    {
        Assert.Equal(2, Made.LeftOut.Count(l => l.Contains("no cap discs", StringComparison.Ordinal)));
        var discs = new CapDiscs(Curlew.Materials.Cloth("carbon twill 200 g"), 4);
        var vessel = Curlew.Vessel with { ForwardEnd = Curlew.Vessel.ForwardEnd with { Discs = discs } };
        var disc = TemplateSheet.Of("Curlew", CutList.Of(vessel.Layup()), null).Templates.Single(t => t.Name.StartsWith("cap disc",
            StringComparison.Ordinal));
        Assert.Equal(discs.DiameterOver(vessel.ForwardEnd.Closure, vessel.Liner.Bore).Millimeters, disc.Circles[0].Diameter.Millimeters, 6);
    }
}
