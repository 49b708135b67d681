using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;

namespace NotebookKit.Tests.Vessels.Laminates;

public class TubeWallTests
{
    private static readonly Lamina Carbon = new(105.Gigapascals(), 6.5.Gigapascals(), 2.9.Gigapascals(), 0.28);
    private static readonly PlyStrength CarbonStrength = new(1300.Megapascals(), 780.Megapascals(), 50.Megapascals(), 85.Megapascals(),
        40.Megapascals());
    private static readonly Lamina Glass = new(35.Gigapascals(), 8.Gigapascals(), 3.Gigapascals(), 0.28);
    private static readonly PlyStrength GlassStrength = new(600.Megapascals(), 360.Megapascals(), 45.Megapascals(), 85.Megapascals(),
        40.Megapascals());

    private static readonly Gen<TubePly> Plies =
        from angle in Gen.Double[0, 90]
        from thickness in Gen.Double[0.1, 1.0]
        from glass in Gen.Bool
        select new TubePly("ply", glass ? Glass : Carbon, glass ? GlassStrength : CarbonStrength, angle.Degrees(), thickness.Millimetres());

    private static readonly Gen<TubeWall> Walls =
        from plies in Plies.List[1, 4]
        from radius in Gen.Double[15, 60]
        select new TubeWall(radius.Millimetres(), plies);

    [Fact]
    public void Stress_at_failure_does_not_depend_on_the_size_of_the_tube() => Walls.Sample(
        wall =>
        {
            var twice = new TubeWall(wall.Radius * 2, [.. wall.Plies.Select(p => p with { Thickness = p.Thickness * 2 })]);
            var (one, two) = (wall.Burst(), twice.Burst());
            Tolerance.Relative(one.FirstPlyFailure.Pascals, two.FirstPlyFailure.Pascals, 1e-7);
            Tolerance.Relative(one.Last.Pascals, two.Last.Pascals, 1e-7);
        },
        iter: 300);

    [Fact]
    public void Every_stress_scales_with_the_materials() => Walls.Sample(
        wall =>
        {
            var stronger = wall with { Plies = [.. wall.Plies.Select(p => p
                with { Lamina = Times(p.Lamina, 1.7), Strength = Times(p.Strength, 1.7) })] };
            var (one, two) = (wall.Burst(), stronger.Burst());
            Tolerance.Relative(1.7 * one.FirstPlyFailure.Pascals, two.FirstPlyFailure.Pascals, 1e-7);
            Tolerance.Relative(1.7 * one.Last.Pascals, two.Last.Pascals, 1e-7);
        },
        iter: 300);

    // At one angle for all. A ply at another angle can lower it: a shallow family that is pushed makes a steeper one pull harder.
    [Fact]
    public void A_ply_more_at_the_same_angle_never_lowers_what_is_rated_on() => Gen.Select(Walls, Plies, Gen.Double[0, 90]).Sample(
        (wall, ply, degrees) =>
        {
            var even = wall with { Plies = [.. wall.Plies.Select(p => p with { Angle = degrees.Degrees() })] };
            var thicker = wall with { Plies = [.. even.Plies, ply with { Angle = degrees.Degrees() }] };
            Assert.True(Low(thicker) >= 0.999 * Low(even), $"{Low(thicker):F4} below {Low(even):F4}: {Describe(even)} and {Describe(ply)}");
        },
        iter: 2000);

    [Fact]
    public void A_hoop_ply_over_a_sleeve_never_lowers_what_its_fibres_hold_as_laid()
        => Gen.Select(Plies, Plies, Gen.Double[30, 54.7]).Sample(
        (sleeve, hoop, degrees) =>
        {
            var wall = new TubeWall(35.Millimetres(), [sleeve with { Angle = degrees.Degrees() }]);
            var thicker = wall with { Plies = [.. wall.Plies, hoop with { Angle = 90.Degrees() }] };
            var asLaid = wall.Burst().Netting.Pascals * wall.Thickness.Meters / 1e6;
            Assert.True(Low(thicker) >= 0.995 * asLaid, $"{Low(thicker):F4} below {asLaid:F4}: {Describe(wall)} and {Describe(hoop)}");
        },
        iter: 2000);

    [Fact]
    public void First_crack_never_comes_after_the_end_and_every_number_is_finite() => Walls.Sample(
        wall =>
        {
            foreach (var criterion in Enum.GetValues<FailureCriterion>())
            {
                var failure = wall.Burst(criterion);
                Assert.True(failure.FirstPlyFailure <= failure.Last);
                Assert.True(double.IsFinite(failure.Last.Pascals) && failure.Last.Pascals > 0);
                Assert.True(failure.Steps.Zip(failure.Steps.Skip(1)).All(s => s.First.MeanStress <= s.Second.MeanStress));
            }
        },
        iter: 500);

    [Fact]
    public void Growth_is_linear_in_pressure() => Walls.Sample(
        wall =>
        {
            var (one, three) = (wall.Expand(5.BarGauge()), wall.Expand(15.BarGauge()));
            Tolerance.Relative(3 * one.Hoop.DecimalFractions, three.Hoop.DecimalFractions, 1e-9);
        },
        iter: 200);

    [Fact]
    public void A_single_family_at_balance_comes_to_two_thirds_of_its_strength()
    {
        // Netting: σ_hoop = 2/3·Xt; the linear path turns the fibres by less than half a degree.
        var wall = new TubeWall(50.Millimetres(), [new TubePly("sleeve", Carbon, CarbonStrength, 54.7356.Degrees(), 1.Millimetres())]);
        Tolerance.Relative(1300 * 2 / 3.0, wall.Burst().Last.Megapascals, 0.02);
    }

    [Theory]
    [InlineData(-1, 1, "angle of ply")]
    [InlineData(91, 1, "angle of ply")]
    [InlineData(45, -1, "thickness of")]
    public void Out_of_range_is_refused_with_a_sentence(double degrees, double millimetres, string what)
    {
        var wall = new TubeWall(50.Millimetres(), [new TubePly("ply", Carbon, CarbonStrength, degrees.Degrees(),
            millimetres.Millimetres())]);
        var error = Assert.Throws<InvalidDesignException>(() => wall.Burst());
        Assert.Contains(what, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lamina_that_gives_energy_back_is_refused()
    {
        var wrong = Carbon with { PoissonRatio = 5 };
        Assert.Throws<InvalidDesignException>(() => new Laminate([new LaminatePly(wrong, 0.Degrees(), 1.Millimetres())]).Stiffness());
    }

    private static double Low(TubeWall wall)
    {
        var failure = wall.Burst();
        var low = Math.Min(failure.Last.Pascals, failure.Netting.Pascals);
        return low * wall.Thickness.Meters / 1e6;
    }

    private static string Describe(TubeWall wall) => string.Join(" | ", wall.Plies.Select(Describe));

    private static string Describe(TubePly ply) => $"{ply.Lamina.Longitudinal.Gigapascals:F0} GPa {ply.Angle.Degrees:F1}° "
        + $"{ply.Thickness.Millimeters:F2} mm";

    private static Lamina Times(Lamina l, double k) => new(l.Longitudinal * k, l.Transverse * k, l.Shear * k, l.PoissonRatio);

    private static PlyStrength Times(PlyStrength s, double k)
        => new(s.LongitudinalTension * k, s.LongitudinalCompression * k, s.TransverseTension * k, s.TransverseCompression * k, s.Shear * k);
}
