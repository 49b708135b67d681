using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Filling;

public class WaterDrainCases
{
    private const double StandardGravity = 9.80665;

    // 2 L of gas at 40 bar gauge over 1 L of water.
    private static readonly WaterDrain Charged = new()
    {
        From = 40.BarGauge(), GasVolume = 2.Litres(), WaterVolume = 1.Litres(), EffectiveArea = Hole(10, 0.97),
    };

    [Fact]
    [PublishedCase("P04", "Constant pressure, Torricelli: t = Vw/(Cd A √(2 Δp/ρ))")]
    public void Constant_pressure() => Tolerance.Relative(0.146755164, (Charged with { Exponent = 0 }).Run().Duration.Seconds, 1e-8);

    [Fact]
    [PublishedCase("P05", "Gas at constant temperature, closed form with the arcsine; own derivation, equal to a quadrature")]
    public void Constant_temperature()
    {
        var result = Charged.Run();
        Tolerance.Relative(0.164341226, result.Duration.Seconds, 1e-8);
        Tolerance.Relative(27.342167, result.PressureThen.ToAbsolute(AbsolutePressure.StandardSeaLevel).Bar, 1e-7);
        Assert.Equal(0, result.WaterLeft.Liters);
    }

    [Theory]
    [InlineData(1.4, 0.172178016, 23.248580)]
    [InlineData(1.2, 0.168197550, 25.212428)]
    [PublishedCase("P06", "Polytropic gas, closed form with the incomplete beta function; own derivation, equal to a quadrature")]
    public void Polytropic_gas(double exponent, double seconds, double barAbsolute)
    {
        var result = (Charged with { Exponent = exponent }).Run();
        Tolerance.Relative(seconds, result.Duration.Seconds, 1e-8);
        Tolerance.Relative(barAbsolute, result.PressureThen.ToAbsolute(AbsolutePressure.StandardSeaLevel).Bar, 1e-7);
    }

    [Theory]
    [InlineData(1.0, false, 1.60696562)]
    [InlineData(1.4, false, 1.68359552)]
    [InlineData(1.0, true, 1.60678953)]
    [InlineData(1.4, true, 1.68340009)]
    [PublishedCase("L06", "The same gas through 4 mm with Cd 0.62, without and with the head in a bore of 90 mm, by quadrature")]
    public void Small_hole_with_and_without_head(double exponent, bool stands, double seconds) =>
        Tolerance.Relative(seconds, (Charged with { EffectiveArea = Hole(4, 0.62), Exponent = exponent,
            StandingBore = stands ? 90.Millimetres() : null }).Run().Duration.Seconds, 1e-5);

    [Fact]
    [PublishedCase("L01", "Open worked problem: tank of 1 m², hole of 1 cm², 5 m of water, g = 10 m/s²: 10 000 s")]
    public void Open_tank() => Tolerance.Relative(10_000, Open(5, Math.Sqrt(4 / Math.PI),
        Area.FromSquareCentimeters(1)) * Math.Sqrt(StandardGravity / 10), 1e-9);

    [Fact]
    [PublishedCase("L02", "Fluid mechanics companion, example 6.3: 1 m³ in 1 m of diameter, 20 mm with Cd 0.6, g = 9.8 m/s²: 2123.957 s "
        + "(printed 2124.50 with π = 3.14)")]
    public void Open_tank_of_a_textbook() =>
        Tolerance.Relative(2124.50, Open(4 / Math.PI, 1, Hole(20, 0.6)) * Math.Sqrt(StandardGravity / 9.8), 5e-4);

    [Theory]
    [InlineData(0, 321.905198)]
    [InlineData(2, 25.0490132)]
    [InlineData(50, 5.03908747)]
    [PublishedCase("L05", "Constant gas pressure and head, Torricelli with Bernoulli: 100 mm bore, 0.5 m of water, 4 mm with Cd 0.62")]
    public void Constant_pressure_with_head(double bar, double seconds) =>
        Tolerance.Relative(seconds, Standing(bar, 0.5, 0.1, Hole(4, 0.62)).Run().Duration.Seconds, 1e-6);

    [Theory]
    [InlineData(1.01, 6.24154578)]
    [InlineData(1 / 0.528281788, 4.47498668)]
    [PublishedCase("L07", "Then the gas alone: 3 L from 27.3421667 bar through the same hole, isentropic vessel, closed form "
        + "and quadrature")]
    public void Gas_alone_after_the_water(double timesAmbient, double seconds)
    {
        Vent gas = new()
        {
            Chamber = new Chamber(3.Litres(), 90.Millimetres(), 60.BarGauge()), Restrictor = new Orifice(4.Millimetres(), 0.62),
                Temperature = 293.15.Kelvins(),
            From = 27.3421667.BarAbsolute().ToGauge(AbsolutePressure.StandardSeaLevel),
                SafePressure = (1.01325 * (timesAmbient - 1)).BarGauge(),
        };
        Tolerance.Relative(seconds, gas.Unchecked().Seconds[^1], 1e-5);
    }

    // A chain's area for water adds up as flow coefficients do: 1/Kv² = Σ 1/Kv².
    [Fact]
    [PublishedCase("L15", "IEC 60534, definition of the flow coefficient: 1.0, 0.5 and 0.8 m³/h in series come to 0.390360029 m³/h")]
    public void Holes_in_series()
    {
        static Orifice Of(double kv) => new(Length.FromMillimeters(Math.Sqrt(4 / Math.PI *
            FlowCapacity.AreaOfKv(VolumeFlow.FromCubicMetersPerHour(kv)).SquareMillimeters)), 1) { WaterCoefficient = 1 };
        var area = WaterPassage.AreaM2(new RestrictorChain(Of(1), new RestrictorChain(Of(0.5), Of(0.8))), 1e5);
        Tolerance.Relative(0.390360029, area * Math.Sqrt(2e5 / 1000) * 3600, 1e-8);
    }

    private static Area Hole(double millimetres, double coefficient)
        => Area.FromSquareMillimeters(coefficient * Math.PI / 4 * millimetres * millimetres);

    private static double Open(double head, double bore, Area hole) => Standing(0, head, bore, hole).Run().Duration.Seconds;

    private static WaterDrain Standing(double bar, double head, double bore, Area hole) => new()
    {
        From = bar.BarGauge(), GasVolume = 1.Litres(), WaterVolume = Volume.FromCubicMeters(Math.PI / 4 * bore * bore * head),
            EffectiveArea = hole, Exponent = 0, StandingBore = bore.Metres(),
    };
}
