using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.RigidBody;

/// <summary>
/// The motion of a rigid body without thrust in six degrees of freedom, by the same equations that a vehicle flies by. It exists so that
/// those equations can be held against published check cases, and so that anybody can set up a case of their own.
/// Source: B. L. Stevens, F. L. Lewis, Aircraft Control and Simulation, 2nd ed. 2003, 1.5 (unverified).
/// </summary>
/// <param name="Body">What moves.</param>
/// <param name="Start">Where and how it starts.</param>
public sealed record FreeBodyFlight(FreeBody Body, BodyStart Start)
{
    private static readonly OdeSettings Settings = new() { RelativeTolerance = 1e-11, MaximumSteps = 2_000_000 };

    /// <summary>The ground; flat with constant gravity where none is given.</summary>
    public Earth Earth { get; init; } = Earth.Flat;

    /// <summary>The air; the standard atmosphere of 1976 unless given; none (null) for a fall in a vacuum.</summary>
    public Atmosphere? Atmosphere { get; init; } = Atmosphere.Standard;

    /// <summary>The wind; calm unless given.</summary>
    public SteadyWind Wind { get; init; } = SteadyWind.Calm;

    /// <summary>How long to follow it; 1 ms to 1 hour. It ends sooner on the ground.</summary>
    public Duration Duration { get; init; } = 30.Seconds();

    /// <summary>Time between rows of the result; 0.1 ms to the duration, at most 100 000 rows.</summary>
    public Duration Interval { get; init; } = 1.Seconds();

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] own =
        [
            new ValidRange<Duration>(0.001.Seconds(), 3600.Seconds()).Find(Duration, "duration",
                "A longer motion is an orbit, which this model doesn't cover."),
            new ValidRange<Duration>(0.0001.Seconds(), Duration > 0.0001.Seconds() ? Duration : 0.0001.Seconds()).Find(Interval,
                "interval between rows", "It is at most the duration."),
            Start.Altitude <= Length.Zero && Start.Down > Speed.Zero ? FlightFindings.StartsOnGround(Start.Altitude, Start.Down) : null,
            Duration / Interval <= 100_000 ? null : FlightFindings.ResultWouldHaveTooManyRows(Duration / Interval),
        ];
        return [.. Body.Validate(), .. Start.Validate(), .. Wind.Validate(), .. own.OfType<Finding>()];
    }

    /// <summary>Follows the body. Source: see the type.</summary>
    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public FreeBodyResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny($"Motion of {Body.Name}", findings);
        var task = new Integration(this, findings);
        Earth.With(ref task);
        return task.Result!;
    }

    private struct Integration(FreeBodyFlight flight, IReadOnlyList<Finding> findings) : IEarthTask
    {
        public FreeBodyResult? Result { get; private set; }

        public void Run<TEarth>(TEarth earth)
            where TEarth : struct, IEarth
        {
            if (flight.Atmosphere is { } atmosphere)
            {
                var (atZero, perMetre) = flight.Wind.Compile();
                Run(earth, new ShearedAir(atmosphere.Law, atZero, perMetre));
            }
            else
            {
                Run(earth, default(NoAir));
            }
        }

        private void Run<TEarth, TAir>(TEarth earth, TAir air)
            where TEarth : struct, IEarth
            where TAir : struct, IAir
        {
            var start = flight.Start;
            var origin = earth.Position(start.Latitude.Radians, start.Longitude.Radians, start.Altitude.Meters);
            var system = new RigidBodySystem<TEarth, TAir, ConstantBody>(earth, air, flight.Body.Compile(), origin);
            Span<double> state = stackalloc double[RigidBodySystem<TEarth, TAir, ConstantBody>.Own];
            Begin(system, state);

            var rows = new TrajectoryBuilder(state.Length, (int)(flight.Duration / flight.Interval) + 3);
            rows.Add(0, state);
            var events = new GroundEvent<TEarth, TAir, ConstantBody>(system);
            var recorder = new GridRecorder(rows, flight.Interval.Seconds);
            // Rows are read from the dense output, whose order is one less than the step's: keep it to one row a step or more.
            var settings = Settings with { MaximumStep = flight.Interval.Seconds };
            ReadOnlySpan<double> tolerance = [1e-7, 1e-7, 1e-7, 1e-8, 1e-8, 1e-8, 1e-11, 1e-11, 1e-11, 1e-11, 1e-10, 1e-10, 1e-10];
            var ode = OdeDriver.Integrate(ref system, ref events, ref recorder, 0, flight.Duration.Seconds, state, settings, tolerance);
            if (ode.TerminalEvent == 0 && rows.Time(rows.Count - 1) < ode.Time) rows.Add(ode.Time, state);
            Result = FreeBodyResult.From(flight, system, rows, ode, findings);
        }

        private readonly void Begin<TEarth, TAir>(RigidBodySystem<TEarth, TAir, ConstantBody> system, Span<double> state)
            where TEarth : struct, IEarth
            where TAir : struct, IAir
        {
            var start = flight.Start;
            state.Clear();
            var origin = system.Position(state);
            var place = system.Earth.At(origin);
            var ground = Vector.Cross(system.Earth.Spin, origin);
            var attitude = place.Attitude * Rotation.FromYawPitchRoll(start.Yaw.Radians, start.Pitch.Radians, start.Roll.Radians);
            var rates = new Vector(start.RollRate.RadiansPerSecond, start.PitchRate.RadiansPerSecond, start.YawRate.RadiansPerSecond);
            if (start.RatesOverGround) rates += attitude.In(system.Earth.Spin);

            (ground + place.Out(new(start.North.MetersPerSecond, start.East.MetersPerSecond,
                start.Down.MetersPerSecond))).CopyTo(state[3..]);
            attitude.CopyTo(state[6..]);
            rates.CopyTo(state[10..]);
        }
    }
}
