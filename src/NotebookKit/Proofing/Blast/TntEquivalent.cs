using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Proofing.Blast;

/// <summary>Stored energy as a mass of TNT: only a yardstick for the blast, which lets distances from explosives practice be
/// used.</summary>
/// <remarks>
/// Source: ASME PCC-2-2008, Appendix 501-II, equation II-3. The same article's constant in US units is 4.3 % larger; 4.184 MJ/kg is the
/// convention elsewhere. This library uses the SI constant alone, the smaller heat and so the larger mass of the article's two.
/// </remarks>
public static class TntEquivalent
{
    /// <summary>Energy per mass of TNT that the method divides by, 4.266 92 MJ/kg. Source: ASME PCC-2-2008, Appendix 501-II.</summary>
    public static SpecificEnergy SpecificEnergy { get; } = SpecificEnergy.FromJoulesPerKilogram(4_266_920);

    /// <summary>The mass of TNT that holds the energy. Source: ASME PCC-2-2008, equation II-3.</summary>
    /// <param name="energy">Stored energy; 0 or above.</param>
    /// <exception cref="OutOfRangeException">The energy is below zero or not a number.</exception>
    public static Mass Of(Energy energy)
    {
        new ValidRange<Energy>(Energy.Zero, Energy.FromJoules(1e12)).Check(energy, "stored energy", "It can't be below zero.");
        return Mass.FromKilograms(energy.Joules / SpecificEnergy.JoulesPerKilogram);
    }
}
