using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel was made: its life counts from this day.</summary>
/// <param name="Day">Day its laminate was laid.</param>
/// <param name="Batch">Batches of fibre and resin, or the build that names them.</param>
/// <param name="DryMass">Mass of liner and dry fibre before resin; 1 g to 100 kg; none where it wasn't weighed.</param>
/// <param name="CuredMass">Mass when cured; 1 g to 100 kg, not below the dry mass; none where it wasn't weighed.</param>
public sealed record Made(DateOnly Day, string Batch, Mass? DryMass = null, Mass? CuredMass = null) : ServiceEvent
{
    internal const string Name = "made";
    internal static readonly ValidRange<Mass> Masses = new(1.Grams(), 100_000.Grams());

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data =>
    [
        ("day", ServiceText.Of(Day)),
        ("batch", Batch),
        .. DryMass is { } dry ? [("dry-mass", ServiceText.Of(dry))] : Array.Empty<(string, string)>(),
        .. CuredMass is { } cured ? [("cured-mass", ServiceText.Of(cured))] : Array.Empty<(string, string)>(),
    ];

    internal static Made From(ServiceFields fields) => new(fields.Day("day"), fields.Text("batch"), fields.Optional<Mass>("dry-mass"),
        fields.Optional<Mass>("cured-mass"));

    private protected override IEnumerable<Finding?> Check()
    {
        yield return ServiceText.Find(Batch, "batch", LongestText);
        if (DryMass is { } dry) yield return Masses.Find(dry.ToUnit(UnitsNet.Units.MassUnit.Gram), "dry mass",
            "Weigh it before resin, or leave it out.");
        if (CuredMass is { } cured) yield return Masses.Find(cured.ToUnit(UnitsNet.Units.MassUnit.Gram), "cured mass",
            "Weigh it when cured, or leave it out.");
        if (At is { } at && Day > DateOnly.FromDateTime(at.UtcDateTime))
            yield return ClearanceFindings.DayOfMakingAfterEntry(ServiceText.Of(Day));
        if (DryMass > CuredMass)
            yield return ClearanceFindings.CuredMassBelowDryMass(ServiceText.Of(CuredMass!.Value), ServiceText.Of(DryMass!.Value));
    }
}
