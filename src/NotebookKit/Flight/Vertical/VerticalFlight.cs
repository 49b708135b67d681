using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Firings;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Flight.Vertical;

/// <summary>A vehicle let go on its pad and going straight up until it stops: water, gas, coast.</summary>
/// <remarks>
/// Thrust is computed with the flight, not read from a table: pressure outside, mass and (where asked for) the head of the accelerated
/// water come from it.
/// Source: Newton's second law for the vehicle with all it carries; firing as in <see cref="StaticFiring"/>; drag ½ ρ v² C_D A.
/// </remarks>
/// <param name="Charge">What is in the vessel.</param>
/// <param name="Nozzle">What it leaves through.</param>
/// <param name="DryMass">Mass without water and gas; 1 g to 200 kg.</param>
/// <param name="Drag">Drag against Mach number, without jet.</param>
/// <param name="Site">Where it starts.</param>
public sealed record VerticalFlight(Charge Charge, Nozzle Nozzle, Mass DryMass, DragCurve Drag, LaunchSite Site)
{
    internal static readonly OdeSettings Fast = new() { RelativeTolerance = 1e-6 };
    internal static readonly OdeSettings Recorded = new() { RelativeTolerance = 1e-9 };

    /// <summary>Name of the vehicle.</summary>
    public string Name { get; init; } = "vehicle";

    /// <summary>Which equations describe water and gas; <see cref="FlowModel.Real"/> unless given.</summary>
    public FlowModel Flow { get; init; } = FlowModel.Real;

    /// <summary>Drag against Mach number while the jet fills part of the base; as without jet unless given. Both refer to one
    /// area.</summary>
    public DragCurve? DragUnderThrust { get; init; }

    /// <summary>A launch tube that it rides up first; none unless given.</summary>
    public LaunchTube? LaunchTube { get; init; }

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var all = InputFindings();
        if (all.TrueForAll(f => f.Severity != FindingSeverity.Error) && LiftFinding() is { } lift) all.Add(lift);
        return all;
    }

    /// <summary>What is wrong with the inputs one by one, without asking whether it lifts.</summary>
    internal List<Finding> InputFindings()
    {
        List<Finding> all = [.. FiringChecks.All(Charge, Nozzle, Flow, Site.Pressure), .. Site.Validate()];
        var mass = new ValidRange<Mass>(1.Grams(), 200.Kilograms()).Find(DryMass, "dry mass",
            "It is the vehicle without water and gas; check its unit.");
        if (mass is not null) all.Add(mass);
        if (DragUnderThrust is { } jetOn && Math.Abs(jetOn.AreaM2 / Drag.AreaM2 - 1) > 1e-9)
        {
            all.Add(FlightFindings.ReferenceAreasOfDragDiffer(jetOn.ReferenceArea, Drag.ReferenceArea));
        }

        if (LaunchTube is { } tube) all.AddRange(LaunchTubeFit.Check(tube, Nozzle, Charge));
        return all;
    }

    /// <summary>Flies it with everything recorded, relative tolerance 1e-9. Source: see the result's model.</summary>
    /// <exception cref="InvalidDesignException">Something about it is out of range.</exception>
    public VerticalFlightResult Fly()
    {
        InvalidDesignException.ThrowIfAny(Name, Validate());
        return IsConstant ? VerticalFlightRecord.Fly(this, ConstantLaw) : VerticalFlightRecord.Fly(this, TabulatedLaw);
    }

    /// <summary>Flies it to the top with nothing recorded, relative tolerance 1e-6, which keeps its numbers within 1e-4 of the recorded
    /// flight: for maps, searches and scatter. Source: as <see cref="Fly"/>.</summary>
    /// <exception cref="InvalidDesignException">Something about it is out of range.</exception>
    public VerticalFlightPeak Peak()
    {
        InvalidDesignException.ThrowIfAny(Name, Validate());
        return PeakUnchecked(Tables);
    }

    private bool IsConstant => Drag.IsConstant && (DragUnderThrust?.IsConstant ?? true);

    internal ConstantDragLaw ConstantLaw => new((DragUnderThrust ?? Drag).Coefficient(0), Drag.Coefficient(0));

    internal TabulatedDragLaw TabulatedLaw => new(DragUnderThrust ?? Drag, Drag);

    internal FiringTables Tables => FiringTables.For(Charge, Flow, Site.Pressure.Pascals);

    internal FiringSetup Setup(FiringTables tables) => new(Charge, Nozzle, Flow, Site.Pressure.Pascals, tables, LaunchTube);

    internal FreeMount<TDrag> Mount<TDrag>(TDrag law)
        where TDrag : struct, IDragLaw =>
        new(DryMass.Kilograms, Site.Atmosphere.Law, Site.Elevation.Meters, Drag.AreaM2, law);

    internal VerticalFlightPeak PeakUnchecked(FiringTables tables) =>
        IsConstant ? Peak(Setup(tables), Mount(ConstantLaw), Fast) : Peak(Setup(tables), Mount(TabulatedLaw), Fast);

    internal static VerticalFlightPeak Peak<TDrag>(in FiringSetup setup, FreeMount<TDrag> mount, OdeSettings settings)
        where TDrag : struct, IDragLaw
    {
        var end = new FiringEnd();
        var (apogee, time) = VerticalRun.ToApogee(setup, mount, settings, ref end);
        return end.Failed || end.StoppedOnTube || MaximumMach(mount, end) > DragCurve.MaximumMach
            ? new(ResultStatus.Failed, double.NaN, double.NaN, double.NaN, double.NaN, end.Evaluations)
            : new(ComesDownCharged(setup, mount, end) ? ResultStatus.Failed : ResultStatus.Completed, apogee, time, end.FastestSpeed,
                end.EndTime, end.Evaluations);
    }

    /// <summary>Whether it comes to rest in the air and lands with water and pressure aboard.</summary>
    internal static bool ComesDownCharged<TDrag>(in FiringSetup setup, FreeMount<TDrag> mount, in FiringEnd end)
        where TDrag : struct, IDragLaw
    {
        if (!end.TopReached || end.StoppedOnTube || end.WaterLeftKg <= 0) return false;
        var ambient = mount.Surroundings(end.EndHeight, 0, true, out _);
        return ChargedLanding.IsCharged(end.WaterLeftKg, end.EndPressure - ambient)
            && ChargedLanding.FallsCharged(setup, mount.DryMassKg, end.EndHeight, end.WaterOutVolume, ambient);
    }

    internal static double MaximumMach<TDrag>(FreeMount<TDrag> mount, in FiringEnd end)
        where TDrag : struct, IDragLaw =>
        end.FastestSpeed / mount.SpeedOfSoundAt(end.FastestHeight);

    private Finding? LiftFinding()
    {
        // An ideal gas is near enough here, and needs no table.
        var setup = Setup(FiringTables.None);
        var thrust = setup.FirstThrust;
        var weight = (DryMass.Kilograms + setup.WaterKg + setup.GasKg) * StandardConstants.Gravity;
        return thrust > weight
            ? ChargedLanding.Ahead(setup, DryMass.Kilograms, out var rest) ? rest.Hop(thrust, weight) : null
            : FlightFindings.ThrustBelowWeight(thrust.Newtons(), weight.Newtons());
    }
}
