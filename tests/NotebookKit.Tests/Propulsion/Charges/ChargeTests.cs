using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Propulsion.Charges;

public class ChargeTests
{
    private static readonly Charge Good = FiringExamples.Charge;

    [Fact]
    public void A_sound_charge_has_no_findings() => Assert.Empty(Good.Validate());

    [Fact]
    public void Volumes_and_masses_follow_from_the_water_fraction()
    {
        Tolerance.Relative(0.66, Good.Water.Liters, 1e-12);
        Tolerance.Relative(1.34, Good.GasSpace.Liters, 1e-12);
        Tolerance.Relative(0.66, Good.WaterMass.Kilograms, 1e-12);
        Tolerance.Relative(41.01325e5 * 1.34e-3 / (287.05287 * 293.15), Good.GasMass(AbsolutePressure.StandardSeaLevel).Kilograms, 1e-12);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(95.1)]
    [InlineData(100)]
    public void Refuses_a_water_fraction_outside_0_to_95_percent(double percent) =>
        Refused(Good with { WaterFraction = Ratio.FromPercent(percent) }, "water fraction is", "0 % to 95 %");

    [Fact]
    public void Refuses_more_than_the_rating_and_says_so() =>
        Refused(Good with { Pressure = 56.BarGauge() }, "fill pressure is 56 bar gauge", "rated for 55 bar gauge");

    [Theory]
    [InlineData(0)]
    [InlineData(-0.5)]
    public void Refuses_no_pressure_and_suction(double bar) =>
        Refused(Good with { Pressure = bar.BarGauge() }, "fill pressure is", "0.1 bar gauge");

    [Theory]
    [InlineData(-30)]
    [InlineData(70)]
    [InlineData(-300)]
    public void Refuses_gas_colder_than_a_field_and_gas_that_softens_resin(double celsius) =>
        Refused(Good with { GasTemperature = Temperature.FromDegreesCelsius(celsius) }, "gas temperature is");

    [Fact]
    public void Says_everything_that_is_wrong_at_once()
    {
        var bad = Good with
        {
            WaterFraction = 100.Percent(),
            Pressure = 90.BarGauge(),
            GasTemperature = 100.Celsius(),
            WaterDensity = 10.KilogramsPerCubicMetre(),
        };
        Assert.Equal(4, bad.Validate().Count(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void Refuses_a_vessel_without_rating_volume_or_bore()
    {
        Refused(Good with { Chamber = Good.Chamber with { RatedPressure = GaugePressure.Zero } }, "rated pressure");
        Refused(Good with { Chamber = Good.Chamber with { Volume = Volume.Zero } }, "internal volume");
        Refused(Good with { Chamber = Good.Chamber with { Bore = Length.Zero } }, "bore of the vessel");
    }

    private static void Refused(Charge charge, params string[] said)
    {
        var error = Assert.Single(charge.Validate(), f => f.Severity == FindingSeverity.Error);
        foreach (var part in said) Assert.Contains(part, error.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => (FiringExamples.Firing with { Charge = charge }).Fire());
    }
}
