using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Record.Givens;

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
    /// <summary>The design's file that states it; none where the notebook's code does.</summary>
    public Design? Of { get; init; }

    /// <summary>What kind of value it is, in words.</summary>
    public string Noun { get; init; } = Kind?.Noun ?? "value computed in the notebook";

    /// <summary>Kind and range: "gauge pressure, 5 bar gauge to 60 bar gauge".</summary>
    public string Words => Range.Length > 0 ? $"{Noun}, {Range}" : Noun;

    /// <summary>Why a text can't be its value, a sentence; none where it can, or where that can't be told before the notebook
    /// runs.</summary>
    /// <param name="text">The text.</param>
    public string? Refusal(string text) =>
        Of is not null ? OfFile(text)
        : Kind is null ? null
        : Kind.Refusal(Name, text, Own) is { } refusal ? refusal
        : Minimum is null || Maximum is null ? null
        : Kind.OutOfRange(Name, Kind.Read(text)!, Minimum, Maximum, Why);

    private string? OfFile(string text)
    {
        try
        {
            Of!.With(Name, text);
            return null;
        }
        catch (DesignFileException error)
        {
            return error.Message;
        }
    }
}
