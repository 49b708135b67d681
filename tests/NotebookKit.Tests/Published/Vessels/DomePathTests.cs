using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

public class DomePathTests
{
    private const string Koussios = "Zickel, ARS Journal 32, 1962; Koussios, Filament Winding, 2004 (unverified); figures computed " +
        "independently";

    [Fact]
    [PublishedCase("E42", "capstan equation; 6.6 for one turn at 0.3 as printed on a lesson page; rest computed independently")]
    public void Capstan()
    {
        Tolerance.Relative(6.586, YarnFriction.PullRatio(.3, 360.Degrees()), 1e-3);
        Tolerance.Relative(43.38, YarnFriction.PullRatio(.3, 720.Degrees()), 1e-3);
        Tolerance.Relative(1.8745, YarnFriction.PullRatio(.2, 180.Degrees()), 1e-4);
        double[] friction = [.15, .25, .30], ratio = [1.2657, 1.4810, 1.6020];
        for (var i = 0; i < friction.Length; i++) Tolerance.Relative(ratio[i], YarnFriction.PullRatio(friction[i], 90.Degrees()), 1e-4);
    }

    [Fact]
    [PublishedCase("E43", "capstan equation with normal curvature sin²θ/R; figures computed independently")]
    public void Yarn_at_an_angle_and_over_edges()
    {
        Tolerance.Relative(1.7426, YarnFriction.PullRatio(.25, 180.Degrees(), 45.Degrees()), 1e-4);
        Tolerance.Relative(1.9029, YarnFriction.PullRatio(.25, 180.Degrees(), 55.Degrees()), 1e-4);
        var behind = YarnFriction.PullBehindEdge(Force.FromNewtons(100), .25, 90.Degrees(), 0.Degrees());
        Tolerance.Relative(67.52, behind.Newtons, 1e-4);
        Tolerance.Relative(45.59, YarnFriction.PullBehindEdge(behind, .25, 90.Degrees(), 0.Degrees()).Newtons, 1e-4);
    }

    [Theory]
    [PublishedCase("E44", "sinθ/r constant on a hemisphere: K(1/2) = 1.85407 exact; figures computed independently")]
    [InlineData(45, 0, 1.85407, 75.12, 0)]
    [InlineData(45, .2, 1.65204, 66.93, 8.130)]
    [InlineData(45, .4, 1.43673, 58.21, 16.430)]
    [InlineData(55, 0, 2.03472, 95.50, 0)]
    [InlineData(55, .2, 1.83244, 86.00, 9.429)]
    [InlineData(55, .4, 1.61527, 75.81, 19.127)]
    public void Sleeve_on_a_hemisphere(double angle, double hole, double yarn, double turn, double atHole)
    {
        var path = SleevePath.OverHemisphere(33.Millimetres(), angle.Degrees(), (33 * hole).Millimetres());
        Tolerance.Relative(yarn, path.Yarn / 33.Millimetres(), 1e-5);
        Tolerance.Relative(turn, path.Turn.Degrees, 1e-3);
        Tolerance.Absolute(atHole, path.NarrowAngle.Degrees, 1e-3);
        Tolerance.Relative(Math.Acos(hole), path.Meridian / 33.Millimetres(), 1e-9);
    }

    [Fact]
    [PublishedCase("E45", "sinθ/r constant on a cone; figures computed independently")]
    public void Sleeve_on_a_cone()
    {
        var path = SleevePath.OverCone(76.Millimetres(), 50.Millimetres(), 15.Degrees(), 45.Degrees());
        Tolerance.Relative(50.228, path.Meridian.Millimeters, 1e-4);
        Tolerance.Relative(62.610, path.Yarn.Millimeters, 1e-4);
        Tolerance.Relative(27.723, path.NarrowAngle.Degrees, 1e-4);
        Tolerance.Relative(66.75, path.Turn.Degrees, 1e-4);
        Tolerance.Relative(53.74, 2 * Geodesic.TurnRadius(38.Millimetres(), 45.Degrees()).Millimeters, 1e-4);
    }

    [Theory]
    [PublishedCase("E46", "Clairaut's relation; figures computed independently")]
    [InlineData(1, 11.537)]
    [InlineData(.8, 14.478)]
    [InlineData(.6, 19.471)]
    [InlineData(.4, 30.000)]
    [InlineData(.3, 41.810)]
    public void Geodesic_angle(double radius, double angle) =>
        Tolerance.Absolute(angle, Geodesic.AngleAt(10.Millimetres(), (50 * radius).Millimetres()).Degrees, 6e-4);

    [Fact]
    [PublishedCase("E47", "isotensoid with closed poles, Taylor's curve: height 0.599 (unverified), √π·Γ(3/4)/Γ(1/4); figures computed " +
        "independently")]
    public void Isotensoid_with_closed_poles()
    {
        var dome = new Isotensoid(50.Millimetres(), Length.Zero);
        Tolerance.Relative(.599070, dome.Height() / 50.Millimetres(), 2e-6);
        double[] radii = [.9, .8, .6, .4, .2], heights = [.30296, .40946, .52494, .57762, .59640];
        for (var i = 0; i < radii.Length; i++) Tolerance.Absolute(heights[i],
            dome.HeightAt((50 * radii[i]).Millimetres()) / 50.Millimetres(), 6e-6);
    }

    [Theory]
    [PublishedCase("E49", Koussios)]
    [InlineData(.2, .22137, .30652, .41483, .48511, .53370, .56742)]
    [InlineData(.3, .22486, .31162, .42259, .49539, .54666, .58351)]
    public void Isotensoid_with_an_opening(double pole, double z95, double z90, double z80, double z70, double z60, double z50)
    {
        var dome = new Isotensoid(50.Millimetres(), (50 * pole).Millimetres());
        foreach (var (radius, height) in new[] { (.95, z95), (.9, z90), (.8, z80), (.7, z70), (.6, z60), (.5, z50) })
            Tolerance.Absolute(height, dome.HeightAt((50 * radius).Millimetres()) / 50.Millimetres(), 6e-6);
    }

    [Theory]
    [PublishedCase("E50", Koussios)]
    [InlineData(.2, .510310, 1.95833)]
    [InlineData(.4, .545545, 1.80952)]
    public void Isotensoid_loads_its_fibres_alike(double pole, double load, double curvature)
    {
        var dome = new Isotensoid(1000.Millimetres(), (1000 * pole).Millimetres());
        var pressure = 10.BarGauge();
        Tolerance.Relative(load, dome.FibreLoad(pressure).NewtonsPerMeter / 1e6, 2e-6);
        Tolerance.Relative(curvature, dome.EquatorCurvatureRatio, 1e-5);
        foreach (var radius in new[] { .5, .6, .8, 1.0 })
        {
            var r = (1000 * radius).Millimetres();
            // The meridian's own slope and its radius of curvature, not the netting they come from.
            Tolerance.Relative(load * 1e6, 1e6 / 2 * CrossCurvature(dome, radius) * radius / Math.Cos(dome.FibreAngleAt(r).Radians), 1e-4);
            Tolerance.Relative(dome.CrossCurvatureAt(r).Meters, CrossCurvature(dome, radius), 1e-4);
        }

        // r over the sine of the normal's angle, from the difference of heights; R itself at the equator.
        static double CrossCurvature(Isotensoid dome, double radius)
        {
            if (radius == 1) return 1;
            const double h = 1e-3;
            var slope = (dome.HeightAt((1000 * (radius - h)).Millimetres()) - dome.HeightAt((1000 * (radius + h)).Millimetres()))
                .Meters / (2 * h);
            return radius * Math.Sqrt(1 + slope * slope) / slope;
        }
    }

    [Fact]
    [PublishedCase("E50", Koussios)]
    public void Layer_grows_towards_the_opening()
    {
        var dome = new Isotensoid(50.Millimetres(), 10.Millimetres());
        Tolerance.Relative(1.2649, dome.ThicknessGrowthAt(40.Millimetres()), 1e-4);
        Tolerance.Relative(1.7321, dome.ThicknessGrowthAt(30.Millimetres()), 1e-4);
    }
}
