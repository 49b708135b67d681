using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.Vessels.Bursting;

/// <summary>Where a vessel first fails in a ply and where it bursts: two answers, never one.</summary>
/// <remarks>Source: as <see cref="Model"/> lists.</remarks>
public sealed partial record BurstPrediction : Result
{
    private static readonly ModelCard Card = new(
        "Tube wall, ply by ply, and its ends",
        [
            "Closed thin cylinder: p·R around, p·R/2 along, no bending; R is the middle of the plies.",
            "Each family of fibres is a unidirectional ply by the rule of mixtures and Chamis; crimp is part of the "
                + "fabrication efficiency.",
            "Resin that cracks leaves the ply 1 % of its stiffness across; plies then fail one by one until fibres or liner give way.",
            "A sleeve off its balance angle turns towards it once its resin has cracked, and the pressure follows the shape.",
            "What some of the plies hold alone they hold with others beside them: a ply that breaks first never lowers the burst. A ply "
                + "beneath a sleeve widens it and turns its yarns.",
            "The liner is bonded to the plies, elastic, then perfectly plastic, and tears at its usable strain; what a plastic one "
                + "carries is left out of the lower-bound burst.",
            "Each part of the ends carries the whole thrust, but for a bond and a carried sleeve, which share it by stiffness; the "
                + "weakest part bursts the vessel. First yield of a closure and a leak are no burst.",
            "A carried sleeve whose neck or tail isn't given is taken as held at its end in the burst alone: the lower-bound burst counts "
                + "no hold of it, and there is no rating. A tail that is tied off is taken not to slip: what turns of yarn hold is not "
                + "modelled (common practice, no source), and a burst or a proof of a twin has to bear it out.",
        ],
        "Wall thinner than a tenth of the radius, room temperature, short time, no damage, no cycles. Sleeves within about 2° of 54.7°, "
            + "or held by cloth or hoop wraps, are predicted; others are bracketed.",
        [VesselSources.Kaw, VesselSources.Chamis, VesselSources.Jones, VesselSources.Netting, VesselSources.Delivered,
            VesselSources.ShearLag]);

    private readonly Lazy<IReadOnlyList<PartMargin>> _yields;

    internal BurstPrediction(
        Layup layup, FailureCriterion criterion, VesselWall wall, WallLayer[] layers, in WallVerdict verdict,
            List<WallEvent> trace, IReadOnlyList<PartMargin> ends, double surePascals)
    {
        var outcome = verdict.Outcome;
        Without = verdict.Without;
        _yields = new(() => BurstModel.Yields(layup.Vessel), LazyThreadSafetyMode.PublicationOnly);
        Layup = layup;
        Criterion = criterion;
        Wall = wall;
        Layers = layers;
        Outcome = outcome;
        Trace = trace;
        WallBurst = GaugePressure.FromPascals(outcome.BurstLineLoad / wall.Radius);
        FirstPlyFailure = double.IsNaN(outcome.FirstPlyFailureLineLoad) ? WallBurst
            : GaugePressure.FromPascals(outcome.FirstPlyFailureLineLoad / wall.Radius);
        IsMatrixDominated = verdict.IsLeaning;
        Netting = GaugePressure.FromPascals(verdict.NettingPascals);
        WallLow = GaugePressure.FromPascals(Math.Min(verdict.LowPascals, WallBurst.Pascals));
        Parts = [new PartMargin("wall", WallBurst, WallCause), .. ends.Where(p => p.Kind == PartFailure.Burst)];
        Leaks = [.. Weep(), .. ends.Where(p => p.Kind == PartFailure.Leak)];
        WeakestPart = Parts.MinBy(p => p.Burst.Pascals)!;
        KnownLow = GaugePressure.FromPascals(Math.Min(WallLow.Pascals, WeakestPart.Burst.Pascals));
        Low = GaugePressure.FromPascals(Math.Min(KnownLow.Pascals, surePascals));
    }

    /// <summary>The vessel.</summary>
    public PressureVessel Vessel => Layup.Vessel;

    /// <summary>What its plies come to.</summary>
    public Layup Layup { get; }

    /// <summary>Failure criterion of the sound plies.</summary>
    public FailureCriterion Criterion { get; }

    /// <summary>First resin crack in the wall: a leak, where nothing lines it. Source: Jones 1999, §4.5.</summary>
    public GaugePressure FirstPlyFailure { get; }

    /// <summary>Burst of the vessel: of its weakest part.</summary>
    public GaugePressure Burst => WeakestPart.Burst;

    /// <summary>
    /// The lower-bound burst: the same, but for the wall no more than netting analysis of its fibres as laid gives, and nothing that a
    /// plastic liner carries, which creeps under a held load; and nothing of a carried sleeve whose neck or tail isn't given.
    /// </summary>
    public GaugePressure Low { get; }

    /// <summary>The same as if every carried sleeve were held at its end.</summary>
    internal GaugePressure KnownLow { get; }

    /// <summary>Burst of the wall alone. Source: Jones 1999, §4.5.</summary>
    public GaugePressure WallBurst { get; }

    /// <summary>
    /// Low end of the wall's burst: without what a plastic liner carries, and no more than netting analysis. What resin and turning fibres
    /// add is not rated on, however well it may hold. Source: Evans and Gibson 2002.
    /// </summary>
    public GaugePressure WallLow { get; }

    /// <summary>What ends the wall.</summary>
    public FailureMode WallMode => Outcome.Mode;

    /// <summary>The part that bursts first.</summary>
    public PartMargin WeakestPart { get; }

    /// <summary>The lowest pressure known at which the vessel leaks and holds on; none where none is known, which proves no
    /// tightness.</summary>
    public PartMargin? Leak => Leaks.MinBy(p => p.Burst.Pascals);

    /// <summary>The closure that takes a permanent set first; none where neither yields before it breaks.</summary>
    public PartMargin? Yield => Yields.MinBy(p => p.Burst.Pascals);

    /// <summary>Every leak that a pressure is known of.</summary>
    public IReadOnlyList<PartMargin> Leaks { get; }

    /// <summary>First yield of each closure and of the rim of its opening. A proof has to stay below it.</summary>
    public IReadOnlyList<PartMargin> Yields => _yields.Value;

    /// <summary>Every part that can burst, with the pressure at which it does.</summary>
    public IReadOnlyList<PartMargin> Parts { get; }

    /// <summary>
    /// Whether the wall leans on resin that would have to follow more strain than resin can, or owes over 15 % of its burst to more than
    /// its fibres as laid and its liner: a band, not a prediction. Source: the shear curve of an epoxy ply ends at 4 %, Soden, Hinton and
    /// Kaddour, Compos. Sci. Technol. 58, 1998.
    /// </summary>
    public bool IsMatrixDominated { get; }

    /// <summary>Netting analysis of the fibres as laid. Source: Evans and Gibson 2002.</summary>
    public GaugePressure Netting { get; }

    /// <summary>Strain of the wall at its burst.</summary>
    public TubeStrain BurstStrain => TubeStrain.Of(Outcome.State.Hoop, Outcome.State.Axial);

    /// <summary>Share of the load that the liner carries at the burst, around or along, whichever is more.</summary>
    public Ratio LinerShare => Ratio.FromPercent(100 * Outcome.LinerShare);

    /// <summary>Sleeves and the angle their fibres have turned to at the burst.</summary>
    public IReadOnlyList<TurnedPly> Turned =>
    [
        .. Layup.Plies.Select((p, i) => (Ply: p, Name: Layup.NameOf(i))).Where(p => p.Ply.Fit is not null).Select(p => new TurnedPly(
            p.Name, p.Ply.Angle!.Value, Angle.FromDegrees(Outcome.State.Turned(p.Ply.Angle.Value.Radians) * 180 / Math.PI))),
    ];

    /// <summary>All that gives way in the wall, in order.</summary>
    public IReadOnlyList<BurstStep> Steps =>
        [.. Trace.Select(e => new BurstStep(GaugePressure.FromPascals(e.LineLoad / Wall.Radius), e.Mode, PlyName(e.Ply, e.Mode)))];

    /// <summary>Simple answers beside it.</summary>
    public CrossChecks Checks => BurstModel.Check(this);

    /// <summary>The part that sets <see cref="Low"/>: the wall where its low end is below every end.</summary>
    internal string LimitingPart => WallLow < WeakestPart.Burst ? Parts[0].Name : WeakestPart.Name;

    internal VesselWall Wall { get; }

    internal WallLayer[] Layers { get; }

    internal WallOutcome Outcome { get; }

    /// <summary>Plies that the wall's burst does without, since the rest alone holds more; by their place in the layup.</summary>
    internal IReadOnlyList<int> Without { get; }

    private List<WallEvent> Trace { get; }

    internal string PlyName(int ply, FailureMode mode) => mode is FailureMode.LinerYield or FailureMode.LinerTear ? "liner" : ply >= 0
        ? Layup.NameOf(ply) : "wall";

    private IEnumerable<PartMargin> Weep()
    {
        if (Vessel.Liner.Material is null)
            yield return new("wall, first resin crack", FirstPlyFailure, "nothing lines the wall") { Kind = PartFailure.Leak };
    }

    private string WallCause => Outcome.Mode switch
    {
        FailureMode.FibreTension => $"fibres of {PlyName(Outcome.Ply, Outcome.Mode)} break",
        FailureMode.FibreCompression => $"fibres of {PlyName(Outcome.Ply, Outcome.Mode)} buckle",
        FailureMode.LinerTear => "liner tears",
        _ => "wall bulges without end",
    };
}

/// <summary>A sleeve whose fibres have turned by the time the wall bursts.</summary>
/// <param name="Ply">Name of the sleeve.</param>
/// <param name="Laid">Angle as laid.</param>
/// <param name="AtBurst">Angle at the burst.</param>
public sealed record TurnedPly(string Ply, Angle Laid, Angle AtBurst);
