namespace NotebookKit.Numerics.Ode;

/// <summary>Sees every accepted step with its dense output.</summary>
public interface IOdeObserver
{
    /// <summary>Whether it wants to be called; a constant false costs nothing in the step loop.</summary>
    bool IsActive { get; }

    /// <summary>Called after every accepted step; a step that a terminal event cut short ends at that event.</summary>
    /// <param name="step">The step; valid during the call only.</param>
    void Accepted(in DenseStep step);
}
