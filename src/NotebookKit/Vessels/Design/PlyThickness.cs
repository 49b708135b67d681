using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>How thick a ply cures: its fibre at its fibre volume fraction, without voids.</summary>
internal static class PlyThickness
{
    /// <summary>Errors where a sleeve can't lie on the diameter it meets.</summary>
    public static IEnumerable<Finding> FindDiameters(PressureVessel vessel)
    {
        var under = vessel.Liner.OuterDiameter;
        foreach (var ply in vessel.Plies)
        {
            if (ply is BraidedSleeve sleeve && SleeveFit.FindDiameter(sleeve.Braid, under) is { } finding)
            {
                // What lies over an impossible sleeve has no diameter to lie on.
                yield return finding;
                yield break;
            }

            var thickness = Length.FromMillimeters(1000 * Of(ply, under, ply.FibreFraction ?? vessel.Fabrication.FibreFraction));
            under = under + thickness + thickness;
        }
    }

    /// <summary>Thickness of a sleeve where it fits [m].</summary>
    public static double Of(SleeveFit fit, Ratio fraction) =>
        Ring(fit.Diameter.Meters, SleeveMass(fit) / (fit.Braid.Fibre.Density.Value.KilogramsPerCubicMeter * fraction.DecimalFractions));

    /// <summary>Thickness of a cloth wrap, all turns [m].</summary>
    public static double Of(ClothWrap wrap, Ratio fraction) => Of(wrap.Cloth, wrap.Turns, fraction);

    /// <summary>Thickness of a hoop wrap, all layers [m].</summary>
    public static double Of(HoopWrap hoop, Ratio fraction) => Of(hoop.Tape, hoop.Layers, fraction);

    /// <summary>Thickness of a veil, all turns, at its own fibre fraction [m].</summary>
    public static double Of(VeilWrap veil) =>
        veil.Turns * veil.Veil.ArealWeight.Value.KilogramsPerSquareMeter / (veil.Veil.FibreDensity.Value.KilogramsPerCubicMeter *
            FractionOf(veil).DecimalFractions);

    /// <summary>A veil holds more resin than the plies: its own fibre fraction where none is given.</summary>
    public static Ratio FractionOf(VeilWrap veil) => veil.FibreFraction ?? veil.Veil.FibreFraction.Value;

    /// <summary>Dry fibre of a sleeve along the vessel [kg/m].</summary>
    public static double SleeveMass(SleeveFit fit) => fit.Braid.Carriers * fit.Braid.Yarn.Value.KilogramsPerMeter /
        Math.Cos(fit.Angle.Radians);

    private static double Of(Ply ply, Length under, Ratio fraction) => ply switch
    {
        BraidedSleeve sleeve => Of(SleeveFit.Fit(sleeve.Braid, under), fraction),
        ClothWrap wrap => Of(wrap, fraction),
        HoopWrap hoop => Of(hoop, fraction),
        _ => Of((VeilWrap)ply),
    };

    private static double Of(Cloth cloth, int layers, Ratio fraction) =>
        layers * cloth.ArealWeight.Value.KilogramsPerSquareMeter / (cloth.Fibre.Density.Value.KilogramsPerCubicMeter *
            fraction.DecimalFractions);

    /// <summary>Thickness of a ring of an area on a diameter [m].</summary>
    private static double Ring(double diameter, double area)
        => 2 * area / Math.PI / (diameter + Math.Sqrt(diameter * diameter + 4 * area / Math.PI));
}
