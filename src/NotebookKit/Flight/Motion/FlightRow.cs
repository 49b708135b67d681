using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Motion;

/// <summary>One moment of a flight in SI numbers: north, east, down from the pad.</summary>
internal readonly record struct FlightRow(
    double Time, Vector Position, Vector Velocity, double Mach, double DynamicPressurePa, double LoadG, double ThrustN, double WaterKg,
        double GasKg)
{
    /// <summary>Angle between axis and relative wind [rad]; zero where the model has no attitude.</summary>
    public double AngleOfAttack { get; init; }

    /// <summary>Turning rates about the body axes [rad/s].</summary>
    public Vector Rates { get; init; }

    /// <summary>Natural frequency of pitching [rad/s], negative where unstable; zero where the model has no attitude.</summary>
    public double PitchFrequency { get; init; }

    /// <summary>Where the nose points: north, east, down.</summary>
    public Vector Nose { get; init; }
}
