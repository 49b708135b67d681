using BenchmarkDotNet.Attributes;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>400 descents of a dispersion under open canopies, one by one as the library flies them, and four abreast as a trial.</summary>
public class CanopyBenchmarks
{
    private const int Flights = 400;

    private readonly CanopyStart[] _starts = new CanopyStart[Flights];
    private readonly double[] _landed = new double[Flights];

    [GlobalSetup]
    public void Setup()
    {
        var (site, spread, samples) = (BenchmarkVehicle.Site, new Spread(), new SeededSamples(1));
        var stage = new VariedStage(BenchmarkVehicle.Trainer, site, spread, samples, 0, isSixDegrees: false);
        var day = new VariedDay(site, spread, samples, 100.Metres());
        for (var i = 0; i < Flights; i++)
        {
            var drawn = day.Draw(i);
            var numbers = day.Apply(stage.Numbers(stage.Draw(i)), drawn, null);
            var marks = FlightRun.Fly(numbers, null, FlightAccuracy.Fast);
            _starts[i] = new(numbers, [0, 0, -marks.ApogeeM, 1, 4, marks.OpeningDown + 3],
                numbers.DryKg + marks.WaterLeftKg + marks.GasLeftKg, numbers.Deployment.DragM2,
                drawn.WindSpeed * Math.Cos(drawn.WindTurn), drawn.WindSpeed * Math.Sin(drawn.WindTurn),
                -numbers.RailM * numbers.RailDirection.Z);
        }

        var alone = One_by_one().ToArray();
        var abreast = Four_abreast();
        for (var i = 0; i < Flights; i++)
        {
            if (Math.Abs(alone[i] - abreast[i]) > 1e-12 * alone[i])
                throw new InvalidOperationException($"descent {i} lands at {alone[i]} s alone, at {abreast[i]} s abreast.");
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Flights)]
    public double[] One_by_one()
    {
        Span<double> y = stackalloc double[6], absolute = stackalloc double[6];
        absolute.Fill(FlightAccuracy.Fast.RelativeTolerance);
        var none = new NoObserver();
        for (var i = 0; i < Flights; i++)
        {
            var start = _starts[i];
            start.State.CopyTo(y);
            // Filled before it starts.
            var path = new CanopyPath(start.Numbers, start.MassKg - start.Numbers.DryKg, 0, -1, 0.5);
            var events = new LandingEvents(hasTopped: true);
            _landed[i] = OdeDriver.Integrate(ref path, ref events, ref none, 0, 3600, y, FlightAccuracy.Fast, absolute).Time;
        }

        return _landed;
    }

    [Benchmark(OperationsPerInvoke = Flights)]
    public double[] Four_abreast()
    {
        CanopiesAbreast.Land(_starts, _landed);
        return _landed;
    }
}
