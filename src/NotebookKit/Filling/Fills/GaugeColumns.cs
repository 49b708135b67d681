using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Fills;

/// <summary>The two columns of a gauge's log: its clock and its readings.</summary>
internal static class GaugeColumns
{
    /// <summary>What is wrong with units, number and readings; whether the clock rises is its log's.</summary>
    /// <param name="time">The clock [s].</param>
    /// <param name="pressure">The gauge [bar gauge].</param>
    public static IEnumerable<Finding?> Wrong(Series time, Series pressure) =>
    [
        time.Unit == "s" ? null : FillingFindings.TimeUnitRefused(time.Unit),
        pressure.Unit == "bar gauge" ? null : FillingFindings.PressureUnitRefused(pressure.Unit),
        time.Count == pressure.Count ? null : FillingFindings.TimesAndPressuresDiffer(time.Count, pressure.Count),
        time.Count >= 10 ? null : FillingFindings.TooFewReadings(time.Count),
        time.Values.Concat(pressure.Values).All(double.IsFinite) ? null : FillingFindings.SomeReadingsAreNotNumbers(),
    ];
}
