using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Flight.Motion;
using NotebookKit.Propulsion.Firings;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Flight.Vertical;

/// <summary>What a vertical flight does from release to its top. Source: see <see cref="Model"/>.</summary>
public sealed record VerticalFlightResult : Result
{
    private readonly FiringRecord _record;
    private readonly Lazy<Working> _working;

    internal VerticalFlightResult(
        VerticalFlight flight, in FiringSetup setup, FiringRecord record, in FiringEnd end, double apogeeM, double timeS,
            bool comesDownCharged,
        Func<double, double> speedOfSoundAt)
    {
        Flight = flight;
        Curve = record.Curve(setup);
        Energy = record.Energy(setup);
        var greatestMach = end.FastestSpeed / speedOfSoundAt(end.FastestHeight);
        var tooFast = greatestMach > DragCurve.MaximumMach;
        Status = end.Failed || tooFast || end.StoppedOnTube ? ResultStatus.Failed : ResultStatus.Completed;
        Steps = end.Steps;
        RejectedSteps = end.Rejected;
        Evaluations = end.Evaluations;

        _record = record;
        var dry = flight.DryMass.Kilograms;
        Time = record.Column("Time from release", "s", r => r.Time);
        Height = record.Column("Height above pad", "m", r => r.Height);
        Speed = record.Column("Speed", "m/s", r => r.Speed);
        Acceleration = record.Column("Acceleration", "m/s²", r => r.Acceleration);
        Thrust = record.Column("Thrust", "N", r => r.Thrust);
        Mass = record.Column("Mass", "kg", r => dry + r.WaterKg + r.GasKg);
        Water = record.Column("Water left", "g", r => r.WaterKg * 1e3);
        var column = 1e3 / (setup.WaterJet.Density * setup.WaterJet.BoreAreaM2);
        WaterLevel = record.Column("Water level above nozzle end", "mm", r => r.WaterKg * column);
        Pressure = record.Column("Gas pressure", "bar absolute", r => r.Pressure / 1e5);
        var law = flight.Site.Atmosphere.Law;
        var elevation = flight.Site.Elevation.Meters;
        Mach = record.Column("Mach number", "-", r => Math.Abs(r.Speed) / speedOfSoundAt(r.Height));
        DynamicPressure = record.Column("Dynamic pressure", "kPa", r =>
        {
            var pressure = law.Pressure(elevation + r.Height, out var temperature);
            return 0.5e-3 * pressure / (law.SpecificGasConstant * temperature) * r.Speed * r.Speed;
        });

        var failed = end.Failed;
        Apogee = (failed ? 0 : apogeeM).Metres();
        ApogeeTime = (failed ? 0 : timeS).Seconds();
        MaximumSpeed = Known(end.FastestSpeed).MetresPerSecond();
        MaximumSpeedTime = Known(end.FastestTime).Seconds();
        ComesDownCharged = comesDownCharged;
        var gauge = end.EndPressure - law.Pressure(elevation + end.EndHeight, out _);
        Rest = end.TopReached && gauge >= ChargedLanding.GonePa ? new ChargedRest(end.EndTime, end.EndHeight, end.WaterLeftKg, gauge) :
            null;
        WaterOut = double.IsFinite(end.WaterOutTime) && end.WaterLeftKg <= 0
            ? new(end.WaterOutTime.Seconds(), end.WaterOutHeight.Metres(), end.WaterOutSpeed.MetresPerSecond()) : null;
        EndOfJet = new(end.EndTime.Seconds(), end.EndHeight.Metres(), end.EndSpeed.MetresPerSecond());
        Events = [.. Curve.Events.Append(new("maximum speed", MaximumSpeedTime)).OrderBy(e => e.Time.Seconds),
            new(ComesDownCharged ? "comes to rest" : "apogee", ApogeeTime)];

        List<Finding> findings = [.. FiringModel.Warnings(flight.Charge, flight.Flow,
            end.WaterSpent || (end.TopReached && end.WaterLeftKg > 0 && gauge < ChargedLanding.GonePa), end.WaterLeftKg)];
        if (tooFast)
        {
            findings.Add(FlightFindings.MachBeyondDragModel(greatestMach, DragCurve.MaximumMach));
        }
        else if (greatestMach > 0.8)
        {
            findings.Add(FlightFindings.MachAboveSteepDragRise(greatestMach));
        }

        if (end.StoppedOnTube)
        {
            findings.Add(FlightFindings.VehicleStopsOnLaunchTube(
                end.EndHeight.Metres(), flight.LaunchTube!.Stroke, ChargedLanding.Aboard(end.WaterLeftKg, gauge)));
        }

        else if (Rest is { } rest)
        {
            findings.Add(ComesDownCharged ? rest.CameDown() : rest.WaterKg > 0 ? rest.TurnsOver() : rest.StillBlows());
        }

        if (failed) findings.Add(FlightFindings.DidNotReachEnd(end.Failure, end.Status.ToString()));
        Findings = findings;
        var own = setup;
        _working = new(() => VerticalFlightWorking.For(flight, own));
    }

    // What a failed flight never reached is 0, beside a status that says so.
    private static double Known(double value) => double.IsFinite(value) ? value : 0;

    /// <summary>What was flown.</summary>
    public VerticalFlight Flight { get; }

    /// <summary>Thrust, pressure, temperature and masses while the jet runs.</summary>
    public ThrustCurve Curve { get; }

    /// <summary>Where the energy of the gas went, seen from the vessel.</summary>
    public EnergyBudget Energy { get; }

    /// <summary>Time from release of every point below.</summary>
    public Series Time { get; }

    /// <summary>Height above the pad.</summary>
    public Series Height { get; }

    /// <summary>Speed, up positive.</summary>
    public Series Speed { get; }

    /// <summary>Acceleration, up positive, gravity included.</summary>
    public Series Acceleration { get; }

    /// <summary>Thrust.</summary>
    public Series Thrust { get; }

    /// <summary>Mass of vehicle, water and gas.</summary>
    public Series Mass { get; }

    /// <summary>Water aboard.</summary>
    public Series Water { get; }

    /// <summary>Height of the water in a straight vessel of its bore.</summary>
    public Series WaterLevel { get; }

    /// <summary>Gas pressure, absolute.</summary>
    public Series Pressure { get; }

    /// <summary>Mach number.</summary>
    public Series Mach { get; }

    /// <summary>Dynamic pressure.</summary>
    public Series DynamicPressure { get; }

    /// <summary>What happens, in order.</summary>
    public IReadOnlyList<FiringEvent> Events { get; }

    /// <summary>Height of the top above the pad.</summary>
    public Length Apogee { get; }

    /// <summary>Time from release to apogee.</summary>
    public Duration ApogeeTime { get; }

    /// <summary>Maximum speed.</summary>
    public Speed MaximumSpeed { get; }

    /// <summary>When it is reached.</summary>
    public Duration MaximumSpeedTime { get; }

    /// <summary>Acceleration at release, gravity taken off.</summary>
    public Acceleration FirstAcceleration =>
        UnitsNet.Acceleration.FromMetersPerSecondSquared(_record.Rows.Count > 0 ? _record.Rows[0].Acceleration : 0);

    /// <summary>When, where and how fast the water is out; none without water, or where some stays aboard.</summary>
    public FlightPoint? WaterOut { get; }

    /// <summary>Whether it comes to rest in the air and lands with water and pressure aboard: no flight, whatever height it has.</summary>
    public bool ComesDownCharged { get; }

    /// <summary>When, where and how fast the jet ends; the top where it still runs then.</summary>
    public FlightPoint EndOfJet { get; }

    /// <summary>Accepted steps of the integration.</summary>
    public int Steps { get; }

    /// <summary>Rejected steps of the integration.</summary>
    public int RejectedSteps { get; }

    /// <summary>Right-hand sides computed.</summary>
    public int Evaluations { get; }

    /// <inheritdoc/>
    public override string Title => $"Vertical flight, {Flight.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => VerticalFlightModel.Card(Flight);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
        Status == ResultStatus.Failed
            ? []
            :
            [
                .. ComesDownCharged
                    ? [new ResultLine("Comes to rest", Apogee.Show(), $"{ApogeeTime.Show()} after release; not a flight")]
                    : new[] { new ResultLine("Apogee above pad", Apogee.Show()), new ResultLine("Time of apogee", ApogeeTime.Show()) },
                new("Maximum speed", MaximumSpeed.Show(), $"at {Digits.Round(MaximumSpeedTime.Seconds * 1e3)} ms, Mach "
                    + $"{Digits.Round(Mach.Values.Max(), 2)}"),
                new("Acceleration at release", $"{Digits.Round(FirstAcceleration.MetersPerSecondSquared)} m/s²",
                    $"{Digits.Round(FirstAcceleration.MetersPerSecondSquared / StandardConstants.Gravity, 2)} g"),
                new("Peak thrust", Curve.PeakThrust.Show()),
                new("Impulse", $"{Digits.Round(Curve.Impulse.NewtonSeconds)} N s"),
                .. WaterOut is { } water ? [new ResultLine("Water out", $"{Digits.Round(water.Time.Seconds * 1e3)} ms",
                    $"{water.Speed.Show()}, {water.Height.Show()}")] : Array.Empty<ResultLine>(),
                .. Rest is { } rest ? [new ResultLine("Still aboard at apogee", ChargedLanding.Aboard(rest.WaterKg, rest.GaugePa))]
                    : new[] { EndLine },
            ];

    private ChargedRest? Rest { get; }

    private ResultLine EndLine => new("End of jet", $"{Digits.Round(EndOfJet.Time.Seconds * 1e3)} ms",
        $"{EndOfJet.Speed.Show()}, {EndOfJet.Height.Show()}");

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => _working.Value;
}

/// <summary>One moment of a flight.</summary>
/// <param name="Time">From release; 0 or above.</param>
/// <param name="Height">Above the pad; any value.</param>
/// <param name="Speed">Along the path, up positive; any value.</param>
public sealed record FlightPoint(Duration Time, Length Height, Speed Speed);
