using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using UnitsNet;

namespace NotebookKit.Propulsion.Charges;

/// <summary>A chamber charged for a launch: so much water, the rest gas at a gauge pressure.</summary>
/// <remarks>Gas mass from p V = m R T. Source: ideal gas law.</remarks>
/// <param name="Chamber">What holds it.</param>
/// <param name="WaterFraction">Water volume over internal volume; 0 % to 95 %.</param>
/// <param name="Pressure">Gauge pressure; 0.1 bar to the chamber's rated pressure, and to 300 bar.</param>
/// <param name="GasTemperature">Temperature of the gas at release; −20 °C to 60 °C.</param>
public sealed record Charge(Chamber Chamber, Ratio WaterFraction, GaugePressure Pressure, Temperature GasTemperature)
{
    /// <summary>The gas; air unless given.</summary>
    public Gas Gas { get; init; } = Gas.Air;

    /// <summary>Density of the water; 1000 kg/m³ unless given. Salt water has up to 1030.</summary>
    public Density WaterDensity { get; init; } = 1000.KilogramsPerCubicMetre();

    /// <summary>Volume of the water. Source: geometry.</summary>
    public Volume Water => Chamber.Volume * WaterFraction.DecimalFractions;

    /// <summary>Volume left to the gas. Source: geometry.</summary>
    public Volume GasSpace => Chamber.Volume * (1 - WaterFraction.DecimalFractions);

    /// <summary>Mass of the water. Source: volume times density.</summary>
    public Mass WaterMass => Water * WaterDensity;

    /// <summary>Mass of the gas in given surroundings. Source: ideal gas law.</summary>
    /// <param name="ambient">Air pressure around the vessel; above 0.</param>
    public Mass GasMass(AbsolutePressure ambient) =>
        (Pressure.ToAbsolute(ambient).Pascals * GasSpace.CubicMeters / (Gas.GasConstant.JoulesPerKilogramKelvin *
            GasTemperature.Kelvins)).Kilograms();

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> all =
        [
            new ValidRange<Volume>(1.Millilitres(), 100.Litres()).Find(Chamber.Volume, "internal volume of the vessel", "Check its unit."),
            new ValidRange<Length>(5.Millimetres(), 1.Metres()).Find(Chamber.Bore, "bore of the vessel",
                "It is the internal diameter; check its unit."),
            new ValidRange<Ratio>(0.Percent(), 95.Percent()).Find(
                WaterFraction, "water fraction", "With more water there is no gas left that could drive it out."),
            new ValidRange<Temperature>((-20).Celsius(), 60.Celsius()).Find(
                GasTemperature, "gas temperature", "Colder than that nobody fires water; warmer softens the vessel's resin."),
            new ValidRange<Density>(900.KilogramsPerCubicMetre(), 1300.KilogramsPerCubicMetre()).Find(WaterDensity, "density of the water",
                "Salt water has up to 1030 kg/m³."),
            Chamber.RatedPressure <= GaugePressure.Zero
                ? PropulsionFindings.RatedPressureOfVesselOutOfRange(Chamber.RatedPressure)
                : PressureFinding(),
            .. GasChecks.FindConstants(Gas),
        ];
        return [.. all.OfType<Finding>()];
    }

    private Finding? PressureFinding() =>
        Pressure > Chamber.RatedPressure
            ? PropulsionFindings.FillPressureVesselIsRated(Pressure, Chamber.RatedPressure)
            : Pressure > 300.BarGauge()
                ? PropulsionFindings.FillPressureAboveRange(Pressure)
            : Pressure < 0.1.BarGauge()
                ? PropulsionFindings.FillPressureOutOfRange(Pressure, Chamber.RatedPressure)
                : null;
}
