using NotebookKit.Clearance.Service;
using NotebookKit.Life.Weather;
using NotebookKit.Materials.Solids;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>What a vessel may be filled to today: the lowest of rating, proof and life, heat and water in the resin among them, and which
/// of them sets it. Source: the rating's
/// rule set; the proof; the limits of life; Chamis 1983.</summary>
public sealed record FillAllowance : Result
{
    private readonly ResinHeat _heat;

    private FillAllowance(ProvedVessel vessel, ServiceStatus? status, ResinHeat heat)
    {
        Vessel = vessel;
        Service = status;
        _heat = heat;
        List<(GaugePressure Pressure, string By)> all = [(vessel.Rating.WorkingPressure, "the rating"), (vessel.ByProof, "the proof")];
        if (status?.LastProof is { } last) all.Add((last.Allows, "the last proof in the service record"));
        // A proof is held on a cool day: what it allows shrinks with the resin as what the rating allows does.
        var (cool, coolBy) = all.MinBy(a => a.Pressure.Pascals);
        if (heat.Retention is { } kept)
        {
            ByHeat = GaugePressure.FromPascals(kept * cool.Pascals);
            if (kept < 1) all.Add((ByHeat.Value, kept > 0 ? $"{coolBy} with {heat.Name}" : heat.Name));
        }

        if (heat.NotGiven is { } missing) all.Add((GaugePressure.Zero, missing));
        if (status is null) all.Add((GaugePressure.Zero, "the service record, which isn't at hand,"));
        if (status is { Standing: not ServiceStanding.InService }) all.Add((GaugePressure.Zero,
            "the service record, which grounds the vessel,"));
        (Pressure, SetBy) = all.MinBy(a => a.Pressure.Pascals);
    }

    /// <summary>The vessel as proved.</summary>
    public ProvedVessel Vessel { get; }

    /// <summary>The state of its service; none where no service record was handed over.</summary>
    public ServiceStatus? Service { get; }

    /// <summary>What the resin keeps of its strength on the day; none where it is too hot or heat can't be judged.</summary>
    public HygrothermalResult? Heat => _heat.Kept;

    /// <summary>Pressure that heat and water in the resin allow: the lower of rating and proof times the strength kept; none where heat
    /// can't be judged.</summary>
    public GaugePressure? ByHeat { get; }

    /// <summary>Whether all that sets it was shown: service record, temperature of the vessel, glass temperature of its resin.</summary>
    public bool IsShown => Service is not null && _heat.NotGiven is null;

    /// <summary>Pressure it may be filled to; 0 where it is grounded, too hot, or something isn't shown.</summary>
    public GaugePressure Pressure { get; }

    /// <summary>What sets it.</summary>
    public string SetBy { get; }

    /// <inheritdoc/>
    public override string Title => $"Maximum fill pressure, {Vessel.Vessel} {Vessel.Serial}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Lowest of rating, proof and life",
        ["The rating is a prediction that errs low; the proof is what this vessel held; its life ends with time, fills, heat and impacts.",
            "Heat and water take from the strength of the wall what they take from that of the resin, which errs low where fibres carry.",
            "For the time under load the limits of life stand: no stress-rupture law is taken.",
            .. Vessel.Model.Assumptions],
        Vessel.Model.ValidRange,
        [.. Vessel.Model.Sources, .. Heat?.Model.Sources ?? []]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Maximum fill pressure", Pressure.ToString(), $"{SetBy} sets it"),
        new("By the rating", Vessel.Rating.WorkingPressure.ToString(), Vessel.RuleSet),
        new("By the proof", Vessel.ByProof.ToString(), $"held {Vessel.Held}"),
        new("By heat and water", ByHeat?.ToString() ?? "not shown", _heat.Note),
        new("By its life", Service is null ? "not shown" : Service.Standing == ServiceStanding.InService ? "no limit below these"
            : "not to be filled", Service is null ? "no service record was handed over" : Service.Title),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        .. Service is null
            ? [ClearanceFindings.ServiceRecordIsNotShown()]
            : Service.Findings,
        .. HeatFindings,
        SustainedLoad,
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        .. Heat?.Working.Steps ?? [],
        new("Maximum fill pressure", @"p = \min(p_{rated},\ p_{proof},\ p_{heat},\ p_{life})",
            string.Join(", ", Lines.Skip(1).Select(l => l.Value)), Pressure.ToString(), Vessel.Rating.Rules.Source),
    ]);

    /// <summary>What has to be said of heat and water.</summary>
    internal IReadOnlyList<Finding> HeatFindings => _heat.Findings;

    /// <summary>What stands in for a law of stress rupture.</summary>
    internal Finding SustainedLoad => (Service?.Limits ?? LifeLimits.Club) is { TimeAtPressure: { } most } limits
        ? ClearanceFindings.NoPublishedStressRuptureData(ServiceStatus.Hours(most.Value), limits.Name)
        : ClearanceFindings.LimitsSetNoTimeAtPressure(Service!.Limits.Name);

    /// <summary>The lowest of rating, proof and life. Source: as the type.</summary>
    /// <param name="vessel">The vessel as proved.</param>
    /// <param name="status">The state of its service on the day; none where its record isn't at hand, which is said and allows
    /// nothing.</param>
    /// <param name="temperature">Temperature of the wall at its warmest place on the day; −60 °C to below the resin's wet glass
    /// temperature, nothing is allowed outside; none where it isn't given, which is said and allows nothing.</param>
    /// <param name="moisture">Water in the resin by weight as measured, 0 to 10 %; not measured or none: 2 % at least is taken, as in a
    /// saturated resin.</param>
    public static FillAllowance Of(ProvedVessel vessel, ServiceStatus? status, Temperature? temperature, Property<Ratio>? moisture = null)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        return new(vessel, status, new ResinHeat(vessel.Rating.Vessel, temperature, moisture));
    }
}
