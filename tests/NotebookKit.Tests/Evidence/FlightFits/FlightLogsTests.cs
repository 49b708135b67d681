using NotebookKit.Numerics;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Flight;
using UnitsNet;

namespace NotebookKit.Tests.Evidence.FlightFits;

public class FlightLogsTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;
    private static readonly LaunchSite Site = SampleVehicles.Calm;

    private static FlightLog Log(string name, double dragFactor, double bar, double launchAt, ulong seed, double noiseMetres = 0.4)
    {
        var flight = (Trainer with
        {
            DragCalibration = new(dragFactor, Ratio.Zero, Source.CommonPractice("invented")),
            Charge = Trainer.Charge with { Pressure = bar.BarGauge() },
        }).Fly(Site);
        var noise = new SeededSamples(seed);
        double[] times = [.. Enumerable.Range(0, (int)((launchAt + 11) * 20)).Select(i => i / 20.0)];
        double Bar(double height) =>
            Site.Pressure.Bar * Math.Pow(1 - 0.0065 * height / Site.Temperature.Kelvins, 9.80665 / (287.05287 * 0.0065));
        return new()
        {
            Vehicle = Trainer, Site = Site, Name = name,
            Time = new("Time", "s", times),
            Pressure = new("Static pressure", "bar absolute",
                [.. times.Select((t, i) => Bar(FlightFitting.HeightAt(flight, t - launchAt) + noiseMetres * noise.Normal(i, 0)))]),
        };
    }

    [Fact]
    public void Flights_without_scatter_give_back_the_drag_they_share_and_the_fill_and_launch_that_are_their_own()
    {
        double[] bars = [38, 39.5, 37], launches = [4.2, 3.1, 5.6];
        var fit = new FlightLogs { Flights = [.. bars.Select((b, i) => Log($"flight {i + 1}", 1.2, b, launches[i], 1, 0))] }.Fit();
        Assert.Equal(ResultStatus.Completed, fit.Status);
        Tolerance.Relative(1.2, fit.DragFactor, 3e-3);
        for (var i = 0; i < 3; i++)
        {
            Tolerance.Absolute(bars[i], fit.Flights[i].EffectiveFillPressure.Bar, 0.03);
            Tolerance.Absolute(launches[i], fit.Flights[i].LaunchAt.Seconds, 2e-3);
        }

        Assert.Equal(fit.Calibration.Factor, fit.DragFactor);
        Assert.Contains(fit.Lines, l => l.Name == "flight 2" && l.Note.Contains("39.5 bar gauge", StringComparison.Ordinal));
    }

    [Fact]
    public void Three_noisy_flights_hold_the_truth_and_know_it_better_than_one()
    {
        var fit = new FlightLogs { Flights = [Log("a", 1.15, 38, 4.2, 11), Log("b", 1.15, 38, 4, 12), Log("c", 1.15, 38, 4.1, 13)] }.Fit();
        Assert.InRange(1.15, fit.DragInterval.Low, fit.DragInterval.High);
        Assert.InRange(1.15, fit.NextFlightInterval.Low, fit.NextFlightInterval.High);
        Assert.True(fit.NextFlightInterval.High > fit.DragInterval.High);
        Assert.Empty(fit.Disagreeing);
        Assert.InRange(fit.FillOffset!.Value.Bars + 40 - 38, -1, 1);
    }

    [Fact]
    public void The_shared_drag_is_that_of_one_least_squares_over_all_readings()
    {
        FlightLog[] logs = [Log("a", 1.2, 38, 4.2, 31), Log("b", 1.2, 39, 4, 32)];
        var fit = new FlightLogs { Flights = logs }.Fit();
        // From a second and a half before launch to the top, as a single fit.
        var used = logs.Select(l => Enumerable.Range(0, l.Height.Values.ToList().IndexOf(l.Height.Values.Max()) + 1)
            .Where(i => l.Time[i] >= 2.6).ToArray()).ToArray();
        var heights = logs.Select(l => l.Height.Values).ToArray();
        double[] Model(double[] x) =>
        [
            .. logs.SelectMany((l, f) =>
            {
                var flight = FlightFitting.With(l, x[0], x[1 + 3 * f]).Fly(l.Site);
                return used[f].Select(i => x[3 + 3 * f] + FlightFitting.HeightAt(flight, l.Time[i] - x[2 + 3 * f]));
            }),
        ];
        var joint = CurveFit.Of(Model, [.. logs.SelectMany((l, f) => used[f].Select(i => heights[f][i]))],
            [0, 38, 4.2, 0, 38, 4, 0], [-1, 25, 3, -5, 25, 3, -5], [1, 40, 5, 5, 40, 5, 5], [0.02, 0.2, 0.005, 0.01, 0.2, 0.005, 0.01]);
        // Two answers from the same readings: apart by less than an eighth of the interval that they leave open.
        Tolerance.Absolute(joint.Parameters[0], Math.Log(fit.DragFactor), joint.HalfWidths[0] / 4);
    }

    [Fact]
    public void A_flight_that_disagrees_is_named()
    {
        var logs = new FlightLogs { Flights = [Log("a", 1.1, 38, 4.2, 21), Log("b", 1.1, 38, 4, 22), Log("odd", 1.9, 38, 4.1, 23),
            Log("d", 1.1, 38, 4.3, 24)] };
        var fit = logs.Fit();
        Assert.Equal(["odd"], fit.Disagreeing);
        Assert.True(fit.BetweenFlights.Percent > 10);
        Assert.Contains(fit.Findings, f => f.Severity == FindingSeverity.Warning && f.Message.StartsWith("odd disagrees",
            StringComparison.Ordinal));
    }

    [Fact]
    public void Flights_that_cannot_be_fitted_together_are_refused_with_every_reason()
    {
        FlightLog one = Log("a", 1, 38, 4.2, 1), two = Log("b", 1, 38, 4.2, 2);
        string Refusal(params FlightLog[] flights) =>
            Assert.Throws<InvalidDesignException>(() => new FlightLogs { Flights = flights }.Fit()).Message;
        Assert.Contains("2 to 30", Refusal(one), StringComparison.Ordinal);
        Assert.Contains("name of its own", Refusal(one, one), StringComparison.Ordinal);
        Assert.Contains("share one shape", Refusal(one, two with { Vehicle = Trainer with {
            DragCalibration = new(1.3, Ratio.Zero, Source.CommonPractice("invented")) } }), StringComparison.Ordinal);
        Assert.Contains("b: The pressure is in bar gauge", Refusal(one, two with { Pressure = two.Pressure with { Unit = "bar gauge" } }),
            StringComparison.Ordinal);
    }
}
