using System.Diagnostics.CodeAnalysis;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Propulsion.Firings;

/// <summary>What a vessel does from release to the end of its jet, against time.</summary>
/// <remarks>
/// The points are those of the adaptive integration with points between; at the change from water to gas two points share one time.
/// Source: the equations of the result it belongs to.
/// </remarks>
public sealed record ThrustCurve
{
    private readonly Lazy<Force> _peak = new(Force.Zero);

    /// <summary>An empty curve, to be filled.</summary>
    public ThrustCurve()
    {
    }

    /// <summary>A curve whose columns and peak are made when they are asked for.</summary>
    [SetsRequiredMembers]
    internal ThrustCurve(Func<string, string, Func<FiringRow, double>, Series> column, Lazy<Force> peak, IReadOnlyList<FiringEvent> events)
    {
        Time = column("Time from release", "s", r => r.Time);
        Thrust = column("Thrust", "N", r => r.Thrust);
        Pressure = column("Gas pressure", "bar absolute", r => r.Pressure / 1e5);
        Temperature = column("Gas temperature", "°C", r => r.Temperature - 273.15);
        Water = column("Water left", "g", r => r.WaterKg * 1e3);
        Gas = column("Gas left", "g", r => r.GasKg * 1e3);
        MassFlow = column("Mass flow", "kg/s", r => r.MassFlow);
        Events = events;
        _peak = peak;
    }

    /// <summary>Time from release.</summary>
    public required Series Time { get; init; }

    /// <summary>Thrust.</summary>
    public required Series Thrust { get; init; }

    /// <summary>Gas pressure, absolute.</summary>
    public required Series Pressure { get; init; }

    /// <summary>Gas temperature.</summary>
    public required Series Temperature { get; init; }

    /// <summary>Water left.</summary>
    public required Series Water { get; init; }

    /// <summary>Gas left.</summary>
    public required Series Gas { get; init; }

    /// <summary>Mass leaving per second.</summary>
    public required Series MassFlow { get; init; }

    /// <summary>What happens, in order.</summary>
    public required IReadOnlyList<FiringEvent> Events { get; init; }

    /// <summary>The ride up the launch tube; none without one.</summary>
    public FiringPhase? TubePhase { get; init; }

    /// <summary>The water phase; none without water.</summary>
    public FiringPhase? WaterPhase { get; init; }

    /// <summary>The gas phase; none where the pressure was spent before.</summary>
    public FiringPhase? GasPhase { get; init; }

    /// <summary>Greatest thrust of the established jet; the ride up a launch tube and the first tenths of a millisecond of an unsteady jet
    /// are left out.</summary>
    public required Force PeakThrust
    {
        get => _peak.Value;
        init => _peak = new(value);
    }

    /// <summary>Thrust integrated over all phases.</summary>
    public Impulse Impulse => (TubePhase?.Impulse ?? Impulse.Zero) + (WaterPhase?.Impulse ?? Impulse.Zero)
        + (GasPhase?.Impulse ?? Impulse.Zero);

    /// <summary>Mass that left.</summary>
    public Mass Expelled => (WaterPhase?.Expelled ?? Mass.Zero) + (GasPhase?.Expelled ?? Mass.Zero);

    /// <summary>End of the jet, from release.</summary>
    public Duration End => GasPhase?.End ?? WaterPhase?.End ?? Duration.Zero;

    /// <summary>Impulse over weight expelled, in seconds as the trade says it.</summary>
    public Duration SpecificImpulse => (Expelled.Kilograms > 0 ? Impulse.NewtonSeconds / (Expelled.Kilograms * StandardConstants.Gravity)
        : 0).Seconds();
}

/// <summary>Something that happens while a vessel fires or flies.</summary>
/// <param name="Name">What: "water out", "flow unchoked", "pressure spent", "end of jet", "maximum speed", "apogee", "comes to
/// rest".</param>
/// <param name="Time">When, from release; 0 or above.</param>
public sealed record FiringEvent(string Name, Duration Time)
{
    /// <summary>For example "water out at 86.4 ms".</summary>
    public override string ToString() => $"{Name} at "
        + $"{(Time.Seconds < 1 ? Time.ToUnit(UnitsNet.Units.DurationUnit.Millisecond) :
        Time.ToUnit(UnitsNet.Units.DurationUnit.Second)).Show()}";
}
