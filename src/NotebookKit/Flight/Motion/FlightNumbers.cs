using System.Runtime.CompilerServices;
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

    // Step loops ask the fields: a property would hand out a copy of the whole structure every time.
    private readonly SiteAir _air;
    private readonly DeploymentNumbers _deployment;

    public required SiteAir Air
    {
        get => _air;
        init => _air = value;
    }

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

    public required DeploymentNumbers Deployment
    {
        get => _deployment;
        init => _deployment = value;
    }

    /// <summary>
    /// Drag coefficient times area in the air of the height flown at [m²]; the table's end value beyond its last Mach number, where the
    /// flight is refused.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double DragM2(double mach, in AirSample air, bool isJetOn)
    {
        var kelvin = air.SoundMps * air.SoundMps * KelvinPerSquareSound;
        return DragFactor * DragAreaM2 * (isJetOn ? JetOn : JetOff).Coefficient(Held(mach), air.PressurePa, kelvin);
    }

    /// <summary>The same in the air at the pad [m²].</summary>
    public double DragM2(double mach, bool isJetOn) => DragFactor * DragAreaM2 * (isJetOn ? JetOn : JetOff).Coefficient(Held(mach));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public AirSample AirAt(double t, double heightM) => _air.At(t, _air.ElevationM + heightM);

    /// <summary>How fast the density's logarithm falls with height [1/m] at a height above the pad [m].</summary>
    public double DensityFall(double heightM) => _air.DensityFall(_air.ElevationM + heightM);

    /// <summary>Drag area of the canopy at a time after it came out [m²].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double CanopyM2(double sinceS, double fillS) =>
        sinceS < fillS ? _deployment.DragM2 * Math.Pow(Math.Max(0, sinceS) / fillS, _deployment.Growth) : _deployment.DragM2;

    private static double Held(double mach) => mach < DragCurve.MaximumMach ? mach : DragCurve.MaximumMach;
}

/// <summary>When the canopy comes out and what it does, in SI numbers.</summary>
/// <param name="Trigger">What brings it out.</param>
/// <param name="DelayS">From apogee or from release, as the trigger has it [s].</param>
/// <param name="DragM2">Drag area of the open canopy [m²].</param>
/// <param name="FillM">Distance it takes to fill [m].</param>
/// <param name="Growth">Exponent of its growth while it fills [-].</param>
internal readonly record struct DeploymentNumbers(DeploymentTrigger Trigger, double DelayS, double DragM2, double FillM, double Growth);
