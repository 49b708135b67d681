using System.Diagnostics.CodeAnalysis;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics;

/// <summary>
/// Drag coefficient against Mach number, as a table that a flight reads without allocating. Smooth in value and slope, so that an
/// integrator keeps its order. Source: the values come from what it was made from; the interpolation is cubic Hermite with central differences.
/// </summary>
public sealed class DragCurve
{
    private const int Intervals = 90;
    private const double Step = Ranges.MaximumMach / Intervals;

    private readonly double[] _values;
    private readonly double[] _slopes;

    private DragCurve(string name, double areaM2, double[] values)
    {
        Name = name;
        AreaM2 = areaM2;
        _values = values;
        IsConstant = Array.TrueForAll(values, v => v == values[0]);
        _slopes = new double[values.Length];
        for (var i = 1; i < Intervals; i++) _slopes[i] = (values[i + 1] - values[i - 1]) / 2;
        _slopes[0] = values[1] - values[0];
        _slopes[Intervals] = values[Intervals] - values[Intervals - 1];
    }

    /// <summary>What it is called in tables.</summary>
    public string Name { get; }

    /// <summary>Area the coefficient refers to.</summary>
    public Area ReferenceArea => Area.FromSquareMeters(AreaM2);

    /// <summary>Highest Mach number of the table [-]; reading beyond it is refused.</summary>
    public static double MaximumMach => Ranges.MaximumMach;

    internal double AreaM2 { get; }

    internal bool IsConstant { get; }

    /// <summary>The same coefficient at every speed.</summary>
    /// <param name="coefficient">Drag coefficient [-]; 0 to 5.</param>
    /// <param name="referenceArea">Area it refers to; above 0.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static DragCurve Constant(double coefficient, Area referenceArea) => From("constant", referenceArea, _ => coefficient);

    /// <summary>The same coefficient at every speed, on the circle of a diameter.</summary>
    /// <param name="coefficient">Drag coefficient [-]; 0 to 5.</param>
    /// <param name="referenceDiameter">Diameter of the circle it refers to; above 0.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static DragCurve Constant(double coefficient, Length referenceDiameter) =>
        Constant(coefficient, Area.FromSquareMeters(Math.PI / 4 * referenceDiameter.Meters * referenceDiameter.Meters));

    /// <summary>A table from a function of Mach number.</summary>
    /// <param name="name">What it is called in tables.</param>
    /// <param name="referenceArea">Area the coefficient refers to; above 0.</param>
    /// <param name="coefficient">Drag coefficient at a Mach number from 0 to 0.9 [-]; it must give 0 to 5.</param>
    /// <exception cref="OutOfRangeException">An input or a value of the function is outside its range.</exception>
    public static DragCurve From(string name, Area referenceArea, Func<double, double> coefficient)
    {
        ArgumentNullException.ThrowIfNull(coefficient);
        new ValidRange<Area>(1e-6.SquareMetres(), 10.SquareMetres()).Check(referenceArea, "reference area", "Use the circle of the body's diameter.");
        var values = new double[Intervals + 1];
        for (var i = 0; i <= Intervals; i++)
            values[i] = new ValidRange<double>(0, 5).Check(coefficient(i * Step), "drag coefficient", "A streamlined body lies between 0.1 and 1 on its frontal area.");
        return new DragCurve(name, referenceArea.SquareMeters, values);
    }

    /// <summary>The same curve times a factor, as a fit to a flight gives it.</summary>
    /// <param name="factor">Factor on the coefficient [-]; 0 to 5.</param>
    /// <exception cref="OutOfRangeException">The factor is outside its range.</exception>
    public DragCurve Times(double factor)
    {
        new ValidRange<double>(0, 5).Check(factor, "factor on drag", "A fitted factor far from 1 says the model or the data is wrong.");
        return new DragCurve(Name, AreaM2, Array.ConvertAll(_values, v => v * factor));
    }

    /// <summary>Drag coefficient at a Mach number [-]. Doesn't allocate.</summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The Mach number is beyond the table.</exception>
    public double Coefficient(double mach)
    {
        if (!(mach >= 0 && mach <= Ranges.MaximumMach)) Refuse(mach);
        var u = mach / Step;
        var i = Math.Min((int)u, Intervals - 1);
        u -= i;
        var (v0, v1, s0, s1) = (_values[i], _values[i + 1], _slopes[i], _slopes[i + 1]);
        var d = v1 - v0;
        return v0 + (u * (s0 + (u * ((3 * d) - (2 * s0) - s1 + (u * (s0 + s1 - (2 * d)))))));
    }

    /// <summary>The table as two columns: Mach number and drag coefficient.</summary>
    public (Series Mach, Series Coefficient) AsSeries() => (
        new Series("Mach number", "-", Enumerable.Range(0, Intervals + 1).Select(i => i * Step).ToArray()),
        new Series("Drag coefficient", "-", [.. _values]));

    /// <summary>For example "Drag curve, middle: 0.48 at Mach 0.3".</summary>
    public override string ToString() => $"Drag curve, {Name}: {Digits.Round(Coefficient(0.3))} at Mach 0.3";

    [DoesNotReturn]
    private static void Refuse(double mach)
    {
        Ranges.CheckMach(mach);
        throw new OutOfRangeException("Mach number", Digits.Round(mach), "0", "0.9", "The drag table stops there.");
    }
}
