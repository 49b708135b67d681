using NotebookKit.Interactive.Commands;
using NotebookKit.Interactive.Tables;

namespace NotebookKit.Interactive.Help;

/// <summary>What a cell may ask: <c>Help()</c> for what there is, <c>Help("Fly")</c> for one verb with the range of every input.</summary>
public static class KitHelp
{
    /// <summary>The main verbs by task, a line of code and what it gives. Each verb stands in front of its first bracket.</summary>
    internal static IReadOnlyList<(string Task, string Write, string Gives)> Verbs { get; } =
    [
        ("choose the layup", "vessel.Layup()", "plies on this diameter: angles, thickness, masses"),
        ("say what it holds", "vessel.Burst()", "predicted burst, part by part"),
        ("say what it holds", "vessel.Rate(rules)", "working pressure and proof pressure"),
        ("prove it with water", "Proof.For(rating).Plan()", "steps, holds, water, stand-off"),
        ("prove it with water", "readings.Judge()", "accept, retest or reject"),
        ("get the most out of it", "flight.BestFill()", "water fraction for the greatest height"),
        ("keep it straight", "vehicle.Stability()", "static margin while the water leaves"),
        ("keep it straight", "fins.Flutter(shearModulus, fastest)", "flutter speed of the fins"),
        ("say how high", "vehicle.Fly(site)", "height, apogee, drift, landing"),
        ("say how far", "vehicle.Disperse(site, spread)", "landing scatter of many flights"),
        ("decide", "vehicle.Card(site, evidence)", "go or no-go for the range safety officer"),
        ("decide", "new DesignRecordBuilder(\"Curlew\", session.Givens)", "the record: givens, requirements, decisions"),
    ];

    /// <summary>What is there: the library's main verbs by task, how to see ranges, and the commands.</summary>
    public static TextTable Help() => new("What is here", ["To", "write", "which gives"],
        [
            .. Verbs.Select(v => (IReadOnlyList<string>)[v.Task, v.Write, v.Gives]),
            ["see a verb's inputs and their ranges", "Help(\"Fly\")", "every input with its unit and range"],
            ["see what a value has", "vessel.", "type the dot, then press Tab"],
            .. CommandSet.All.Select(c => (IReadOnlyList<string>)["command", c.Usage, c.Explanation]),
        ])
    {
        Remark = "Shift+Tab inside a bracket shows the inputs of that verb. A number says its unit: 66.Millimetres(), 60.BarGauge().",
    };

    /// <summary>The inputs of a verb, a type or a literal with units and ranges, as the library documents them.</summary>
    /// <param name="name">Its name: "Fly"; upper and lower case alike.</param>
    public static TextTable Help(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var found = LibraryDocs.Named(name.Trim().TrimEnd('(', ')'));
        if (found.Count == 0) return new($"There is no {name} here", ["Nearest", "what it is"],
            [.. LibraryDocs.Nearest(name.Trim(), 4).Select(n => (IReadOnlyList<string>)[n, LibraryDocs.Named(n)[0].Summary])]);
        return new($"{name}: inputs and ranges", ["Of", "input", "what, unit and range"],
            [
                .. found.SelectMany(f => f.Parameters.Count == 0 ? [(IReadOnlyList<string>)[f.Owner, "", f.Summary]]
                    : f.Parameters.Select(p => (IReadOnlyList<string>)[f.Owner, p.Name, p.Text])),
            ]);
    }
}
