using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Proofing;

/// <summary>3 L at 60 bar gauge, ambient 101 kPa, as the reference set; tolerances from the printed digits.</summary>
public class StoredEnergyCases
{
    private static readonly AbsolutePressure Ambient = AbsolutePressure.FromPascals(101_000);

    [Theory]
    [InlineData(60, 3.0, 31_597)]
    [InlineData(30, 3.0, 14_523)]
    [InlineData(90, 3.0, 49_417)]
    [InlineData(60, 2.0, 21_065)]
    [PublishedCase("V55", "ASME PCC-2-2008, Appendix 501-II, equation II-1 (constants 2.5 and 0.286)")]
    public void Isentropic_energy_as_the_standard_prints_it(double bar, double litres, double joules) =>
        Tolerance.Relative(joules, StoredEnergy.OfGas(bar.BarGauge(), litres.Litres(), Ambient, GasEnergyModel.IsentropicAsPrinted).Joules,
            2e-5);

    [Theory]
    [InlineData(GasEnergyModel.Isentropic, 31_581)]
    [InlineData(GasEnergyModel.Brode, 45_000)]
    [InlineData(GasEnergyModel.Isothermal, 75_062)]
    [InlineData(GasEnergyModel.Availability, 57_062)]
    [PublishedCase("V58", "D. A. Crowl, Understanding Explosions, 2003, Appendix B")]
    public void Four_ways_of_counting(GasEnergyModel model, double joules) =>
        Tolerance.Relative(joules, StoredEnergy.OfGas(60.BarGauge(), 3.Litres(), Ambient, model).Joules, 2e-5);

    [Theory]
    [InlineData(60, 7.405)]
    [InlineData(30, 3.404)]
    [InlineData(90, 11.58)]
    [PublishedCase("V55", "ASME PCC-2-2008, Appendix 501-II, equation II-3")]
    public void Tnt_equivalent(double bar, double grams) =>
        Tolerance.Relative(grams, TntEquivalent.Of(StoredEnergy.OfGas(bar.BarGauge(), 3.Litres(), Ambient,
            GasEnergyModel.IsentropicAsPrinted)).Grams, 5e-4);

    [Fact]
    [PublishedCase("V60", "ASME PCC-2-2008, Appendix 501-II: SI 4.26692 MJ/kg against US 1 488 617 ft·lb/lb")]
    public void One_named_constant_and_the_other_printing_is_four_percent_off()
    {
        const double usJoulesPerKilogram = 1_488_617 * 1.3558179483 / 0.45359237;
        Tolerance.Relative(4.4496e6, usJoulesPerKilogram, 1e-4);
        Tolerance.Absolute(0.043, usJoulesPerKilogram / TntEquivalent.SpecificEnergy.JoulesPerKilogram - 1, 5e-4);
    }

    [Fact]
    [PublishedCase("V59", "Elastic energy p²V/(2K), K = 2.18 GPa")]
    public void Water_holds_a_thousandth_of_what_air_holds()
    {
        var water = StoredEnergy.OfWater(60.BarGauge(), 3.Litres(), 2.18.Gigapascals());
        Tolerance.Relative(24.77, water.Joules, 2e-4);
        Tolerance.Relative(24.55, StoredEnergy.OfWater(60.BarGauge(), 3.Litres(), 2.2.Gigapascals()).Joules, 3e-4);
        Tolerance.Relative(1276, StoredEnergy.OfGas(60.BarGauge(), 3.Litres(), Ambient, GasEnergyModel.IsentropicAsPrinted) / water, 5e-4);
    }

    [Fact]
    [PublishedCase("V59", "Wall strain energy ½ p ΔV of the aluminium cylinder of V71")]
    public void Wall_stores_more_than_the_water() =>
        Tolerance.Relative(70.97, StoredEnergy.OfWall(60.BarGauge(), 23.657.Millilitres()).Joules, 2e-4);

    [Fact]
    [PublishedCase("V61", "NASA lessons-learned page: 1300 in³ at 9700 psi is 3.6 lb TNT; availability model within 10 %")]
    public void Availability_meets_the_figure_quoted_for_a_spacecraft_bottle()
    {
        var volume = Volume.FromCubicInches(1300);
        var availability = StoredEnergy.OfGas(9700.PsiGauge(), volume, AbsolutePressure.StandardSeaLevel, GasEnergyModel.Availability);
        // At the US constant of the standard; at our smaller SI constant it is 4.1 lb, 13 % over and on the safe side.
        Tolerance.Relative(3.6, availability.FootPounds / 1_488_617, 0.10);
        Assert.True(TntEquivalent.Of(availability).Pounds > 3.6);
        // Three digits, at the US constant as well.
        Tolerance.Relative(1.49, StoredEnergy.OfGas(9700.PsiGauge(), volume, AbsolutePressure.StandardSeaLevel).FootPounds / 1_488_617,
            3.4e-3);
    }

    // A stored web note prints 27.57e6 ft·lb for these inputs; the formula it quotes gives 4.699e6.
    [Fact]
    [PublishedCase("V62", "ASME PCC-2-2008, Appendix 501-II, isentropic form for 53.44 ft³ at 404.7 psia, γ = 1.41; a web note's worked "
        + "figure is wrong")]
    public void A_wrong_worked_example_is_not_met() =>
        Tolerance.Relative(4.699e6, StoredEnergy.OfGas(390.PsiGauge(), Volume.FromCubicFeet(53.44),
            AbsolutePressure.FromDifference(14.7.Psi()), GasEnergyModel.Isentropic, 1.41).FootPounds, 2e-4);
}
