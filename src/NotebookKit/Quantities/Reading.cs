using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>What an instrument showed, and within what it is true.</summary>
/// <param name="Value">The value read.</param>
/// <param name="Within">Half-width of what the instrument can't tell apart, as ±; not given unless said. Any value inside is as likely:
/// its standard uncertainty is Within over √3. Source: JCGM 100:2008 (GUM), 4.3.7.</param>
/// <typeparam name="T">A quantity.</typeparam>
public sealed record Reading<T>(T Value, T? Within = null)
    where T : struct, IQuantity
{
    /// <summary>For example "312 g ± 0.5 g", or "312 g, error not given".</summary>
    public override string ToString() =>
        Within is { } within ? $"{Value.Show(5)} ± {within.Show()}" : $"{Value.Show(5)}, error not given";
}
