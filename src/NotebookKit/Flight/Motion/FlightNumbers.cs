using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Space;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>A vehicle on a site as the plain SI numbers that its equations of motion run on. North, east, down from the pad.</summary>
internal sealed record FlightNumbers
{

    private const double KelvinPerSquareSound = 1 / (StandardConstants.AirHeatCapacityRatio * AtmosphereLaw.GasConstant);

    public required SiteAir Air { get; init; }

    public required double RailM { get; init; }

    public required Vector RailDirection { get; init; }

    public required double RailFriction { get; init; }

    /// <summary>Mass of all that isn't water or gas of the running drive [kg].</summary>
    public required double DryKg { get; init; }

    public required double DragAreaM2 { get; init; }

    public required DragCurve JetOn { get; init; }

    public required DragCurve JetOff { get; init; }

    public double DragFactor { get; init; } = 1;

    public required FiringSetup Firing { get; init; }

    public double ThrustFactor { get; init; } = 1;

    public required DeploymentNumbers Deployment { get; init; }

    /// <summary>
    /// Drag coefficient times area in the air of the height flown at [m²]; the table's end value beyond its last Mach number, where the
    /// flight is refused.
    /// </summary>
    public double DragM2(double mach, in AirSample air, bool isJetOn)
    {
        var kelvin = air.SoundMps * air.SoundMps * KelvinPerSquareSound;
        return DragFactor * DragAreaM2 * (isJetOn ? JetOn : JetOff).Coefficient(Held(mach), air.PressurePa, kelvin);
    }

    /// <summary>The same in the air at the pad [m²].</summary>
    public double DragM2(double mach, bool isJetOn) => DragFactor * DragAreaM2 * (isJetOn ? JetOn : JetOff).Coefficient(Held(mach));

    public AirSample AirAt(double t, double heightM) => Air.At(t, Air.ElevationM + heightM);

    private static double Held(double mach) => mach < DragCurve.MaximumMach ? mach : DragCurve.MaximumMach;
}

/// <summary>When the canopy comes out and what it does, in SI numbers.</summary>
/// <param name="Trigger">What brings it out.</param>
/// <param name="DelayS">From apogee or from release, as the trigger has it [s].</param>
/// <param name="DragM2">Drag area of the open canopy [m²].</param>
/// <param name="FillM">Distance it takes to fill [m].</param>
/// <param name="Growth">Exponent of its growth while it fills [-].</param>
internal readonly record struct DeploymentNumbers(DeploymentTrigger Trigger, double DelayS, double DragM2, double FillM, double Growth);
