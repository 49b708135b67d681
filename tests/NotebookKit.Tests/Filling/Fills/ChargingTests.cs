using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Published;

namespace NotebookKit.Tests.Filling.Fills;

public class ChargingTests
{
    [Fact]
    public void Temperatures_at_absolute_zero_and_not_a_number_are_refused()
    {
        Action[] all =
        [
            () => Charging.TemperatureAfter(1.BarAbsolute(), 60.BarAbsolute(), 0.Kelvins(), 293.Kelvins(), Gas.Air),
            () => Charging.TemperatureAfter(1.BarAbsolute(), 60.BarAbsolute(), 293.Kelvins(), 3000.Kelvins(), Gas.Air),
            () => Charging.Settled(60.BarAbsolute(), 0.Kelvins(), 293.Kelvins()),
            () => Charging.ToSettleAt(1.BarAbsolute(), 60.BarAbsolute(), 293.Kelvins(), 293.Kelvins(), 0.Kelvins(), Gas.Air),
            () => Charging.CooledAfter(20.Kelvins(), 293.Kelvins(), 1.Seconds(), 1.Seconds()),
        ];
        Assert.All(all, a => Assert.Contains("temperature", Assert.Throws<OutOfRangeException>(a).Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Charging_downwards_is_refused()
    {
        Assert.Contains("raises the pressure", Assert.Throws<OutOfRangeException>(() => Charging.TemperatureAfter(60.BarAbsolute(),
            1.BarAbsolute(), 293.Kelvins(), 293.Kelvins(), Gas.Air)).Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => Charging.ToSettleAt(60.BarAbsolute(), 60.BarAbsolute(), 293.Kelvins(), 293.Kelvins(),
            293.Kelvins(), Gas.Air));
        Assert.Throws<OutOfRangeException>(() => Charging.Settled(0.BarAbsolute(), 400.Kelvins(), 293.Kelvins()));
    }

    [Fact]
    public void Times_that_run_backwards_or_not_at_all_are_refused()
    {
        Assert.Throws<OutOfRangeException>(() => Charging.CooledAfter(400.Kelvins(), 293.Kelvins(), (-1).Seconds(), 30.Seconds()));
        Assert.Throws<OutOfRangeException>(() => Charging.CooledAfter(400.Kelvins(), 293.Kelvins(), 1.Seconds(), 0.Seconds()));
    }

    // One time constant leaves 1/e of the difference.
    [Fact]
    [PublishedCase("P50", "lumped cooling with a constant film: T = Ta + (T2 − Ta) exp(−t/τ); formula only")]
    public void Cools_to_one_over_e_in_a_time_constant() =>
        Tolerance.Relative(293 + 107 / Math.E, Charging.CooledAfter(400.Kelvins(), 293.Kelvins(), 30.Seconds(), 30.Seconds()).Kelvins,
            1e-12);
}
