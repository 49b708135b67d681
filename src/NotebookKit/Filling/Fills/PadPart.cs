using NotebookKit.Quantities;

namespace NotebookKit.Filling.Fills;

/// <summary>One part of the line between cylinder and vessel.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Name">What it is called: "hose", "check valve".</param>
public sealed record PadPart(PadPartKind Kind, string Name)
{
    /// <summary>Pressure that its maker or a test rates it to; for a gauge the end of its scale. None where that isn't given.</summary>
    public GaugePressure? RatedTo { get; init; }

    /// <summary>Number that is stamped or painted on the very part; empty where none is given.</summary>
    public string Serial { get; init; } = "";

    /// <summary>Whether it is said to be in the line; a part that isn't is drawn broken and called "not given".</summary>
    public bool IsGiven { get; init; } = true;

    /// <summary>Its size or setting in a few words; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>The rating in words: "to 100 bar gauge", "rating not given", or "not given" where the part itself isn't.</summary>
    public string RatingText => !IsGiven ? "not given" : RatedTo is { } rated ? $"to {rated}" : "rating not given";
}
