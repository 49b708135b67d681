using UnitsNet;

namespace NotebookKit.Building;

/// <summary>One cup of resin.</summary>
/// <param name="Resin">Resin to weigh in.</param>
/// <param name="Hardener">Hardener to weigh in.</param>
/// <param name="For">What it is for, in order.</param>
/// <param name="Time">Time it takes to lay on.</param>
public sealed record ResinBatch(Mass Resin, Mass Hardener, IReadOnlyList<string> For, Duration Time)
{
    /// <summary>Both together.</summary>
    public Mass Mixed => Resin + Hardener;
}
