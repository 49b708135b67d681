using NotebookKit.Charts.Marks;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Engineering;

/// <summary>Energy a burst would set free: the same vessel at the same pressure full of water and full of air. The bars share a linear
/// scale on purpose.</summary>
public static class EnergyChart
{
    /// <summary>Draws both bars.</summary>
    /// <param name="water">Energy with the vessel full of water; 0 or above.</param>
    /// <param name="air">Energy with the vessel full of air; above 0.</param>
    /// <exception cref="InvalidDesignException">An energy below zero.</exception>
    public static EngineeringChart Draw(Energy water, Energy air)
    {
        if (water.Joules is not (>= 0 and < double.PositiveInfinity) || air.Joules is not (> 0 and < double.PositiveInfinity))
            throw new InvalidDesignException("Chart 'Energy set free by a burst'",
                [Finding.Error($"Energies are {water.Show()} in water and {air.Show()} in air; they must be 0 or above, and that in "
                + "air above 0.")]);
        // The unit follows the larger of the two, as a person would choose it.
        var (unit, scale) = air.Joules >= 1e4 ? ("kJ", 1e-3) : ("J", 1.0);
        var values = new Series("Energy", unit, [air.Joules * scale, water.Joules * scale]);
        return new EngineeringChart("Energy set free by a burst", Axis.For(values), Axis.OfNames("Filled with"))
        {
            Marks = [new Bars(["air", "water"], values) { Name = "", Slots = [1, 0],
                Labels = [$"{Digits.Round(air.Joules * scale)} {unit}: never proof with air", $"{Digits.Round(water.Joules)} J"] }],
        }.Checked();
    }
}
