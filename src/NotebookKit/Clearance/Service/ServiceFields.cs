using System.Globalization;
using NotebookKit.Materials.Files;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Texts;
using UnitsNet;

namespace NotebookKit.Clearance.Service;

/// <summary>Takes the values of one event from their texts, and keeps a sentence for each that is missing, unknown or can't be
/// read.</summary>
internal sealed class ServiceFields(string kind, IReadOnlyDictionary<string, string> values)
{
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);
    private readonly List<Finding> _wrong = [];

    /// <summary>Everything wrong, once all values were asked for.</summary>
    public IReadOnlyList<Finding> Wrong =>
    [
        .. _wrong,
        .. values.Keys.Where(k => !_known.Contains(k)).Select(k =>
            ClearanceFindings.FieldUnknown(kind, k, _known.Count, _known)),
    ];

    public string Text(string name) => Take(name, "a few words") ?? "";

    public string? Optional(string name) => Take(name, null);

    public GaugePressure Pressure(string name)
    {
        if (Take(name, "\"36 bar gauge\"") is not { } text) return default;
        if (UnitText.Without(text, UnitText.Gauge) is not { } bare)
            return Say<GaugePressure>($"{name} \"{text}\" doesn't say that a gauge read it; write it with its unit and the word gauge, "
                + "for example \"36 bar gauge\".");
        return QuantityText.TryRead<Pressure>(bare, out var pressure, out var wrong) ? pressure.Gauge()
            : Say<GaugePressure>($"{name}: {wrong}.");
    }

    public T Quantity<T>(string name, string example) where T : struct => Take(name, $"\"{example}\"") is { } text ? Read<T>(name, text)
        : default;

    public T? Optional<T>(string name) where T : struct => Take(name, null) is { } text ? Read<T>(name, text) : null;

    public DateOnly Day(string name)
    {
        if (Take(name, "\"2026-05-01\"") is not { } text) return default;
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : Say<DateOnly>($"{name} \"{text}\" isn't a day; write year, month and day, for example \"2026-05-01\".");
    }

    public T Choice<T>(string name, IReadOnlyList<(string Word, T Value)> choices) where T : struct =>
        Take(name, string.Join(" or ", choices.Select(c => c.Word))) is { } text ? Choose(name, text, choices) : default;

    public T? OptionalChoice<T>(string name, IReadOnlyList<(string Word, T Value)> choices) where T : struct =>
        Take(name, null) is { } text ? Choose(name, text, choices) : null;

    private T Choose<T>(string name, string text, IReadOnlyList<(string Word, T Value)> choices) where T : struct
    {
        foreach (var (word, value) in choices)
            if (word == text) return value;
        return Say<T>($"{name} can't be \"{text}\"; write {string.Join(" or ", choices.Select(c => c.Word))}.");
    }

    private T Read<T>(string name, string text) where T : struct => QuantityText.TryRead<T>(text, out var value, out var wrong) ? value
        : Say<T>($"{name}: {wrong}.");

    // Without an example the value may be left out.
    private string? Take(string name, string? example)
    {
        _known.Add(name);
        if (values.TryGetValue(name, out var text)) return text;
        if (example is not null) Say<int>($"\"{kind}\" needs its {name}; write {example}.");
        return null;
    }

    private T Say<T>(string sentence) where T : struct
    {
        _wrong.Add(Finding.Error(sentence));
        return default;
    }
}
