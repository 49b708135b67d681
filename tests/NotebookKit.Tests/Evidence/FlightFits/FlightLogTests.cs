using NotebookKit.Evidence;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Flight;
using UnitsNet;

namespace NotebookKit.Tests.Evidence.FlightFits;

public class FlightLogTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;
    private static readonly LaunchSite Site = SampleVehicles.Calm;

    // 20 readings a second from an armed altimeter, as pressure of the air at the height a flight has.
    private static FlightLog Log(Func<double, double> heightAfterLaunch, double launchAt, double noiseMetres, ulong seed, double until = 11)
    {
        var noise = new SeededSamples(seed);
        double[] times = [.. Enumerable.Range(0, (int)((launchAt + until) * 20)).Select(i => i / 20.0)];
        double ground = Site.Pressure.Bar, kelvins = Site.Temperature.Kelvins;
        double Bar(double height) => ground * Math.Pow(1 - 0.0065 * height / kelvins, 9.80665 / (287.05287 * 0.0065));
        return new()
        {
            Vehicle = Trainer, Site = Site, Name = "synthetic log",
            Time = new("Time", "s", times),
            Pressure = new("Static pressure", "bar absolute",
                [.. times.Select((t, i) => Bar((t < launchAt ? 0 : heightAfterLaunch(t - launchAt)) + noiseMetres * noise.Normal(i, 0)))]),
        };
    }

    private static Func<double, double> Flown(double dragFactor, double bar)
    {
        var flight = (Trainer with
        {
            DragCalibration = new(dragFactor, Ratio.Zero, Source.CommonPractice("invented")),
                Charge = Trainer.Charge with { Pressure = bar.BarGauge() },
        }).Fly(Site);
        return t => FlightFitting.HeightAt(flight, t);
    }

    [Fact]
    public void A_log_without_scatter_gives_back_what_made_it()
    {
        var fit = Log(Flown(1.25, 38.5), 4.2, 0, 1).Fit();
        Assert.Equal(ResultStatus.Completed, fit.Status);
        Tolerance.Relative(1.25, fit.DragFactor, 2e-3);
        Tolerance.Absolute(38.5, fit.EffectiveFillPressure.Bar, 0.02);
        Tolerance.Absolute(4.2, fit.LaunchAt.Seconds, 2e-3);
    }

    [Fact]
    public void The_95_percent_interval_holds_the_truth_about_as_often()
    {
        var (drag, push) = (0, 0);
        Parallel.For(0, 24, seed =>
        {
            var fit = Log(Flown(1.1, 39), 4.2, 0.5, (ulong)seed + 10).Fit();
            if (fit.DragInterval.Low < 1.1 && 1.1 < fit.DragInterval.High) Interlocked.Increment(ref drag);
            if (Math.Abs(fit.EffectiveFillPressure.Bar - 39) < fit.EffectiveFillPressureUncertainty.Bars) Interlocked.Increment(ref push);
        });
        // Of 24 intervals 22.8 are expected; 20 and fewer come by chance in 1 of 40 sets.
        Assert.True(drag >= 20 && push >= 20, $"{drag} and {push} of 24");
    }

    [Fact]
    public void A_coast_of_known_drag_from_other_formulae_is_recognised()
    {
        // Steady push to 75 m/s in 0.3 s, then the closed form of a coast with v' = −g − k v² (F34), k of a drag coefficient of 0.40 on 70
        // mm at 1.22 kg/m³.
        const double k = 0.5 * 1.22 * 0.40 * 3.8485e-3 / 1.13, g = 9.80665, v0 = 75, push = 0.3;
        double terminal = Math.Sqrt(g / k), top = terminal / g * Math.Atan(v0 / terminal);
        double Height(double t)
        {
            if (t < push) return 0.5 * v0 / push * t * t;
            var since = Math.Min(t - push, top);
            return 0.5 * v0 * push + 1 / k * Math.Log(Math.Cos(g / terminal * (top - since)) / Math.Cos(g / terminal * top)) - (t - push >
                top ? 0.5 * g * Math.Pow(t - push - top, 2) : 0);
        }

        var fit = Log(Height, 4.2, 0.3, 5).Fit();
        var taken = Trainer.Body.DragCurves().Middle.Coefficient(0.13);
        // A steady push isn't ours, which ends more slowly: a tenth is allowed for the difference of shape.
        Tolerance.Relative(0.40, fit.DragFactor * taken, 0.10);
    }

    [Fact]
    public void What_was_fitted_flies_to_the_logged_top()
    {
        var log = Log(Flown(1.3, 37), 4.2, 0.4, 3);
        var fit = log.Fit();
        var again = (Trainer with { DragCalibration = fit.Calibration,
            Charge = Trainer.Charge with { Pressure = fit.EffectiveFillPressure } }).Fly(Site);
        Tolerance.Absolute(log.Height.Values.Max(), again.Apogee.Meters, 1.5);
        Assert.Contains("synthetic log", string.Join(' ', again.Model.Assumptions), StringComparison.Ordinal);
    }

    [Fact]
    public void More_scatter_gives_wider_intervals_and_ten_times_as_much_says_so()
    {
        double Width(FlightFit fit) => fit.DragInterval.High / fit.DragInterval.Low;
        var (quiet, loud) = (Log(Flown(1, 40), 4.2, 0.2, 7).Fit(), Log(Flown(1, 40), 4.2, 2, 7).Fit());
        Assert.True(Width(loud) > 3 * (Width(quiet) - 1) + 1);
    }

    [Fact]
    public void With_a_gauge_that_is_trusted_the_drag_is_known_better()
    {
        var log = Log(Flown(1.2, 40), 4.2, 0.5, 21);
        double Width(FlightFit fit) => fit.DragInterval.High - fit.DragInterval.Low;
        var (both, one) = (log.Fit(), (log with { TrustGauge = true }).Fit());
        Assert.True(Width(one) < 0.5 * Width(both));
        Assert.InRange(1.2, one.DragInterval.Low, one.DragInterval.High);
        Assert.Equal(40, one.EffectiveFillPressure.Bar, 12);
        Assert.Contains(both.Findings, f => f.Message.Contains("trust the gauge", StringComparison.Ordinal));
    }

    [Fact]
    public void A_push_that_is_not_the_gauges_is_pointed_out() =>
        Assert.Contains(Log(Flown(1, 34), 4.2, 0.2, 9).Fit().Findings,
            f => f.Severity == FindingSeverity.Warning && f.Message.Contains("less than the gauge read", StringComparison.Ordinal));

    [Fact]
    public void The_calibrated_band_is_that_of_the_log_not_of_the_build_up()
    {
        var calibrated = Trainer with { DragCalibration = new(1.2, 5.Percent(), Source.CommonPractice("invented")) };
        var (low, middle, high) = ((calibrated with { DragEnd = DragEnd.High }).Fly(Site).Apogee, calibrated.Fly(Site).Apogee,
            (calibrated with { DragEnd = DragEnd.Low }).Fly(Site).Apogee);
        Assert.True(low < middle && middle < high);
        Assert.True((high - low).Meters < 0.5 * ((Trainer with { DragEnd = DragEnd.Low }).Fly(Site).Apogee - (Trainer
            with { DragEnd = DragEnd.High }).Fly(Site).Apogee).Meters);
    }

    [Fact]
    public void Logs_that_cannot_be_fitted_are_refused_with_every_reason()
    {
        var log = Log(Flown(1, 40), 4.2, 0.2, 1);
        string Refusal(FlightLog bad) => Assert.Throws<InvalidDesignException>(bad.Fit).Message;
        Assert.Contains("must be in bar absolute", Refusal(log with { Pressure = log.Pressure with { Unit = "bar gauge" } }),
            StringComparison.Ordinal);
        Assert.Contains("aren't numbers", Refusal(log with {
            Pressure = log.Pressure with { Values = [.. log.Pressure.Values.Skip(1), double.NaN] } }), StringComparison.Ordinal);
        Assert.Contains("don't increase", Refusal(log with { Time = log.Time with { Values = [.. log.Time.Values.Reverse()] } }),
            StringComparison.Ordinal);
        Assert.Contains("one to one", Refusal(log with { Time = log.Time with { Values = [.. log.Time.Values.Skip(1)] } }),
            StringComparison.Ordinal);
        Assert.Contains("at least 10 m", Refusal(log with { Pressure = log.Pressure
            with { Values = [.. log.Pressure.Values.Select(_ => 1.0)] } }), StringComparison.Ordinal);
        Assert.Contains("before launch", Refusal(Log(Flown(1, 40), 0.1, 0.2, 1)), StringComparison.Ordinal);
        Assert.Contains("factor on drag", Assert.Throws<InvalidDesignException>(() => (Trainer
            with { DragCalibration = new(9, Ratio.Zero, Source.CommonPractice("invented")) }).Fly(Site)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_speed_of_the_way_down_is_the_slope_of_the_log()
    {
        var log = Log(t => t < 6 ? 200 - 5 * (t - 6) * (t - 6) : 200 - 6.2 * (t - 6), 4.2, 0.5, 11, until: 36);
        Tolerance.Relative(6.2, log.DescentSpeed!.Value.MetersPerSecond, 0.01);
        Assert.Null(Log(Flown(1, 40), 4.2, 0.5, 11, until: 8).DescentSpeed);
    }

    [Fact]
    public void Pressure_heights_out_of_range_are_refused() =>
        Assert.Throws<OutOfRangeException>(() => PressureHeight.Above(0.1.BarAbsolute(), 1.BarAbsolute(), 15.Celsius()));
}
