using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Airflow;

/// <summary>Ranges of the shapes the models are for, and how a breach is said.</summary>
internal static class Ranges
{
    /// <summary>Highest Mach number of the subsonic models.</summary>
    public const double MaximumMach = 0.9;

    public static readonly ValidRange<double> Mach = new(0, MaximumMach);

    public static readonly ValidRange<Length> PartLength = new(Length.FromMillimeters(1), Length.FromMeters(10));

    public static readonly ValidRange<Length> Diameter = new(Length.FromMillimeters(5), Length.FromMeters(1));

    public static readonly ValidRange<Length> Chord = new(Length.FromMillimeters(1), Length.FromMeters(2));

    public static readonly ValidRange<Length> Thickness = new(Length.FromMillimeters(0.1), Length.FromMillimeters(50));

    /// <summary>The Mach number, or a refusal that says why the models stop there.</summary>
    /// <exception cref="OutOfRangeException">Below 0, above 0.9, or not a number.</exception>
    public static double CheckMach(double mach) => Mach.Check(mach, "Mach number",
        "The subsonic corrections break down as shocks form on the body and fins; above Mach 0.9 measured or transonic data is needed.");

    public static void AddIf(this List<Finding> findings, Finding? finding)
    {
        if (finding is not null) findings.Add(finding);
    }
}
