using NotebookKit.Flight.Motion;

namespace NotebookKit.Flight.Staging;

/// <summary>What the stages make of the moment they part.</summary>
internal static class StageParting
{
    /// <summary>Why the stages don't part in order, where they don't.</summary>
    public static PartingFault Fault(in FlightMarks marks, in AirStart parting) =>
        marks.Failed || !double.IsFinite(parting.Time) ? PartingFault.NoFlight
        : marks.HasLanded ? PartingFault.OnGround
        : marks.HasTopped ? PartingFault.AfterTop
        : double.IsNaN(marks.JetEndTime) ? PartingFault.WhileDriven
        : PartingFault.None;

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
