using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>What brings the canopy out, and when.</summary>
public sealed record Deployment
{
    private Deployment(DeploymentTrigger trigger, Duration delay)
    {
        Trigger = trigger;
        Delay = delay;
    }

    /// <summary>No canopy comes out: the vehicle falls as it is.</summary>
    public static Deployment None { get; } = new(DeploymentTrigger.None, Duration.Zero);

    /// <summary>What it waits for.</summary>
    public DeploymentTrigger Trigger { get; }

    /// <summary>Time from apogee, or from release, to the canopy coming out.</summary>
    public Duration Delay { get; }

    /// <summary>At the top of the flight, or some time after it.</summary>
    /// <param name="delay">Time after apogee; 0 to 60 s; none where none is given.</param>
    /// <exception cref="OutOfRangeException">The delay is outside.</exception>
    public static Deployment ByApogeeSensor(Duration? delay = null) => new(DeploymentTrigger.Apogee,
        new ValidRange<Duration>(Duration.Zero, 60.Seconds()).Check(delay ?? Duration.Zero, "delay after apogee",
            "By then the vehicle is on the ground."));

    /// <summary>By a timer that the release starts.</summary>
    /// <param name="time">Time from release; 0.1 to 120 s.</param>
    /// <exception cref="OutOfRangeException">The time is outside.</exception>
    public static Deployment ByTimer(Duration time) => new(DeploymentTrigger.Timer,
        new ValidRange<Duration>(0.1.Seconds(), 120.Seconds()).Check(time, "timer", "Set it to the expected time of apogee."));

    /// <summary>For example "timer, 8.2 s from release".</summary>
    public override string ToString() => Trigger switch
    {
        DeploymentTrigger.None => "no canopy",
        DeploymentTrigger.Apogee => Delay > Duration.Zero ? $"{Delay.Show()} after apogee" : "at apogee",
        _ => $"timer, {Delay.Show()} from release",
    };
}

/// <summary>What brings the canopy out.</summary>
public enum DeploymentTrigger
{
    /// <summary>Nothing: the vehicle comes down as it is.</summary>
    None,

    /// <summary>Passing the top of the flight.</summary>
    Apogee,

    /// <summary>A timer started by the release.</summary>
    Timer,
}
