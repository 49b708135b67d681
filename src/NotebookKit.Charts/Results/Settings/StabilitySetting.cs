using NotebookKit.Charts.Explorers;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>The margin for one setting of its explorer: span of the aft-most fins [mm], ballast in the nose [g], water fraction
/// [%].</summary>
internal static class StabilitySetting
{
    private const int Rows = 26;

    /// <summary>The fins whose span is dragged.</summary>
    public static FinSet AftMost(Vehicle vehicle) => vehicle.Body.Fins.MaxBy(f => f.LeadingEdgeAt)!;

    /// <summary>Where the ballast lies, from the tip.</summary>
    public static Length BallastAt(Vehicle vehicle) => vehicle.Body.Parts[0].Length * 0.75;

    /// <summary>The answer.</summary>
    public static ExplorerState Answer(Vehicle vehicle, IReadOnlyList<double> s)
    {
        var fins = AftMost(vehicle);
        return Answer(Varied(vehicle, fins, s[0] / fins.Planform.Reach.Millimeters, s[1], BallastAt(vehicle))
            with { Charge = vehicle.Charge with { WaterFraction = s[2].Percent() } });
    }

    private static Vehicle Varied(Vehicle vehicle, FinSet fins, double factor, double ballastG, Length ballastAt) => vehicle with
    {
        Body = vehicle.Body with { Fins = [.. vehicle.Body.Fins.Select(f => ReferenceEquals(f, fins) ? f.WithSpanTimes(factor) : f)] },
        Parts = ballastG > 0 ? vehicle.Parts.With(new MassPart("ballast", ballastG.Grams(), ballastAt)) : vehicle.Parts,
    };

    private static ExplorerState Answer(Vehicle vehicle)
    {
        var stability = vehicle.Stability();
        // The last row is empty of gas too; the rows before it run evenly from full to none.
        var last = stability.Abscissa.Count - 2;
        int[] rows = [.. Enumerable.Range(0, Rows).Select(i => last * i / (Rows - 1))];
        return new ExplorerState
        {
            X = [.. rows.Select(r => stability.Abscissa[r])],
            Y = [.. rows.Select(r => stability.Margin[r])],
            Numbers = [stability.MinimumMargin, stability.Margin[^1], stability.CentreOfPressure[0]],
        };
    }
}
