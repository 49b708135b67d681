using System.Globalization;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Record;

/// <summary>Values that a run uses instead of a notebook's own givens, so that a notebook is also a study with parameters.</summary>
public sealed class GivenOverrides
{
    /// <summary>The environment variable that carries overrides to a notebook: lines of <c>name=value</c>.</summary>
    public const string Variable = "NOTEBOOKKIT_GIVENS";

    private readonly Dictionary<string, string> _texts;

    private GivenOverrides(Dictionary<string, string> texts) => _texts = texts;

    /// <summary>No overrides.</summary>
    public static GivenOverrides None { get; } = new([]);

    /// <summary>The names that are overridden.</summary>
    public IReadOnlyCollection<string> Names => _texts.Keys;

    /// <summary>Reads overrides such as <c>fill pressure=30 bar gauge</c>.</summary>
    /// <param name="assignments">One <c>name=value</c> each; empty ones are passed over.</param>
    /// <exception cref="FormatException">An assignment has no name or no value.</exception>
    public static GivenOverrides Parse(IEnumerable<string> assignments)
    {
        ArgumentNullException.ThrowIfNull(assignments);
        var texts = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var assignment in assignments.Where(a => !string.IsNullOrWhiteSpace(a)))
        {
            var cut = assignment.IndexOf('=', StringComparison.Ordinal);
            if (cut < 1 || cut == assignment.Length - 1)
                throw new FormatException($"\"{assignment}\" isn't a given; write it as name=value with the unit, for example \"fill pressure=30 bar gauge\".");
            texts[assignment[..cut].Trim()] = assignment[(cut + 1)..].Trim();
        }

        return new(texts);
    }

    /// <summary>The overrides of this run, from the environment.</summary>
    public static GivenOverrides FromEnvironment() =>
        Parse((Environment.GetEnvironmentVariable(Variable) ?? "").Split('\n'));

    /// <summary>The overriding value, or nothing where the given isn't overridden.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name of the given, upper and lower case alike.</param>
    /// <exception cref="FormatException">The text can't be read as that kind of value.</exception>
    internal T? Find<T>(string name) where T : struct
    {
        if (!_texts.TryGetValue(name, out var text)) return null;
        object? value = Kind<T>() switch
        {
            Kinds.Gauge => Pressure(text, "gauge") is { } p ? GaugePressure.FromDifference(p) : null,
            Kinds.Absolute => Pressure(text, "absolute") is { } p ? AbsolutePressure.FromDifference(p) : null,
            Kinds.Number => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var d) ? d : null,
            _ => Quantity.TryParse(CultureInfo.InvariantCulture, typeof(T), text, out var q) ? q : null,
        };
        return (T?)value ?? throw new FormatException($"given \"{name}\" can't be \"{text}\"; write {Example<T>()}.");
    }

    private enum Kinds
    {
        Quantity,
        Gauge,
        Absolute,
        Number,
    }

    private static Kinds Kind<T>() =>
        typeof(T) == typeof(GaugePressure) ? Kinds.Gauge
        : typeof(T) == typeof(AbsolutePressure) ? Kinds.Absolute
        : typeof(T) == typeof(double) ? Kinds.Number
        : Kinds.Quantity;

    private static Pressure? Pressure(string text, string word) =>
        text.EndsWith(" " + word, StringComparison.OrdinalIgnoreCase)
        && UnitsNet.Pressure.TryParse(text[..^(word.Length + 1)], CultureInfo.InvariantCulture, out var pressure)
            ? pressure
            : null;

    private static string Example<T>() => Kind<T>() switch
    {
        Kinds.Gauge => "a pressure with its unit and the word gauge, for example \"30 bar gauge\" or \"435 psi gauge\"",
        Kinds.Absolute => "a pressure with its unit and the word absolute, for example \"1 bar absolute\"",
        Kinds.Number => "a plain number, for example \"0.97\"",
        _ => $"a {typeof(T).Name.ToLowerInvariant()} with its unit",
    };
}
