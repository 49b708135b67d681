using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>A gas as an ideal gas with constant heat capacities: what filling and venting are computed with unless real-gas properties are
/// asked for.</summary>
/// <param name="Name">Name of the gas.</param>
/// <param name="GasConstant">Specific gas constant; above 0.</param>
/// <param name="HeatCapacityRatio">Ratio of heat capacities [-]; 1.05 to 1.7.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record Gas(string Name, SpecificEntropy GasConstant, double HeatCapacityRatio, Source Source)
{
    /// <summary>The same gas by its equation of state, where one is at hand: for real-gas runs, and for viscosity and
    /// conductivity.</summary>
    public RealGas? Real { get; init; }

    /// <summary>Dry air, R = 287.052 87 J/(kg·K), γ = 1.4. Source: U.S. Standard Atmosphere, 1976.</summary>
    public static Gas Air { get; } = new(
        "air", JoulesPerKilogramKelvin(StandardConstants.DryAirGas), StandardConstants.AirHeatCapacityRatio,
        new("NOAA, NASA, USAF", "U.S. Standard Atmosphere", 1976, "Table 2", SourceKind.Standard)) { Real = RealGas.Air };

    /// <summary>Nitrogen, R = 296.803 J/(kg·K), γ = 1.4. Source: R of CODATA 2018 over 28.0134 g/mol.</summary>
    public static Gas Nitrogen { get; } = new(
        "nitrogen", JoulesPerKilogramKelvin(StandardConstants.MolarGas / 0.0280134), 1.4,
        new("CODATA", "molar gas constant over the molar mass 28.0134 g/mol", 2018)) { Real = RealGas.Nitrogen };

    /// <summary>Hydrogen, R = 4124.4 J/(kg·K), γ = 1.405. Source: R of CODATA 2018 over 2.015 88 g/mol; γ near 300 K.</summary>
    public static Gas Hydrogen { get; } = new(
        "hydrogen", JoulesPerKilogramKelvin(StandardConstants.MolarGas / 0.00201588), 1.405,
        new("CODATA", "molar gas constant over the molar mass 2.015 88 g/mol", 2018)) { Real = RealGas.Hydrogen };

    /// <summary>Helium, R = 2077.26 J/(kg·K), γ = 5/3. Source: R of CODATA 2018 over 4.002 602 g/mol; γ of a gas of single
    /// atoms.</summary>
    public static Gas Helium { get; } = new(
        "helium", JoulesPerKilogramKelvin(StandardConstants.MolarGas / 0.004002602), 5.0 / 3,
        new("CODATA", "molar gas constant over the molar mass 4.002 602 g/mol", 2018)) { Real = RealGas.Helium };

    /// <summary>
    /// Choked mass flow per throat area, inlet pressure and 1/√(R T) [-]: √γ (2/(γ+1))^((γ+1)/(2(γ−1))), 0.6847 for air.
    /// Source: NACA Report 1135, 1953.
    /// </summary>
    public double ChokedFlowFactor
    {
        get
        {
            var g = HeatCapacityRatio;
            return Math.Sqrt(g) * Math.Pow(2 / (g + 1), (g + 1) / (2 * (g - 1)));
        }
    }

    /// <summary>Downstream over upstream pressure at which an ideal nozzle just chokes [-]: (2/(γ+1))^(γ/(γ−1)), 0.5283 for air. Source:
    /// NACA Report 1135, 1953.</summary>
    public double CriticalPressureRatio
    {
        get
        {
            var g = HeatCapacityRatio;
            return Math.Pow(2 / (g + 1), g / (g - 1));
        }
    }

    /// <summary>The name of the gas.</summary>
    public override string ToString() => Name;

    private static SpecificEntropy JoulesPerKilogramKelvin(double value) => SpecificEntropy.FromJoulesPerKilogramKelvin(value);
}
