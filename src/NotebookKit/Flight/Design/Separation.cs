using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>What separates the stages, and when. The sustainer's jet starts as it leaves the booster.</summary>
public sealed record Separation
{
    private Separation(SeparationTrigger trigger, Duration delay, Length joint)
    {
        Trigger = trigger;
        Delay = delay;
        Joint = joint;
    }

    /// <summary>What it waits for.</summary>
    public SeparationTrigger Trigger { get; }

    /// <summary>Time from the end of the booster's jet, or from release, to separation.</summary>
    public Duration Delay { get; }

    /// <summary>Length that slides out of the joint, where drag separates them.</summary>
    public Length Joint { get; }

    /// <summary>Drag pulls the spent booster off.</summary>
    /// <param name="joint">Length that slides out of the joint; 1 mm to 2 m.</param>
    /// <exception cref="OutOfRangeException">The length is outside.</exception>
    public static Separation ByDrag(Length joint) => new(SeparationTrigger.Drag, Duration.Zero,
        new ValidRange<Length>(1.Millimetres(), 2.Metres()).Check(joint, "length of the joint",
            "It is what slides out of the other stage."));

    /// <summary>A latch that opens when the booster's pressure is gone, at once or some time after.</summary>
    /// <param name="delay">Time after the end of the booster's jet; 0 to 30 s; none where none is given.</param>
    /// <exception cref="OutOfRangeException">The delay is outside.</exception>
    public static Separation ByPressureLatch(Duration? delay = null) => new(SeparationTrigger.PressureLatch,
        new ValidRange<Duration>(Duration.Zero, 30.Seconds()).Check(delay ?? Duration.Zero, "delay of the separation",
            "By then the stack falls."), Length.Zero);

    /// <summary>A latch opened by a timer that the release from the pad starts.</summary>
    /// <param name="time">Time from release; 0.05 to 60 s.</param>
    /// <exception cref="OutOfRangeException">The time is outside.</exception>
    public static Separation ByTimer(Duration time) => new(SeparationTrigger.Timer,
        new ValidRange<Duration>(0.05.Seconds(), 60.Seconds()).Check(time, "time of the separation",
            "Set it to the end of the booster's jet."), Length.Zero);

    /// <summary>For example "drag, over a joint of 120 mm".</summary>
    public override string ToString() => Trigger switch
    {
        SeparationTrigger.Drag => $"drag, over a joint of {Joint.Show()}",
        SeparationTrigger.PressureLatch => Delay > Duration.Zero ? $"latch, {Delay.Show()} after the booster's jet"
            : "latch, at the end of the booster's jet",
        _ => $"timer, {Delay.Show()} from release",
    };
}
