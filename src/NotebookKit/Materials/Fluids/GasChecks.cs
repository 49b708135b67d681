using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Materials.Fluids;

/// <summary>What any formula for flowing gas asks of the gas ahead of it.</summary>
internal static class GasChecks
{
    public static readonly ValidRange<AbsolutePressure> Pressures = new(AbsolutePressure.FromPascals(100),
        AbsolutePressure.FromPascals(2e8));

    public static readonly ValidRange<Temperature> Temperatures = new(Temperature.FromKelvins(50), Temperature.FromKelvins(2000));

    /// <summary>Refuses a gas at rest that no gas is.</summary>
    /// <exception cref="OutOfRangeException">Pressure, temperature or a constant of the gas is outside.</exception>
    public static void AtRest(AbsolutePressure pressure, Temperature temperature, Gas gas)
    {
        Pressures.Check(pressure, "gas pressure at rest", "It is absolute; a vacuum gives no flow.");
        Warm(temperature);
        Constants(gas);
    }

    /// <summary>Refuses temperatures that no gas of this trade has.</summary>
    /// <exception cref="OutOfRangeException">The temperature is outside.</exception>
    public static void Warm(Temperature temperature) =>
        Temperatures.Check(temperature.ToUnit(UnitsNet.Units.TemperatureUnit.Kelvin), "gas temperature", "Check the unit it was given in.");

    /// <summary>Refuses constants that no gas has.</summary>
    /// <exception cref="OutOfRangeException">A constant is outside.</exception>
    public static void Constants(Gas gas)
    {
        ArgumentNullException.ThrowIfNull(gas);
        GasConstants.Check(gas.GasConstant.JoulesPerKilogramKelvin, ConstantName(gas), ConstantWhy);
        Ratios.Check(gas.HeatCapacityRatio, RatioName(gas), RatioWhy);
    }

    /// <summary>What is wrong with the constants of a gas.</summary>
    public static IEnumerable<Finding> FindConstants(Gas gas) =>
        new[]
        {
            GasConstants.Find(gas.GasConstant.JoulesPerKilogramKelvin, ConstantName(gas), ConstantWhy),
            Ratios.Find(gas.HeatCapacityRatio, RatioName(gas), RatioWhy),
        }.OfType<Finding>();

    private const string ConstantWhy = "It is 8314.46 J/(kmol K) over the molar mass.",
        RatioWhy = "A gas of single atoms has 5/3, air and nitrogen 1.40, hydrogen 1.41.";

    private static readonly ValidRange<double> GasConstants = new(50, 5000), Ratios = new(1.05, 1.7);

    private static string ConstantName(Gas gas) => $"gas constant of {gas.Name} in J/(kg K)";

    private static string RatioName(Gas gas) => $"ratio of heat capacities of {gas.Name}";
}
