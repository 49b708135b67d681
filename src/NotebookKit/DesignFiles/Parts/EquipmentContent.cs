using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>What a file says of the fins as structure.</summary>
internal sealed record FinContent(FinSheet Sheet, FinBond Bond, Speed Gust);

/// <summary>What a file says of the recovery gear.</summary>
internal sealed record GearContent(ShockCord Cord, Mass Front, Speed Apart, Force Anchor, PinJoint? Joint);
