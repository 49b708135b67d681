using System.Globalization;
using NotebookKit.Provenance;

namespace NotebookKit.Clearance.Service;

/// <summary>Something that happened to a vessel, as its service record keeps it.</summary>
public abstract record ServiceEvent
{
    internal const int LongestText = 200;
    internal const int LongestNotes = 2000;

    // In the order of a vessel's life; each kind reads what it wrote.
    private static readonly (string Kind, Func<ServiceFields, ServiceEvent> Read)[] Readers =
    [
        (Made.Name, Made.From), (Weighed.Name, Weighed.From), (Proved.Name, Proved.From), (Inspected.Name, Inspected.From),
            (Filled.Name, Filled.From),
        (Flown.Name, Flown.From), (LandedHard.Name, LandedHard.From), (Dropped.Name, Dropped.From), (Heated.Name, Heated.From),
            (Repaired.Name, Repaired.From),
        (Retired.Name, Retired.From),
    ];

    private protected ServiceEvent()
    {
    }

    /// <summary>Day and time; none: the moment it is written to the file. Kept in UTC to the second.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>Who saw or did it; may be empty.</summary>
    public string By { get; init; } = "";

    /// <summary>What else is worth keeping; may be empty.</summary>
    public string Notes { get; init; } = "";

    /// <summary>The kind as the file names it: "filled".</summary>
    public abstract string Kind { get; }

    /// <summary>The kinds that a file may hold.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. Readers.Select(r => r.Kind)];

    /// <summary>Its values by name, units in them, as the file keeps them.</summary>
    internal abstract IReadOnlyList<(string Name, string Value)> Data { get; }

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. Check().Append(ServiceText.Find(By, "who", LongestText, needed: false)).Append(ServiceText.Find(Notes, "notes", LongestNotes,
            needed: false)).OfType<Finding>()];

    /// <summary>Reads an event from its values as text, each with its unit: "36 bar gauge", "18 °C", "2 min".</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="values">Values by name, as the file names them.</param>
    /// <exception cref="InvalidDesignException">The kind isn't known, or a value is missing, not known or can't be read; all reasons are in
    /// it.</exception>
    public static ServiceEvent Read(string kind, IReadOnlyDictionary<string, string> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var findings = new List<Finding>();
        var read = Read(kind, values, findings);
        InvalidDesignException.ThrowIfAny("Service event", findings);
        return read!;
    }

    /// <summary>The event; none where the findings say why it can't be read.</summary>
    internal static ServiceEvent? Read(string kind, IReadOnlyDictionary<string, string> values, List<Finding> findings)
    {
        if (Array.Find(Readers, r => r.Kind == kind).Read is not { } reader)
        {
            findings.Add(ClearanceFindings.KindOfEventUnknown(kind, Kinds));
            return null;
        }

        var fields = new ServiceFields(kind, values);
        var read = reader(fields);
        var wrong = fields.Wrong;
        if (wrong.Count == 0) wrong = read.Validate();
        findings.AddRange(wrong);
        return wrong.Count == 0 ? read : null;
    }

    /// <summary>For example "filled: pressure 36 bar gauge, temperature 18 °C, hold 120 s".</summary>
    public sealed override string ToString() =>
        Data.Count == 0 ? Kind : string.Create(CultureInfo.InvariantCulture,
            $"{Kind}: {string.Join(", ", Data.Select(d => $"{d.Name} {d.Value}"))}");

    private protected abstract IEnumerable<Finding?> Check();
}
