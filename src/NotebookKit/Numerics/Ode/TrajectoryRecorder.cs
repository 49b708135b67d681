namespace NotebookKit.Numerics.Ode;

/// <summary>Records every accepted step into a trajectory, at its end and at evenly spread points inside it.</summary>
/// <param name="trajectory">Where the rows go; add the state at the start yourself. One of fewer unknowns than the system takes the
/// first.</param>
/// <param name="pointsPerStep">Rows per step; 1 or more.</param>
internal readonly struct TrajectoryRecorder(TrajectoryBuilder trajectory, int pointsPerStep = 4) : IOdeObserver
{
    /// <inheritdoc/>
    public bool IsActive => true;

    /// <inheritdoc/>
    public void Accepted(in DenseStep step)
    {
        for (var i = 1; i <= pointsPerStep; i++)
        {
            var t = i == pointsPerStep ? step.End : step.Start + (step.End - step.Start) * i / pointsPerStep;
            step.State(t, trajectory.Next(t));
        }
    }
}
