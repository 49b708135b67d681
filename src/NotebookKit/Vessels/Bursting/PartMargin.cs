using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends;

namespace NotebookKit.Vessels.Bursting;

/// <summary>One part of the vessel and the pressure at which it gives way.</summary>
/// <param name="Name">The part: "wall", "nozzle end, bonded plug".</param>
/// <param name="Burst">Pressure at which it gives way.</param>
/// <param name="Cause">How it gives way.</param>
/// <remarks>Source: as <see cref="BurstPrediction"/>.</remarks>
public sealed record PartMargin(string Name, GaugePressure Burst, string Cause)
{
    /// <summary>Whether that is a burst, a leak or first yield; a burst unless said.</summary>
    public PartFailure Kind { get; init; }

    /// <summary>Pressure at which it gives way over a pressure [-]. Source: definition of a margin.</summary>
    /// <param name="pressure">Pressure to compare with; above 0.</param>
    public double Over(GaugePressure pressure) => Burst / pressure;
}
