using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

/// <summary>Drag coefficient of a vehicle on its reference area: one number, or a table over Mach number with and without the jet running.</summary>
/// <remarks>Drag is ½ ρ v² C_D A. Source: definition.</remarks>
public sealed record DragCurve
{
    private DragCurve(Length referenceDiameter, IReadOnlyList<double> mach, IReadOnlyList<double> jetOn, IReadOnlyList<double> jetOff, Source source)
    {
        ReferenceDiameter = referenceDiameter;
        Mach = mach;
        JetOn = jetOn;
        JetOff = jetOff;
        Source = source;
    }

    /// <summary>Diameter of the reference area.</summary>
    public Length ReferenceDiameter { get; }

    /// <summary>Mach numbers of the table [-]; one of them where the coefficient is constant.</summary>
    public IReadOnlyList<double> Mach { get; }

    /// <summary>Coefficients with the jet running [-].</summary>
    public IReadOnlyList<double> JetOn { get; }

    /// <summary>Coefficients without jet [-].</summary>
    public IReadOnlyList<double> JetOff { get; }

    /// <summary>Where they come from.</summary>
    public Source Source { get; }

    /// <summary>Whether one number serves for all speeds.</summary>
    public bool IsConstant => Mach.Count == 1;

    /// <summary>Reference area. Source: geometry.</summary>
    public Area ReferenceArea => (Math.PI / 4 * ReferenceDiameter.Meters * ReferenceDiameter.Meters).SquareMetres();

    /// <summary>One coefficient for all speeds. Source: the caller's.</summary>
    /// <param name="coefficient">Drag coefficient [-]; 0 to 5.</param>
    /// <param name="referenceDiameter">Diameter of the reference area; 5 mm to 1 m.</param>
    /// <param name="source">Where the coefficient comes from; the caller's assumption unless given.</param>
    /// <exception cref="OutOfRangeException">A value is outside.</exception>
    public static DragCurve Constant(double coefficient, Length referenceDiameter, Source? source = null)
    {
        CheckDiameter(referenceDiameter);
        CheckCoefficient(coefficient);
        return new(referenceDiameter, [0.0], [coefficient], [coefficient], source ?? Source.CommonPractice("constant drag coefficient, assumed by the user"));
    }

    /// <summary>A table over Mach number, evenly spaced from 0. Source: the caller's.</summary>
    /// <param name="referenceDiameter">Diameter of the reference area; 5 mm to 1 m.</param>
    /// <param name="highestMach">Mach number of the last entry [-]; above 0, at most 1.2.</param>
    /// <param name="jetOn">Coefficients with the jet running [-]; 0 to 5 each, at least three.</param>
    /// <param name="jetOff">Coefficients without jet [-]; as many.</param>
    /// <param name="source">Where they come from.</param>
    /// <exception cref="OutOfRangeException">A value is outside.</exception>
    public static DragCurve Table(
        Length referenceDiameter, double highestMach, IReadOnlyList<double> jetOn, IReadOnlyList<double> jetOff, Source source)
    {
        ArgumentNullException.ThrowIfNull(jetOn);
        ArgumentNullException.ThrowIfNull(jetOff);
        ArgumentNullException.ThrowIfNull(source);
        CheckDiameter(referenceDiameter);
        new ValidRange<double>(0.05, 1.2).Check(highestMach, "highest Mach number of the drag table", "Subsonic drag models end there.");
        if (jetOn.Count < 3 || jetOff.Count != jetOn.Count)
            throw new OutOfRangeException(
                "length of the drag table", $"{jetOn.Count} and {jetOff.Count}", "3", "any number, both alike", "Give one coefficient with and one without jet at each Mach number.");
        foreach (var coefficient in jetOn.Concat(jetOff)) CheckCoefficient(coefficient);
        double[] mach = [.. Enumerable.Range(0, jetOn.Count).Select(i => highestMach * i / (jetOn.Count - 1))];
        return new(referenceDiameter, mach, [.. jetOn], [.. jetOff], source);
    }

    private static void CheckDiameter(Length diameter) =>
        new ValidRange<Length>(5.Millimetres(), 1.Metres()).Check(diameter, "reference diameter of the drag coefficient", "It is usually the largest body diameter.");

    private static void CheckCoefficient(double coefficient) =>
        new ValidRange<double>(0, 5).Check(coefficient, "drag coefficient", "A slender vehicle has 0.2 to 0.8 on its largest section.");
}
