using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Building.Cuts;

public class CutListTests
{
    private static readonly MaterialLibrary Stock = MaterialLibrary.Typical;

    private static Layup LayupOf(double millimetres, params Ply[] plies)
    {
        var end = new VesselEnd(new FlatClosure(Stock.Solid("aluminium 6061-T6"), 8.Millimetres()),
            new BondedPlug(Stock.Adhesive("structural epoxy"), 40.Millimetres(), BondSurface.AbradedLaminate, BondSurface.TreatedMetal));
        return new PressureVessel("tube", new Liner(Stock.Solid("PET"), 65.Millimetres(), 0.5.Millimetres()), millimetres.Millimetres(),
            Stock.Resin("laminating epoxy"), plies, end, end).Layup();
    }

    private static ClothWrap Cloth(ClothLay lay, double rollMillimetres, int turns = 1) =>
        new(Stock.Cloth("carbon twill 200 g") with { RollWidth = rollMillimetres.Millimetres() }, turns, lay);

    private static readonly CutAllowances None = new() { PerEnd = Length.Zero, PeelPly = false };

    [Fact]
    public void A_cloth_within_its_roll_is_one_piece()
    {
        var layup = LayupOf(500, Cloth(ClothLay.WarpAxial, 1000));
        var piece = CutList.Of(layup, None).Pieces.Single();
        Assert.Equal(1, piece.Count);
        Assert.Equal(layup.Plies[0].CutWidth!.Value.Millimeters, piece.Around!.Value.Millimeters, 9);
        Assert.Equal(580, piece.OffTheRoll.Millimeters, 9);
    }

    [Fact]
    public void A_cloth_wider_than_its_roll_is_joined_with_overlaps()
    {
        var layup = LayupOf(500, Cloth(ClothLay.WarpAxial, 120));
        var piece = CutList.Of(layup, None).Pieces.Single();
        var around = layup.Plies[0].CutWidth!.Value.Millimeters;
        Assert.Equal(3, piece.Count);
        Tolerance.Relative(around + 2 * 25, 3 * piece.Around!.Value.Millimeters, 1e-12);
        Assert.True(piece.Around <= 120.Millimetres());
    }

    [Fact]
    public void A_long_cloth_with_its_warp_around_is_joined_along()
    {
        var piece = CutList.Of(LayupOf(2000, Cloth(ClothLay.WarpAround, 1000)), None).Pieces.Single();
        Assert.Equal(3, piece.Count);
        Tolerance.Relative(2080 + 2 * 25, 3 * piece.Along.Millimeters, 1e-12);
    }

    [Fact]
    public void A_bias_piece_lies_across_the_roll_and_is_refused_where_it_cannot()
    {
        var layup = LayupOf(400, Cloth(ClothLay.Bias, 1000));
        var piece = CutList.Of(layup, None).Pieces.Single();
        var around = layup.Plies[0].CutWidth!.Value.Millimeters;
        Assert.Equal(1, piece.Count);
        Tolerance.Relative((480 + around) / Math.Sqrt(2), piece.OffTheRoll.Millimeters, 1e-12);
        Assert.True((480 + around) / Math.Sqrt(2) <= 1000);
        var error = Assert.Throws<InvalidDesignException>(() => CutList.Of(LayupOf(400, Cloth(ClothLay.Bias, 300, 2)), None));
        Assert.Contains("on the bias", error.Message, StringComparison.Ordinal);
        Assert.Contains("wider than 300 mm", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Allowances_are_added_at_both_ends_as_the_sleeve_lies_on_the_vessel()
    {
        var layup = LayupOf(500, new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm light")));
        var net = CutList.Of(layup, None).Pieces.Single().Along;
        var with = CutList.Of(layup, None with { PerEnd = 50.Millimetres() }).Pieces.Single().Along;
        Tolerance.Relative(100 / layup.Plies[0].Fit!.LengthFactor, (with - net).Millimeters, 1e-9);
    }

    [Fact]
    public void Tape_has_turns_to_start_and_to_end()
    {
        var layup = LayupOf(500, new HoopWrap(Stock.Cloth("carbon tape 150 g"), 2));
        var more = CutList.Of(layup, None with { TapeTurns = 3 }).LengthOf("carbon tape 150 g") - CutList.Of(layup,
            None with { TapeTurns = 0 }).LengthOf("carbon tape 150 g");
        Tolerance.Relative(3 * 2 * Math.PI * layup.Plies[0].OuterDiameter.Millimeters, more.Millimeters, 1e-9);
    }

    [Fact]
    public void Peel_ply_covers_the_outside()
    {
        var layup = LayupOf(500, new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm light")));
        var peel = CutList.Of(layup).Pieces.Single(p => p.Material == "peel ply");
        Assert.True(peel.Around > Math.PI * layup.OuterDiameter && peel.Along > 580.Millimetres());
    }

    [Fact]
    public void Bad_allowances_are_refused() =>
        Assert.Contains("overlap of a join", Assert.Throws<InvalidDesignException>(() => CutList.Of(LayupOf(500,
            Cloth(ClothLay.Bias, 1000)), None with { Join = 1.Metres() })).Message, StringComparison.Ordinal);
}
