using NotebookKit.Record;

namespace NotebookKit.Runner.Givens;

/// <summary>A given as a notebook's code states it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">Kind of its value; none where the code doesn't write a value out.</param>
/// <param name="Own">The notebook's own value; none where it isn't written out.</param>
/// <param name="Minimum">Smallest value allowed; none where it isn't written out.</param>
/// <param name="Maximum">Largest value allowed; none where it isn't written out.</param>
/// <param name="Range">The range in words, or as the code has it.</param>
/// <param name="Why">Why it has its value; empty where that isn't written out.</param>
internal sealed record StatedGiven(string Name, GivenKind? Kind, object? Own, object? Minimum, object? Maximum, string Range, string Why)
{
    /// <summary>Kind and range: "gauge pressure, 5 bar gauge to 60 bar gauge".</summary>
    public string Words => $"{Kind?.Noun ?? "value computed in the notebook"}, {Range}";

    /// <summary>Why a text can't be its value, a sentence; none where it can, or where that can't be told before the notebook
    /// runs.</summary>
    /// <param name="text">The text.</param>
    public string? Refusal(string text) =>
        Kind is null ? null
        : Kind.Refusal(Name, text, Own) is { } refusal ? refusal
        : Minimum is null || Maximum is null ? null
        : Kind.OutOfRange(Name, Kind.Read(text)!, Minimum, Maximum, Why);
}
