using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Uncertainty;
using UnitsNet;

namespace NotebookKit.Vessels;

/// <summary>A composite pressure vessel as it is built: a liner, plies from the inside out, two ends.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Liner">Tube the plies are laid on.</param>
/// <param name="Length">Straight length inside, between the closures; 10 to 5000 mm.</param>
/// <param name="Resin">Resin of every ply.</param>
/// <param name="Plies">Plies from the inside out.</param>
/// <param name="Nozzle">Nozzle end.</param>
/// <param name="Forward">Forward end.</param>
/// <remarks>
/// Source: closed thin tube (Timoshenko), classical laminate theory (Jones, Mechanics of Composite Materials, 2nd ed. 1999) and netting
/// analysis (Evans and Gibson, Proc. R. Soc. A 458, 2002); each verb's result names its own.
/// </remarks>
public sealed record PressureVessel(string Name, Liner Liner, Length Length, Resin Resin, IReadOnlyList<Ply> Plies, VesselEnd Nozzle, VesselEnd Forward)
{
    /// <summary>How well it is made.</summary>
    public Fabrication Fabrication { get; init; } = Fabrication.HandLaid;

    /// <summary>Volume inside, both ends included. Source: geometry.</summary>
    public Volume Volume => UnitsNet.Volume.FromLiters(1000 * (
        Math.PI / 4 * Liner.Bore.Meters * Liner.Bore.Meters * Length.Meters
        + Nozzle.Closure.VolumeInside(Liner.Bore).CubicMeters + Forward.Closure.VolumeInside(Liner.Bore).CubicMeters));

    /// <summary>What a result says of values of the user's own; empty where there are none.</summary>
    internal IReadOnlyList<Finding> OwnValues => OwnValuesIn(Overrides);

    internal static IReadOnlyList<Finding> OwnValuesIn(IReadOnlyList<string> overrides) =>
        overrides.Count > 0 ? [Finding.Note("Uses your own values: " + string.Join("; ", overrides) + ".")] : [];

    /// <summary>User's values that stand in place of the library's, a line each.</summary>
    public IReadOnlyList<string> Overrides =>
    [
        .. new[] { Liner.Material?.Overrides, Resin.Overrides, Nozzle.Closure.Material.Overrides, Forward.Closure.Material.Overrides }
            .Concat(Plies.Select(p => (IReadOnlyList<string>?)p.Overrides))
            .Concat(Nozzle.Joints.Concat(Forward.Joints).OfType<BondedPlug>().Select(b => (IReadOnlyList<string>?)b.Adhesive.Overrides))
            .SelectMany(o => o ?? []).Distinct(),
    ];

    /// <summary>All that is wrong, or worth knowing, before anything is computed.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Liner.Validate(), .. Resin.Validate(), .. Fabrication.Validate(), .. Plies.SelectMany(p => p.Validate())];
        if (new ValidRange<Length>(10.Millimetres(), 5000.Millimetres()).Find(Length, "straight length", "Measure between the closures.") is { } length) findings.Add(length);
        if (Plies.Count == 0 && Liner.Material is null) findings.Add(Finding.Error("The vessel has neither a liner nor a ply; give it a wall."));
        if (Plies.Count > 40) findings.Add(Finding.Error($"The vessel has {Plies.Count} plies; up to 40 are taken."));
        if (!findings.Any(f => f.Severity == FindingSeverity.Error)) findings.AddRange(LayupModel.FindDiameters(this));
        findings.AddRange(OfEnds());
        if ((Nozzle.CarriesSleeves || Forward.CarriesSleeves) && !Plies.Any(p => p is BraidedSleeve))
            findings.Add(Finding.Error("An end is held by sleeves carried over it, but no sleeve is laid; lay one, or hold the end another way."));
        return [.. findings.Distinct()];
    }

    // What is said of one end as of the other is said once.
    private IEnumerable<Finding> OfEnds()
    {
        const string OfNozzle = "Nozzle end: ", OfForward = "Forward end: ", OfBoth = "Both ends: ";
        var forward = Forward.Validate("forward end", Liner.Bore).ToList();
        foreach (var finding in Nozzle.Validate("nozzle end", Liner.Bore))
        {
            var twin = finding.Message.StartsWith(OfNozzle, StringComparison.Ordinal) ? finding with { Message = OfForward + finding.Message[OfNozzle.Length..] } : null;
            yield return twin is not null && forward.Remove(twin) ? finding with { Message = OfBoth + finding.Message[OfNozzle.Length..] } : finding;
        }

        foreach (var finding in forward) yield return finding;
    }

    /// <summary>What the plies come to on this diameter: angles, thickness, cut lengths, masses. Source: see the result's model card.</summary>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    public Layup Layup()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny(Name, findings);
        return LayupModel.Lay(this, findings);
    }

    /// <summary>Where the vessel first cracks and where it bursts, wall and ends. Source: see the result's model card.</summary>
    /// <param name="criterion">Failure criterion of the sound plies.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    public BurstPrediction Burst(FailureCriterion criterion = FailureCriterion.MaximumStress) => BurstModel.Predict(this, Layup(), criterion);

    /// <summary>Bursts of many vessels made to this design. Source: see the result's model card.</summary>
    /// <param name="samples">How many; 100 to 2 000 000.</param>
    /// <param name="seed">Seed of the random numbers; any.</param>
    /// <param name="belief">What is believed of the fabrication efficiency; that of <see cref="Fabrication"/> where none is given.</param>
    /// <param name="threads">Most threads to use; −1 for as many as there are. The answer doesn't depend on it.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The number of samples is out of range.</exception>
    public BurstDistribution SampleBursts(int samples = 20_000, ulong seed = 1, EfficiencyBelief? belief = null, int threads = -1) =>
        BurstDistribution.Sample(this, samples, seed, belief, threads);

    /// <summary>How the vessel grows under a pressure, and what its plies then carry. Source: see the result's model card.</summary>
    /// <param name="pressure">Gauge pressure; 0 to below its burst.</param>
    /// <exception cref="InvalidDesignException">The design isn't valid.</exception>
    /// <exception cref="OutOfRangeException">The wall doesn't reach the pressure.</exception>
    public VesselExpansion Expansion(GaugePressure pressure) => ExpansionModel.At(this, Layup(), pressure);

    /// <summary>What the vessel may be used at under a rule set. Source: see the result's model card.</summary>
    /// <param name="rules">Rule set; the club's own factors by default.</param>
    /// <param name="wanted">Working pressure wanted; 0.5 to 300 bar gauge, the highest that the rules allow where none is given.</param>
    /// <param name="evidence">Tests of vessels made the same way; none where not given. They don't raise the rating; where they contradict the prediction they forbid it or warn.</param>
    /// <exception cref="InvalidDesignException">The design, the rule set or a test isn't valid.</exception>
    public Rating Rate(RuleSet? rules = null, GaugePressure? wanted = null, VesselEvidence? evidence = null) => Burst().Rate(rules, wanted, evidence);

    /// <summary>What filling and propulsion need to know of it.</summary>
    /// <param name="rating">Its rating.</param>
    /// <exception cref="InvalidDesignException">The rating was refused, or is that of another design.</exception>
    public Chamber ToChamber(Rating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        if (!rating.Vessel.Equals(this))
        {
            throw new InvalidDesignException(Name, [Finding.Error(
                $"The rating is that of another design ({rating.Vessel.Name}, {rating.Vessel.Volume.Show()}), not of {Name} as it is here. Rate this one.")]);
        }

        return Chamber.Predicted(Volume, Liner.Bore, rating.WorkingPressure, rating.Rules.Overshoot, $"{Name} by {rating.Rules.Name}");
    }
}
