using NotebookKit.Flight.Site;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What a dispersion is about: enough to tell whether two parts of it belong together, and to judge their landings.</summary>
/// <param name="Vehicle">Name of the vehicle.</param>
/// <param name="Site">Name of the site.</param>
/// <param name="Flights">Flights of the whole.</param>
/// <param name="Seed">Seed of the whole.</param>
/// <param name="IsSixDegrees">Whether it flies in six degrees of freedom.</param>
/// <param name="Stages">Stages of the vehicle; 1 or 2.</param>
/// <param name="Ceiling">Height that no flight may pass, where there is one.</param>
/// <param name="Field">Ground to land on, where there is one.</param>
/// <param name="Fingerprint">
/// The bits of some of its flights, of ceiling and field: another vehicle, site, spread, seed, version of the code or arithmetic of the
/// processor gives others.
/// </param>
/// <param name="Subject">The bits of the one expected flight of the vehicle on the site in its wind: tells the scatter of one vehicle from
/// that of another.</param>
public sealed record DispersionPlan(
    string Vehicle, string Site, int Flights, ulong Seed, bool IsSixDegrees, int Stages, Length? Ceiling, FlyingField? Field,
        string Fingerprint, string Subject = "")
{
    /// <summary>Whether the site has a wind; in still air where nobody has given one.</summary>
    public required bool IsWindGiven { get; init; }

    /// <summary>For example "Dispersion of Curlew from Ferry Flat, 1000 flights in three degrees of freedom, seed 7".</summary>
    public override string ToString() =>
        FormattableString.Invariant($"Dispersion of {Vehicle} from {Site}, {Flights} flights in ")
            + FormattableString.Invariant($"{(IsSixDegrees ? "six" : "three")} degrees of freedom, seed {Seed}");
}
