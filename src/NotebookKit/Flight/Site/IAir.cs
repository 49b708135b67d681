using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Site;

/// <summary>The air a body flies through, and its motion over the ground.</summary>
internal interface IAir
{
    /// <summary>The air at a time [s] and an altitude above sea level [m].</summary>
    AirSample At(double t, double altitudeM);
}

/// <summary>Air at one point: density [kg/m³], speed of sound [m/s], pressure [Pa], and its velocity over the ground to north, east, down
/// [m/s].</summary>
internal readonly record struct AirSample(double DensityKgM3, double SoundMps, double PressurePa, Vector WindMps);
