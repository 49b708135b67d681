using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.ByHand;

/// <summary>One line of a plan: what is done, what to expect, and what to do when the reading is off.</summary>
/// <param name="Number">Its place, from 1.</param>
/// <param name="Action">What is done.</param>
/// <param name="Gauge">Gauge reading to expect when it is done.</param>
/// <param name="Low">Lowest reading that restrictor, wall and gauge explain.</param>
/// <param name="High">Highest reading that they explain.</param>
/// <param name="Time">Time that the action takes.</param>
/// <param name="Shortest">Shortest time that restrictor and wall explain.</param>
/// <param name="Longest">Longest time that they explain.</param>
/// <param name="After">Time since the beginning when it is done.</param>
/// <param name="WhenOff">What to do when reading or time lies outside.</param>
public sealed record HandStep(int Number, HandAction Action, GaugePressure Gauge, GaugePressure Low, GaugePressure High, Duration Time,
    Duration Shortest, Duration Longest, Duration After, string WhenOff)
{
    /// <summary>Whether a reading after a time is explained by what the restrictor, the wall and the gauge may be.</summary>
    /// <param name="gauge">The reading; 0 to 300 bar gauge.</param>
    /// <param name="time">The time that the action took; 0 or above.</param>
    public bool Explains(GaugePressure gauge, Duration time) => gauge >= Low && gauge <= High && time >= Shortest && time <= Longest;
}
