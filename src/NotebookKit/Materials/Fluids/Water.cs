using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>Liquid water at one temperature: how heavy it is, how much pressure squeezes it, how much warmth swells it.</summary>
/// <remarks>
/// Source: G. S. Kell, Density, thermal expansivity, and compressibility of liquid water from 0 to 150 °C, J. Chem. Eng. Data 20 (1975) 97,
/// for density and compressibility at 1 atm; W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, for the vapour pressure.
/// Compressibility falls by about 5 % to 90 bar; the value at 1 atm makes the water slightly too soft, so the water to pump is slightly
/// high.
/// </remarks>
public sealed record Water
{
    private readonly double _celsius;

    /// <summary>Water at a temperature.</summary>
    /// <param name="temperature">Temperature of the water; 0 °C to 60 °C.</param>
    /// <exception cref="OutOfRangeException">The temperature is outside 0 °C to 60 °C.</exception>
    public Water(Temperature temperature)
    {
        Temperature = Range.Check(temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "water temperature",
            "Water freezes below 0 °C, and above 60 °C a laminating resin has lost its strength.");
        _celsius = temperature.DegreesCelsius;
    }

    /// <summary>Temperature of the water.</summary>
    public Temperature Temperature { get; }

    /// <summary>Water at 20 °C.</summary>
    public static Water AtRoomTemperature { get; } = new(20.Celsius());

    /// <summary>Temperatures that the properties hold for here.</summary>
    public static ValidRange<Temperature> Range => new(0.Celsius(), 60.Celsius());

    /// <summary>Where density and compressibility come from.</summary>
    public static Source Source { get; } = new(
        "G. S. Kell", "Density, thermal expansivity, and compressibility of liquid water from 0 to 150 °C, J. Chem. Eng. Data 20, 97",
            1975, "equation 16 and Table V");

    /// <summary>Where the vapour pressure comes from.</summary>
    internal static Source VapourSource { get; } = new("W. Wagner, A. Pruss",
        "International equations for the saturation properties of ordinary water substance, J. Phys. Chem. Ref. Data 22, 783", 1993,
            "equation 1");

    /// <summary>Density at 1 atm. Source: Kell 1975, equation 16.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(DensityAt(_celsius));

    /// <summary>Bulk modulus at constant temperature and 1 atm, the inverse of the compressibility. Source: Kell 1975.</summary>
    public Pressure BulkModulus
    {
        get
        {
            var t = _celsius;
            var perBar = 1e-6 * (50.88496 + t * (0.6163813 + t * (1.459187e-3
                + t * (20.08438e-6 + t * (-58.47727e-9 + t * 410.4110e-12))))) / (1 + 19.67348e-3 * t);
            return Pressure.FromPascals(1e5 / perBar);
        }
    }

    /// <summary>Relative growth in volume per kelvin at 1 atm; negative below 4 °C. Source: Kell 1975, derivative of equation 16.</summary>
    public CoefficientOfThermalExpansion VolumetricExpansion
    {
        get
        {
            const double step = 0.01;
            var perKelvin = -(DensityAt(_celsius + step) - DensityAt(_celsius - step)) / (2 * step) / DensityAt(_celsius);
            return CoefficientOfThermalExpansion.FromPerKelvin(perKelvin);
        }
    }

    /// <summary>Pressure of saturated vapour above the water. Source: Wagner and Pruss 1993, equation 1.</summary>
    public AbsolutePressure VapourPressure => AbsolutePressure.FromPascals(SaturationPascals(Temperature.Kelvins));

    /// <summary>For example "water at 20 °C".</summary>
    public override string ToString() => $"water at {Temperature.Show()}";

    /// <summary>Pressure of saturated vapour, Pa, from the triple point to the critical one.</summary>
    internal static double SaturationPascals(double kelvins)
    {
        const double criticalK = 647.096, criticalPa = 22.064e6;
        var v = 1 - kelvins / criticalK;
        var root = Math.Sqrt(v);
        var sum = -7.85951783 * v + 1.84408259 * v * root - 11.7866497 * v * v * v
            + 22.6807411 * v * v * v * root - 15.9618719 * Math.Pow(v, 4) + 1.80122502 * Math.Pow(v, 7.5);
        return criticalPa * Math.Exp(criticalK / kelvins * sum);
    }

    // 16.879850e-3 in the denominator meets the tabulated 998.204 kg/m³ at 20 °C; the often copied 16.897850e-3 is a slip of digits and
    // 0.27 kg/m³ low.
    private static double DensityAt(double t) =>
        (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))) / (1
            + 16.879850e-3 * t);
}
