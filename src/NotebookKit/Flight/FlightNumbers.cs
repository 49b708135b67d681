using NotebookKit.Aerodynamics;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight;

/// <summary>A vehicle on a site as the plain SI numbers that its equations of motion run on. North, east, down from the pad.</summary>
internal sealed record FlightNumbers
{
    public const double Gravity = AtmosphereLaw.Gravity;

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

    /// <summary>Drag coefficient times area [m²]; the table's end value beyond its last Mach number, where the flight is refused.</summary>
    public double DragM2(double mach, bool isJetOn)
    {
        var curve = isJetOn ? JetOn : JetOff;
        return DragFactor * DragAreaM2 * curve.Coefficient(mach < DragCurve.MaximumMach ? mach : DragCurve.MaximumMach);
    }

    public AirSample AirAt(double t, double heightM) => Air.At(t, Air.ElevationM + heightM);
}
