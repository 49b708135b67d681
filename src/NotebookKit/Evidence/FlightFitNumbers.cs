namespace NotebookKit.Evidence;

/// <summary>Numbers of a flight fit: ln of the factor on drag, charge pressure [bar gauge], moment of launch [s], zero of the height [m].</summary>
internal sealed record FlightFitNumbers(double[] Parameters, double[] HalfWidths, double Correlation, double[] Fitted, double Scatter, bool Settled, int Evaluations);
