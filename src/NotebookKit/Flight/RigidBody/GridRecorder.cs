using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.RigidBody;

/// <summary>Records the state at evenly spread times, from the dense output of every step.</summary>
internal struct GridRecorder(TrajectoryBuilder trajectory, double interval) : IOdeObserver
{
    private int _next = 1;

    public readonly bool IsActive => true;

    public void Accepted(in DenseStep step)
    {
        // A multiple of the interval, not a sum of steps, so that late rows stay on round times.
        for (var t = _next * interval; t <= step.End * (1 + 1e-14); t = ++_next * interval)
            step.State(Math.Min(t, step.End), trajectory.Next(t));
    }
}
