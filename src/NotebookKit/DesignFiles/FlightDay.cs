using System.Text;
using NotebookKit.DesignFiles.Disk;
using NotebookKit.DesignFiles.Keys;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.DesignFiles;

/// <summary>What is measured and decided on the day of a flight: which vessel is filled, how warm its wall is, what is otherwise than in
/// the design.</summary>
/// <remarks>
/// A file <c>day.json</c> in a club's folder: <c>{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperature": "24 °C" } ],
/// "changes": [ { "of": "site.wind.speed", "is": "4 m/s" } ] }</c>. Source: none of its own.
/// </remarks>
public sealed record FlightDay
{
    private FlightDay(DayContent content) => (Day, Flight, Vessels, FillOrder, Changes) =
        (content.Day, content.Flight, content.Vessels, content.FillOrder, content.Changes);

    /// <summary>The day.</summary>
    public DateOnly Day { get; init; }

    /// <summary>The flight as the club counts it; may be empty.</summary>
    public string Flight { get; }

    /// <summary>The vessels that are filled, the booster's first.</summary>
    public IReadOnlyList<VesselOfDay> Vessels { get; }

    /// <summary>Which of two vessels is filled first: "booster first", "sustainer first", "together"; empty where it isn't given.</summary>
    public string FillOrder { get; }

    /// <summary>Values of the design that are otherwise on the day.</summary>
    public IReadOnlyList<ChangeOfDay> Changes { get; }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="DesignFileException">There is no such file, or it doesn't describe a day; says what is wrong, with line and
    /// column.</exception>
    public static FlightDay Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Of(Path.GetFileName(path), DesignFile.Bytes(path));
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">Text as a file has it.</param>
    /// <param name="name">What the text is called in messages.</param>
    /// <exception cref="DesignFileException">The text doesn't describe a day; says what is wrong, with line and column.</exception>
    public static FlightDay Parse(string text, string name = "day")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        return Of(name, Encoding.UTF8.GetBytes(text));
    }

    /// <summary>A design as it is on the day.</summary>
    /// <param name="design">The design.</param>
    /// <exception cref="DesignFileException">A change means no value of the design, or can't be that.</exception>
    public Design Applied(Design design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Changes.Aggregate(design, (changed, c) => changed.With(c.Name, c.Value));
    }

    private static FlightDay Of(string name, byte[] text)
    {
        var tree = TreeReader.Parse(name, text);
        var run = new Reading(name, tree, tree);
        var right = DayKeys.All.TryRead(tree, new(run, "", "the day", ""), out var content);
        run.ThrowIfWrong();
        return right ? new(content) : throw new DesignFileException(name, tree.At, "the day can't be read.");
    }
}
