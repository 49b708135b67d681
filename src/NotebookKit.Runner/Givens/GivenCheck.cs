using NotebookKit.Numerics;
using NotebookKit.Record.Givens;
using NotebookKit.Runner.Commands;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Givens;

/// <summary>
/// Holds the givens that a run asks for against those that its notebooks state, before any cell runs: a mistyped name would otherwise pass
/// for a run on the new value.
/// </summary>
internal sealed class GivenCheck
{
    private readonly IReadOnlyList<NotebookGivens> _notebooks;
    private readonly IReadOnlyList<string> _names;

    private GivenCheck(IReadOnlyList<NotebookGivens> notebooks)
    {
        this._notebooks = notebooks;
        _names = [.. notebooks.SelectMany(n => n.Givens).Select(g => g.Name).Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>What to say and what to see to.</summary>
    /// <param name="overrides">The givens asked for.</param>
    /// <param name="files">Notebooks of the run; one that can't be read states none, and fails by itself.</param>
    /// <exception cref="RequestException">A given is unknown, may mean two, or can't have that value.</exception>
    public static GivenPlan Of(GivenOverrides overrides, IEnumerable<string> files)
    {
        if (overrides.Names.Count == 0) return GivenPlan.None;
        var read = new List<NotebookGivens>();
        foreach (var file in files)
        {
            try
            {
                read.Add(GivenReader.Read(NotebookFile.Read(file)));
            }
            catch (NotebookFormatException)
            {
                continue;
            }
        }

        return new GivenCheck(read).Plan(overrides);
    }

    private GivenPlan Plan(GivenOverrides overrides)
    {
        var mustTake = _notebooks.ToDictionary(n => n.Notebook, _ => new List<string>(), StringComparer.Ordinal);
        var notes = new List<string>();
        foreach (var name in overrides.Names)
        {
            var holders = Holders(name);
            if (holders.Count == 0)
            {
                var open = _notebooks.Where(n => n.Unreadable.Count > 0).ToList();
                if (open.Count == 0) throw Unknown(name);
                foreach (var notebook in open) mustTake[notebook.Notebook].Add(name);
                notes.Add($"{Unstated(name)} It can't be checked beforehand, because "
                    + $"{string.Join("; ", open.Select(n => $"in {n.Notebook} {n.Unreadable[0]}"))}. The run fails if no cell "
                    + "there states it.");
                continue;
            }

            CheckValue(name, overrides.TextOf(name)!, holders);
            foreach (var notebook in holders) mustTake[notebook.Notebook].Add(name);
            if (holders.SelectMany(n => n.Named(name)).All(g => g.Kind is null && g.Of is null))
                notes.Add($"The code doesn't write out a value of the given \"{name}\", so its unit is checked only when the cell runs.");
            if (holders.Count < _notebooks.Count)
                notes.Add($"These notebooks have no given \"{name}\" and run on their own values: "
                    + $"{string.Join(", ", _notebooks.Except(holders).Select(n => n.Notebook))}.");
        }

        return new(mustTake.ToDictionary(m => m.Key, m => (IReadOnlyList<string>)m.Value, StringComparer.Ordinal), notes);
    }

    private List<NotebookGivens> Holders(string name)
    {
        var holders = _notebooks.Where(n => n.Named(name).Any()).ToList();
        return holders.Count == 0 && _notebooks.Select(n => n.Ambiguity(name)).FirstOrDefault(a => a is not null) is { } ambiguity
            ? throw Refused(ambiguity) : holders;
    }

    private void CheckValue(string name, string text, IReadOnlyList<NotebookGivens> holders)
    {
        foreach (var notebook in holders)
            if (notebook.Named(name).Select(g => g.Refusal(text)).FirstOrDefault(r => r is not null) is { } refusal)
                throw Refused(_notebooks.Count > 1 ? $"{refusal} The notebook {notebook.Notebook} can't take this value." : refusal);
    }

    private RequestException Unknown(string name) => Refused(
        _notebooks.Count == 0 ? "None of the notebooks can be read."
        : _names.Count == 0 ? $"The given \"{name}\" can't be set, because the notebooks of this run state no givens."
        : Unstated(name));

    private string Unstated(string name)
    {
        var meant = _names.Where(n => Abbreviates(name, n)).ToList();
        if (meant.Count > 1) return $"The given \"{name}\" may mean {string.Join(" or ", meant.Select(n => $"\"{n}\""))}; write "
            + "the whole name.";
        var nearest = meant.Count == 1 ? meant[0] : _names.MinBy(n => EditDistance.Between(name, n));
        return $"No notebook of this run has a given \"{name}\"{(nearest is null ? "" : $"; the nearest is \"{nearest}\"")}.";
    }

    // "pressure", "fil pressure" and "fp" for "fill pressure": begun words in their order, or first letters.
    private static bool Abbreviates(string asked, string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > 1 && string.Equals(asked, string.Concat(words.Select(w => w[0])),
            StringComparison.OrdinalIgnoreCase)) return true;
        var at = 0;
        foreach (var begun in asked.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            while (at < words.Length && !words[at].StartsWith(begun, StringComparison.OrdinalIgnoreCase)) at++;
            if (at++ >= words.Length) return false;
        }

        return true;
    }

    private RequestException Refused(string reason) => new($"{reason} No cell was run.",
        _names.Count == 0 ? [] : ["Givens that can be set:", .. List(),
            .. _notebooks.Any(n => n.Designs.Count > 0) ? ["and every other value of a design's file by its path, such as vessel.plies.1"]
                : Array.Empty<string>()]);

    private IEnumerable<string> List()
    {
        var width = _names.Max(n => n.Length);
        foreach (var name in _names)
            foreach (var form in _notebooks.SelectMany(n => n.Named(name).Select(g => (n.Notebook, g.Words))).GroupBy(f => f.Words))
            {
                var holders = form.Select(f => f.Notebook).Distinct().ToList();
                var others = _notebooks.Select(n => n.Notebook).Except(holders).ToList();
                var where = others.Count == 0 ? "" : holders.Count <= others.Count ? $"   (in {string.Join(", ", holders)})"
                    : $"   (not in {string.Join(", ", others)})";
                yield return $"  {name.PadRight(width)}  {form.Key}{where}";
            }
    }
}

/// <summary>What a run with other givens has to say before it starts, and what has to have happened in each notebook when it
/// ends.</summary>
/// <param name="MustTake">The givens that some cell of a notebook has to have taken over, by the notebook's name.</param>
/// <param name="Notes">What the reader should know, a sentence each.</param>
internal sealed record GivenPlan(IReadOnlyDictionary<string, IReadOnlyList<string>> MustTake, IReadOnlyList<string> Notes)
{
    /// <summary>A run on the notebooks' own values.</summary>
    public static GivenPlan None { get; } = new(new Dictionary<string, IReadOnlyList<string>>(), []);
}
