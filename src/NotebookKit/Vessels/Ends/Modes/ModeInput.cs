using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Checks of the numbers that the models of an end's failure take.</summary>
internal static class ModeInput
{
    public static ValidRange<Length> Sizes { get; } = new(0.01.Millimetres(), 2000.Millimetres());

    public static ValidRange<Pressure> Stresses { get; } = new(0.1.Megapascals(), 5000.Megapascals());

    public static ValidRange<Pressure> Moduli { get; } = new(1.Megapascals(), 1000.Gigapascals());

    public static ValidRange<double> PoissonRatios { get; } = new(0, 0.49);

    public static ValidRange<GaugePressure> Pressures { get; } = new(GaugePressure.Zero, 2000.BarGauge());

    public static double Size(Length value, string name, string why) => Sizes.Check(value, name, why).Meters;

    public static double Stress(Pressure value, string name) =>
        Stresses.Check(value, name, "Give the strength or the allowable stress of the material.").Pascals;

    public static double Poisson(double value) =>
        PoissonRatios.Check(value, "Poisson's ratio", "Aluminium is near 0.33, plastics near 0.38.");

    public static double Pressure(GaugePressure value) =>
        Pressures.Check(value, "pressure", "Give the pressure inside above ambient.").Pascals;

    /// <summary>All the findings that there are.</summary>
    public static IReadOnlyList<Finding> All(params IReadOnlyList<Finding?> findings) => [.. findings.OfType<Finding>()];

    /// <summary>An error where a length isn't below another.</summary>
    public static Finding? Below(Length value, Length limit, string name, string limitName, string why) => value < limit
        ? null
        : Finding.Error(OutOfRangeException.Sentence(name, value.Show(4), "above 0", $"below the {limitName} of {limit.Show(4)}", why));
}
