using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Readings as they are said: <c>312.Grams().ReadWithin(0.5.Grams())</c>.</summary>
public static class ReadingLiterals
{
    /// <summary>A value read from an instrument that can't tell ± so much apart.</summary>
    /// <param name="value">The value read.</param>
    /// <param name="within">Half-width; 0 or above, in any unit of the same quantity.</param>
    /// <typeparam name="T">A quantity.</typeparam>
    public static Reading<T> ReadWithin<T>(this T value, T within) where T : struct, IQuantity => new(value, within);

    /// <summary>A value read from an instrument whose error isn't given.</summary>
    /// <param name="value">The value read.</param>
    /// <typeparam name="T">A quantity.</typeparam>
    public static Reading<T> Read<T>(this T value) where T : struct, IQuantity => new(value);
}
