using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Testing;

/// <summary>One vessel tested with water.</summary>
/// <param name="Vessel">Its design; a short twin has its own.</param>
/// <param name="Id">Name or number of the very vessel: two tests of one vessel aren't two witnesses.</param>
/// <param name="Pressure">Highest pressure it saw; 0.5 to 1000 bar gauge.</param>
public abstract record VesselTest(PressureVessel Vessel, string Id, GaugePressure Pressure);
