using NotebookKit.Charts.Explorers;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>A fill for one setting of its explorer: sonic conductance [dm³/(s·bar)], supply [bar gauge], water fraction [%].</summary>
internal static class FillSetting
{
    private const int Points = 40;

    /// <summary>Critical ratio that the restrictor keeps whatever its conductance [-].</summary>
    public static double RatioOf(PadFill fill) => Math.Clamp(fill.Restrictor.CriticalRatio, 0, 0.7);

    /// <summary>The answer.</summary>
    public static ExplorerState Answer(PadFill fill, IReadOnlyList<double> s) => Answer(fill with
    {
        Restrictor = new SonicRestrictor(SonicConductance.FromLitresPerSecondBar(s[0]), RatioOf(fill)),
        Supply = GaugePressure.FromBar(s[1]),
        WaterFraction = s[2].Percent(),
    });

    private static ExplorerState Answer(PadFill fill)
    {
        FillResult result;
        try
        {
            result = fill.Run();
        }
        catch (InvalidDesignException refusal)
        {
            return ExplorerState.Refused(refusal.Findings.First(f => f.Severity == FindingSeverity.Error).Message);
        }
        var (times, bars) = CurveSampling.Between(result.Time, result.Pressure, 0, result.Duration.Seconds, Points);
        return new ExplorerState
        {
            X = times,
            Y = bars,
            Numbers = [result.Duration.Seconds, result.Hottest.DegreesCelsius, result.SettledPressure.Bar, result.GasTaken.Grams],
        };
    }
}
