namespace NotebookKit.Numerics;

/// <summary>What a search for a root found.</summary>
/// <param name="Root">Best estimate [unit of x]; any finite value, NaN where there is none.</param>
/// <param name="Residual">Function value there [unit of f]; any value.</param>
/// <param name="Evaluations">Function evaluations used.</param>
/// <param name="Converged">Whether the bracket shrank to the tolerance.</param>
public readonly record struct RootResult(double Root, double Residual, int Evaluations, bool Converged);
