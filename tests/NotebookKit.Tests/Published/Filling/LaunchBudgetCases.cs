using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Filling;

/// <summary>10 L cylinder, 3 L of gas to 60 bar absolute, 5 bar to spare, all at 293.15 K.</summary>
public class LaunchBudgetCases
{
    private const string Source = "E. W. Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, and the ideal gas: mass balance "
        + "of a cylinder";

    private static LaunchBudget From(double bar, GasProperties properties) => new()
    {
        Cylinders = [new("A", 10.Litres(), bar.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel))],
        Chamber = new Chamber(3.Litres(), 66.Millimetres(), 70.BarGauge()),
        Target = 60.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
        Margin = 5.Bar(),
        Temperature = 20.Celsius(),
        Properties = properties,
    };

    [Theory]
    [InlineData(200, GasProperties.Real, 7.1961)]
    [InlineData(200, GasProperties.Ideal, 7.6288)]
    [InlineData(300, GasProperties.Real, 11.4754)]
    [InlineData(300, GasProperties.Ideal, 13.2798)]
    [PublishedCase("P62", Source)]
    public void Whole_launches_and_what_is_left(double bar, GasProperties properties, double fills)
    {
        var result = From(bar, properties).Run();
        Assert.Equal((int)fills, result.Launches);

        // The rest of a fill that is still in the cylinder, by mass above 65 bar absolute.
        var law = new GasLaw(Gas.Air, properties);
        double Density(double p) => law.AtPressure(p * 1e5, 293.15).Density;
        var rest = (Density(result.CylinderPressures[0].Values[^1] + 1.01325) - Density(65)) * 10 / ((Density(60) - Density(1.01325)) * 3);
        Tolerance.Absolute(fills - (int)fills, rest, 2e-4 * fills);
    }

    // Content of the cylinder itself: the working shows its density.
    [Theory]
    [InlineData(200, 2.31648, 2.37672)]
    [InlineData(300, 3.22847, 3.56508)]
    [PublishedCase("P62", Source + ": mass in 10 L")]
    public void Content_of_a_cylinder(double bar, double real, double ideal)
    {
        Tolerance.Relative(real, RealGas.Air.At(bar.BarAbsolute(), 293.15.Kelvins()).Density.KilogramsPerCubicMeter * 0.01, 5e-6);
        Tolerance.Relative(ideal, new GasLaw(Gas.Air, GasProperties.Ideal).AtPressure(bar * 1e5, 293.15).Density * 0.01, 5e-6);
    }

    [Theory]
    [InlineData(GasProperties.Real, 150.350)]
    [InlineData(GasProperties.Ideal, 154.080)]
    [PublishedCase("P62", Source + ": 10 L at 200 bar opened to 3 L at 1 atm")]
    public void Cylinder_opened_to_a_vessel(GasProperties properties, double bar)
    {
        var (cylinder, vessel) = GasTransfer.Move(new GasLaw(Gas.Air, properties), 293.15, 200e5, 0.010, 101_325, 0.003, 300e5, 0);
        Tolerance.Relative(bar, vessel / 1e5, 5e-6);
        Tolerance.Relative(bar, cylinder / 1e5, 5e-6);
    }
}
