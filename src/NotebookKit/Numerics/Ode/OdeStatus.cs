namespace NotebookKit.Numerics.Ode;

/// <summary>How an integration ended.</summary>
public enum OdeStatus
{
    /// <summary>The end of the interval was reached.</summary>
    Completed,

    /// <summary>A terminal event ended it.</summary>
    EndedByEvent,

    /// <summary>The allowed number of steps was used up.</summary>
    TooManySteps,

    /// <summary>The error control asked for a step below the smallest allowed.</summary>
    StepTooSmall,

    /// <summary>The state or its derivative stopped being a finite number.</summary>
    NonFinite,
}
