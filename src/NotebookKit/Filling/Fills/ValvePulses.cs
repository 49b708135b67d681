using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>A valve worked by hand: open so long, shut so long, again and again.</summary>
/// <param name="Open">Time it is open; 0.1 s to 10 min.</param>
/// <param name="Shut">Time it is shut; 0.1 s to 10 min.</param>
public sealed record ValvePulses(Duration Open, Duration Shut)
{
    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<Duration>(0.1.Seconds(), 10.Minutes()).Find(Open, "time the valve is open", "A hand can't do less."),
            new ValidRange<Duration>(0.1.Seconds(), 10.Minutes()).Find(Shut, "time the valve is shut", "A hand can't do less."),
        }.OfType<Finding>().ToList();
}
