using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>A value that was computed from readings, and its uncertainty.</summary>
/// <param name="Value">The value.</param>
/// <param name="Expanded">Expanded uncertainty, twice the standard one, which holds some 95 %; none where a reading came without its error.
/// Source: JCGM 100:2008 (GUM), 6.2.</param>
/// <typeparam name="T">A quantity.</typeparam>
public sealed record Estimate<T>(T Value, T? Expanded)
    where T : struct, IQuantity
{
    /// <summary>For example "43.1 % ± 1.2 %", or "43.1 %, uncertainty not given".</summary>
    public override string ToString() =>
        Expanded is { } expanded ? $"{Value.Show()} ± {expanded.Show(2)}" : $"{Value.Show()}, uncertainty not given";
}
