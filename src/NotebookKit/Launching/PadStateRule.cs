using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>What holds while a pad is in a state.</summary>
/// <param name="State">The state.</param>
/// <param name="Next">States that may follow; none other may.</param>
/// <param name="Stand">Who may stand where.</param>
/// <param name="Longest">Longest time in the state; none where nothing limits it, or where what would limit it isn't given.</param>
/// <param name="SetBy">What sets that time, or that it isn't given.</param>
/// <param name="WhenOver">What is done when that time is over.</param>
public sealed record PadStateRule(PadState State, IReadOnlyList<PadState> Next, string Stand, Duration? Longest, string SetBy,
    string WhenOver);
