using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>A test that every part held: each gives way somewhere above, nobody knows where.</summary>
/// <param name="Id">Name or number of the very vessel: two tests of one vessel aren't two witnesses.</param>
/// <param name="Pressure">Highest pressure held; 0.5 to 1000 bar gauge.</param>
/// <param name="Parts">Every part that was under load, as predicted for this very vessel.</param>
public sealed record PartHeld(string Id, GaugePressure Pressure, IReadOnlyList<PredictedPart> Parts) : PartTest(Id, Pressure, Parts);
