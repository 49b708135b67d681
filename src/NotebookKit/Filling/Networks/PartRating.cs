using NotebookKit.Quantities;

namespace NotebookKit.Filling.Networks;

/// <summary>What a part is rated to, and what may come to stand in it.</summary>
/// <param name="Name">The part, with its line where it has one.</param>
/// <param name="RatedTo">Its rating; none where that isn't given.</param>
/// <param name="ProvedOn">Day of its last proof; none where that isn't given.</param>
/// <param name="MayStand">The most that may come to stand in it while every regulator works: valves shut, cylinder run empty.</param>
/// <param name="Seen">The most that the run saw in it.</param>
public sealed record PartRating(string Name, GaugePressure? RatedTo, DateOnly? ProvedOn, GaugePressure MayStand, GaugePressure Seen)
{
    /// <summary>Rating over what may stand in it [-]; none where no rating is given.</summary>
    public double? Margin => RatedTo is { } rated ? MayStand.Pascals > 0 ? rated / MayStand : double.PositiveInfinity : null;

    /// <summary>The proof in words: "proved 2026-03-02", or "proof not given".</summary>
    public string ProofText => ProvedOn is { } day
        ? $"proved {day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}" : "proof not given";
}
