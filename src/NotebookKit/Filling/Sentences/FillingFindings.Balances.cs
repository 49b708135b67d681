using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling;

/// <summary>The sentences of filling's findings, in one place.</summary>
internal static partial class FillingFindings
{
    // Filling/Balances/FillWall
    internal static Finding FilmLawUnknown(string law, IEnumerable<string> names) =>
        Finding.Error($"film law is {law}; it must be one of {string.Join(", ", names)}.");

    internal static Finding JetStirringUnknown(string stirring, IEnumerable<string> names) =>
        Finding.Error($"stirring of the jet is {stirring}; it must be one of {string.Join(", ", names)}.");

    internal static Finding SurfaceWithoutWater(string vessel, UnitsNet.Area surface) =>
        Finding.Error($"{vessel} has no water, and its wall has {surface.Show()} of water's surface: give the water, or leave the surface "
            + "of the water out.");

    // Filling/Balances/PublishedTrace
    internal static Finding TraceIsNotPublished(string source) =>
        Finding.Error(
            $"The source of the trace is {source}; it must be a publication with author, title and year: a vessel of one's own stays at "
            + "300 bar gauge, without Trace.");

    internal static Finding TraceOfRatedVessel(string restsOn) =>
        Finding.Error(
            $"The vessel of a published trace is {restsOn}; it must be one whose pressure is stated by hand, as the publication has it: "
            + "leave Trace out for a vessel of one's own.");

    internal static Finding TraceNeedsRealGas(GaugePressure highest) =>
        Finding.Error(
            $"A trace to {highest} is asked for as an ideal gas, which holds to 300 bar gauge and is off by more than a sixth in mass "
            + "above: set Properties to GasProperties.Real.");

    internal static Finding TraceIsForComparison(string source) =>
        Finding.Note($"Computed for comparison with {source} alone: nothing here says what any other vessel holds.");

    // Filling/Balances/GasThroughWaterResult
    internal static Finding WaterIsNoBath(double coolsKelvins, UnitsNet.Mass water) =>
        Finding.Warning(
            $"Bringing the gas to the water's temperature {(coolsKelvins > 0 ? "cools" : "warms")} {water.Show()} of water by "
            + $"{Digits.Round(Math.Abs(coolsKelvins))} K: the bound of full contact takes the water's temperature as fixed. Compute it "
                + $"for the "
            + "temperature in between as well.");
}
