using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>A real gas at one pressure and temperature, with everything its equation of state says there.</summary>
/// <remarks>Source: as <see cref="RealGas"/>; viscosity and conductivity of Lemmon and Jacobsen 2004, Muzny et al. 2013, Assael et al.
/// 2011.</remarks>
public sealed record RealGasState
{
    internal RealGasState(RealGas gas, GasPoint point)
    {
        Gas = gas;
        Point = point;
    }

    /// <summary>The gas.</summary>
    public RealGas Gas { get; }

    /// <summary>Pressure.</summary>
    public AbsolutePressure Pressure => AbsolutePressure.FromPascals(Point.Pascals);

    /// <summary>Temperature.</summary>
    public Temperature Temperature => Temperature.FromKelvins(Point.Kelvins);

    /// <summary>Density.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(Point.Density);

    /// <summary>p/(ρ R T) [-]: 1 for an ideal gas.</summary>
    public double CompressibilityFactor => Point.Pascals / (Point.Density * Gas.GasConstant.JoulesPerKilogramKelvin * Point.Kelvins);

    /// <summary>Speed of sound.</summary>
    public Speed SpeedOfSound => Speed.FromMetersPerSecond(Point.SoundSpeed);

    /// <summary>Heat capacity at constant pressure.</summary>
    public SpecificEntropy Cp => SpecificEntropy.FromJoulesPerKilogramKelvin(Point.Cp);

    /// <summary>Heat capacity at constant volume.</summary>
    public SpecificEntropy Cv => SpecificEntropy.FromJoulesPerKilogramKelvin(Point.Cv);

    /// <summary>Ratio of the heat capacities [-].</summary>
    public double HeatCapacityRatio => Point.Cp / Point.Cv;

    /// <summary>Enthalpy against the equation's own zero: only differences mean anything.</summary>
    public SpecificEnergy Enthalpy => SpecificEnergy.FromJoulesPerKilogram(Point.Enthalpy);

    /// <summary>Internal energy against the equation's own zero: only differences mean anything.</summary>
    public SpecificEnergy InternalEnergy => SpecificEnergy.FromJoulesPerKilogram(Point.Energy);

    /// <summary>Entropy against the equation's own zero: only differences mean anything.</summary>
    public SpecificEntropy Entropy => SpecificEntropy.FromJoulesPerKilogramKelvin(Point.Entropy);

    /// <summary>Viscosity.</summary>
    public DynamicViscosity Viscosity => DynamicViscosity.FromPascalSeconds(Gas.Transport(Point.Kelvins, Point.Density).Viscosity);

    /// <summary>Thermal conductivity.</summary>
    public ThermalConductivity Conductivity => ThermalConductivity.FromWattsPerMeterKelvin(Gas.Transport(Point.Kelvins,
        Point.Density).Conductivity);

    /// <summary>For example "air at 60 bar absolute, 293 K: 72.2 kg/m³".</summary>
    public override string ToString() => $"{Gas.Name} at {Pressure}, {Digits.Round(Point.Kelvins)} K: "
        + $"{Digits.Round(Point.Density, 4)} kg/m³";

    internal GasPoint Point { get; }
}
