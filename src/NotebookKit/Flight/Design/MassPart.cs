using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>
/// One line of the mass budget. Source of its own inertia: a thin tube or a solid cylinder about its centre, H. Goldstein, Classical
/// Mechanics (unverified).
/// </summary>
/// <param name="Name">What it is.</param>
/// <param name="Mass">Its mass; above 0 to 50 kg.</param>
/// <param name="At">Its centre of gravity, aft of the nose tip; −1 to 20 m.</param>
public sealed record MassPart(string Name, Mass Mass, Length At)
{
    /// <summary>How far it spreads along the axis; 0 for a point.</summary>
    public Length Extent { get; init; } = Length.Zero;

    /// <summary>Its outside diameter, or twice the radius at which its mass sits round the axis (fins); 0 for a point.</summary>
    public Length Diameter { get; init; } = Length.Zero;

    /// <summary>Whether it fills its diameter; a thin shell where not.</summary>
    public bool Solid { get; init; }

    /// <summary>Whether the mass is an estimate or was weighed.</summary>
    public MassBasis Basis { get; init; } = MassBasis.Estimated;

    /// <summary>Standard deviation of its mass; 0 to 50 %. Where none is given: 10 % of an estimate, 1 % of a weighed part (common
    /// practice).</summary>
    public Ratio? Spread { get; init; }

    internal double SpreadShare => Spread?.DecimalFractions ?? (Basis == MassBasis.Weighed ? 0.01 : 0.10);

    internal MassState State
    {
        get
        {
            var (mass, radius, extent) = (Mass.Kilograms, Diameter.Meters / 2, Extent.Meters);
            var roll = mass * radius * radius * (Solid ? 0.5 : 1);
            return new MassState(mass, At.Meters, roll, (roll / 2) + (mass * extent * extent / 12));
        }
    }

    /// <summary>The same part with the reading of a scale.</summary>
    /// <param name="reading">Mass as weighed; above 0 to 50 kg.</param>
    public MassPart Weighed(Mass reading) => this with { Mass = reading, Basis = MassBasis.Weighed, Spread = null };

    /// <summary>Everything that is wrong with the line.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        Add(Mass > Mass.Zero && Mass <= 50.Kilograms() ? null
            : FlightFindings.PartMassOutOfRange(Name, Mass));
        Add(new ValidRange<Length>((-1).Metres(), 20.Metres()).Find(At, $"{Name}: centre of gravity", "Measure it aft of the nose tip."));
        Add(new ValidRange<Length>(Length.Zero, 10.Metres()).Find(Extent, $"{Name}: extent along the axis", "Zero for a point."));
        Add(new ValidRange<Length>(Length.Zero, 2.Metres()).Find(Diameter, $"{Name}: diameter", "Zero for a point."));
        if (Spread is { } spread) Add(new ValidRange<Ratio>(0.Percent(), 50.Percent()).Find(spread, $"{Name}: spread of mass",
            "It is a standard deviation."));
        return findings;

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}

/// <summary>How a mass is known.</summary>
public enum MassBasis
{
    /// <summary>Worked out or guessed before the part existed.</summary>
    Estimated,

    /// <summary>Read from a scale.</summary>
    Weighed,
}
