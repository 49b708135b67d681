using NotebookKit.Provenance;

namespace NotebookKit.Filling.Balances;

/// <summary>Liquid water as a bath of one temperature, in SI. Its warmth is what it holds above the temperature of the start, J.</summary>
internal static class WaterBath
{
    /// <summary>Heat capacity, J/(kg·K): between 0 and 60 °C liquid water has 4180 to 4220.</summary>
    public const double HeatJPerKgK = 4182;

    private const double HeatJPerM3K = 1000 * HeatJPerKgK;

    public static Source Source { get; } = Source.CommonPractice("4182 J/(kg K) for liquid water, all of it at one temperature");

    /// <summary>Temperature of water of some warmth, K; that of the start where there is none.</summary>
    public static double Kelvins(double warmthJ, double waterM3, double startK) =>
        waterM3 > 1e-12 ? startK + warmthJ / (HeatJPerM3K * waterM3) : startK;
}
