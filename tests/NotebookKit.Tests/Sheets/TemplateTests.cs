using NotebookKit.DesignFiles;
using NotebookKit.Quantities;
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
    public void Fins_are_laid_whole_and_apart_on_the_sheet_that_the_stock_list_names()
    {
        Assert.Contains(Made.LeftOut, l => l.Contains("fin sheet, 2 mm", StringComparison.Ordinal));
        var shelf = new ShelfItem("fin sheet 2 mm") { Length = 600.Millimetres(), Width = 300.Millimetres() };
        var sheet = TemplateSheet.Of("Curlew", CutList.Of(Curlew.Vessel.Layup()), Curlew.Stage.Body, [shelf]);
        var nest = Assert.Single(sheet.Nests);
        Assert.Equal(3, nest.Placements.Count);
        Assert.All(nest.Placements.SelectMany(p => p.Outline), c => Assert.True(c.Along.Millimeters is >= 0 and <= 600
            && c.Across.Millimeters is >= 0 and <= 300));
        // The trapezium's own area: (130 + 70) / 2 mm by 80 mm.
        Assert.Equal(3 * 80.0, nest.PieceArea.SquareCentimeters, 1e-6);
        Assert.DoesNotContain(sheet.LeftOut, l => l.Contains("fin sheet", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(ClothLay.WarpAxial, 1, 0)]
    [InlineData(ClothLay.WarpAround, 0, 1)]
    [InlineData(ClothLay.Bias, 1, 1)]
    public void A_cloth_ply_has_the_size_of_the_cut_list_and_an_arrow_along_its_warp(ClothLay lay, int along, int around)
    {
        var vessel = Curlew.Vessel with { Plies = [.. Curlew.Vessel.Plies, new ClothWrap(
            Curlew.Materials.Cloth("carbon plain 93 g"), Lay: lay)] };
        var cuts = CutList.Of(vessel.Layup());
        var piece = cuts.Pieces.Single(p => p.Material == "carbon plain 93 g");
        var template = TemplateSheet.Of("Curlew", cuts, null).Templates.Single(t => t.Name.StartsWith(piece.Ply, StringComparison.Ordinal));
        Assert.Equal(piece.Along.Millimeters, template.Length.Millimeters, 1e-9);
        Assert.Equal(piece.Around!.Value.Millimeters, template.Width.Millimeters, 1e-9);
        var arrow = template.Lines.Single(l => l.Kind == TemplateLineKind.Grain).Points;
        var (dx, dy) = ((arrow[1].Along - arrow[0].Along).Millimeters, (arrow[1].Across - arrow[0].Across).Millimeters);
        Assert.Equal((along, around), (Math.Sign(dx), Math.Sign(dy)));
        Assert.True(along != around || Math.Abs(dx - dy) < 1e-9);
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
