using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What a dispersion is about: enough to tell whether two parts of it belong together, and to judge their landings.</summary>
/// <param name="Vehicle">Name of the vehicle.</param>
/// <param name="Site">Name of the site.</param>
/// <param name="Flights">Flights of the whole.</param>
/// <param name="Seed">Seed of the whole.</param>
/// <param name="IsSixDegrees">Whether it flies in six degrees of freedom.</param>
/// <param name="Ceiling">Height that no flight may pass, where there is one.</param>
/// <param name="Field">Ground to land on, where there is one.</param>
/// <param name="Fingerprint">The bits of flight 0: another vehicle, site, spread, seed or version of the code gives others.</param>
public sealed record DispersionPlan(
    string Vehicle, string Site, int Flights, ulong Seed, bool IsSixDegrees, Length? Ceiling, FlyingField? Field, string Fingerprint);
