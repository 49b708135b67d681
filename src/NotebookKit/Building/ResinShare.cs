using UnitsNet;

namespace NotebookKit.Building;

/// <summary>Resin that one thing takes up.</summary>
/// <param name="For">What takes it: a ply, the fillets.</param>
/// <param name="Mass">Mixed resin in it, nothing wasted; above 0.</param>
public sealed record ResinShare(string For, Mass Mass);
