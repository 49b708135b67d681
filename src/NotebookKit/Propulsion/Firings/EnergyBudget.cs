using UnitsNet;

namespace NotebookKit.Propulsion.Firings;

/// <summary>Where the energy of the compressed gas goes, seen from the vessel. What is given equals what is taken.</summary>
/// <remarks>
/// Every item is summed up on its own while the equations are integrated; nothing is set to make the budget close.
/// Source: first law for the gas in the vessel; Bernoulli for the water.
/// </remarks>
/// <param name="GasAtStart">Internal energy of the gas at release, counted from 0 K; above 0.</param>
/// <param name="HeatTakenIn">Heat that the gas took up; 0 where it expands adiabatically; any value.</param>
/// <param name="LaunchTube">Spent on pushing the vehicle up a launch tube; 0 without one.</param>
/// <param name="WaterColumn">What the water column gave: its head under gravity and acceleration, and its own motion; any value.</param>
/// <param name="WaterJet">Kinetic energy of the water jet; 0 or above.</param>
/// <param name="NozzleLoss">Lost by friction in the nozzle; 0 or above.</param>
/// <param name="OutsideAir">Spent on pushing the outside air back while water left; 0 or above.</param>
/// <param name="CarriedOut">Enthalpy that the gas carried out; 0 or above.</param>
/// <param name="GasJet">Of that, kinetic energy of the gas jet at the exit; 0 or above.</param>
/// <param name="GasAtEnd">Internal energy of the gas still in the vessel; above 0.</param>
/// <param name="Available">What the gas could give at most by expanding to ambient without heat; the "stored energy"; above 0.</param>
public sealed record EnergyBudget(
    Energy GasAtStart, Energy HeatTakenIn, Energy LaunchTube, Energy WaterColumn, Energy WaterJet, Energy NozzleLoss, Energy OutsideAir,
        Energy CarriedOut, Energy GasJet,
    Energy GasAtEnd, Energy Available)
{
    /// <summary>Sum of what was given.</summary>
    public Energy Supplied => GasAtStart + HeatTakenIn + WaterColumn;

    /// <summary>Sum of where it went.</summary>
    public Energy Accounted => LaunchTube + WaterJet + NozzleLoss + OutsideAir + CarriedOut + GasAtEnd;

    /// <summary>Difference between the two sums over the stored energy [-]: the error of the integration.</summary>
    public double Imbalance => (Supplied - Accounted) / Available;

    /// <summary>Share of the stored energy that leaves with the water.</summary>
    public Ratio WaterShare => Ratio.FromDecimalFractions(WaterJet / Available);
}
