using NotebookKit.Flight.Motion;

namespace NotebookKit.Flight.Staging;

/// <summary>What the stages make of the moment they part.</summary>
internal static class StageSeparation
{
    /// <summary>Why the stages don't part in order, where they don't.</summary>
    public static SeparationFault Fault(in FlightMarks marks, in AirStart parting) =>
        marks.Failed || !double.IsFinite(parting.Time) ? SeparationFault.NoFlight
        : marks.HasLanded ? SeparationFault.OnGround
        : marks.IsPastApogee ? SeparationFault.AfterApogee
        : double.IsNaN(marks.JetEndTime) ? SeparationFault.WhileDriven
        : SeparationFault.None;

    /// <summary>Marks with which a stage goes on by itself: what it has not done yet is open again.</summary>
    public static FlightMarks Marks(in FlightMarks marks) => marks with
    {
        WaterOutTime = double.NaN,
        JetEndTime = double.NaN,
        ApogeeTime = double.NaN,
        ApogeeM = double.NaN,
        LeftGaugePa = double.NaN,
    };
}
