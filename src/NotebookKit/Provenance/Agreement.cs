using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Provenance;

/// <summary>One of our numbers beside the same number published by somebody else.</summary>
/// <param name="What">What it is.</param>
/// <param name="Ours">Our value [the unit given].</param>
/// <param name="Published">The published value [the unit given].</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Allowed">Largest relative difference allowed [-], from the printed digits or the stated difference of models.</param>
public sealed record Agreement(string What, double Ours, double Published, string Unit, double Allowed)
{
    /// <summary>Relative difference, ours to published [-].</summary>
    public double Difference => Published == 0 ? Math.Abs(Ours) : (Ours - Published) / Math.Abs(Published);

    /// <summary>Whether both agree within what is allowed; NaN never does.</summary>
    public bool Holds => Math.Abs(Difference) <= Allowed;

    /// <summary>Two quantities, compared in the published one's unit.</summary>
    /// <typeparam name="T">Kind of quantity.</typeparam>
    /// <param name="what">What it is.</param>
    /// <param name="ours">Our value; any.</param>
    /// <param name="published">The published value; any.</param>
    /// <param name="allowed">Largest relative difference allowed [-]; above 0.</param>
    public static Agreement Of<T>(string what, T ours, T published, double allowed) where T : struct, IQuantity
    {
        var unit = published.UnitSymbol();
        return new(what, (double)ours.ToUnit(published.Unit).Value, (double)published.Value, unit, allowed);
    }

    /// <summary>Two absolute pressures, compared in pascals, or in megapascals from one upwards.</summary>
    /// <param name="what">What it is.</param>
    /// <param name="ours">Our value; any.</param>
    /// <param name="published">The published value; any.</param>
    /// <param name="allowed">Largest relative difference allowed [-]; above 0.</param>
    public static Agreement Of(string what, AbsolutePressure ours, AbsolutePressure published, double allowed) =>
        published.Pascals >= 1e6 ? new(what, ours.Pascals / 1e6, published.Pascals / 1e6, "MPa absolute", allowed)
            : new(what, ours.Pascals, published.Pascals, "Pa", allowed);

    /// <summary>Two plain numbers.</summary>
    /// <param name="what">What it is.</param>
    /// <param name="ours">Our value [-]; any.</param>
    /// <param name="published">The published value [-]; any.</param>
    /// <param name="allowed">Largest relative difference allowed [-]; above 0.</param>
    public static Agreement Of(string what, double ours, double published, double allowed) => new(what, ours, published, "", allowed);
}
