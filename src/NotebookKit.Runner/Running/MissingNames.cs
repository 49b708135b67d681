using System.Globalization;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Running;

/// <summary>What cells that failed would have made, so that a cell that needs some of it says so and isn't run on old or empty
/// values.</summary>
internal sealed class MissingNames
{
    private readonly Dictionary<string, Cause> _causes = new(StringComparer.Ordinal);

    /// <summary>Why a cell can't be computed, a sentence; none where it can.</summary>
    /// <param name="names">What the cell makes and needs.</param>
    public string? WhyNot(CellNames names) => Of(names) is { Count: > 0 } missing
        ? $"Not computed: this cell needs {Listed([.. missing.Select(m => Clause(m.Name, m.Cause))])}." : null;

    /// <summary>A cell ran to its end: what it makes is there.</summary>
    /// <param name="names">What the cell makes and needs.</param>
    public void Made(CellNames names) => There(names.Makes);

    /// <summary>A cell failed: what it hadn't made by then is missing.</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="names">What the cell makes and needs.</param>
    /// <param name="line">Line where it stopped, from 1; none where that isn't known or nothing ran.</param>
    public void Failed(NotebookCell cell, CellNames names, int? line)
    {
        var done = names.DoneBefore(line);
        // What an unfinished part changes as well isn't what it was meant to be.
        var open = names.Parts.Except(done).SelectMany(p => p.Touches).ToHashSet(StringComparer.Ordinal);
        foreach (var name in open) _causes[name] = new(cell.Number, cell.Number);
        There(done.SelectMany(p => p.Makes).Where(n => !open.Contains(n)));
    }

    /// <summary>A cell wasn't run.</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="names">What the cell makes and needs.</param>
    public void Skipped(NotebookCell cell, CellNames names)
    {
        var root = Of(names)[0].Cause.Failed;
        foreach (var name in names.Touches) _causes[name] = new(cell.Number, root);
    }

    private List<(string Name, Cause Cause)> Of(CellNames names) =>
        [.. names.Needs.Where(_causes.ContainsKey).Order(StringComparer.Ordinal).Select(n => (n, _causes[n]))];

    private void There(IEnumerable<string> names)
    {
        foreach (var name in names) _causes.Remove(name);
    }

    private static string Clause(string name, Cause cause) => cause.Cell == cause.Failed
        ? string.Create(CultureInfo.InvariantCulture, $"{name}, which cell {cause.Cell} could not make")
        : string.Create(CultureInfo.InvariantCulture, $"{name}, which cell {cause.Cell} could not make because cell {cause.Failed} failed");

    private static string Listed(IReadOnlyList<string> clauses) => clauses.Count == 1 ? clauses[0]
        : $"{string.Join(", ", clauses.Take(clauses.Count - 1))}, and {clauses[^1]}";

    private sealed record Cause(int Cell, int Failed);
}
