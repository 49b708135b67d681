using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Propulsion.Firings;

/// <summary>Something that happens while a vessel fires or flies.</summary>
/// <param name="Name">What: "water out", "flow unchoked", "pressure spent", "end of jet", "greatest speed", "apogee", "comes to rest".</param>
/// <param name="Time">When, from release; 0 or above.</param>
public sealed record FiringEvent(string Name, Duration Time)
{
    /// <summary>For example "water out at 86.4 ms".</summary>
    public override string ToString() => $"{Name} at {(Time.Seconds < 1 ? Time.ToUnit(UnitsNet.Units.DurationUnit.Millisecond) : Time.ToUnit(UnitsNet.Units.DurationUnit.Second)).Show()}";
}
