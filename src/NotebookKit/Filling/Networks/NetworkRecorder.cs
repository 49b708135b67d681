using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Networks;

/// <summary>Keeps states, and the pressures and flows that follow from them, twice a step.</summary>
internal readonly struct NetworkRecorder(NetworkModel model, TrajectoryBuilder states, TrajectoryBuilder seen) : IOdeObserver
{
    public bool IsActive => true;

    public void Accepted(in DenseStep step)
    {
        for (var i = 1; i <= 2; i++)
        {
            var t = i == 2 ? step.End : 0.5 * (step.Start + step.End);
            var own = states.Next(t);
            step.State(t, own);
            Look(t, own);
        }
    }

    /// <summary>Keeps what follows from a state.</summary>
    public void Look(double t, ReadOnlySpan<double> y)
    {
        var row = seen.Next(t);
        model.Solve(y);
        for (var i = 0; i < model.Nodes; i++) row[i] = model.PascalsOf(i);
        for (var l = 0; l < model.Lines.Count; l++) row[model.Nodes + l] = model.FlowOf(l);
    }
}
