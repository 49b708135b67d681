using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.Restrictors;

public class HoseTests
{
    private static readonly Hose Long = new(4.Millimetres(), 5.Metres());
    private static readonly Orifice Valve = new(1.Millimetres(), 0.8);

    private static double Flow(IRestrictor r, double up, double down)
        => r.Flow(up.BarAbsolute(), 20.Celsius(), down.BarAbsolute(), Gas.Air).KilogramsPerSecond;

    [Fact]
    public void Flow_falls_all_the_way_to_equal_pressures_and_never_jumps() =>
        Gen.Double[0.02, 0.9999].Sample(ratio =>
        {
            double here = Flow(Long, 60, 60 * ratio), further = Flow(Long, 60, 60 * Math.Min(1, ratio + 1e-5));
            return here >= further - 1e-12 && here - further < 2e-4 && here >= 0;
        });

    [Fact]
    public void A_very_short_hose_is_a_nozzle() =>
        Tolerance.Relative(Flow(new Orifice(6.Millimetres(), 1), 60, 1), Flow(new Hose(6.Millimetres(), 10.Millimetres(), 0.005), 60, 1),
            0.01);

    [Fact]
    public void Chain_passes_less_than_either_and_the_same_in_both()
    {
        var chain = new RestrictorChain(Long, Valve);
        Gen.Double[1, 59].Sample(down => Flow(chain, 60, down) < Math.Min(Flow(Long, 60, down), Flow(Valve, 60, down)) + 1e-15);
        // Two equal holes in a row: p1² − p2² splits in halves while neither chokes, so each sees √ of the half.
        var two = new RestrictorChain(Valve, Valve);
        Assert.True(Flow(two, 60, 1) < Flow(Valve, 60, 1));
        Assert.True(two.CriticalRatio < Valve.CriticalRatio);
        Tolerance.Relative(Flow(two, 60, 60 * two.CriticalRatio * 0.99), Flow(two, 60, 1), 1e-9);
        Assert.True(Flow(two, 60, 60 * two.CriticalRatio * 1.05) < Flow(two, 60, 1));
    }

    [Fact]
    public void Wide_hose_behind_a_small_valve_hardly_matters() =>
        Tolerance.Relative(Flow(Valve, 60, 1), Flow(new RestrictorChain(new Hose(8.Millimetres(), 2.Metres()), Valve), 60, 1), 1e-3);

    [Fact]
    public void Refuses_what_is_no_hose()
    {
        Assert.Equal(3, new Hose(0.Millimetres(), 1.Millimetres(), 0.5).Validate().Count);
        Assert.Contains("quarter", new Hose(6.Millimetres(), 1.Metres(), 0.004).Validate()[0].Message, StringComparison.Ordinal);
        Assert.Throws<OutOfRangeException>(() => FannoFlow.FrictionLength(1.2));
        Assert.Throws<OutOfRangeException>(() => FannoFlow.InletMach(-1));
        Assert.Throws<OutOfRangeException>(() => Hose.FrictionFactor(2000, 0));
        Assert.Throws<OutOfRangeException>(() => MeteringCoefficients.OrificePlate(0.9, 1e5));
        Assert.Throws<OutOfRangeException>(() => MeteringCoefficients.ToroidalNozzle(1000));
    }
}
