using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Vents;

public class VentTests
{
    private static readonly Vent Abort = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()),
        Restrictor = new Orifice(1.Millimetres(), 0.8),
        From = 40.BarGauge(),
        WaterFraction = 32.Percent(),
        Port = PortPosition.AboveWater,
    };

    [Fact]
    public void Gas_without_heat_gets_to_the_safe_pressure_sooner()
    {
        var result = Abort.Run();
        Assert.True(result.Fastest < result.Slowest);
        Assert.Equal(result.Adiabatic.Time[^1], result.Fastest.Seconds, 12);
        Assert.Equal(0.1, result.Isothermal.Pressure[^1], 9);
        Assert.True(result.ColdestGas < Abort.Temperature);
        Assert.Contains(result.Cautions, c => c == Cautions.StoredEnergy);
        Assert.Equal(3, result.Working.Steps.Count);
    }

    // From 200 bar the gas without heat ends so cold that it flows out slower than at room temperature, and a wall that warms it again
    // makes it last longest:
    // m' = −k m √T with T below the start throughout. The time to wait is that of the longest curve.
    [Fact]
    public void From_high_pressure_the_longest_curve_is_none_of_the_limits()
    {
        var high = (Abort with { Chamber = Abort.Chamber with { RatedPressure = 250.BarGauge() }, From = 200.BarGauge(),
            Properties = GasProperties.Real }).Run();
        Assert.True(high.Adiabatic.Time[^1] > high.Isothermal.Time[^1]);
        Assert.Equal(high.WithWall!.Time[^1], high.Slowest.Seconds, 12);
        Assert.True(high.Slowest.Seconds > high.Adiabatic.Time[^1]);
        Assert.Contains(high.Model.Assumptions, a => a.Contains("longer than at either limit", StringComparison.Ordinal));
    }

    // 41.01325 to 1.11325 bar absolute without heat: T falls to 293.15 K × (1.11325/41.01325)^(2/7) = 104.608 K; warm again 3.11972 bar
    // absolute.
    [Fact]
    public void A_vent_shut_too_soon_lets_the_pressure_come_back_and_says_so()
    {
        var result = Abort.Run();
        Tolerance.Relative(3.11972 - 1.01325, result.ReturnsTo.Bar, 1e-5);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("Leave the vent open", StringComparison.Ordinal));
    }

    [Fact]
    public void Warns_when_the_vessel_is_above_its_rating() =>
        Assert.Contains((Abort with { From = 50.BarGauge() }).Run().Findings, f => f.Message.Contains("retire", StringComparison.Ordinal));

    [Fact]
    public void Refuses_to_start_below_the_safe_pressure_or_to_call_ten_bar_safe()
    {
        Assert.Throws<InvalidDesignException>(() => (Abort with { From = 0.05.BarGauge() }).Run());
        Assert.Contains("Nobody goes near", Assert.Throws<InvalidDesignException>(() => (Abort
            with { SafePressure = 10.BarGauge() }).Run()).Message, StringComparison.Ordinal);
    }
}
