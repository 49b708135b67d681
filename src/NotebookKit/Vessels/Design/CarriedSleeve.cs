using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>The sleeves are carried over the closure and hold it in, alone or beside a bond, with which they share the thrust. Cloth and
/// hoop wraps stop at the straight part.</summary>
/// <remarks>Source: common practice, no source, for the share it delivers.</remarks>
public sealed record CarriedSleeve : EndJoint
{
    /// <summary>Share of the straight part's strength that yarns deliver bent over the closure's edge; 30 to 100 %.</summary>
    public Ratio Delivers { get; init; } = 85.Percent();

    /// <summary>Friction of the yarns on the closure [-]; 0 to 1. Dry fibres on plastic or metal are 0.15 to 0.35; the low end is
    /// assumed.</summary>
    public double Friction { get; init; } = 0.15;

    /// <summary>Angle that the surface turns through beneath the sleeve; 0° to 180°. A dome or a plate turns 90°.</summary>
    public Angle Turn { get; init; } = 90.Degrees();

    /// <summary>Radius of the edge it is carried over; none where that isn't given. 0.1 to 500 mm.</summary>
    public Length? EdgeRadius { get; init; }

    /// <summary>Diameter of the neck or boss that it ends on; none where that isn't given, and no rating then. 2 to 500 mm, and one on
    /// which the sleeve's yarns have room.</summary>
    public Length? Neck { get; init; }

    /// <summary>Length bonded past the closure, along the neck; none where that isn't given, and no rating then unless the tail is tied
    /// off. 1 to 500 mm.</summary>
    public Length? Tail { get; init; }

    /// <summary>Whether the tail is tied off with turns of yarn, so that it can't slip.</summary>
    public bool IsTiedOff { get; init; }

    /// <inheritdoc/>
    public override string Name => "sleeve carried over";

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Validate(Length bore)
    {
        List<Finding> findings = [];
        Add(new ValidRange<Ratio>(30.Percent(), 100.Percent()).Find(Delivers, "share delivered over the closure",
            "85 % is assumed; a sharp edge takes more away."));
        Add(new ValidRange<double>(0, 1).Find(Friction, "friction of the sleeve on the closure",
            "Dry fibres on plastic or metal are 0.15 to 0.35."));
        Add(new ValidRange<Angle>(0.Degrees(), 180.Degrees()).Find(Turn, "turn of the sleeve over the closure", "A dome turns 90°."));
        if (EdgeRadius is { } edge) Add(new ValidRange<Length>(0.1.Millimetres(), 500.Millimetres()).Find(edge,
            "radius of the edge under the sleeve", "5 mm or more is usual."));
        if (Neck is { } neck) Add(new ValidRange<Length>(2.Millimetres(), 500.Millimetres()).Find(neck, "diameter of the neck",
            "Measure over what the sleeve ends on."));
        if (Tail is { } tail) Add(new ValidRange<Length>(1.Millimetres(), 500.Millimetres()).Find(tail, "tail of the sleeve",
            "Two neck diameters are usual."));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}
