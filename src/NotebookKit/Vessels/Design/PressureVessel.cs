using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A composite pressure vessel as it is built: a liner, plies from the inside out, two ends.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Liner">Tube the plies are laid on.</param>
/// <param name="Length">Straight length inside, between the closures; 10 to 5000 mm.</param>
/// <param name="Resin">Resin of every ply.</param>
/// <param name="Plies">Plies from the inside out.</param>
/// <param name="NozzleEnd">Nozzle end.</param>
/// <param name="ForwardEnd">Forward end.</param>
/// <remarks>
/// The design alone: what is done with it, laying, bursting, rating, sampling, are verbs of the floors above. Source: geometry; each verb's
/// result names its own.
/// </remarks>
public sealed record PressureVessel(string Name, Liner Liner, Length Length, Resin Resin, IReadOnlyList<Ply> Plies, VesselEnd NozzleEnd,
    VesselEnd ForwardEnd)
{
    /// <summary>How well it is made.</summary>
    public Fabrication Fabrication { get; init; } = Fabrication.HandLaid;

    /// <summary>Volume inside, both ends included. Source: geometry.</summary>
    public Volume Volume => UnitsNet.Volume.FromLiters(1000 * (
        Math.PI / 4 * Liner.Bore.Meters * Liner.Bore.Meters * Length.Meters
        + NozzleEnd.Closure.VolumeInside(Liner.Bore).CubicMeters + ForwardEnd.Closure.VolumeInside(Liner.Bore).CubicMeters));

    /// <summary>What a result says of values of the user's own; empty where there are none.</summary>
    internal IReadOnlyList<Finding> OwnValues => OwnValuesIn(Overrides);

    internal static IReadOnlyList<Finding> OwnValuesIn(IReadOnlyList<string> overrides) =>
        overrides.Count > 0 ? [VesselsFindings.UsesYourOwnValues(overrides)] : [];

    /// <summary>User's values that stand in place of the library's, a line each.</summary>
    public IReadOnlyList<string> Overrides =>
    [
        .. new[] { Liner.Material?.Overrides, Resin.Overrides, NozzleEnd.Closure.Material.Overrides, ForwardEnd.Closure.Material.Overrides }
            .Concat(Plies.Select(p => (IReadOnlyList<string>?)p.Overrides))
            .Concat(NozzleEnd.Joints.Concat(ForwardEnd.Joints).OfType<BondedPlug>().Select(b =>
                (IReadOnlyList<string>?)b.Adhesive.Overrides))
            .Concat(new[] { NozzleEnd, ForwardEnd }.Select(e => (IReadOnlyList<string>?)(e.Fitting as BondedFitting)?.Adhesive.Overrides))
            .Append(Fabrication.AsBuilt is { } built ? [built] : [])
            .SelectMany(o => o ?? []).Distinct(),
    ];

    /// <summary>All that is wrong, or worth knowing, before anything is computed.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [.. Liner.Validate(), .. Resin.Validate(), .. Fabrication.Validate(),
            .. Plies.SelectMany(p => p.Validate())];
        if (new ValidRange<Length>(10.Millimetres(), 5000.Millimetres()).Find(Length, "straight length", "Measure between the closures.")
            is { } length) findings.Add(length);
        if (Plies.Count == 0 && Liner.Material is null) findings.Add(VesselsFindings.VesselHasNeitherLinerNorPly());
        if (Plies.Count > 40) findings.Add(VesselsFindings.TooManyPlies(Plies.Count));
        if (!findings.Any(f => f.Severity == FindingSeverity.Error)) findings.AddRange(PlyThickness.FindDiameters(this));
        findings.AddRange(TwoEnds.Together(NozzleEnd.Validate("nozzle end", Liner.Bore), ForwardEnd.Validate("forward end", Liner.Bore)));
        if ((NozzleEnd.CarriesSleeves || ForwardEnd.CarriesSleeves) && !Plies.Any(p => p is BraidedSleeve))
            findings.Add(VesselsFindings.NoSleeveToCarryOverEnd());
        findings.AddRange(OfNecks("Nozzle end", NozzleEnd));
        findings.AddRange(OfNecks("Forward end", ForwardEnd));
        return [.. findings.Distinct()];
    }

    // The sleeve's own law says whether it reaches a neck, and whether its yarns have room there.
    private IEnumerable<Finding> OfNecks(string end, VesselEnd of)
    {
        if (of.Joints.OfType<CarriedSleeve>().FirstOrDefault()?.Neck is not { } neck) yield break;
        foreach (var sleeve in Plies.OfType<BraidedSleeve>().DistinctBy(s => s.Braid.Name).Where(s => s.Braid.Validate().All(f =>
            f.Severity != FindingSeverity.Error)))
        {
            var (least, most) = (SleeveFit.MinimumDiameter(sleeve.Braid), SleeveFit.MaximumDiameter(sleeve.Braid));
            if (SleeveFit.FindDiameter(sleeve.Braid, neck) is not null)
                yield return VesselsFindings.SleeveCannotReachNeck(end, sleeve.Name, neck, least, most);
            else if (SleeveFit.Fit(sleeve.Braid, neck) is { IsJammed: true } jammed)
                yield return VesselsFindings.SleeveJamsAtNeck(end, sleeve.Name, neck, jammed.FreeDiameters, sleeve.Braid.YarnWidth.Value);
            else if (neck > Liner.OuterDiameter && SleeveFit.Fit(sleeve.Braid, neck) is var wide && SleeveFit.FindDiameter(sleeve.Braid,
                Liner.OuterDiameter) is null)
                yield return VesselsFindings.SleeveOpensAtNeck(end, sleeve.Name, neck, wide.Angle, wide.Coverage,
                    SleeveFit.Fit(sleeve.Braid, Liner.OuterDiameter).Angle);
        }
    }
}
