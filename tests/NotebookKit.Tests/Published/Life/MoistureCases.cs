using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Life;

public class MoistureCases
{
    private const string Sources = "Crank 1975, plane sheet; Shen and Springer, J. Compos. Mater. 10, 1976 (approximation "
        + "unverified): computed";

    private static KinematicViscosity Mm2PerS(double value) => KinematicViscosity.FromSquareMetersPerSecond(value * 1e-6);

    // A 1 mm wall of 10⁻⁶ mm²/s: x = t / 10⁶ s.
    private static readonly MoistureUptake Wall = new(1.Millimetres(), Mm2PerS(1e-6), WetFaces.Both);

    [Theory]
    [PublishedCase("L45", Sources)]
    [InlineData(0.01, 0.225675833, 0.225675833, 0.206138502)]
    [InlineData(0.05, 0.50408782, 0.504626504, 0.537857051)]
    [InlineData(0.1, 0.697881906, 0.713649646, 0.72696191)]
    [InlineData(0.2, 0.887402875, 1.00925301, 0.887320663)]
    public void Share_after_a_scaled_time(double x, double exact, double early, double approximate)
    {
        var time = (x * 1e6).Seconds();
        Tolerance.Relative(exact, Wall.ShareAfter(time).DecimalFractions, 1e-8);
        Tolerance.Relative(early, Wall.EarlyShareAfter(time).DecimalFractions, 1e-8);
        Tolerance.Relative(approximate, Wall.ApproximateShareAfter(time).DecimalFractions, 1e-8);
        Tolerance.Absolute(exact, Wall.ApproximateShareAfter(time).DecimalFractions, 0.035);
    }

    [Fact]
    [PublishedCase("L45", Sources)]
    public void Share_near_the_end()
    {
        Tolerance.Relative(0.994170479, Wall.ShareAfter(5e5.Seconds()).DecimalFractions, 1e-8);
        Tolerance.Relative(0.986971369, Wall.ApproximateShareAfter(5e5.Seconds()).DecimalFractions, 1e-8);
    }

    [Theory]
    [PublishedCase("L46", Sources)]
    [InlineData(99.9, 0.678622646)]
    [InlineData(50, 0.0491826849)]
    public void Scaled_time_to_a_share(double percent, double x) =>
        Tolerance.Relative(x, Wall.TimeTo(percent.Percent()).Seconds / 1e6, 1e-7);

    [Fact]
    [PublishedCase("L46", Sources)]
    public void A_liner_makes_it_four_times_as_long()
    {
        var wall = new MoistureUptake(2.Millimetres(), Mm2PerS(1e-7), WetFaces.Both);
        Tolerance.Relative(314.177, wall.TimeTo(99.9.Percent()).Days, 2e-6);
        Tolerance.Relative(1256.71, (wall with { Faces = WetFaces.OuterOnly }).TimeTo(99.9.Percent()).Days, 4e-6);
    }

    [Fact]
    [PublishedCase("L47", Sources)]
    public void Diffusivity_from_two_weighings() =>
        Tolerance.Relative(
            1.6160456e-7,
            MoistureUptake.DiffusivityFrom(2.Millimetres(), 1.5.Percent(), 0.2.Percent(), 24.Hours(), 0.5.Percent(),
                150.Hours()).SquareMetersPerSecond * 1e6,
            1e-7);
}
