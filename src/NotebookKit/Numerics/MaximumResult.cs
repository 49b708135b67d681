namespace NotebookKit.Numerics;

/// <summary>What a search for a maximum found.</summary>
/// <param name="Location">Where the function is greatest [unit of x]; any finite value.</param>
/// <param name="Value">Function value there [unit of f]; any value.</param>
/// <param name="Evaluations">Function evaluations used; 0 or above.</param>
public readonly record struct MaximumResult(double Location, double Value, int Evaluations);
