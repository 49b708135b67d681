using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Site;

namespace NotebookKit.Flight.Motion;

/// <summary>What separates the stages, in SI numbers.</summary>
/// <param name="Trigger">What it waits for.</param>
/// <param name="DelayS">From the end of the booster's jet, or from release [s]; where drag separates them, by how much the joint holds on
/// longer.</param>
/// <param name="JointM">Length of the joint [m].</param>
/// <param name="SustainerKg">Sustainer with its charge [kg].</param>
/// <param name="BoosterKg">Booster, spent [kg].</param>
/// <param name="Sustainer">Drag of the sustainer alone; none where drag has no say.</param>
internal readonly record struct SeparationNumbers(
    SeparationTrigger Trigger, double DelayS, double JointM, double SustainerKg, double BoosterKg, DragCurve? Sustainer)
{
    /// <summary>Factor on the drag of the sustainer alone [-].</summary>
    public double SustainerDragFactor { get; init; } = 1;

    /// <summary>
    /// How drag slows the two stages, were they free, at a speed through the air [m/s²]. The booster's drag is what the stack has beyond
    /// the sustainer alone: the sustainer keeps its base drag in the count, which errs towards staying together.
    /// </summary>
    public (double Sustainer, double Booster) Decelerations(FlightNumbers stack, in AirSample air, double speedMps)
    {
        if (Sustainer is null) return default;
        var mach = Math.Min(speedMps / air.SoundMps, DragCurve.MaximumMach);
        var pressure = 0.5 * air.DensityKgM3 * speedMps * speedMps;
        var sustainerM2 = SustainerDragFactor * Sustainer.AreaM2 * Sustainer.Coefficient(mach);
        var boosterM2 = Math.Max(0, stack.DragM2(mach, false) - sustainerM2);
        return (pressure * sustainerM2 / SustainerKg, pressure * boosterM2 / BoosterKg);
    }
}
