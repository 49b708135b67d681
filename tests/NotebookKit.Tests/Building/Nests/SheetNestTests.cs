using CsCheck;
using NetTopologySuite.Geometries;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Building.Nests;

public class SheetNestTests
{
    private static SheetPiece Piece(string name, int count, params (double Along, double Across)[] millimetres) =>
        new(name, [.. millimetres.Select(p => new SheetPoint(p.Along.Millimetres(), p.Across.Millimetres()))], count);

    private static SheetPiece Fin(int count) => Piece("fin", count, (0, 0), (60, 85), (130, 85), (130, 0));

    // Checked with the geometry library's own overlay, not with the no-fit polygons that placed them.
    private static Polygon PolygonOf(NestPlacement placement) => GeometryFactory.Default.CreatePolygon(
        [.. placement.Outline.Append(placement.Outline[0]).Select(p => new Coordinate(p.Along.Millimeters, p.Across.Millimeters))]);

    private static void AssertSound(NestResult result)
    {
        var nest = result.Nest;
        var gap = nest.Gap.Millimeters;
        Assert.Equal(nest.Pieces.Sum(p => p.Count), result.Placements.Count);
        foreach (var placement in result.Placements)
        {
            Assert.All(placement.Outline, p => Assert.InRange(p.Along.Millimeters, gap - 0.01, nest.SheetLength.Millimeters - gap + 0.01));
            Assert.All(placement.Outline, p => Assert.InRange(p.Across.Millimeters, gap - 0.01, nest.SheetWidth.Millimeters - gap + 0.01));
            Tolerance.Relative(placement.Piece.Area.SquareMillimeters, PolygonOf(placement).Area, 1e-9);
        }

        for (var i = 0; i < result.Placements.Count; i++)
            for (var j = 0; j < i; j++)
            {
                if (result.Placements[i].Sheet != result.Placements[j].Sheet) continue;
                var (a, b) = (PolygonOf(result.Placements[i]), PolygonOf(result.Placements[j]));
                Assert.True(a.Intersection(b).Area < 0.01, $"pieces {i} and {j} overlap");
                Assert.True(a.Distance(b) >= gap - 0.01, $"pieces {i} and {j} are {a.Distance(b):F3} mm apart");
            }
    }

    [Fact]
    public void Two_triangles_fill_their_rectangle_to_the_last()
    {
        var result = new SheetNest(100.Millimetres(), 60.Millimetres(),
            [Piece("half", 2, (0, 0), (100, 0), (0, 60))]) { Gap = 0.Millimetres() }.Place();
        AssertSound(result);
        Assert.Equal(1, result.Sheets);
        Tolerance.Relative(100, result.Yield.Percent, 1e-4);
        Assert.Equal(1, result.Placements.Count(p => p.QuarterTurns == 2));
    }

    [Fact]
    public void Fins_interlock_head_to_tail()
    {
        // One side of the fin is slanted by 60 mm: slant to slant two of them take 2 · 130 − 60 = 200 mm, both as drawn 260.
        var pair = new SheetNest(600.Millimetres(), 92.Millimetres(), [Fin(2)]) { Gap = 0.Millimetres() };
        Tolerance.Absolute(200, pair.Place().UsedOfLast.Millimeters, 0.01);
        Tolerance.Absolute(260, (pair with { Turns = SheetTurns.AsDrawn }).Place().UsedOfLast.Millimeters, 0.01);
    }

    [Fact]
    public void The_gap_is_kept_everywhere()
    {
        var result = new SheetNest(600.Millimetres(), 300.Millimetres(),
            [Fin(3), Piece("ring", 2, (0, 0), (90, 0), (90, 90), (0, 90))]) { Gap = 4.Millimetres() }.Place();
        AssertSound(result);
        Assert.Equal(1, result.Sheets);
    }

    [Fact]
    public void A_notch_takes_a_piece_that_fits_it()
    {
        // An L of three squares and a square make a larger square.
        var result = new SheetNest(100.Millimetres(), 100.Millimetres(),
            [Piece("L", 1, (0, 0), (100, 0), (100, 50), (50, 50), (50, 100), (0, 100)),
                Piece("square", 1, (0, 0), (50, 0), (50, 50), (0, 50))]) { Gap = 0.Millimetres() }.Place();
        AssertSound(result);
        Tolerance.Relative(100, result.Yield.Percent, 1e-4);
    }

    [Fact]
    public void What_is_too_much_for_one_sheet_goes_on_to_the_next()
    {
        var result = new SheetNest(200.Millimetres(), 100.Millimetres(), [Fin(6)]).Place();
        AssertSound(result);
        Assert.InRange(result.Sheets, 4, 6);
        Assert.Contains(result.Findings, f => f.Message.Contains("sheets", StringComparison.Ordinal));
    }

    [Fact]
    public void Whatever_the_pieces_they_lie_apart_and_on_the_sheet() =>
        Gen.Select(Gen.Int[1, 4], Gen.Double[20, 140], Gen.Double[20, 90], Gen.Double[-60, 60],
            Gen.Double[0, 6]).Sample((count, root, span, sweep, gap) =>
            AssertSound(new SheetNest(400.Millimetres(), 250.Millimetres(),
                [Piece("fin", count, (0, 0), (sweep, span), (sweep + root / 2, span), (root, 0))])
            {
                Gap = gap.Millimetres(), Tries = 3,
            }.Place()), iter: 20);

    [Fact]
    public void The_same_seed_gives_the_same_layout()
    {
        var nest = new SheetNest(600.Millimetres(), 300.Millimetres(), [Fin(5), Piece("tab", 4, (0, 0), (40, 0), (40, 25), (0, 25))]);
        var (a, b) = (nest.Place(), nest.Place());
        Assert.Equal(a.Placements.Select(p => p.Outline[0]), b.Placements.Select(p => p.Outline[0]));
    }

    [Fact]
    public void Bad_input_is_refused_with_every_reason()
    {
        var crossed = Piece("crossed", 1, (0, 0), (50, 50), (50, 0), (0, 50));
        var message = Assert.Throws<InvalidDesignException>(() => new SheetNest(5.Millimetres(), 300.Millimetres(),
            [crossed, Fin(0)]) { Gap = 90.Millimetres() }.Place()).Message;
        Assert.Contains("length of the sheet", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("crosses itself", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("number of fin is 0", message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("gap between pieces", message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_piece_larger_than_the_sheet_is_refused()
    {
        var error = Assert.Throws<InvalidDesignException>(() => new SheetNest(120.Millimetres(), 300.Millimetres(), [Fin(1)]).Place());
        Assert.Contains("doesn't fit a sheet of 120 mm × 300 mm", error.Message, StringComparison.Ordinal);
        Assert.Contains("plies", error.Message, StringComparison.Ordinal);
    }
}
