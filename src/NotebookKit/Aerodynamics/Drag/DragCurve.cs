using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>
/// Drag coefficient against Mach number, as a table that a flight reads without allocating. Smooth in value and slope, so that an
/// integrator keeps its order. A curve of the build-up carries its friction apart, and gives it for thinner air as well: at one Mach number
/// friction depends on the air through the Reynolds number alone, ρ a / μ ∝ p (T + S) / T². Source: the values come from what it was made
/// from; viscosity by Sutherland's law, U.S. Standard Atmosphere 1976, eq. 51; the interpolation is cubic Hermite with central differences.
/// </summary>
public sealed class DragCurve
{
    private readonly MachTable _rest;
    private readonly FrictionTable? _friction;

    private DragCurve(string name, double areaM2, MachTable rest, FrictionTable? friction)
    {
        Name = name;
        AreaM2 = areaM2;
        _rest = rest;
        _friction = friction;
        IsConstant = friction is null && rest.IsConstant;
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
        new ValidRange<Area>(1e-6.SquareMetres(), 10.SquareMetres()).Check(referenceArea, "reference area",
            "Use the circle of the body's diameter.");
        return new DragCurve(name, referenceArea.SquareMeters, MachTable.From(mach =>
            new ValidRange<double>(0, 5).Check(coefficient(mach), "drag coefficient",
                "A streamlined body lies between 0.1 and 1 on its frontal area.")), null);
    }

    /// <summary>A table of a build-up, its friction apart from the rest, both as they are in the air of the friction table.</summary>
    internal static DragCurve From(string name, Area referenceArea, MachTable rest, FrictionTable friction) =>
        new(name, referenceArea.SquareMeters, rest, friction);

    /// <summary>The same curve times a factor, as a fit to a flight gives it.</summary>
    /// <param name="factor">Factor on the coefficient [-]; 0 to 5.</param>
    /// <exception cref="OutOfRangeException">The factor is outside its range.</exception>
    public DragCurve Times(double factor)
    {
        new ValidRange<double>(0, 5).Check(factor, "factor on drag", "A fitted factor far from 1 says the model or the data is wrong.");
        return new DragCurve(Name, AreaM2, _rest.Times(factor), _friction?.Times(factor));
    }

    /// <summary>Drag coefficient at a Mach number in the air that the curve was made for [-]. Doesn't allocate.</summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <exception cref="OutOfRangeException">The Mach number is beyond the table.</exception>
    public double Coefficient(double mach)
    {
        if (!(mach >= 0 && mach <= Ranges.MaximumMach)) Refuse(mach);
        return _friction is null ? _rest.At(mach) : _rest.At(mach) + _friction.At(mach, 1);
    }

    /// <summary>
    /// Drag coefficient at a Mach number in other air [-], for example that of a greater height: thinner air has more friction for its
    /// density. A curve without friction of its own, constant or measured, gives the same in any air. Doesn't allocate.
    /// </summary>
    /// <param name="mach">Mach number [-]; 0 to 0.9.</param>
    /// <param name="air">The air it flies in.</param>
    /// <exception cref="OutOfRangeException">The Mach number is beyond the table.</exception>
    public double Coefficient(double mach, AirConditions air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return Coefficient(mach, air.Pressure.Pascals, air.Temperature.Kelvins);
    }

    /// <summary>As above, of a pressure [Pa] and a temperature [K].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double Coefficient(double mach, double pressurePa, double temperatureK)
    {
        if (!(mach >= 0 && mach <= Ranges.MaximumMach)) Refuse(mach);
        return _friction is null ? _rest.At(mach) : _rest.At(mach) + _friction.At(mach, _friction.Share(pressurePa, temperatureK));
    }

    /// <summary>The table as two columns, in the air that it was made for: Mach number and drag coefficient.</summary>
    public (Series Mach, Series Coefficient) AsSeries()
    {
        var machs = Enumerable.Range(0, MachTable.Intervals + 1).Select(i => Math.Min(i * MachTable.Step, MaximumMach)).ToArray();
        return (new Series("Mach number", "-", machs), new Series("Drag coefficient", "-", machs.Select(Coefficient).ToArray()));
    }

    /// <summary>For example "Drag curve, middle: 0.48 at Mach 0.3".</summary>
    public override string ToString() => $"Drag curve, {Name}: {Digits.Round(Coefficient(0.3))} at Mach 0.3";

    [DoesNotReturn]
    private static void Refuse(double mach)
    {
        Ranges.CheckMach(mach);
        throw new OutOfRangeException("Mach number", Digits.Round(mach), "0", "0.9", "The drag table stops there.");
    }
}
