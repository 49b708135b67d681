using NotebookKit.Proofing.Plans;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>One hold of a proof as the gauge saw it.</summary>
/// <param name="Planned">The step that was planned.</param>
/// <param name="From">Time at which the pressure was reached.</param>
/// <param name="Held">How long it stayed there.</param>
/// <param name="Minimum">Lowest reading of the planned time, where it was held longer of the best such stretch.</param>
/// <param name="Fall">Fall in pressure over the hold, straight line through the readings, sudden drops and warmth taken off; negative for a
/// rise.</param>
/// <param name="FallUncertainty">Standard error of the fall.</param>
/// <param name="Warming">Rise in temperature over the hold; zero where no temperature was logged.</param>
/// <param name="Drops">Sudden drops on the way: a fitting, a seal, a fibre.</param>
public sealed record HoldReading(
    ProofStep Planned, Duration From, Duration Held, GaugePressure Minimum, Pressure Fall, Pressure FallUncertainty,
        TemperatureDelta Warming, IReadOnlyList<SuddenDrop> Drops)
{
    /// <summary>Whether it was held for the time planned, two seconds of reading allowed for.</summary>
    public bool LongEnough => Held + Allowance >= Planned.Hold;

    /// <summary>A reading at each end may be missing.</summary>
    internal static Duration Allowance { get; } = 2.Seconds();
}

/// <summary>A fall of the gauge from one reading to the next that is no leak and no noise.</summary>
/// <param name="At">Time of it.</param>
/// <param name="Fall">How far the gauge fell.</param>
/// <param name="Volume">Volume that explains it: water lost at a fitting, or growth of the wall.</param>
public sealed record SuddenDrop(Duration At, Pressure Fall, Volume Volume);
