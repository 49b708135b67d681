using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Flight.Flights;

/// <summary>The main numbers of a flight that reached the ground. Source: the flight's model card.</summary>
public sealed record FlightFigures
{
    /// <summary>Height of the top above the pad.</summary>
    public required Length Apogee { get; init; }

    /// <summary>Time from release to apogee.</summary>
    public required Duration ApogeeTime { get; init; }

    /// <summary>Speed at the end of the rail.</summary>
    public required Speed RailExitSpeed { get; init; }

    /// <summary>Time from release to the end of the rail.</summary>
    public required Duration RailExitTime { get; init; }

    /// <summary>Angle between axis and relative wind at the end of the rail.</summary>
    public required Angle RailExitAngle { get; init; }

    /// <summary>Static margin at that moment, at that angle, with the water then aboard [calibres]; none above 20°, where no model
    /// holds.</summary>
    public required double? RailExitMargin { get; init; }

    /// <summary>Wind at the end of the rail.</summary>
    public required Speed RailWind { get; init; }

    /// <summary>When the water is out; none where there was none, or where some stays aboard.</summary>
    public required Duration? WaterOut { get; init; }

    /// <summary>When the jet ends; the canopy's opening, or the landing, where it still runs then.</summary>
    public required Duration EndOfJet { get; init; }

    /// <summary>Maximum speed over ground.</summary>
    public required Speed MaximumSpeed { get; init; }

    /// <summary>When it is reached.</summary>
    public required Duration MaximumSpeedTime { get; init; }

    /// <summary>Maximum Mach number [-].</summary>
    public required double MaximumMach { get; init; }

    /// <summary>Maximum dynamic pressure, the load on fins.</summary>
    public required Pressure MaximumDynamicPressure { get; init; }

    /// <summary>Greatest felt acceleration up to the canopy's opening, in units of gravity [-].</summary>
    public required double MaximumLoad { get; init; }

    /// <summary>Greatest angle between axis and relative wind on the way up while the dynamic pressure is above a tenth of its greatest; of
    /// six degrees of freedom only.</summary>
    public required Angle? MaximumAngleOfAttack { get; init; }

    /// <summary>Maximum roll rate on the way up; of six degrees of freedom only.</summary>
    public required RotationalSpeed? MaximumRollRate { get; init; }

    /// <summary>When the canopy comes out; none where none does.</summary>
    public required Duration? OpeningTime { get; init; }

    /// <summary>Height at which it comes out.</summary>
    public required Length? OpeningHeight { get; init; }

    /// <summary>Speed through the air at which it comes out.</summary>
    public required Speed? OpeningSpeed { get; init; }

    /// <summary>Load while it opens; none below 1 m/s, where there is none to speak of.</summary>
    public required OpeningResult? Opening { get; init; }

    /// <summary>Time from release to the ground.</summary>
    public required Duration LandingTime { get; init; }

    /// <summary>Speed downwards at the ground.</summary>
    public required Speed DescentSpeed { get; init; }

    /// <summary>Speed over ground at the ground, sideways included.</summary>
    public required Speed LandingSpeed { get; init; }

    /// <summary>Energy of motion at the ground.</summary>
    public required Energy LandingEnergy { get; init; }

    /// <summary>Where it lands, to the east of the pad.</summary>
    public required Length LandingEast { get; init; }

    /// <summary>Where it lands, to the north of the pad.</summary>
    public required Length LandingNorth { get; init; }

    /// <summary>Distance from the pad to where it lands.</summary>
    public Length Drift => Length.FromMeters(Math.Sqrt(Math.Pow(LandingEast.Meters, 2) + Math.Pow(LandingNorth.Meters, 2)));
}
