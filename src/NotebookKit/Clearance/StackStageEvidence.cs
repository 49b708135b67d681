namespace NotebookKit.Clearance;

/// <summary>What stands behind the booster or the sustainer of a flight of two stages. What is left out is "not shown", and that forbids.</summary>
public sealed record StackStageEvidence : StageEvidence;
