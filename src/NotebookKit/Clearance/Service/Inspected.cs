using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>Somebody looked the vessel over, inside and out; <see cref="ServiceEvent.By"/> says who.</summary>
/// <param name="Result">What was found.</param>
public sealed record Inspected(InspectionResult Result) : ServiceEvent
{
    internal const string Name = "inspected";
    private static readonly (string, InspectionResult)[] Results = [("sound", InspectionResult.Sound),
        ("not-sound", InspectionResult.NotSound)];

    /// <inheritdoc/>
    public override string Kind => Name;

    internal override IReadOnlyList<(string Name, string Value)> Data
        => [("result", Result == InspectionResult.Sound ? "sound" : "not-sound")];

    internal static Inspected From(ServiceFields fields) => new(fields.Choice("result", Results));

    private protected override IEnumerable<Finding?> Check()
    {
        if (!Enum.IsDefined(Result)) yield return ClearanceFindings.ResultOfInspectionUnknown();
    }
}

/// <summary>What an inspection found.</summary>
public enum InspectionResult
{
    /// <summary>The vessel isn't sound, or there is doubt.</summary>
    NotSound,

    /// <summary>Nothing was found.</summary>
    Sound,
}
