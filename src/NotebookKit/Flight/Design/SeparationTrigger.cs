namespace NotebookKit.Flight.Design;

/// <summary>What separates the stages.</summary>
public enum SeparationTrigger
{
    /// <summary>Nothing: there is one stage.</summary>
    None,

    /// <summary>Drag, once the booster is spent: it pulls the booster off, or presses it on.</summary>
    Drag,

    /// <summary>A release that acts when the booster is spent, at once or some time after.</summary>
    PressureLatch,

    /// <summary>A timer started by the release from the pad.</summary>
    Timer,
}
