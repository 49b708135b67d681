using System.Collections.Concurrent;

namespace NotebookKit.Record.Givens;

/// <summary>
/// Values that a run uses instead of a notebook's own givens, so that a notebook is also a study with parameters. Whoever runs the notebook
/// makes them; the notebook hands
/// them to its record, and they note which of them a given took.
/// </summary>
public sealed class GivenOverrides
{
    private readonly Dictionary<string, string> _texts;
    private readonly ConcurrentDictionary<string, bool> _taken = new(StringComparer.OrdinalIgnoreCase);

    private GivenOverrides(Dictionary<string, string> texts) => _texts = texts;

    /// <summary>No overrides.</summary>
    public static GivenOverrides None { get; } = new([]);

    /// <summary>The names that are overridden.</summary>
    public IReadOnlyCollection<string> Names => _texts.Keys;

    /// <summary>The names that no given has taken its value from so far.</summary>
    public IReadOnlyCollection<string> Untaken => [.. _texts.Keys.Where(n => !_taken.ContainsKey(n))];

    /// <summary>Reads overrides such as <c>fill pressure=30 bar gauge</c>.</summary>
    /// <param name="assignments">One <c>name=value</c> each; empty ones are passed over.</param>
    /// <exception cref="FormatException">An assignment has no name or no value, or one name gets two values.</exception>
    public static GivenOverrides Parse(IEnumerable<string> assignments)
    {
        ArgumentNullException.ThrowIfNull(assignments);
        var texts = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var assignment in assignments.Where(a => !string.IsNullOrWhiteSpace(a)))
        {
            var cut = assignment.IndexOf('=', StringComparison.Ordinal);
            var (name, text) = cut < 0 ? ("", "") : (assignment[..cut].Trim(), assignment[(cut + 1)..].Trim());
            if (name.Length == 0 || text.Length == 0 || assignment.Trim().AsSpan().ContainsAny('\n', '\r'))
                throw new FormatException($"\"{assignment}\" isn't a given; write it as name=value with the unit, for example \"fill "
                    + "pressure=30 bar gauge\".");
            if (texts.TryGetValue(name, out var before) && before != text)
                throw new FormatException($"The given \"{name}\" is to be \"{before}\" and also \"{text}\"; give it one value.");
            texts[name] = text;
        }

        return new(texts);
    }

    /// <summary>The text that stands for a given's value; nothing where the given isn't overridden.</summary>
    /// <param name="name">Name of the given, upper and lower case alike.</param>
    public string? TextOf(string name) => _texts.GetValueOrDefault(name);

    /// <summary>Refuses to let a run pass in which an override did nothing.</summary>
    /// <param name="names">Names that some given must have taken its value from.</param>
    /// <exception cref="FormatException">One of them is overridden and no given took it.</exception>
    public void RequireTaken(params IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        if (Untaken.FirstOrDefault(n => names.Contains(n, StringComparer.OrdinalIgnoreCase)) is { } name)
            throw new FormatException($"The given \"{name}\" was to be \"{_texts[name]}\", but no cell that ran states such a given, so "
                + "the notebook ran on its own values. Correct the name, leave that given out, or make the notebook's record with "
                + "session.Givens.");
    }

    /// <summary>The overriding value, or nothing where the given isn't overridden.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name of the given, upper and lower case alike.</param>
    /// <param name="own">The notebook's own value.</param>
    /// <exception cref="FormatException">The text can't be read as that kind of value.</exception>
    internal T? Find<T>(string name, T own) where T : struct
    {
        if (!_texts.TryGetValue(name, out var text)) return null;
        var kind = GivenKind.Of(typeof(T));
        return (T?)kind.Read(text) ?? throw new FormatException(kind.Refusal(name, text, own));
    }

    /// <summary>Notes that a given has taken its value from here.</summary>
    internal void Take(string name)
    {
        if (_texts.ContainsKey(name)) _taken[name] = true;
    }
}
