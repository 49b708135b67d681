using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

/// <summary>The air at one altitude.</summary>
/// <param name="Temperature">Temperature; above absolute zero.</param>
/// <param name="Pressure">Pressure; above 0.</param>
/// <param name="Density">Density; above 0.</param>
/// <param name="SpeedOfSound">Speed of sound; above 0.</param>
/// <param name="Viscosity">Dynamic viscosity; above 0.</param>
public readonly record struct AirState(
    Temperature Temperature, AbsolutePressure Pressure, Density Density, Speed SpeedOfSound, DynamicViscosity Viscosity);
