using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Flights;

/// <summary>How far the wind carries a canopy on its way down. Source: the wind profile's integral over height, constant descent
/// speed.</summary>
public sealed record DriftResult : Result
{
    /// <summary>Height it opens at, above ground.</summary>
    public required Length From { get; init; }

    /// <summary>Descent speed.</summary>
    public required Speed Descent { get; init; }

    /// <summary>Distance over ground.</summary>
    public required Length Distance { get; init; }

    /// <summary>Drift towards east; negative towards west.</summary>
    public required Length East { get; init; }

    /// <summary>Drift towards north; negative towards south.</summary>
    public required Length North { get; init; }

    /// <summary>Time to the ground.</summary>
    public required Duration Time { get; init; }

    /// <summary>Wind averaged over the height.</summary>
    public required Speed MeanWind { get; init; }

    /// <summary>The wind.</summary>
    public required WindProfile Wind { get; init; }

    /// <inheritdoc/>
    public override string Title => $"Drift from {From.Show()}";

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Drift under a canopy",
        ["The canopy moves with the wind at once.", "Descent speed constant: air density constant.", "Mean wind, no gusts, no thermals."],
        "Descents of some hundred metres; opening itself takes no height.",
        [WindProfile.Source]);

    /// <inheritdoc/>
    public override Working Working => new("Drift",
    [
        new("Mean wind", @"\bar u = \frac{1}{h}\int_0^h u\,dz", Wind.Name, MeanWind.Show(4), WindProfile.Source),
        new("Drift", @"x = \bar u\,\frac{h}{v}", $"{MeanWind.Show(4)} × {From.Show(4)} / {Descent.Show(4)}", Distance.Show(4),
            WindProfile.Source),
    ]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Drift", Wind.IsGiven ? Distance.Show() : "wind not given", Wind.IsGiven ? $"{East.Show()} east, {North.Show()} north" : ""),
        new("Time under canopy", Time.Show()),
        new("Mean wind", Wind.IsGiven ? MeanWind.Show() : "not given", Wind.Name),
    ];
}
