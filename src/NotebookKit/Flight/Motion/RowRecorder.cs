using NotebookKit.Numerics.Ode;

namespace NotebookKit.Flight.Motion;

/// <summary>Describes every accepted step at its end and at evenly spread points inside it.</summary>
internal struct RowRecorder<TSystem>(TSystem system, FlightRows rows, int pointsPerStep) : IOdeObserver
    where TSystem : struct, IDescribed
{
    public bool IsActive => true;

    public void Accepted(in DenseStep step)
    {
        Span<double> y = stackalloc double[step.Dimension];
        for (var i = 1; i <= pointsPerStep; i++)
        {
            var t = i == pointsPerStep ? step.End : step.Start + ((step.End - step.Start) * i / pointsPerStep);
            step.State(t, y);
            rows.Add(system.Describe(t, y));
        }
    }
}
