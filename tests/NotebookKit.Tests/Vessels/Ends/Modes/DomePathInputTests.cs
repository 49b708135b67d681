using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Ends.Modes;

public class DomePathInputTests
{
    [Fact]
    public void Friction_adds_up_over_edges() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 360], Gen.Double[0, 360]).Sample((mu, one, other) =>
        Math.Abs(YarnFriction.PullRatio(mu, one.Degrees()) * YarnFriction.PullRatio(mu, other.Degrees()) / YarnFriction.PullRatio(mu,
            (one + other).Degrees()) - 1) < 1e-9);

    [Fact]
    public void A_steeper_sleeve_crosses_an_edge_with_less_friction()
    {
        double Behind(double angle) => YarnFriction.PullBehindEdge(100.Newtons(), 0.25, 90.Degrees(), angle.Degrees()).Newtons;
        Assert.True(Behind(0) < Behind(45) && Behind(45) < Behind(80) && Behind(80) < 100);
    }

    [Fact]
    public void A_sleeve_s_angle_falls_where_a_wound_yarn_s_rises() =>
        Gen.Select(Gen.Double[20, 60], Gen.Double[0.8, 0.99]).Sample((angle, narrow) =>
    {
        var sleeve = SleevePath.OverCone(76.Millimetres(), (76 * narrow).Millimetres(), 15.Degrees(), angle.Degrees());
        var turn = Geodesic.TurnRadius(38.Millimetres(), angle.Degrees());
        return sleeve.NarrowAngle.Degrees < angle
            && (turn >= (38 * narrow).Millimetres() || Geodesic.AngleAt(turn, (38 * narrow).Millimetres()).Degrees > angle)
            && sleeve.Yarn > sleeve.Meridian;
    });

    [Fact]
    public void A_cone_that_hardly_narrows_is_a_cylinder()
    {
        var path = SleevePath.OverCone(66.Millimetres(), 65.9.Millimetres(), 0.1.Degrees(), 45.Degrees());
        Tolerance.Relative(Math.Sqrt(2), path.Yarn / path.Meridian, 2e-3);
    }

    [Fact]
    public void A_dome_is_as_tall_in_any_unit()
    {
        var metric = new Isotensoid(50.8.Millimetres(), 12.7.Millimetres());
        var inch = new Isotensoid(2.Inches(), 0.5.Inches());
        Tolerance.Relative(metric.Height().Meters, inch.Height().Meters, 1e-12);
    }

    [Fact]
    public void A_wider_opening_makes_a_steeper_dome() => Gen.Double[0, 0.5].Sample(pole =>
        new Isotensoid(50.Millimetres(), (50 * (pole + 0.05)).Millimetres())
            .HeightAt(45.Millimetres()) > new Isotensoid(50.Millimetres(), (50 * pole).Millimetres()).HeightAt(45.Millimetres()));

    [Fact]
    public void Bad_paths_are_refused_in_words()
    {
        Assert.Throws<OutOfRangeException>(() => YarnFriction.PullRatio(-0.1, 90.Degrees()));
        Assert.Throws<OutOfRangeException>(() => YarnFriction.PullRatio(double.NaN, 90.Degrees()));
        Assert.Throws<OutOfRangeException>(() => YarnFriction.PullBehindEdge(1.Newtons(), 0.2, 90.Degrees(), 90.Degrees()));
        Assert.Contains("radius of the hole in the dome is 40 mm",
            Assert.Throws<OutOfRangeException>(() => SleevePath.OverHemisphere(33.Millimetres(), 45.Degrees(), 40.Millimetres())).Message,
            StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => SleevePath.OverCone(50.Millimetres(), 76.Millimetres(), 15.Degrees(), 45.Degrees()));
        Assert.Contains("The yarn doesn't reach further in",
            Assert.Throws<OutOfRangeException>(() => Geodesic.AngleAt(20.Millimetres(), 10.Millimetres())).Message,
            StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => new Isotensoid(50.Millimetres(), 40.Millimetres()).Height());
        Assert.Throws<OutOfRangeException>(() => new Isotensoid(50.Millimetres(), 10.Millimetres()).HeightAt(11.Millimetres()));
        Assert.Throws<OutOfRangeException>(() => new Isotensoid(50.Millimetres(), Length.Zero).ThicknessGrowthAt(Length.Zero));
    }
}
