using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// How far a round plate bends and what stress that makes. Stress is that of the face away from the pressure: pull is above 0.
/// </summary>
/// <remarks>Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, §16 and §17.</remarks>
public sealed record PlateBending : EndModeResult
{
    private readonly double[] _constants;

    internal PlateBending(AnnularPlate plate, GaugePressure pressure, ForcePerLength edgeLoad, double[] constants)
    {
        (Plate, Pressure, EdgeLoad, _constants) = (plate, pressure, edgeLoad, constants);
        double deflection = 0, stress = 0;
        foreach (var (r, w, radial, around) in Samples())
        {
            if (Math.Abs(w) > Math.Abs(deflection)) (deflection, MaximumDeflectionAt) = (w, Length.FromMeters(r));
            // Rounding alone doesn't move the place.
            if (Math.Abs(radial) > Math.Abs(stress) * (1 + 1e-12))
                (stress, MaximumStressAt, IsAround) = (radial, Length.FromMeters(r), false);
            if (Math.Abs(around) > Math.Abs(stress) * (1 + 1e-12))
                (stress, MaximumStressAt, IsAround) = (around, Length.FromMeters(r), true);
        }

        MaximumDeflection = Length.FromMeters(deflection);
        MaximumStress = UnitsNet.Pressure.FromPascals(stress);
    }

    /// <summary>The plate.</summary>
    public AnnularPlate Plate { get; }

    /// <summary>Pressure on it.</summary>
    public GaugePressure Pressure { get; }

    /// <summary>Load around the edge of the hole, a length of edge, the cover's pull included.</summary>
    public ForcePerLength EdgeLoad { get; }

    /// <summary>Largest deflection.</summary>
    public Length MaximumDeflection { get; }

    /// <summary>Radius of the largest deflection.</summary>
    public Length MaximumDeflectionAt { get; }

    /// <summary>Bending stress of the largest size; below 0 where the face away from the pressure is pushed, as at a clamped rim.</summary>
    public Pressure MaximumStress { get; }

    /// <summary>Radius of the largest stress.</summary>
    public Length MaximumStressAt { get; }

    /// <summary>Whether the largest stress runs around the hole; else along the radius.</summary>
    public bool IsAround { get; }

    /// <summary>Deflection at a radius. Source: Timoshenko and Woinowsky-Krieger 1959, §17.</summary>
    /// <param name="radius">Radius; from the hole to the rim.</param>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public Length DeflectionAt(Length radius) => Length.FromMeters(At(Check(radius)).DeflectionM);

    /// <summary>Stress along the radius. Source: Timoshenko and Woinowsky-Krieger 1959, §17.</summary>
    /// <param name="radius">Radius; from the hole to the rim.</param>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public Pressure RadialStressAt(Length radius) => UnitsNet.Pressure.FromPascals(At(Check(radius)).RadialPa);

    /// <summary>Stress around. Source: Timoshenko and Woinowsky-Krieger 1959, §17.</summary>
    /// <param name="radius">Radius; from the hole to the rim.</param>
    /// <exception cref="OutOfRangeException">The radius is out of range.</exception>
    public Pressure AroundStressAt(Length radius) => UnitsNet.Pressure.FromPascals(At(Check(radius)).AroundPa);

    /// <inheritdoc/>
    public override string Title =>
        $"Bending of a {(Plate.IsWhole ? "round plate" : "round plate with a hole")}, " +
        $"{(Plate.Rim == PlateRim.Clamped ? "clamped" : "supported")}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Thin elastic round plate",
        ["Small deflections, no shear, no stretching of the middle plane.",
            "The rim and the edge of the hole are held as said all around.", "Screw holes, grooves and steps are not counted."],
        "Thickness below about a quarter of the width from hole to rim; deflection below half the thickness.",
        [VesselSources.Plates, ModeSources.Roark]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("largest deflection", MaximumDeflection.ToUnit(UnitsNet.Units.LengthUnit.Millimeter).Show(),
            $"at a radius of {Mm(MaximumDeflectionAt)}"),
        new("largest stress", MaximumStress.ToUnit(UnitsNet.Units.PressureUnit.Megapascal).Show(),
            $"{(IsAround ? "around" : "along the radius")}, at a radius of {Mm(MaximumStressAt)}"),
        new("load around the edge of the hole", EdgeLoad.ToUnit(UnitsNet.Units.ForcePerLengthUnit.NewtonPerMillimeter).Show(),
            Plate.IsWhole ? "no hole" : ""),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Bending stiffness", @"D = \frac{E\,t^3}{12\,(1-\nu^2)}",
            $"{Plate.Modulus.Show()} × ({Plate.Thickness.Show()})³ / (12 × (1 − {Digits.Round(Plate.PoissonRatio)}²))",
            $"{Digits.Round(Plate.StiffnessNm)} N·m", VesselSources.Plates),
        new("Deflection", @"w = A + B r^2 + C \ln r + F r^2 \ln r + \frac{p\,r^4}{64\,D}",
            $"constants over r/a: {string.Join(", ", _constants.Select(c => Digits.Round(1000 * c, 4) + " mm"))}; p = {Pressure}",
                Mm(MaximumDeflection), VesselSources.Plates),
        new("Stress", @"\sigma = \frac{6\,M}{t^2}", $"at r = {Mm(MaximumStressAt)}",
            MaximumStress.ToUnit(UnitsNet.Units.PressureUnit.Megapascal).Show(), VesselSources.Plates),
    ]);

    internal IEnumerable<(double RadiusM, double DeflectionM, double RadialPa, double AroundPa)> Samples() =>
        Plate.Radii().Select(r => At(r)).Select(s => (s.RadiusM, s.DeflectionM, s.RadialPa, s.AroundPa));

    private static string Mm(Length length) => length.ToUnit(UnitsNet.Units.LengthUnit.Millimeter).Show();

    private double Check(Length radius) =>
        new ValidRange<Length>(Plate.HoleRadius, Plate.OuterRadius)
            .Check(radius, "radius in the plate", "Ask for a radius between hole and rim.").Meters;

    private (double RadiusM, double DeflectionM, double RadialPa, double AroundPa) At(double r)
    {
        double a = Plate.OuterRadius.Meters, d = Plate.StiffnessNm, nu = Plate.PoissonRatio, t = Plate.Thickness.Meters;
        var load = Pressure.Pascals * Math.Pow(a, 4) / (64 * d);
        var (x, ka, kb, kc, kf) = (r / a, _constants[0], _constants[1], _constants[2], _constants[3]);
        // A whole plate has no logarithms; at its middle they would be infinite times nothing.
        var log = x == 0 ? 0 : Math.Log(x);
        var over = x == 0 ? 0 : 1 / (x * x);
        var w = ka + kb * x * x + kc * log + kf * x * x * log + load * Math.Pow(x, 4);
        var slopeOverX = 2 * kb + kc * over + kf * (2 * log + 1) + 4 * load * x * x;
        var bend = 2 * kb - kc * over + kf * (2 * log + 3) + 12 * load * x * x;
        var moment = -d / (a * a) * 6 / (t * t);
        return (r, w, moment * (bend + nu * slopeOverX), moment * (slopeOverX + nu * bend));
    }
}
