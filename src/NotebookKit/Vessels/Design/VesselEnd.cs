using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>One end of a vessel: what closes it, what fills its opening, what seals it and what holds it in.</summary>
/// <param name="Closure">What closes it.</param>
/// <param name="Joints">What holds it in, all in a row: a boss screwed into a ring that is glued in has two.</param>
public sealed record VesselEnd(Closure Closure, params IReadOnlyList<EndJoint> Joints)
{
    /// <summary>Least radius of an edge that yarns are bent over; common practice, no source.</summary>
    private static Length EdgeRadius { get; } = 5.Millimetres();

    /// <summary>What fills the closure's opening; none where there is no opening, or where that isn't given.</summary>
    public Fitting? Fitting { get; init; }

    /// <summary>What seals the closure in the vessel; none where that isn't given.</summary>
    public Seal? Seal { get; init; }

    /// <summary>Cloth discs laid over the closure; none unless given.</summary>
    public CapDiscs? Discs { get; init; }

    /// <summary>Mass of fittings, seals and fillers that the model doesn't know; 0 to 20 kg.</summary>
    public Mass Fittings { get; init; } = 0.Grams();

    /// <summary>Whole mass of the end as weighed, in place of the model's; none where not weighed.</summary>
    public Mass? Weighed { get; init; }

    /// <summary>How far the wall reaches past the straight part: the longest joint.</summary>
    public Length Reach => Joints.Count == 0 ? 0.Millimetres() : Joints.Max(j => j.Reach);

    /// <summary>Whether sleeves are carried over the closure.</summary>
    public bool CarriesSleeves => Joints.Any(j => j is CarriedSleeve);

    /// <summary>Length that the sleeves reach past the straight part and its joints: over the closure and along the tail.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public Length SleeveReach(Length bore) => CarriesSleeves
        ? Closure.Meridian(bore) + (Joints.OfType<CarriedSleeve>().First().Tail ?? Length.Zero) : Length.Zero;

    /// <summary>Mass of the end. Source: volume times density.</summary>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public Mass MassOf(Length bore)
    {
        if (Weighed is { } weighed) return weighed;
        var mass = Closure.Solid(bore) * Closure.Material.Density.Value + Fittings + (Fitting?.Mass ?? Mass.Zero)
            + (Discs?.MassOver(Closure, bore) ?? Mass.Zero);
        foreach (var plug in Joints.OfType<BondedPlug>())
        {
            // The skirt inside the overlap, of the closure's material.
            double outer = bore.Meters / 2, inner = Math.Max(outer - plug.SkirtWall.Meters, 0);
            mass += Volume.FromCubicMeters(Math.PI * (outer * outer - inner * inner) * plug.Overlap.Meters) *
                Closure.Material.Density.Value;
        }

        return mass;
    }

    /// <summary>All that is wrong with it.</summary>
    /// <param name="name">What the end is called: "nozzle end".</param>
    /// <param name="bore">Inner diameter of the vessel; above 0.</param>
    public IReadOnlyList<Finding> Validate(string name, Length bore)
    {
        List<Finding> findings = [.. Closure.Validate(bore), .. Joints.SelectMany(j => j.Validate(bore))];
        if (Joints.Count == 0) findings.Add(VesselsFindings.NoJointHoldsClosure());
        findings.AddRange(Fitting?.Validate(Closure) ?? []);
        findings.AddRange(Seal?.Validate() ?? []);
        findings.AddRange(Discs?.Validate() ?? []);
        if (Discs is not null && Closure is FlatClosure) findings.Add(VesselsFindings.DiscsOnPlateAddNothing());
        if (Closure.Opening.Meters > 0 && Fitting is null) findings.Add(VesselsFindings.FittingIsNotGiven(Closure.Opening));
        if (CarriesSleeves && Closure is FlatClosure
            && !(Joints.OfType<CarriedSleeve>().First().EdgeRadius >= EdgeRadius))
            findings.Add(VesselsFindings.SleeveIsCarriedOverSharpEdge(Joints.OfType<CarriedSleeve>().First().Delivers, EdgeRadius));
        Add(new ValidRange<Mass>(0.Grams(), 20.Kilograms()).Find(Fittings, "mass of fittings", "Weigh them."));
        if (Weighed is { } weighed) Add(new ValidRange<Mass>(0.Grams(), 50.Kilograms()).Find(weighed, "weighed mass",
            "Weigh the whole end."));
        return [.. findings.Select(f => f with { Message = name is { Length: > 0 }
            ? $"{char.ToUpperInvariant(name[0])}{name[1..]}: {f.Message}" : f.Message })];

        void Add(Finding? finding)
        {
            if (finding is not null) findings.Add(finding);
        }
    }
}
