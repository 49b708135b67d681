using NotebookKit.Filling.Balances;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Fills;

/// <summary>The line from cylinder to vessel, part by part, each held against the pressure that may stand in it.</summary>
/// <remarks>A part before the regulator may see the cylinder's pressure, a part behind it the regulator's. A part without a rating is
/// never taken for a sufficient one. Source: common practice; signs of drawings, ISO 1219-1 and ISO 14617 (unverified).</remarks>
public sealed record PadPlumbing : Result
{
    private static readonly (PadPartKind Kind, string Name)[] Usual =
    [
        (PadPartKind.Cylinder, "cylinder"), (PadPartKind.Regulator, "regulator"), (PadPartKind.FillValve, "fill valve"),
        (PadPartKind.Hose, "hose"), (PadPartKind.Restrictor, "restrictor"), (PadPartKind.CheckValve, "check valve"),
        (PadPartKind.Gauge, "gauge"), (PadPartKind.DumpValve, "dump valve"), (PadPartKind.ReliefValve, "relief valve"),
        (PadPartKind.Vessel, "vessel"),
    ];

    private PadPlumbing(PadFill fill, IReadOnlyList<PadPart> parts, GaugePressure? cylinder)
    {
        (Fill, Parts, Cylinder) = (fill, parts, cylinder);
        Findings = [.. Say()];
    }

    /// <summary>The fill that it serves.</summary>
    public PadFill Fill { get; }

    /// <summary>Pressure of the full cylinder; none where no cylinder is given.</summary>
    public GaugePressure? Cylinder { get; }

    /// <summary>All parts in the order in which the gas meets them; one that isn't given is there and says so.</summary>
    public IReadOnlyList<PadPart> Parts { get; }

    /// <summary>The line of a fill. Source: as the type.</summary>
    /// <param name="fill">The fill.</param>
    /// <param name="equipment">What the club says of its parts; without it every rating is "not given".</param>
    public static PadPlumbing Of(PadFill fill, PadEquipment? equipment = null)
    {
        ArgumentNullException.ThrowIfNull(fill);
        return new(fill, [.. Usual.Select(u => Part(fill, equipment, u.Kind, u.Name))], (fill.Cylinder ?? equipment?.Cylinder)?.Pressure);
    }

    /// <summary>The part of a kind.</summary>
    /// <param name="kind">The kind.</param>
    public PadPart Part(PadPartKind kind) => Parts.First(p => p.Kind == kind);

    /// <inheritdoc/>
    public override string Title => "Fill line at the pad";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Parts of a line and their ratings",
        ["Before the regulator the cylinder's pressure stands, behind it the regulator's.", "A part without a rating counts as not shown."],
        "Gas lines of a pad; water in the line is seen by the fill.", [FillingSources.PadPractice]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => [.. Parts.Select(p => new ResultLine(Capital(p.Name), p.RatingText, p.Note))];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title, []);

    private static PadPart Part(PadFill fill, PadEquipment? equipment, PadPartKind kind, string name)
    {
        var own = equipment?.Parts.FirstOrDefault(p => p.Kind == kind);
        var cylinder = fill.Cylinder ?? equipment?.Cylinder;
        return kind switch
        {
            PadPartKind.Vessel => new(kind, name) { RatedTo = fill.Chamber.RatedPressure, Note = fill.Chamber.Volume.Show() },
            PadPartKind.Regulator => (own ?? new(kind, name)) with { Note = $"set to {fill.Supply}" },
            PadPartKind.Restrictor => (own ?? new(kind, name)) with { Note = fill.Restrictor.ToString() ?? "" },
            PadPartKind.Cylinder when cylinder is not null => (own ?? new(kind, name)) with { Note = cylinder.ToString() },
            PadPartKind.DumpValve when equipment?.Vent is { } vent && own is not null => own with { Note = vent.ToString() ?? "" },
            PadPartKind.CheckValve when own is null && fill.HasCheckValve == true => new(kind, name),
            _ => own ?? new(kind, name) { IsGiven = false },
        };
    }

    private IEnumerable<Finding> Say()
    {
        foreach (var part in Parts)
        {
            var sees = part.Kind is PadPartKind.Cylinder or PadPartKind.Regulator ? Cylinder ?? Fill.Supply : Fill.Supply;
            if (part is { IsGiven: true, Kind: not (PadPartKind.Vessel or PadPartKind.ReliefValve), RatedTo: { } rated } && sees > rated)
                yield return FillingFindings.PadPartBelowPressure(part.Name, rated, sees);
        }

        var unrated = Parts.Where(p => p is { IsGiven: true, RatedTo: null }).Select(p => p.Name).ToList();
        if (unrated.Count > 0) yield return FillingFindings.PadPartsUnrated(unrated);
        foreach (var part in Parts.Where(p => p is { IsGiven: false, Kind: PadPartKind.DumpValve or PadPartKind.Gauge }))
            yield return FillingFindings.PadPartMissing(part.Name);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
