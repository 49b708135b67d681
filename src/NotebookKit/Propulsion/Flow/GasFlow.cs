using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Flow;

/// <summary>One-dimensional isentropic flow of an ideal gas: ratios against Mach number, and a converging nozzle.</summary>
/// <remarks>Source: Ames Research Staff, Equations, Tables, and Charts for Compressible Flow, NACA Report 1135, 1953.</remarks>
public static class GasFlow
{
    private static readonly ValidRange<double> MachNumbers = new(0, 20);

    /// <summary>Static over stagnation temperature [-]. Source: NACA Report 1135, eq. 43.</summary>
    /// <param name="mach">Mach number [-]; 0 to 20.</param>
    /// <param name="gamma">Ratio of specific heats γ [-]; above 1, at most 5/3.</param>
    /// <exception cref="OutOfRangeException">A number is outside.</exception>
    public static double TemperatureRatio(double mach, double gamma = 1.4)
    {
        Check(mach, gamma);
        return 1 / (1 + (gamma - 1) / 2 * mach * mach);
    }

    /// <summary>Static over stagnation pressure [-]. Source: NACA Report 1135, eq. 44.</summary>
    /// <param name="mach">Mach number [-]; 0 to 20.</param>
    /// <param name="gamma">Ratio of specific heats γ [-]; above 1, at most 5/3.</param>
    /// <exception cref="OutOfRangeException">A number is outside.</exception>
    public static double PressureRatio(double mach, double gamma = 1.4) => Math.Pow(TemperatureRatio(mach, gamma), gamma / (gamma - 1));

    /// <summary>Static over stagnation density [-]. Source: NACA Report 1135, eq. 45.</summary>
    /// <param name="mach">Mach number [-]; 0 to 20.</param>
    /// <param name="gamma">Ratio of specific heats γ [-]; above 1, at most 5/3.</param>
    /// <exception cref="OutOfRangeException">A number is outside.</exception>
    public static double DensityRatio(double mach, double gamma = 1.4) => Math.Pow(TemperatureRatio(mach, gamma), 1 / (gamma - 1));

    /// <summary>Area over sonic area [-]. Source: NACA Report 1135, eq. 80.</summary>
    /// <param name="mach">Mach number [-]; above 0, at most 20.</param>
    /// <param name="gamma">Ratio of specific heats γ [-]; above 1, at most 5/3.</param>
    /// <exception cref="OutOfRangeException">A number is outside.</exception>
    public static double AreaRatio(double mach, double gamma = 1.4)
    {
        new ValidRange<double>(1e-9, 20).Check(mach, "Mach number", "At rest the area is infinite.");
        return Math.Pow(2 / (gamma + 1) / TemperatureRatio(mach, gamma), (gamma + 1) / (2 * (gamma - 1))) / mach;
    }

    /// <summary>Back pressure over stagnation pressure at and below which a converging nozzle is sonic [-]. Source: NACA Report 1135, eq.
    /// 44 at Mach 1.</summary>
    /// <param name="gamma">Ratio of specific heats γ [-]; above 1, at most 5/3.</param>
    /// <exception cref="OutOfRangeException">The ratio is outside.</exception>
    public static double CriticalPressureRatio(double gamma = 1.4) => PressureRatio(1, gamma);

    /// <summary>Mass flow out of a converging nozzle, choked or not. Source: NACA Report 1135.</summary>
    /// <param name="stagnation">Gas pressure at rest; 100 Pa to 2000 bar absolute.</param>
    /// <param name="temperature">Gas temperature at rest; 50 K to 2000 K.</param>
    /// <param name="effectiveArea">Discharge coefficient times throat area; 0.0001 mm² to 1 m².</param>
    /// <param name="back">Pressure outside; 0 or above. At or above the gas pressure nothing flows.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="OutOfRangeException">Pressure, temperature, area or a constant of the gas is outside.</exception>
    public static MassFlow MassFlow(AbsolutePressure stagnation, Temperature temperature, Area effectiveArea, AbsolutePressure back,
        Gas gas) =>
        UnitsNet.MassFlow.FromKilogramsPerSecond(Jet(stagnation, temperature, effectiveArea, gas).MassFlow(stagnation.Pascals,
            temperature.Kelvins, back.Pascals, out _));

    /// <summary>Thrust of a converging nozzle, ṁ u_e + (p_e − p_a) A. Source: momentum theorem; NACA Report 1135.</summary>
    /// <param name="stagnation">Gas pressure at rest; 100 Pa to 2000 bar absolute.</param>
    /// <param name="temperature">Gas temperature at rest; 50 K to 2000 K.</param>
    /// <param name="effectiveArea">Discharge coefficient times throat area; 0.0001 mm² to 1 m².</param>
    /// <param name="back">Pressure outside; 0 or above. At or above the gas pressure nothing flows.</param>
    /// <param name="gas">The gas.</param>
    /// <exception cref="OutOfRangeException">Pressure, temperature, area or a constant of the gas is outside.</exception>
    public static Force Thrust(AbsolutePressure stagnation, Temperature temperature, Area effectiveArea, AbsolutePressure back, Gas gas)
    {
        Jet(stagnation, temperature, effectiveArea, gas).MassFlow(stagnation.Pascals, temperature.Kelvins, back.Pascals, out var thrust);
        return thrust.Newtons();
    }

    private static AirJet Jet(AbsolutePressure stagnation, Temperature temperature, Area effectiveArea, Gas gas)
    {
        GasChecks.AtRest(stagnation, temperature, gas);
        new ValidRange<Area>(1e-4.SquareMillimetres(), 1.SquareMetres()).Check(effectiveArea, "effective nozzle area", "Check its unit.");
        return new(effectiveArea.SquareMeters, gas.GasConstant.JoulesPerKilogramKelvin, gas.HeatCapacityRatio);
    }

    private static void Check(double mach, double gamma)
    {
        MachNumbers.Check(mach, "Mach number", "The relations are for steady flow of an ideal gas.");
        new ValidRange<double>(1.01, 5.0 / 3).Check(gamma, "ratio of specific heats", "A gas of single atoms has 5/3, air 1.4.");
    }
}
