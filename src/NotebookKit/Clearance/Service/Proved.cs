using NotebookKit.DesignFiles.Parts;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Clearance.Service;

/// <summary>The vessel passed a proof. A proof that wasn't passed is written down as an inspection that found it not sound.</summary>
/// <param name="Day">Day of the proof; not after the day it is written down.</param>
/// <param name="Held">Pressure that it is known to have held, error of the gauge taken off; 0.5 to 450 bar gauge.</param>
/// <param name="Factor">Pressure held over the maximum pressure it may be filled to [-]; 1 to 3.</param>
/// <param name="Rules">Name of the rule set that the factor is of.</param>
/// <param name="Record">Fingerprint of the proof's own record.</param>
public sealed record Proved(DateOnly Day, GaugePressure Held, double Factor, string Rules, string Record) : ServiceEvent
{
    internal const string Name = "proved";
    private const int LongestList = 20_000;
    private const string Between = " | ";

    /// <summary>The tests that lay in the folder and counted for the vessel when the proof was written down; none where the entry doesn't
    /// say. A card tells by them which test was taken away or altered since.</summary>
    public IReadOnlyList<TestMark>? Tests { get; init; }

    /// <inheritdoc/>
    public override string Kind => Name;

    /// <summary>Highest pressure that this proof lets the vessel be filled to: the pressure held over the factor.</summary>
    public GaugePressure Allows => Held / Factor;

    internal override IReadOnlyList<(string Name, string Value)> Data =>
        [("day", ServiceText.Of(Day)), ("held", ServiceText.Of(Held)), ("factor", ServiceText.Number(Factor)), ("rules", Rules),
            ("record", Record), .. Tests is { } tests ? new[] { ("tests", Listed(tests)) } : []];

    internal static Proved From(ServiceFields fields) =>
        new(fields.Day("day"), fields.Pressure("held"), fields.Quantity<double>("factor", "1.5"), fields.Text("rules"),
            fields.Text("record")) { Tests = fields.Optional("tests") is { } list ? Read(list) : null };

    private static string Listed(IReadOnlyList<TestMark> tests) => string.Join(Between, tests.Select(t => $"{t.Name} {t.Mark}"));

    private static List<TestMark> Read(string list) => [.. list.Split(Between, StringSplitOptions.RemoveEmptyEntries)
        .Select(t => t.LastIndexOf(' ') is var cut && cut > 0 ? new TestMark(t[..cut], t[(cut + 1)..]) : new(t, ""))];

    private protected override IEnumerable<Finding?> Check()
    {
        yield return new ValidRange<GaugePressure>(0.5.BarGauge(), 450.BarGauge()).Find(Held, "pressure held",
            "Take the lowest reading of the proof hold.");
        yield return new ValidRange<double>(1, 3).Find(Factor, "proof factor", "1.25 to 1.67 is usual.");
        yield return ServiceText.Find(Rules, "rules", LongestText);
        yield return ServiceText.Find(Record, "record", LongestText);
        if (Tests is { Count: > 0 } tests) yield return ServiceText.Find(Listed(tests), "tests", LongestList);
        if (At is { } at && Day > DateOnly.FromDateTime(at.UtcDateTime))
            yield return ClearanceFindings.DayOfProofAfterEntry(ServiceText.Of(Day));
    }
}
