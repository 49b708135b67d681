using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Testing;

/// <summary>A vessel that held its proof: it bursts somewhere above, nobody knows where.</summary>
/// <param name="Vessel">Its design.</param>
/// <param name="Id">Name or number of the very vessel.</param>
/// <param name="Pressure">Pressure it held; 0.5 to 1000 bar gauge.</param>
public sealed record HeldProof(PressureVessel Vessel, string Id, GaugePressure Pressure) : VesselTest(Vessel, Id, Pressure);
