using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;

namespace NotebookKit.Tests.Vessels.Ends.Modes;

public class OpeningInputTests
{
    private static readonly OpeningReinforcement Boss = new(OpenedShell.Sphere, 33.Millimetres(), 3.Millimetres(), 25.Millimetres(),
        13.Millimetres(), 100.Megapascals());

    [Fact]
    public void A_hole_wider_than_half_the_dome_is_refused_and_a_nozzle_s_is_not()
    {
        Assert.True(Boss.AreasAt(60.BarGauge()).IsEnough);
        var wide = Assert.Throws<InvalidDesignException>(() =>
            (Boss with { BossBore = 60.Millimetres(), BossOuter = 64.Millimetres() }).AreasAt(60.BarGauge()));
        Assert.Contains("bore of the boss is 60 mm; it must be 0.5 mm to 33 mm. Above half the shell's diameter", wide.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void More_pressure_asks_for_more_area_and_leaves_less() => Gen.Double[1, 100].Sample(bar =>
    {
        ReinforcementAreas low = Boss.AreasAt(bar.BarGauge()), high = Boss.AreasAt((1.05 * bar).BarGauge());
        return high.Removed > low.Removed && high.Replaced < low.Replaced;
    });

    [Fact]
    public void A_wall_that_needs_more_than_there_is_is_refused() =>
        Assert.Contains("wall of the shell is 3 mm", Assert.Throws<OutOfRangeException>(() => Boss.AreasAt(300.BarGauge())).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_boss_needs_a_wall() =>
        Assert.Throws<InvalidDesignException>(() => (Boss with { BossOuter = 13.Millimetres() }).AreasAt(60.BarGauge()));

    [Fact]
    public void Flat_heads_refuse_a_wide_opening()
    {
        var wide = Assert.Throws<OutOfRangeException>(() => FlatHeadRule.Replacement(40.Millimetres(), 8.Millimetres(), 66.Millimetres()));
        Assert.Contains("opening in the flat head is 40 mm; it must be 0.01 mm to 33 mm", wide.Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => FlatHeadRule.Thickness(66.Millimetres(), 0, 60.BarGauge(), 100.Megapascals()));
    }

    [Fact]
    public void Stress_beside_a_hole_falls_to_the_pull() => Gen.Select(Gen.Double[-1, 1], Gen.Double[1, 50]).Sample((across, place) =>
        HoleStress.FactorAt(across, place) <= HoleStress.Factor(across) + 1e-12 && Math.Abs(HoleStress.FactorAt(across, 1e5) - 1) < 1e-6);

    [Fact]
    public void A_bigger_hole_leaves_less_strength() => Gen.Select(Gen.Double[0.1, 100], Gen.Enum<HolePull>()).Sample((radius, pull) =>
        HoleStress.StrengthLeftByPoint((1.1 * radius).Millimetres(), pull,
            1.Millimetres()) < HoleStress.StrengthLeftByPoint(radius.Millimetres(), pull, 1.Millimetres())
        && HoleStress.StrengthLeftByAverage((1.1 * radius).Millimetres(), pull,
            4.Millimetres()) < HoleStress.StrengthLeftByAverage(radius.Millimetres(), pull, 4.Millimetres()));

    [Fact]
    public void Holes_out_of_range_are_refused()
    {
        Assert.Throws<OutOfRangeException>(() => HoleStress.FactorAt(1, 0.9));
        Assert.Throws<OutOfRangeException>(() => HoleStress.DiscFactor(1));
        Assert.Throws<OutOfRangeException>(() => HoleStress.StrengthLeftByPoint((-1).Millimetres(), HolePull.Even, 1.Millimetres()));
        Assert.Throws<OutOfRangeException>(() => HoleStress.Factor(1.5));
    }
}
