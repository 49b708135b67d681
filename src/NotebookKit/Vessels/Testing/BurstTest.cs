using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Testing;

/// <summary>A vessel taken to its burst.</summary>
/// <param name="Vessel">Its design.</param>
/// <param name="Id">Name or number of the very vessel.</param>
/// <param name="Pressure">Pressure at which it burst; 0.5 to 1000 bar gauge.</param>
/// <param name="Failed">The part that gave way first, as the burst prediction names it: "wall", "nozzle end, sleeve carried over". A burst
/// whose part isn't given is refused with the names to choose from: no part is taken for granted.</param>
public sealed record BurstTest(PressureVessel Vessel, string Id, GaugePressure Pressure, string? Failed = null)
    : VesselTest(Vessel, Id, Pressure)
{
    /// <summary>Name of the wall among the parts of every burst prediction.</summary>
    public const string Wall = "wall";

    internal bool IsOfWall => IsOf(Wall);

    internal bool IsOf(string part) => string.Equals(Failed?.Trim(), part.Trim(), StringComparison.OrdinalIgnoreCase);
}
