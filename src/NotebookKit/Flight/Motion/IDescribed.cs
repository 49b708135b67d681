namespace NotebookKit.Flight.Motion;

/// <summary>Equations of motion that can say what a state means.</summary>
internal interface IDescribed
{
    /// <summary>The moment of a flight that a state is.</summary>
    FlightRow Describe(double t, ReadOnlySpan<double> y);
}
