using NotebookKit.Numerics.Space;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.RigidBody;

/// <summary>
/// A rigid body of constant mass with the plainest aerodynamics: drag against the motion through the air, and damping of its turning.
/// A falling ball, a tumbling brick, a nose cone that came off.
/// Source of the form of the coefficients: NASA/TM-2015-218675, vol. II, 2015.
/// </summary>
/// <param name="Name">What it is called.</param>
/// <param name="Mass">Mass; 1 g to 10 000 kg.</param>
/// <param name="RollInertia">Inertia about the forward axis; above 0.</param>
/// <param name="PitchInertia">Inertia about the right-hand axis; above 0.</param>
/// <param name="YawInertia">Inertia about the downward axis; above 0.</param>
public sealed record FreeBody(
    string Name, Mass Mass, MassMomentOfInertia RollInertia, MassMomentOfInertia PitchInertia, MassMomentOfInertia YawInertia)
{
    /// <summary>Area the coefficients refer to; 0 to 100 m².</summary>
    public Area ReferenceArea { get; init; } = Area.Zero;

    /// <summary>Length that roll and yaw damping refer to; 0 to 10 m.</summary>
    public Length Span { get; init; } = Length.Zero;

    /// <summary>Length that pitch damping refers to; 0 to 10 m.</summary>
    public Length Chord { get; init; } = Length.Zero;

    /// <summary>Drag coefficient [-]; 0 to 5.</summary>
    public double Drag { get; init; }

    /// <summary>Roll damping Clp by p × span / 2V [-]; −100 to 0 (negative damps).</summary>
    public double RollDamping { get; init; }

    /// <summary>Pitch damping Cmq by q × chord / 2V [-]; −100 to 0 (negative damps).</summary>
    public double PitchDamping { get; init; }

    /// <summary>Yaw damping Cnr by r × span / 2V [-]; −100 to 0 (negative damps).</summary>
    public double YawDamping { get; init; }

    /// <summary>Everything that is wrong with the body.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var inertias = new ValidRange<MassMomentOfInertia>(MassMomentOfInertia.FromKilogramSquareMeters(1e-9),
            MassMomentOfInertia.FromKilogramSquareMeters(1e5));
        var lengths = new ValidRange<Length>(Length.Zero, 10.Metres());
        var damping = new ValidRange<double>(-100, 0);
        const string Principal = "Give the principal moments about the centre of gravity.";
        const string Damps = "A positive value would drive the motion.";
        Finding?[] findings =
        [
            new ValidRange<Mass>(1.Grams(), 10_000.Kilograms()).Find(Mass, "mass", "Check the unit."),
            inertias.Find(RollInertia, "roll inertia", Principal),
            inertias.Find(PitchInertia, "pitch inertia", Principal),
            inertias.Find(YawInertia, "yaw inertia", Principal),
            new ValidRange<Area>(Area.Zero, 100.SquareMetres()).Find(ReferenceArea, "reference area",
                "Use the area that the coefficients are quoted on."),
            lengths.Find(Span, "span", "Use the length that the coefficients are quoted on."),
            lengths.Find(Chord, "chord", "Use the length that the coefficients are quoted on."),
            new ValidRange<double>(0, 5).Find(Drag, "drag coefficient", "A ball has 0.1 to 0.5."),
            damping.Find(RollDamping, "roll damping", Damps),
            damping.Find(PitchDamping, "pitch damping", Damps),
            damping.Find(YawDamping, "yaw damping", Damps),
            Triangle(),
        ];
        return findings.OfType<Finding>().ToArray();
    }

    internal ConstantBody Compile() => new(
        Mass.Kilograms,
        new(RollInertia.KilogramSquareMeters, PitchInertia.KilogramSquareMeters, YawInertia.KilogramSquareMeters),
        ReferenceArea.SquareMeters * Drag,
        ReferenceArea.SquareMeters * new Vector(
            RollDamping * Math.Pow(Span.Meters, 2), PitchDamping * Math.Pow(Chord.Meters, 2), YawDamping * Math.Pow(Span.Meters, 2)));

    private Finding? Triangle()
    {
        double[] inertias = [RollInertia.KilogramSquareMeters, PitchInertia.KilogramSquareMeters, YawInertia.KilogramSquareMeters];
        Array.Sort(inertias);
        return inertias[2] > (inertias[0] + inertias[1]) * (1 + 1e-9)
            ? FlightFindings.LargestInertiaMoreThanSumOfOthers(inertias[2], inertias[0] + inertias[1])
            : null;
    }
}
