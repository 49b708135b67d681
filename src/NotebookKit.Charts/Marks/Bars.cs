using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Marks;

/// <summary>One bar a name. They stand or lie as the chart's axis of names does.</summary>
public sealed record Bars : Mark
{
    /// <summary>Creates the bars; their legend name is the name of the column.</summary>
    /// <param name="names">What each bar stands for.</param>
    /// <param name="values">Its length, one a name.</param>
    public Bars(IReadOnlyList<string> names, Series values)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(values);
        (Names, Values) = (names, values);
        Name = values.Name;
    }

    /// <summary>What each bar stands for.</summary>
    public IReadOnlyList<string> Names { get; init; }

    /// <summary>Length of the bars.</summary>
    public Series Values { get; init; }

    /// <summary>Palette place of single bars that differ from the rest (the weakest part); empty, or one a bar.</summary>
    public IReadOnlyList<int> Slots { get; init; } = [];

    /// <summary>Text at the end of each bar; empty, or one a bar.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];

    internal override IEnumerable<Series> Horizontal => [];

    internal override IEnumerable<Series> Vertical => [Values];

    internal override IEnumerable<Finding> Validate()
    {
        foreach (var finding in base.Validate()) yield return finding;
        foreach (var (what, count) in new[] { ("names", Names.Count), ("palette places", Slots.Count), ("labels", Labels.Count) })
        {
            if (count != Values.Count && (count != 0 || what == "names"))
                yield return Finding.Error($"'{Name}' has {count} {what} for {Values.Count} bars; give one a bar.");
        }
        if (Names.Distinct(StringComparer.Ordinal).Count() != Names.Count)
            yield return Finding.Error($"'{Name}' has two bars of one name; bars with one name would be drawn over each other.");
    }
}
