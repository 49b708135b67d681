using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>What a reading during a proof leads to.</summary>
/// <param name="Call">What to do now.</param>
/// <param name="Reasons">Why, the gravest first.</param>
/// <param name="Expected">Water that the plan expects at the pressure read.</param>
/// <param name="Left">How long the hold still goes on; none where nothing is held.</param>
/// <remarks>Source: as <see cref="StepReading"/>. It decides nothing about the vessel: that is the record's verdict.</remarks>
public sealed record StepAdvice(ProofCall Call, IReadOnlyList<Finding> Reasons, Volume Expected, Duration? Left);

/// <summary>What to do at a step of a proof.</summary>
public enum ProofCall
{
    /// <summary>Pump on, or go to the next step.</summary>
    GoOn,

    /// <summary>Pump no further; hold and watch.</summary>
    Hold,

    /// <summary>Stop and vent from afar.</summary>
    StopAndVent,
}
