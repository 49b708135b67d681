using NotebookKit.Filling.ByHand;
using NotebookKit.Filling.Networks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Filling.ByHand;

public class PulsedFillLogTests
{
    private static readonly PadFill Fill = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()), Supply = 45.BarGauge(), Target = 40.BarGauge(),
        Restrictor = new SonicRestrictor(0.1.LitresPerSecondBar(), 0.35), WaterFraction = 32.Percent(), Heat = FillHeat.Wall,
    };

    private static readonly ValveOpening[] Clicks = [new(5.Seconds(), 20.Seconds()), new(40.Seconds(), 55.Seconds())];

    // Readings made by the model with known unknowns and a gauge that scatters by 0.05 bar; and the first guess 30 % off.
    private static PulsedFillLog Made(double conductance, double film, double leak, double seconds, double scatter = 0.05)
    {
        double[] time = [.. Enumerable.Range(0, (int)(seconds / 2)).Select(i => 2.0 * i)];
        PulsedFillLog log = new() { Fill = Fill, Openings = Clicks, Time = new("Time", "s", time), Pressure = new("Gauge", "bar gauge",
            new double[time.Length]) };
        var true1 = NetworkTrace.GaugeAt(new NetworkModel(log.With([Math.Log(conductance), Math.Log(film), leak])), "vessel", time);
        var noise = new SeededNoise(7);
        return log with
        {
            Fill = Fill with { Restrictor = new SonicRestrictor((1.3 * conductance).LitresPerSecondBar(), 0.35) },
            Pressure = new("Gauge", "bar gauge", [.. true1.Select(p => Math.Max(0, p + (scatter * noise.Next())))]),
        };
    }

    [Fact]
    public void Restrictor_heat_and_leak_are_found_together_within_their_own_intervals()
    {
        var fit = Made(0.08, 60, 0.4, 300).Fit();
        Assert.InRange(0.08, fit.ConductanceLow.LitresPerSecondBar, fit.ConductanceHigh.LitresPerSecondBar);
        Tolerance.Relative(0.08, fit.Conductance.LitresPerSecondBar, 0.02);
        Tolerance.Relative(60, fit.Film.WattsPerSquareMeterKelvin, 0.2);
        Tolerance.Relative(0.4e-3, fit.Leak.LitresPerSecondBar, 0.2);
        Assert.True(fit.ShowsLeak);
        Assert.InRange(fit.Scatter.Bars, 0.03, 0.07);
        Assert.Equal(1, fit.Correlation(1, 1), 12);
        Assert.Equal(fit.Correlation(0, 2), fit.Correlation(2, 0), 12);
        Assert.Contains(fit.Findings, f => f.Message.Contains("find the leak before the next fill", StringComparison.Ordinal));
    }

    [Fact]
    public void A_tight_vessel_shows_no_leak_and_the_log_says_how_large_one_it_would_miss()
    {
        var fit = Made(0.08, 60, 0, 300).Fit();
        Assert.False(fit.ShowsLeak);
        Assert.True(fit.LeakHigh.LitresPerSecondBar < 1e-4);
        Assert.Contains(fit.Findings, f => f.Message.Contains("can't rule out one of up to", StringComparison.Ordinal));
    }

    // Cut off while the valve has just been shut, the fall may be leak or cooling: the interval of the leak grows.
    [Fact]
    public void A_log_that_ends_with_the_valve_says_less_of_the_leak()
    {
        var (whole, cut) = (Made(0.08, 60, 0.4, 300).Fit(), Made(0.08, 60, 0.4, 62).Fit());
        Assert.True(cut.LeakHigh.LitresPerSecondBar - cut.Leak.LitresPerSecondBar
            > 3 * (whole.LeakHigh.LitresPerSecondBar - whole.Leak.LitresPerSecondBar));
    }

    [Fact]
    public void Logs_that_cannot_be_fitted_are_refused()
    {
        var log = Made(0.08, 60, 0.4, 62);
        Assert.Contains("give when the valve was opened", Assert.Throws<InvalidDesignException>(() => (log
            with { Openings = [] }).Fit()).Message, StringComparison.Ordinal);
        Assert.Contains("overlap or run backwards", Assert.Throws<InvalidDesignException>(() => (log
            with { Openings = [Clicks[1], Clicks[0]] }).Fit()).Message, StringComparison.Ordinal);
        Assert.Contains("must be in bar gauge", Assert.Throws<InvalidDesignException>(() => (log
            with { Pressure = log.Pressure with { Unit = "psi" } }).Fit()).Message, StringComparison.Ordinal);
    }

    // A standard normal by the sum of twelve, from a small generator with a seed.
    private sealed class SeededNoise(uint seed)
    {
        private uint _state = seed;

        public double Next()
        {
            var sum = -6.0;
            for (var i = 0; i < 12; i++)
            {
                _state = (1664525 * _state) + 1013904223;
                sum += _state / 4294967296.0;
            }

            return sum;
        }
    }
}
