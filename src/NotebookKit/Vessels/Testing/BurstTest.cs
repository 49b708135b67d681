using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Testing;

/// <summary>A vessel taken to its burst.</summary>
/// <param name="Vessel">Its design.</param>
/// <param name="Id">Name or number of the very vessel.</param>
/// <param name="Pressure">Pressure at which it burst; 0.5 to 1000 bar gauge.</param>
/// <param name="WallBurst">Whether the wall burst. Where an end let go, the wall has only shown that it holds at least as much.</param>
public sealed record BurstTest(PressureVessel Vessel, string Id, GaugePressure Pressure, bool WallBurst = true)
    : VesselTest(Vessel, Id, Pressure);
