using UnitsNet;

namespace NotebookKit.Vessels.Bursting;

/// <summary>A sleeve whose fibres have turned by the time the wall bursts.</summary>
/// <param name="Ply">Name of the sleeve.</param>
/// <param name="Laid">Angle as laid.</param>
/// <param name="AtBurst">Angle at the burst.</param>
public sealed record TurnedPly(string Ply, Angle Laid, Angle AtBurst);
