using NotebookKit.Quantities;
using NotebookKit.Vessels.Laminates;

namespace NotebookKit.Tests.Published.Vessels;

/// <summary>Tolerance 0.1 % where the printed figure has four digits, half a unit of the last printed digit else.</summary>
public class MicromechanicsTests
{
    private const string Kaw = "Kaw, Mechanics of Composite Materials, 2nd ed. 2006, ";
    private const string Print = "printed example";

    private static readonly Fibre Glass = new(
        "glass", Given(2500.KilogramsPerCubicMetre()), Given(85.Gigapascals()), Given(85.Gigapascals()), Given((85 / 2.4).Gigapascals()),
            Given(0.20), Given(1550.Megapascals()));

    private static readonly Resin Epoxy = new(
        "epoxy", Given(1200.KilogramsPerCubicMetre()), Given(3.4.Gigapascals()), Given(0.30), Given(72.Megapascals()),
            Given(102.Megapascals()), Given(34.Megapascals()), Given(50.Celsius()));

    private static readonly Composite GlassEpoxy = new(Glass, Epoxy, 70.Percent());

    [Fact]
    [PublishedCase("V01", Kaw + "Ex. 3.1, 3.3, 3.5")]
    public void Rule_of_mixtures()
    {
        var lamina = GlassEpoxy.Lamina();
        Tolerance.Relative(60.52, lamina.Longitudinal.Gigapascals, 1e-3);
        Tolerance.Relative(0.2300, lamina.PoissonRatio, 1e-3);
        Tolerance.Relative(0.9831, GlassEpoxy.FibreLoadShare.DecimalFractions, 1e-3);
        Tolerance.Relative(2110, GlassEpoxy.Density.KilogramsPerCubicMeter, 1e-3);
        Tolerance.Relative(0.8294, GlassEpoxy.FibreMassFraction.DecimalFractions, 1e-3);
        Tolerance.Relative(0.03941, GlassEpoxy.Lamina(MatrixRule.InverseMixtures).MinorPoissonRatio, 1e-3);
    }

    [Fact]
    [PublishedCase("V02", Kaw + "Ex. 3.4, 3.6")]
    public void Inverse_rule_of_mixtures()
    {
        var lamina = GlassEpoxy.Lamina(MatrixRule.InverseMixtures);
        Tolerance.Relative(10.37, lamina.Transverse.Gigapascals, 1e-3);
        // Printed 4.014 with the shear modulus of the resin rounded first.
        Tolerance.Relative(4.013, lamina.Shear.Gigapascals, 1e-3);
    }

    [Fact]
    [PublishedCase("V03", Kaw + "Ex. 3.7, 3.8")]
    public void Halpin_Tsai()
    {
        var lamina = GlassEpoxy.Lamina(MatrixRule.HalpinTsai);
        Tolerance.Relative(20.20, lamina.Transverse.Gigapascals, 1e-3);
        Tolerance.Relative(6.168, lamina.Shear.Gigapascals, 1e-3);
        var hewitt = MicromechanicsFormulas.HalpinTsai(85e9 / 2.4, 3.4e9 / 2.6, 0.7, MicromechanicsFormulas.HewittDeMalherbe(0.7));
        Tolerance.Relative(8.129e9, hewitt, 1e-3);
    }

    [Fact]
    [PublishedCase("V04", "Chamis, NASA TM-83320, 1983, formulae for E22 and G12; figures re-computed")]
    public void Chamis()
    {
        var lamina = GlassEpoxy.Lamina();
        Tolerance.Relative(17.28, lamina.Transverse.Gigapascals, 1e-3);
        Tolerance.Relative(6.733, lamina.Shear.Gigapascals, 1e-3);
    }

    [Fact]
    [PublishedCase("V05", Kaw + "Ex. 3.12")]
    public void Longitudinal_strength() =>
        Tolerance.Relative(1104, GlassEpoxy.Strength(100.Percent()).LongitudinalTension.Megapascals, 1e-3);

    [Theory]
    [PublishedCase("V06", "Chamis, NASA TM-83320, 1983; Halpin and Tsai, AFML-TR-67-423, 1969: formulae; figures re-computed")]
    [InlineData(35, 82.45, 0.2975, 5.696, 2.457, 5.250, 2.071)]
    [InlineData(45, 105.15, 0.2825, 6.475, 2.933, 6.115, 2.520)]
    [InlineData(60, 139.20, 0.2600, 7.888, 3.929, 7.696, 3.492)]
    public void Wet_carbon_ply(double percent, double e1, double nu12, double e2, double g12, double e2HalpinTsai, double g12HalpinTsai)
    {
        var composite = Cases.WetCarbon(percent.Percent());
        var chamis = composite.Lamina();
        var halpin = composite.Lamina(MatrixRule.HalpinTsai);
        Tolerance.Relative(e1, chamis.Longitudinal.Gigapascals, 1e-3);
        Tolerance.Relative(nu12, chamis.PoissonRatio, 1e-3);
        Tolerance.Relative(e2, chamis.Transverse.Gigapascals, 1e-3);
        Tolerance.Relative(g12, chamis.Shear.Gigapascals, 1e-3);
        Tolerance.Relative(e2HalpinTsai, halpin.Transverse.Gigapascals, 1e-3);
        Tolerance.Relative(g12HalpinTsai, halpin.Shear.Gigapascals, 1e-3);
    }

    // Limit of both rules: no fibre gives the resin, nothing but fibre gives the fibre.
    [Fact]
    [PublishedCase("V06", "Halpin and Tsai 1969; Chamis 1983: limits of the rules")]
    public void Both_rules_end_at_resin_and_at_fibre()
    {
        foreach (var rule in new[] { MatrixRule.HalpinTsai, MatrixRule.Chamis, MatrixRule.InverseMixtures })
        {
            Tolerance.Relative(3e9, MicromechanicsFormulas.Transverse(rule, 15e9, 3e9, 0, 2), 1e-12);
            Tolerance.Relative(15e9, MicromechanicsFormulas.Transverse(rule, 15e9, 3e9, 1, 2), 1e-12);
        }
    }

    // 60 % of fibre by weight with a resin of 1150 kg/m³: 0.4922 by volume for carbon of 1780, 0.4035 for glass of 2550 kg/m³, by hand.
    [Theory]
    [PublishedCase("V32", "Kaw 2006, Eq. 3.5, at a laminating guide's 60 % of fibre by weight")]
    [InlineData(1780, 0.4922)]
    [InlineData(2550, 0.4035)]
    public void Fibre_by_volume_from_fibre_by_weight(double density, double fraction)
    {
        var composite = Cases.WetCarbon(45.Percent());
        var fibre = composite.Fibre with { Density = Given(density.KilogramsPerCubicMetre()) };
        var resin = composite.Resin with { Density = Given(1150.KilogramsPerCubicMetre()) };
        Tolerance.Absolute(fraction, Composite.FibreFractionFromMass(fibre, resin, 60.Percent()).DecimalFractions, 5e-5);
    }

    private static Property<T> Given<T>(T value) where T : struct, IComparable<T> => Property.Typical(value, 0, Print);
}
