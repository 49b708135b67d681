using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Engineering;

/// <summary>Charts that set pressures of their own beside a column need that column in bar gauge.</summary>
internal static class PressureAxis
{
    public const string Unit = "bar gauge";

    public static EngineeringChart Require(Series pressure, EngineeringChart chart) =>
        pressure.Unit == Unit
            ? chart
            : throw new InvalidDesignException(
                $"Chart '{chart.Title}'",
                [Finding.Error($"'{pressure.Name}' is in {pressure.Unit}; the limits of this chart are in {Unit}, so bring the "
                    + $"column to {Unit}.")]);
}
