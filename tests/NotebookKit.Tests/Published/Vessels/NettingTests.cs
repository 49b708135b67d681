using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Shells;

namespace NotebookKit.Tests.Published.Vessels;

public class NettingTests
{
    private const string Filament = "Peters, Humphrey and Foral, Filament Winding: Composite Structure Fabrication, SAMPE: formulae; "
        + "figures re-computed";

    [Fact]
    [PublishedCase("V18", "Evans and Gibson, Proc. R. Soc. A 458, 2002, abstract")]
    public void Balance_angle() => Tolerance.Absolute(54.7356, Netting.BalanceAngle.Degrees, 5e-5);

    [Fact]
    [PublishedCase("V19", Filament)]
    public void Fibre_thickness_at_the_balance_angle()
    {
        var solid = Netting.FibreThickness(180.BarGauge(), 50.Millimetres(), 2400.Megapascals());
        Tolerance.Relative(0.5625, solid.Millimeters, 1e-4);
        Tolerance.Relative(1.250, solid.Millimeters / 0.45, 1e-4);
    }

    [Theory]
    [PublishedCase("V20", Filament)]
    [InlineData(15, 0.2010, 0.3615)]
    [InlineData(20, 0.2123, 0.3502)]
    [InlineData(25, 0.2283, 0.3342)]
    public void Helical_and_hoop_split(double degrees, double helical, double hoop)
    {
        var (p, r, s) = (180.BarGauge(), 50.Millimetres(), 2400.Megapascals());
        Tolerance.Relative(helical, Netting.HelicalThickness(p, r, s, degrees.Degrees()).Millimeters, 5e-4);
        Tolerance.Relative(hoop, Netting.HoopThickness(p, r, s, degrees.Degrees()).Millimeters, 5e-4);
    }

    [Fact]
    [PublishedCase("V20", Filament)]
    public void The_sum_of_helical_and_hoop_is_the_same_at_every_angle_and_ends_at_balance()
    {
        var (p, r, s) = (180.BarGauge(), 50.Millimetres(), 2400.Megapascals());
        for (var degrees = 0.0; degrees < 54.7; degrees += 0.7)
        {
            var sum = Netting.HelicalThickness(p, r, s, degrees.Degrees()) + Netting.HoopThickness(p, r, s, degrees.Degrees());
            Tolerance.Relative(0.5625, sum.Millimeters, 1e-12);
        }

        Tolerance.Absolute(0, Netting.HoopThickness(p, r, s, Netting.BalanceAngle).Millimeters, 1e-12);
        var error = Assert.Throws<OutOfRangeException>(() => Netting.HoopThickness(p, r, s, 56.Degrees()));
        Assert.Contains("would have to push", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [PublishedCase("V21", "Evans and Gibson, Proc. R. Soc. A 458, 2002: netting analysis; figures re-computed")]
    [InlineData(45, 0.5000)]
    [InlineData(50, 0.5868)]
    [InlineData(54.7356, 0.6667)]
    [InlineData(55, 0.6580)]
    [InlineData(60, 0.5000)]
    [InlineData(65, 0.3572)]
    public void Burst_factor_of_one_family(double degrees, double factor)
    {
        Tolerance.Absolute(factor, Netting.Factor(degrees.Degrees()), 6e-5);
        Tolerance.Absolute(factor, Netting.Burst(1.Millimetres(), 50.Millimetres(), 50.Megapascals(), degrees.Degrees()).Pascals / 1e6,
            6e-5);
        // The tube wall's own netting answer is the same thing by another path.
        var tube = Cases.Tube(Cases.T300, Cases.T300Strength, (degrees, 1));
        Tolerance.Absolute(factor, tube.Burst().Netting / 1500.Megapascals(), 6e-5);
    }

    // The path that lets fibres turn ends between netting as laid and netting at balance, 2/3 of 1500 MPa: a bound that must hold.
    [Theory]
    [PublishedCase("V18", "Evans and Gibson, Proc. R. Soc. A 458, 2002: fibres balance at 54.7356° and nowhere else")]
    [InlineData(40)]
    [InlineData(45)]
    [InlineData(50)]
    [InlineData(60)]
    [InlineData(65)]
    public void Turning_fibres_end_between_netting_as_laid_and_netting_at_balance(double degrees)
    {
        var failure = Cases.Tube(Cases.T300, Cases.T300Strength, (degrees, 1)).Burst();
        Assert.True(failure.IsMatrixDominated);
        Assert.InRange(failure.Last.Megapascals, failure.Netting.Megapascals, 1000);
    }
}
