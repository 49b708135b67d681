using BenchmarkDotNet.Attributes;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>
/// One flight of a vehicle. Budgets on one core: three degrees of freedom to the ground 300 µs; six to the top 3 ms, to the ground 10 ms;
/// no allocation in the step loop.
/// </summary>
[MemoryDiagnoser]
public class VehicleFlightBenchmarks
{
    private readonly FlightNumbers _numbers = BenchmarkVehicle.Trainer.Numbers(BenchmarkVehicle.Site);
    private readonly VehicleNumbers _sixDegrees = BenchmarkVehicle.Trainer.SixDegrees();
    private readonly FlightNumbers _bare = (BenchmarkVehicle.Trainer
        with { Canopy = null, Deployment = Deployment.None }).Numbers(BenchmarkVehicle.Site);

    /// <summary>Three degrees of freedom to the ground, nothing recorded, relative tolerance 1e-6.</summary>
    [Benchmark(Baseline = true)]
    public double Three_degrees_to_the_ground() => FlightRun.Fly(_numbers, null, FlightAccuracy.Fast).LandingTime;

    /// <summary>Six degrees of freedom to the top, then a canopy to the ground.</summary>
    [Benchmark]
    public double Six_degrees_to_the_top_and_canopy_to_the_ground()
        => FlightRun.Fly(_numbers, _sixDegrees, FlightAccuracy.Fast).LandingTime;

    /// <summary>Six degrees of freedom all the way to the ground, without canopy.</summary>
    [Benchmark]
    public double Six_degrees_to_the_ground() => FlightRun.Fly(_bare, _sixDegrees, FlightAccuracy.Fast).LandingTime;

    /// <summary>What a notebook calls: checks, drag tables, gas tables, every curve, findings.</summary>
    [Benchmark]
    public double Fly() => BenchmarkVehicle.Trainer.Fly(BenchmarkVehicle.Site).Apogee.Meters;

    /// <summary>The same in six degrees of freedom.</summary>
    [Benchmark]
    public double Fly_six_degrees() => BenchmarkVehicle.Trainer.FlySixDegrees(BenchmarkVehicle.Site).Apogee.Meters;

    /// <summary>Drag and gas tables alone.</summary>
    [Benchmark]
    public object Tables() => BenchmarkVehicle.Trainer.Numbers(BenchmarkVehicle.Site);

    /// <summary>Slopes and strips of six degrees of freedom.</summary>
    [Benchmark]
    public object Slopes() => BenchmarkVehicle.Trainer.SixDegrees();

    /// <summary>Check case 3 of NASA/TM-2015-218675, the tumbling brick with damping, 30 s.</summary>
    [Benchmark]
    public int Tumbling_brick()
    {
        static UnitsNet.MassMomentOfInertia Slug(double value) => UnitsNet.MassMomentOfInertia.FromSlugSquareFeet(value);
        var brick = new FreeBody("brick", UnitsNet.Mass.FromSlugs(0.155404754), Slug(0.001894220), Slug(0.006211019), Slug(0.007194665))
        {
            ReferenceArea = UnitsNet.Area.FromSquareFeet(0.22222),
            Span = UnitsNet.Length.FromFeet(0.33333),
            Chord = UnitsNet.Length.FromFeet(0.66667),
            RollDamping = -1,
            PitchDamping = -1,
            YawDamping = -1,
        };
        var start = new BodyStart { Altitude = 9144.Metres(), RollRate = UnitsNet.RotationalSpeed.FromDegreesPerSecond(10) };
        return new FreeBodyFlight(brick, start) { Earth = Earth.Ellipsoid }.Run().Evaluations;
    }
}
