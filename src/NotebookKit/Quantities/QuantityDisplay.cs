using UnitsNet;
using UnitsNet.Units;

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
        if (Usual(quantity) is { } usual) return usual;
        var unit = UnitAbbreviationsCache.Default.GetDefaultAbbreviation(
            quantity.Unit.GetType(), Convert.ToInt32(quantity.Unit, System.Globalization.CultureInfo.InvariantCulture),
                System.Globalization.CultureInfo.InvariantCulture);
        // ISO 80000 allows l and L; l reads as a one.
        return quantity is Volume && unit.EndsWith('l') ? unit[..^1] + "L" : unit;
    }

    /// <summary>A number and its unit, with a space between but for degrees of an angle, which ISO 80000 sets close.</summary>
    internal static string Join(string number, string unit) => unit.Length == 0 ? number : unit == "°" ? number + unit : $"{number} {unit}";

    /// <summary>The quantity in another unit, for example <c>length.Show(LengthUnit.Inch)</c>; as it was written where it has no value
    /// in that unit.</summary>
    /// <param name="quantity">Quantity to show.</param>
    /// <param name="unit">A unit of the same quantity.</param>
    /// <param name="significant">Significant digits; 1 to 15.</param>
    public static string Show(this IQuantity quantity, Enum unit, int significant = 3)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        try
        {
            return quantity.ToUnit(unit).Show(significant);
        }
        catch (ArgumentException) when (quantity.Unit.GetType() == unit.GetType())
        {
            return quantity.Show(significant);
        }
    }

    // To ask UnitsNet for one symbol makes it set up every quantity that it knows.
    internal static string? Usual(IQuantity quantity) => quantity switch
    {
        Length { Unit: var unit } => unit switch
        {
            LengthUnit.Micrometer => "µm", LengthUnit.Millimeter => "mm", LengthUnit.Centimeter => "cm", LengthUnit.Meter => "m",
            LengthUnit.Kilometer => "km", LengthUnit.Inch => "in", LengthUnit.Foot => "ft", _ => null,
        },
        Mass { Unit: var unit } => unit switch
        {
            MassUnit.Gram => "g", MassUnit.Kilogram => "kg", MassUnit.Ounce => "oz", MassUnit.Pound => "lb", _ => null,
        },
        Pressure { Unit: var unit } => unit switch
        {
            PressureUnit.Pascal => "Pa", PressureUnit.Hectopascal => "hPa", PressureUnit.Kilopascal => "kPa",
            PressureUnit.Megapascal => "MPa", PressureUnit.Gigapascal => "GPa", PressureUnit.Bar => "bar",
            PressureUnit.PoundForcePerSquareInch => "psi", _ => null,
        },
        Angle { Unit: var unit } => unit switch
        {
            AngleUnit.Degree => "°", AngleUnit.Radian => "rad", _ => null,
        },
        Ratio { Unit: var unit } => unit switch
        {
            RatioUnit.Percent => "%", RatioUnit.DecimalFraction => "", _ => null,
        },
        Temperature { Unit: var unit } => unit switch
        {
            TemperatureUnit.DegreeCelsius => "°C", TemperatureUnit.Kelvin => "K", _ => null,
        },
        Duration { Unit: var unit } => unit switch
        {
            DurationUnit.Millisecond => "ms", DurationUnit.Second => "s", DurationUnit.Minute => "m", DurationUnit.Hour => "h", _ => null,
        },
        Speed { Unit: var unit } => unit switch
        {
            SpeedUnit.MeterPerSecond => "m/s", SpeedUnit.KilometerPerHour => "km/h", _ => null,
        },
        Volume { Unit: var unit } => unit switch
        {
            VolumeUnit.Milliliter => "mL", VolumeUnit.Liter => "L", VolumeUnit.CubicCentimeter => "cm³", VolumeUnit.CubicMeter => "m³",
            _ => null,
        },
        Density { Unit: var unit } => unit switch
        {
            DensityUnit.KilogramPerCubicMeter => "kg/m³", DensityUnit.GramPerCubicCentimeter => "g/cm³", _ => null,
        },
        AreaDensity { Unit: var unit } => unit switch
        {
            AreaDensityUnit.GramPerSquareMeter => "g/m²", AreaDensityUnit.KilogramPerSquareMeter => "kg/m²", _ => null,
        },
        Force { Unit: var unit } => unit switch
        {
            ForceUnit.Newton => "N", ForceUnit.Kilonewton => "kN", _ => null,
        },
        Energy { Unit: var unit } => unit switch
        {
            EnergyUnit.Joule => "J", EnergyUnit.Kilojoule => "kJ", _ => null,
        },
        ForcePerLength { Unit: var unit } => unit switch
        {
            ForcePerLengthUnit.NewtonPerMeter => "N/m", ForcePerLengthUnit.NewtonPerMillimeter => "N/mm", _ => null,
        },
        LinearDensity { Unit: var unit } => unit switch
        {
            LinearDensityUnit.GramPerMeter => "g/m", LinearDensityUnit.KilogramPerMeter => "kg/m", _ => null,
        },
        Area { Unit: var unit } => unit switch
        {
            AreaUnit.SquareMillimeter => "mm²", AreaUnit.SquareCentimeter => "cm²", AreaUnit.SquareMeter => "m²", _ => null,
        },
        Irradiance { Unit: IrradianceUnit.WattPerSquareMeter } => "W/m²",
        MassMomentOfInertia { Unit: MassMomentOfInertiaUnit.KilogramSquareMeter } => "kg·m²",
        Acceleration { Unit: AccelerationUnit.MeterPerSecondSquared } => "m/s²",
        CoefficientOfThermalExpansion { Unit: CoefficientOfThermalExpansionUnit.PerKelvin } => "K⁻¹",
        _ => null,
    };
}
