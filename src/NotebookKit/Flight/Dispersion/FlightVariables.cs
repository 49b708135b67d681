using NotebookKit.Numerics;

namespace NotebookKit.Flight.Dispersion;

/// <summary>The random numbers of one flight, those of a stage from one variable on.</summary>
internal readonly struct FlightVariables(SeededSamples samples, long flight, int first)
{
    // Normal distributions are cut at four deviations.
    private const double Cut = 4;

    public double Normal(int variable, double deviation) =>
        deviation == 0 ? 0 : deviation * Math.Clamp(samples.Normal(flight, first + variable), -Cut, Cut);

    public double Even(int variable, double low, double high) =>
        low == high ? low : low + ((high - low) * samples.Uniform(flight, first + variable));

    /// <summary>A factor about one. It may not reach zero, however wide its spread: a hundredth is far outside anything that
    /// flies.</summary>
    public double Factor(int variable, double deviation) => Math.Max(0.01, 1 + Normal(variable, deviation));
}
