using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

public class OpeningTests
{
    private const string Code = "ASME Section VIII Division 1 (formula unverified); figures computed independently: ";
    private const string Kirsch = "Kirsch, Zeitschrift VDI 42, 1898 (unverified); figures re-computed; the sphere's 2 as printed in a " +
        "textbook example";

    [Fact]
    [PublishedCase("E20", Code + "UG-37(c), Fig. UG-37.1, inputs in the manner of Megyesy's handbook")]
    public void Nozzle_in_a_cylinder_is_short_of_area()
    {
        var opening = new OpeningReinforcement(OpenedShell.Cylinder, 24.Inches(), 0.5.Inches(), 6.625.Inches(), 5.761.Inches(),
            17_500.Psi())
        {
            BossAllowable = 17_100.Psi(),
            FilletLeg = 0.375.Inches(),
        };
        var balance = opening.AreasAt(250.PsiGauge());
        Tolerance.Relative(0.3458, balance.ShellNeeds.Inches, 1e-3);
        Tolerance.Relative(0.0425, balance.BossNeeds.Inches, 1e-3);
        Tolerance.Relative(0.9771, balance.StrengthRatio, 1e-3);
        Tolerance.Relative(1.9991, balance.Removed.SquareInches, 1e-3);
        Tolerance.Relative(0.8852, balance.InWall.SquareInches, 1e-3);
        Tolerance.Relative(0.8221, balance.InBoss.SquareInches, 1e-3);
        Tolerance.Relative(0.1374, balance.InWeld.SquareInches, 1e-3);
        Tolerance.Relative(1.8447, balance.Replaced.SquareInches, 1e-3);
        Tolerance.Relative(0.1544, balance.Missing.SquareInches, 1e-3);
        Assert.False(balance.IsEnough);
    }

    [Fact]
    [PublishedCase("E21", Code + "UG-37 in a hemisphere")]
    public void Boss_in_a_dome_has_enough_area()
    {
        var balance = new OpeningReinforcement(OpenedShell.Sphere, 50.Millimetres(), 4.Millimetres(), 40.Millimetres(), 24.Millimetres(),
            80.Megapascals()).AreasAt(80.BarGauge());
        Tolerance.Relative(2.5253, balance.ShellNeeds.Millimeters, 1e-3);
        Tolerance.Relative(1.2766, balance.BossNeeds.Millimeters, 1e-3);
        Tolerance.Relative(60.61, balance.Removed.SquareMillimeters, 1e-3);
        Tolerance.Relative(35.39, balance.InWall.SquareMillimeters, 1e-3);
        Tolerance.Relative(134.47, balance.InBoss.SquareMillimeters, 1e-3);
        Tolerance.Relative(2.803, balance.Replaced / balance.Removed, 1e-3);
        Assert.True(balance.IsEnough);
        Assert.Equal(0, balance.Missing.SquareMillimeters);
    }

    [Theory]
    [PublishedCase("E22", Code + "UG-34 and UG-39(b)(1)")]
    [InlineData(.20, 14.142)]
    [InlineData(.30, 17.321)]
    [InlineData(.33, 18.166)]
    public void Flat_head(double fastening, double thickness)
    {
        var head = FlatHeadRule.Thickness(100.Millimetres(), fastening, 80.BarGauge(), 80.Megapascals());
        Tolerance.Relative(thickness, head.Millimeters, 1e-3);
        Tolerance.Relative(173.2, FlatHeadRule.Replacement(20.Millimetres(), 17.321.Millimetres(), 100.Millimetres()).SquareMillimeters,
            1e-3);
    }

    [Fact]
    [PublishedCase("E23", Kirsch)]
    public void Small_hole_in_a_membrane()
    {
        Tolerance.Relative(2, HoleStress.Factor(1), 1e-12);
        Tolerance.Relative(2.5, HoleStress.Factor(0.5), 1e-12);
        Tolerance.Relative(3, HoleStress.Factor(0), 1e-12);
        double[] places = [1, 1.5, 2, 3], even = [2, 1.4444, 1.25, 1.1111], oneWay = [3, 1.5185, 1.21875, 1.0741];
        for (var i = 0; i < places.Length; i++)
        {
            Tolerance.Relative(even[i], HoleStress.FactorAt(1, places[i]), 1e-4);
            Tolerance.Relative(oneWay[i], HoleStress.FactorAt(0, places[i]), 1e-4);
        }

        Tolerance.Relative(2.5, HoleStress.FactorAt(0.5, 1), 1e-12);
    }

    [Fact]
    [PublishedCase("E24", "Lamé, as in Shigley, Mechanical Engineering Design, thick-walled cylinders; figures re-computed")]
    public void Hole_in_a_disc()
    {
        Tolerance.Relative(2.0202, HoleStress.DiscFactor(.1), 1e-4);
        Tolerance.Relative(2.1333, HoleStress.DiscFactor(.25), 1e-4);
        Tolerance.Relative(2.6667, HoleStress.DiscFactor(.5), 1e-4);
        Tolerance.Relative(208, HoleStress.AtEdge(100.Megapascals(), 80.BarGauge()).Megapascals, 1e-9);
    }

    [Fact]
    [PublishedCase("E26", "Whitney and Nuismer, J. Compos. Mater. 8, 1974, p. 253 (unverified; even pull derived); figures re-computed")]
    public void Strength_left_of_a_laminate()
    {
        double[] radii = [2.5, 5, 10];
        double[][] left = [[.6112, .4852, .4114], [.6641, .5495, .4595], [.6642, .5915, .5482], [.7162, .6379, .5800]];
        for (var i = 0; i < radii.Length; i++)
        {
            var hole = radii[i].Millimetres();
            Tolerance.Relative(left[0][i], HoleStress.StrengthLeftByPoint(hole, HolePull.OneWay, HoleStress.PointDistance), 2e-4);
            Tolerance.Relative(left[1][i], HoleStress.StrengthLeftByAverage(hole, HolePull.OneWay, HoleStress.AverageDistance), 2e-4);
            Tolerance.Relative(left[2][i], HoleStress.StrengthLeftByPoint(hole, HolePull.Even, HoleStress.PointDistance), 2e-4);
            Tolerance.Relative(left[3][i], HoleStress.StrengthLeftByAverage(hole, HolePull.Even, HoleStress.AverageDistance), 2e-4);
        }

        Tolerance.Relative(1, HoleStress.StrengthLeftByPoint(Length.Zero, HolePull.OneWay, HoleStress.PointDistance), 1e-12);
        var wide = 2000.Millimetres();
        Tolerance.Relative(1 / 3.0, HoleStress.StrengthLeftByPoint(wide, HolePull.OneWay, 0.1.Millimetres()), 2e-4);
        Tolerance.Relative(1 / 3.0, HoleStress.StrengthLeftByAverage(wide, HolePull.OneWay, 0.1.Millimetres()), 2e-4);
        Tolerance.Relative(0.5, HoleStress.StrengthLeftByAverage(wide, HolePull.Even, 0.1.Millimetres()), 2e-4);
    }
}
