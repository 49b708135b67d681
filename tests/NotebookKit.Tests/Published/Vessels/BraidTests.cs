using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Vessels;

/// <summary>Tolerance: half a unit of the last printed digit.</summary>
public class BraidTests
{
    private const string Source = "Head, Ko and Pastore, Handbook of Industrial Braiding, 1989; Du and Popper, J. Text. Inst. 85, 1994, "
        + "p. 316: formulae; figures re-computed";

    private static Braid Sleeve(double millimetres = 76, double width = 2.0) => new(
        "sleeve", MaterialLibrary.Typical.Fibre("carbon T300 class"), millimetres.Millimetres(), 45.Degrees(), 144,
        Property.Typical(400.Tex(), 0, "case input"), Property.Typical(width.Millimetres(), 0, "case input"));

    [Theory]
    [PublishedCase("V27", Source)]
    [InlineData(50, 27.72, 1.2519, 1.2142)]
    [InlineData(60, 33.93, 1.1733, 1.0795)]
    [InlineData(76, 45.00, 1, 1)]
    [InlineData(90, 56.86, 0.7731, 1.0923)]
    [InlineData(100, 68.50, 0.5184, 1.4662)]
    [InlineData(105, 77.67, 0.3021, 2.3963)]
    public void Angle_length_and_areal_weight_follow_the_diameter(double diameter, double degrees, double length, double weight)
    {
        var fit = SleeveFit.Over(Sleeve(), diameter.Millimetres());
        var nominal = SleeveFit.Over(Sleeve(), 76.Millimetres());
        Tolerance.Absolute(degrees, fit.Angle.Degrees, 5e-3);
        Tolerance.Absolute(length, fit.LengthFactor, 5e-5);
        Tolerance.Absolute(weight, fit.ArealWeight / nominal.ArealWeight, 5e-5);
        Tolerance.Relative(1 / Math.Sin(2 * fit.Angle.Radians), fit.ArealWeight / nominal.ArealWeight, 1e-12);
    }

    [Fact]
    [PublishedCase("V28", Source)]
    public void Balance_and_limit_diameters()
    {
        Tolerance.Absolute(87.76, SleeveFit.DiameterAt(Sleeve(), 54.7356.Degrees()).Millimeters, 5e-3);
        Tolerance.Absolute(107.48, SleeveFit.MaximumDiameter(Sleeve()).Millimeters, 5e-3);
        var error = Assert.Throws<OutOfRangeException>(() => SleeveFit.Over(Sleeve(), 108.Millimetres()));
        Assert.Contains("108 mm", error.Message, StringComparison.Ordinal);
        Assert.Contains("107.5 mm", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    [PublishedCase("V29", Source)]
    public void Areal_weight_of_a_six_K_sleeve()
    {
        // A sleeve that lies at 55° on 100 mm.
        var braid = Sleeve(100 * Math.Sin(Math.PI / 4) / Math.Sin(55 * Math.PI / 180));
        Tolerance.Absolute(319.7, SleeveFit.Over(braid, 100.Millimetres()).ArealWeight.GramsPerSquareMeter, 0.05);
    }

    [Fact]
    [PublishedCase("V30", "mass of fibre over density and volume fraction; figures re-computed")]
    public void Cured_thickness_and_resin()
    {
        foreach (var (percent, thickness) in new[] { (35, 0.513), (45, 0.399), (50, 0.359), (60, 0.299) })
            Tolerance.Absolute(thickness, Cases.WetCarbon(percent.Percent()).CuredThickness(319.7.Gsm()).Millimeters, 6e-4);
        var composite = Cases.WetCarbon(45.Percent());
        Tolerance.Absolute(0.3745, composite.CuredThickness(300.Gsm()).Millimeters, 5e-5);
        Tolerance.Absolute(236.9, composite.ResinWeight(300.Gsm()).GramsPerSquareMeter, 0.05);
        Tolerance.Absolute(1.434, composite.Density.GramsPerCubicCentimeter, 6e-4);
        Tolerance.Absolute(0.5588, composite.FibreMassFraction.DecimalFractions, 5e-5);
        // V32: 60 % fibre by weight of a carbon of 1780 in a resin of 1150 kg/m³.
        Tolerance.Absolute(0.492, NotebookKit.Vessels.Laminates.Composite.FibreFractionFromMass(composite.Fibre, composite.Resin,
            60.Percent()).DecimalFractions, 6e-4);
    }

    [Fact]
    [PublishedCase("V31", Source)]
    public void Cover_and_jamming()
    {
        var fit = SleeveFit.Over(Sleeve(), 76.Millimetres());
        Tolerance.Absolute(2.345, fit.YarnPitch.Millimeters, 5e-4);
        Tolerance.Absolute(0.9784, fit.Coverage.DecimalFractions, 5e-5);
        Assert.False(fit.IsJammed);
        Tolerance.Absolute(29.27, fit.JammingAngles!.Value.Lowest.Degrees, 5e-3);
        Tolerance.Absolute(60.73, fit.JammingAngles!.Value.Highest.Degrees, 5e-3);
        Tolerance.Absolute(52.54, fit.FreeDiameters!.Value.Smallest.Millimeters, 5e-3);
        Tolerance.Absolute(93.76, fit.FreeDiameters!.Value.Largest.Millimeters, 5e-3);
        Assert.True(SleeveFit.Over(Sleeve(width: 2.5), 76.Millimetres()).IsJammed);
    }
}
