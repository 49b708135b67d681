using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Measured;

public class FillLogTests
{
    private static readonly PadFill Meant = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 50.BarGauge()),
        Supply = 45.BarGauge(),
        Restrictor = new SonicRestrictor(0.3.LitresPerSecondBar(), 0.35),
        Target = 40.BarGauge(),
        WaterFraction = 32.Percent(),
    };

    private static FillLog Log(double conductance, double film, double openedAt, double noiseBar)
        => Log(conductance, film, openedAt, noiseBar, Meant, 11);

    private static FillLog Log(double conductance, double film, double openedAt, double noiseBar, PadFill meant, ulong seed)
    {
        var noise = new SeededSamples(seed);
        var run = (meant with
        {
            Restrictor = new SonicRestrictor(conductance.LitresPerSecondBar(), 0.35),
            Heat = FillHeat.Wall,
            Wall = FillWall.Of(meant.Chamber, meant.WaterFraction)
                with { Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(film) },
            Watch = 60.Seconds(),
        }).Run();
        double[] time = [.. Enumerable.Range(0, 120).Select(i => 0.5 * i)];
        double Model(double t)
        {
            if (t <= openedAt) return 0;
            var i = 1;
            while (i < run.Time.Count - 1 && run.Time[i] < t - openedAt) i++;
            var share = Math.Min(1, (t - openedAt - run.Time[i - 1]) / (run.Time[i] - run.Time[i - 1]));
            return run.Pressure[i - 1] + share * (run.Pressure[i] - run.Pressure[i - 1]);
        }

        return new()
        {
            Fill = meant,
            Time = new("Time", "s", time),
            Pressure = new("Pressure", "bar gauge", [.. time.Select((t, i) => Model(t) + noiseBar * noise.Normal(i, 0))]),
        };
    }

    [Theory]
    [InlineData(0.10, 20, 3.2)]
    [InlineData(0.05, 40, 0.0)]
    public void Finds_conductance_opening_and_film_again(double conductance, double film, double openedAt)
    {
        var fit = Log(conductance, film, openedAt, 0.05).Fit();
        Assert.Equal(ResultStatus.Completed, fit.Status);
        Tolerance.Relative(conductance, fit.Conductance.LitresPerSecondBar, 0.01);
        Tolerance.Absolute(openedAt, fit.OpenedAt.Seconds, 0.1);
        Tolerance.Relative(film, fit.Film.WattsPerSquareMeterKelvin, 0.05);
        Assert.InRange(conductance, 0.995 * fit.ConductanceLow.LitresPerSecondBar, 1.005 * fit.ConductanceHigh.LitresPerSecondBar);
        Assert.InRange(fit.Scatter.Bars, 0.03, 0.1);
        Assert.Equal(fit.Log.Time.Count, fit.Residual.Count);
        Tolerance.Relative(40, fit.Fill.Run().ShutPressure.Bar, 1e-6);
    }

    [Fact]
    public void Narrower_noise_narrows_the_interval()
    {
        double Width(double noise)
        {
            var fit = Log(0.1, 20, 3.2, noise).Fit();
            return fit.ConductanceHigh.LitresPerSecondBar / fit.ConductanceLow.LitresPerSecondBar - 1;
        }

        Assert.True(Width(0.02) < Width(0.2));
    }

    [Fact]
    public void Refuses_a_log_that_tells_nothing()
    {
        var log = Log(0.1, 20, 3.2, 0.05);
        Assert.Contains("at least 10", Assert.Throws<InvalidDesignException>(() => (log
            with { Time = new("t", "s", [1, 2]), Pressure = new("p", "bar gauge", [1, 2]) }).Fit()).Message, StringComparison.Ordinal);
        Assert.Contains("at least 1 bar", Assert.Throws<InvalidDesignException>(() => (log
            with { Pressure = log.Pressure with { Values = [.. log.Time.Values.Select(_ => 3.0)] } }).Fit()).Message,
            StringComparison.Ordinal);
        Assert.Contains("more than the supply", Assert.Throws<InvalidDesignException>(() => (log
            with { Fill = Meant with { Supply = 30.BarGauge() } }).Fit()).Message, StringComparison.Ordinal);
        Assert.Contains("must be in bar gauge", Assert.Throws<InvalidDesignException>(() => (log
            with { Pressure = log.Pressure with { Unit = "psi" } }).Fit()).Message, StringComparison.Ordinal);
    }

    // 95 % of intervals have to hold the true value: of 30, 24 or fewer would be a chance of 1 in 300. Air only, and with water; a gauge
    // read to a few tenths of a bar.
    [Theory, Trait("Length", "long")]
    [InlineData(0, 0.1, 30, 2.1, 0.2)]
    [InlineData(32, 0.2, 60, 1.3, 0.3)]
    public void The_interval_holds_the_true_conductance_as_often_as_it_says(double water, double conductance, double film, double openedAt,
        double noiseBar)
    {
        var meant = Meant with { WaterFraction = water.Percent() };
        var held = Enumerable.Range(1, 30).AsParallel().Count(seed =>
        {
            var fit = Log(conductance, film, openedAt, noiseBar, meant, (ulong)seed).Fit();
            return fit.Status == ResultStatus.Completed && fit.ConductanceLow.LitresPerSecondBar <= conductance
                && conductance <= fit.ConductanceHigh.LitresPerSecondBar;
        });
        Assert.InRange(held, 25, 30);
    }

    [Fact]
    public void A_fill_of_a_wanted_time_is_found_with_every_complication_or_refused_with_the_nearest()
    {
        var plain = new PadFill
        {
            Chamber = new Chamber(3.Litres(), 70.Millimetres(), 90.BarGauge()), Supply = 65.BarGauge(),
                Restrictor = new Orifice(1.Millimetres(), 0.8), Target = 60.BarGauge(),
        };
        void Takes(PadFill fill, double seconds, double tolerance = 1e-3)
            => Tolerance.Relative(seconds, fill.InTime(seconds.Seconds()).Run().Duration.Seconds, tolerance);
        Takes(plain with { Heat = FillHeat.Wall }, 1700);
        Takes(plain with { SupplyRise = PressureChangeRate.FromBarsPerSecond(1) }, 120);
        Takes(plain with { Heat = FillHeat.Wall, Goal = FillGoal.AfterCooling }, 900);
        Takes(plain with { Properties = GasProperties.Real, Heat = FillHeat.Wall, Cylinder = new("A", 10.Litres(), 200.BarGauge()) }, 30);

        var pulsed = plain with { Heat = FillHeat.Wall, Valve = new ValvePulses(1.Seconds(), 2.Seconds()) };
        Takes(pulsed, 900, 0.05);
        // From 4 s to 6 s a hand has it shut.
        var shut = Assert.Throws<InvalidDesignException>(() => pulsed.InTime(5.Seconds()));
        Assert.Contains("the valve is shut then", shut.Message, StringComparison.Ordinal);
        // Hot at the regulator's pressure, no quick fill settles high enough.
        Assert.Contains("the nearest found takes", Assert.Throws<InvalidDesignException>(() => (plain
            with { Heat = FillHeat.Wall, Goal = FillGoal.AfterCooling }).InTime(5.Seconds())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Restrictor_for_a_wanted_time_gives_that_time()
    {
        Tolerance.Relative(20, Meant.InTime(20.Seconds()).Run().Duration.Seconds, 1e-9);
        var wall = Meant with { Heat = FillHeat.Wall };
        Tolerance.Relative(20, wall.InTime(20.Seconds()).Run().Duration.Seconds, 1e-4);
        Assert.True(wall.InTime(20.Seconds()).Restrictor.Conductance > Meant.InTime(20.Seconds()).Restrictor.Conductance);
        Assert.Throws<OutOfRangeException>(() => Meant.InTime(0.Seconds()));
        // 1 mm with Cd 0.8 is what 0.125 dm³/(s·bar) is drilled to.
        Tolerance.Relative(1, FlowCapacity.DrillFor(new Orifice(1.Millimetres(), 0.8).Conductance).Millimeters, 1e-9);
    }
}
