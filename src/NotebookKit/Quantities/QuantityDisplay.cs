using UnitsNet;

namespace NotebookKit.Quantities;

/// <summary>Shows quantities with their unit and a sensible number of digits.</summary>
public static class QuantityDisplay
{
    /// <summary>For example "63 mm" for <c>63.Millimetres()</c>: the unit it was written in, three significant digits.</summary>
    /// <param name="quantity">Quantity to show.</param>
    /// <param name="significant">Significant digits; 1 to 15.</param>
    public static string Show(this IQuantity quantity, int significant = 3)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return Join(Digits.Round((double)quantity.Value, significant), quantity.UnitSymbol());
    }

    /// <summary>Symbol of the unit a quantity was written in, for example "mm"; empty for a plain ratio.</summary>
    /// <param name="quantity">Quantity.</param>
    public static string UnitSymbol(this IQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        var unit = UnitAbbreviationsCache.Default.GetDefaultAbbreviation(
            quantity.Unit.GetType(), Convert.ToInt32(quantity.Unit, System.Globalization.CultureInfo.InvariantCulture),
                System.Globalization.CultureInfo.InvariantCulture);
        // ISO 80000 allows l and L; l reads as a one.
        return quantity is Volume && unit.EndsWith('l') ? unit[..^1] + "L" : unit;
    }

    /// <summary>A number and its unit, with a space between but for degrees of an angle, which ISO 80000 sets close.</summary>
    internal static string Join(string number, string unit) => unit.Length == 0 ? number : unit == "°" ? number + unit : $"{number} {unit}";

    /// <summary>The quantity in another unit, for example <c>length.Show(LengthUnit.Inch)</c>.</summary>
    /// <param name="quantity">Quantity to show.</param>
    /// <param name="unit">A unit of the same quantity.</param>
    /// <param name="significant">Significant digits; 1 to 15.</param>
    public static string Show(this IQuantity quantity, Enum unit, int significant = 3)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return quantity.ToUnit(unit).Show(significant);
    }
}
