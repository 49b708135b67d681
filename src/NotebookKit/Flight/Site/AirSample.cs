using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Site;

/// <summary>Air at one point: density [kg/m³], speed of sound [m/s], pressure [Pa], and its velocity over the ground to north, east, down [m/s].</summary>
internal readonly record struct AirSample(double DensityKgM3, double SoundMps, double PressurePa, Vector WindMps);
