using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Recovery;

/// <summary>
/// The recovery gear of one vehicle as strength: what the weakest of cord, anchor and pins allows the canopy to pull. Source: the results
/// of its parts;
/// the factor of two is common practice, no source.
/// </summary>
public sealed record RecoveryCheck : Result
{
    /// <summary>Least strength over load that passes [-]; common practice, no source.</summary>
    public const double RequiredFactor = 2;

    internal RecoveryCheck(RecoveryGear gear, CordResult cord, PinResult? pins)
    {
        Gear = gear;
        Cord = cord;
        Pins = pins;
    }

    /// <summary>The gear that was judged.</summary>
    public RecoveryGear Gear { get; }

    /// <summary>The cord, as the halves come apart.</summary>
    public CordResult Cord { get; }

    /// <summary>The pins; none where the joint has none.</summary>
    public PinResult? Pins { get; }

    /// <summary>Load at which the cord breaks.</summary>
    public Force CordStrength => Gear.Cord.BreakingLoad;

    /// <summary>Load that the weaker of cord and anchor takes before it breaks.</summary>
    public Force Strength => CordStrength < Gear.Anchor ? CordStrength : Gear.Anchor;

    /// <summary>Opening load that the gear takes with its factor.</summary>
    public Force AllowedLoad => Strength / RequiredFactor;

    /// <summary>Whether cord and pins hold by themselves; the opening load is held against <see cref="AllowedLoad"/>.</summary>
    public bool Holds => Findings.All(f => f.Severity != FindingSeverity.Error);

    /// <inheritdoc/>
    public override string Title => $"Recovery gear under {Gear.Canopy.NominalDiameter.Show()} of canopy";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Recovery gear as strength",
        ["The weakest of cord and anchor sets what the canopy may pull.", "Cord and pins are judged by their own results.",
            $"A factor of {RequiredFactor} on every load (common practice, no source)."],
        "As the results of its parts.",
        [RecoveryLiterature.Goldstein, RecoveryLiterature.Gere]);

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings =>
    [
        .. Cord.Factor < RequiredFactor
            ? [RecoveryFindings.CordIsTooWeak(CordStrength, Cord.Peak, RequiredFactor)]
            : Array.Empty<Finding>(),
        .. Pins is null
            ? [RecoveryFindings.JointHasNoPins()]
            : Pins.Findings.Select(f => f.Severity == FindingSeverity.Warning ? Finding.Error(f.Message) : f),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Cord breaks at", CordStrength.Show(ForceUnit.Newton), $"pull as the halves separate {Cord.Peak.Show(ForceUnit.Newton)}"),
        new("Anchor fails at", Gear.Anchor.Show(ForceUnit.Newton), "pulled on the bench"),
        new("Opening load allowed", AllowedLoad.Show(ForceUnit.Newton), $"weaker of cord and anchor over {RequiredFactor}"),
        new("Pins", Pins is null ? "none" : Pins.All.Show(ForceUnit.Newton),
            Pins is null ? "" : $"the flight loads the pins with {Pins.FlightLoad.Show(ForceUnit.Newton)}, the separation with "
            + $"{Pins.Separating.Show(ForceUnit.Newton)}"),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Opening load allowed", @"F = \frac{\min(F_{cord},\ F_{anchor})}{2}",
            $"min({CordStrength.Show(4)}, {Gear.Anchor.Show(4)}) / {RequiredFactor}", AllowedLoad.Show(4),
            Source.CommonPractice("factor of two on recovery gear")),
        .. Cord.Working.Steps,
        .. Pins?.Working.Steps ?? [],
    ]);
}
