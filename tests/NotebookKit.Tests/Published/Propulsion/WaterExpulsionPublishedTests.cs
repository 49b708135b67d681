using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Propulsion;

/// <summary>
/// Closed forms against numbers worked out elsewhere (closed form and quadrature or integration where both exist); 1e-6 from the printed
/// digits.
/// Common data of P04 to P08: 3 L, 1 L of water, 10 mm, discharge 0.97 on area, 40 bar gauge, φ neglected.
/// </summary>
public class WaterExpulsionPublishedTests
{
    private const double Printed = 1e-6;
    private const string Textbook = "Bernoulli and momentum theorem, F. M. White, Fluid Mechanics; independent arithmetic, 2025";

    private static readonly Density Water = 1000.KilogramsPerCubicMetre();
    private static readonly AbsolutePressure Air = AbsolutePressure.StandardSeaLevel;
    private static readonly AbsolutePressure Start = 40.BarGauge().ToAbsolute(Air);
    private static readonly Volume Gas = 2.Litres(), Whole = 3.Litres();
    private static readonly Area Jet = Circle(10) * 0.97;

    [Fact]
    [PublishedCase("P01", Textbook)]
    public void Jet_without_head()
    {
        var phi = Circle(10) / Circle(90);
        Tolerance.Relative(77.465571, WaterExpulsion.JetSpeed(30.BarGauge(), Water, phi).MetersPerSecond, Printed);
        Tolerance.Relative(77.459667, WaterExpulsion.JetSpeed(30.BarGauge(), Water).MetersPerSecond, Printed);
        Tolerance.Relative(471.238898, WaterExpulsion.Thrust(30.BarGauge(), Circle(10)).Newtons, Printed);
        Tolerance.Relative(471.310733, WaterExpulsion.Thrust(30.BarGauge(), Circle(10), phi).Newtons, Printed);
    }

    [Fact]
    [PublishedCase("P02", Textbook)]
    public void Wide_nozzle()
    {
        Tolerance.Relative(31.684721, WaterExpulsion.JetSpeed(5.BarGauge(), Water, 1.0 / 16).MetersPerSecond, Printed);
        Tolerance.Relative(380.132711, WaterExpulsion.Thrust(5.BarGauge(), Circle(22)).Newtons, Printed);
        Tolerance.Relative(381.623428, WaterExpulsion.Thrust(5.BarGauge(), Circle(22), 1.0 / 16).Newtons, Printed);
    }

    [Fact]
    [PublishedCase("P03", "C. J. Gommes, Am. J. Phys. 78 (2010) 236 (effect); independent arithmetic, 2025")]
    public void Head_at_rest_and_at_50_g()
    {
        Tolerance.Relative(31.715674, WaterExpulsion.JetSpeedWithHead(5.BarGauge(), Water, 0.3.Metres(),
            Acceleration.Zero).MetersPerSecond, Printed);
        Tolerance.Relative(36.056671, WaterExpulsion.JetSpeedWithHead(5.BarGauge(), Water, 0.3.Metres(),
            Acceleration.FromStandardGravity(50)).MetersPerSecond, Printed);
    }

    [Fact]
    [PublishedCase("P04", Textbook)]
    public void Constant_pressure()
    {
        var speed = WaterExpulsion.JetSpeed(40.BarGauge(), Water);
        Tolerance.Relative(0.146755164, WaterExpulsion.TimeAtConstantPressure(1.Litres(), Jet, speed).Seconds, Printed);
        Tolerance.Relative(89.442719, speed.MetersPerSecond * 1.0, Printed);
    }

    [Theory]
    [PublishedCase("P05 P06", "Emptying against ambient at constant p V^n: own derivation of the reference, equal to quadrature "
        + "to 1e-13, 2025")]
    [InlineData(1, 0.164341226, 80.160628)]
    [InlineData(1.2, 0.168197550, 78.448464)]
    [InlineData(1.4, 0.172178016, 76.780895)]
    public void Emptying_time_and_impulse(double n, double time, double impulse)
    {
        Tolerance.Relative(time, WaterExpulsion.EmptyingTime(Start, Gas, Whole, n, Jet, Air, Water).Seconds, Printed);
        Tolerance.Relative(impulse, WaterExpulsion.WaterImpulse(Start, Gas, Whole, n, Air, Water).NewtonSeconds, Printed);
    }

    [Fact]
    [PublishedCase("P07", "Emptying into vacuum at constant p V^n: closed form, 2025")]
    public void Emptying_into_vacuum()
    {
        Tolerance.Relative(0.169194474, WaterExpulsion.EmptyingTimeInVacuum(Start, Gas, Whole, 1.4, Jet, Water).Seconds, Printed);
        Tolerance.Relative(78.098371, WaterExpulsion.WaterImpulse(Start, Gas, Whole, 1.4, AbsolutePressure.FromPascals(0),
            Water).NewtonSeconds, Printed);
    }

    [Fact]
    [PublishedCase("P08", "First law for p V^n = const; independent arithmetic, 2025")]
    public void Work_and_stored_energy()
    {
        Tolerance.Relative(2968.865367, WaterExpulsion.ExpansionWork(Start, Gas, Whole, 1.4, Air).Joules, Printed);
        Tolerance.Relative(3224.563369, WaterExpulsion.ExpansionWork(Start, Gas, Whole, 1, Air).Joules, Printed);
        Tolerance.Relative(10736.407210, WaterExpulsion.StoredEnergy(Start, Gas, 1.4, Air).Joules, Printed);
    }

    [Fact]
    [PublishedCase("P09", "K. E. Tsiolkovsky 1903; independent arithmetic, 2025")]
    public void Ideal_speed_gain() =>
        Tolerance.Relative(54.214434, WaterExpulsion.IdealSpeedGain(Math.Sqrt(8000).MetresPerSecond(), 1.2.Kilograms(),
            1.Kilograms()).MetersPerSecond, Printed);

    // Two stages: 28 ln(3.1/1.9) and 30 ln(1.1/0.5).
    [Fact]
    [PublishedCase("F70", "K. E. Tsiolkovsky 1903, bookkeeping of two stages; independent arithmetic, 2025")]
    public void Ideal_speed_gain_of_two_stages()
    {
        var first = WaterExpulsion.IdealSpeedGain(28.MetresPerSecond(), 1.9.Kilograms(), 1.2.Kilograms()).MetersPerSecond;
        var second = WaterExpulsion.IdealSpeedGain(30.MetresPerSecond(), 0.5.Kilograms(), 0.6.Kilograms()).MetersPerSecond;
        Tolerance.Relative(13.707350, first, 1e-7);
        Tolerance.Relative(23.653721, second, 1e-7);
        Tolerance.Relative(37.361071, first + second, 1e-7);
    }

    [Fact]
    [PublishedCase("P10", "Unsteady Bernoulli, C. J. Gommes, Am. J. Phys. 78 (2010) 236 (terms); independent arithmetic, 2025")]
    public void A_jet_starts_within_microseconds()
    {
        var phi = Circle(10) / Circle(100);
        Tolerance.Relative(89.447192, WaterExpulsion.JetSpeed(40.BarGauge(), Water, phi).MetersPerSecond, Printed);
        Tolerance.Relative(2.84719e-5, WaterExpulsion.StartingTimeConstant(40.BarGauge(), Water, 0.127324.Metres(), phi).Seconds, 5e-6);
    }

    [Fact]
    [PublishedCase("P12 P13", "Optimum by differentiation; independent arithmetic, 2025")]
    public void Optimum_shares()
    {
        Tolerance.Relative(0.304551, WaterExpulsion.GasShareForMaximumImpulseInVacuum(1.4).DecimalFractions, 2e-6);
        Tolerance.Relative(0.25, WaterExpulsion.GasShareForMaximumImpulseInVacuum(1).DecimalFractions, 1e-12);
        Tolerance.Relative(0.431201, WaterExpulsion.GasShareForMaximumWork(1.4).DecimalFractions, 2e-6);
    }

    [Theory]
    [PublishedCase("P12", "Optimum water share of the static impulse with ambient, independent search, 2025; 1e-4 in the share")]
    [InlineData(5, 0.59446, 11716.59)]
    [InlineData(40, 0.68141, 38094.17)]
    public void Optimum_water_share_with_ambient(double gaugeBar, double share, double impulsePerVolume)
    {
        var start = gaugeBar.BarGauge().ToAbsolute(Air);
        double Impulse(double water) => WaterExpulsion.WaterImpulse(start, (1 - water).CubicMetres(), 1.CubicMetres(), 1.4, Air,
            Water).NewtonSeconds;
        Tolerance.Relative(impulsePerVolume, Impulse(share), 1e-6);
        Assert.True(Impulse(share) > Impulse(share + 2e-3) && Impulse(share) > Impulse(share - 2e-3));
    }

    private static Area Circle(double millimetres) => (Math.PI / 4 * millimetres * millimetres).SquareMillimetres();
}
