using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>The way down for one setting of its explorer: canopy diameter [m], wind at 10 m [m/s], height of opening [m].</summary>
internal static class DescentSetting
{
    private const int Points = 32;

    /// <summary>The answer.</summary>
    public static ExplorerState Answer(Canopy canopy, Mass mass, IReadOnlyList<double> s) => Answer(
        canopy with { NominalDiameter = s[0].Metres() }, mass, WindProfile.PowerLaw(s[1].MetresPerSecond(), 10.Metres()), s[2]);

    private static ExplorerState Answer(Canopy canopy, Mass mass, WindProfile wind, double heightM)
    {
        if (canopy.Validate().FirstOrDefault(f => f.Severity == FindingSeverity.Error)
            is { } error) return ExplorerState.Refused(error.Message);
        var descent = canopy.Descend(mass);
        if (descent.Fastest < 0.5.MetresPerSecond()) return ExplorerState.Refused(
            "A canopy this large hardly comes down; no descent is computed below 0.5 m/s.");
        var whole = Down(heightM);
        double[] heights = [.. Enumerable.Range(0, Points).Select(i => heightM * (Points - 1 - i) / (Points - 1))];
        return new ExplorerState
        {
            // What is left below a height has still to be drifted: the rest has been.
            X = [.. heights.Select(h => whole.Meters - Down(h).Meters)],
            Y = heights,
            Numbers = [descent.Fastest.MetersPerSecond, descent.LandingEnergy.Joules, heightM / descent.Fastest.MetersPerSecond,
                whole.Meters],
        };

        Length Down(double metres) => metres < 1 ? Length.Zero : Drift.Descending(metres.Metres(), descent.Fastest, wind).Distance;
    }
}
