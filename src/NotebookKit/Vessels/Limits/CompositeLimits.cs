using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Limits;

/// <summary>What fibre and resin together can be: limits that a design and a laminate share.</summary>
internal static class CompositeLimits
{
    public static Finding? FindFibreFraction(Ratio fraction, string name) =>
        new ValidRange<Ratio>(5.Percent(), 78.5.Percent()).Find(fraction, name,
            "Wet lay-up gives 30 to 50 %; above 78.5 % round fibres have no room.");

    public static Finding? FindEfficiency(Ratio efficiency) =>
        new ValidRange<Ratio>(20.Percent(), 110.Percent()).Find(efficiency, "fabrication efficiency",
            "Hand-laid braids deliver 45 to 80 % of the fibre's strength.");
}
