using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Materials;

/// <summary>A gas that obeys p = ρ R T with constant specific heats.</summary>
/// <remarks>
/// Good to about 1 % in pressure up to 60 bar near room temperature for air; a real-gas model takes over above that. Source of each gas'
/// numbers: see <see cref="Source"/>.
/// </remarks>
/// <param name="Name">Name of the gas.</param>
/// <param name="GasConstant">Specific gas constant; above 0.</param>
/// <param name="HeatCapacityRatio">Ratio of specific heats γ [-]; above 1, at most 5/3.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record IdealGas(string Name, SpecificEntropy GasConstant, double HeatCapacityRatio, Source Source)
{
    // CODATA 2018, exact by definition of the mole and the kelvin.
    private const double UniversalGasConstant = 8.314462618;

    /// <summary>Dry air: R = 287.05287 J/(kg K), γ = 1.4. Source: U.S. Standard Atmosphere, 1976, Table 2.</summary>
    public static IdealGas Air { get; } = new(
        "air", SpecificEntropy.FromJoulesPerKilogramKelvin(287.05287), 1.4,
        new Source("NOAA, NASA, USAF", "U.S. Standard Atmosphere", 1976, "Table 2: R* = 8314.32, M0 = 28.9644, γ = 1.4", SourceKind.Standard));

    /// <summary>Nitrogen: R = 296.80 J/(kg K), γ = 1.400. Source: molar mass by IUPAC, heat capacity at 300 K.</summary>
    public static IdealGas Nitrogen { get; } = new(
        "nitrogen", FromMolarMass(0.0280134), 1.400,
        new Source("IUPAC; NIST", "Standard atomic weights; Chemistry WebBook", 2018, "M = 28.0134 g/mol, cp = 29.12 J/(mol K) at 300 K", SourceKind.FromMemory));

    /// <summary>Hydrogen: R = 4124.5 J/(kg K), γ = 1.405. Source: molar mass by IUPAC, heat capacity at 300 K.</summary>
    public static IdealGas Hydrogen { get; } = new(
        "hydrogen", FromMolarMass(0.00201588), 1.405,
        new Source("IUPAC; NIST", "Standard atomic weights; Chemistry WebBook", 2018, "M = 2.01588 g/mol, cp = 28.85 J/(mol K) at 300 K", SourceKind.FromMemory));

    internal double R => GasConstant.JoulesPerKilogramKelvin;

    /// <summary>Everything that is wrong with the numbers.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        Finding?[] all =
        [
            new ValidRange<double>(50, 5000).Find(R, $"specific gas constant of {Name} in J/(kg K)", "It is 8314.46 J/(kmol K) over the molar mass."),
            new ValidRange<double>(1.01, 5.0 / 3).Find(HeatCapacityRatio, $"heat capacity ratio of {Name}", "A gas of single atoms has 5/3, air 1.4."),
        ];
        return [.. all.OfType<Finding>()];
    }

    private static SpecificEntropy FromMolarMass(double kilogramsPerMole) =>
        SpecificEntropy.FromJoulesPerKilogramKelvin(UniversalGasConstant / kilogramsPerMole);
}
