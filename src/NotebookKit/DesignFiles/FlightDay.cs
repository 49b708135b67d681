using System.Text;
using NotebookKit.DesignFiles.Disk;
using NotebookKit.DesignFiles.Keys;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Filling.Fills;

namespace NotebookKit.DesignFiles;

/// <summary>What is measured and decided on the day of a flight: which vessel is filled, how warm its wall is, what is otherwise than in
/// the design.</summary>
/// <remarks>
/// A file <c>day.json</c> in a club's folder: <c>{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperature": "24 °C" } ],
/// "changes": [ { "of": "site.wind.speed", "is": "4 m/s" }, { "of": "site.wind.reference", "is": "2 m" } ] }</c>. Source: none of its own.
/// </remarks>
public sealed record FlightDay
{
    private readonly string _file;

    private FlightDay(string file, DayContent content) => (_file, Day, Flight, Vessels, FillOrder, Changes, Gear) =
        (file, content.Day, content.Flight, content.Vessels, content.FillOrder, content.Changes,
            content.Gear);

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

    /// <summary>The very parts that stand on the pad, each with its serial and its rating as far as given; empty where none is
    /// named.</summary>
    public IReadOnlyList<PadPart> Gear { get; }

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
        return Changes.Aggregate(design, (changed, c) => Said(c, () => changed.With(c.Name, c.Value)));
    }

    /// <summary>Where a change stands: "day.json, line 3, column 5: "; empty where it comes from no file.</summary>
    internal string PlaceOf(ChangeOfDay change) => change.Line == 0 ? ""
        : FormattableString.Invariant($"{_file}, line {change.Line}, column {change.Column}: ");

    /// <summary>The path that a change writes to.</summary>
    /// <exception cref="DesignFileException">The change means no value of the design, or can't be that; says where the change
    /// stands.</exception>
    internal string PathOf(Design design, ChangeOfDay change) => Said(change, () => design.PathOf(change.Name, change.Value));

    // What a change of the day does wrong stands in the file of the day.
    private T Said<T>(ChangeOfDay change, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (DesignFileException wrong) when (change.Line > 0)
        {
            throw new DesignFileException(_file, [.. wrong.Mistakes.Select(m => m with { Line = change.Line, Column = change.Column })],
                wrong);
        }
    }

    private static FlightDay Of(string name, byte[] text)
    {
        var tree = TreeReader.Parse(name, text, "day");
        var run = new Reading(name, tree, tree);
        var right = DayKeys.All.TryRead(tree, new(run, "", "the day", ""), out var content);
        run.ThrowIfWrong();
        return right ? new(name, content) : throw new DesignFileException(name, tree.At, "the day can't be read.");
    }
}
