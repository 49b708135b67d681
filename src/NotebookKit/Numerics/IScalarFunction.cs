namespace NotebookKit.Numerics;

/// <summary>A function of one number. Implement it as a struct, so that the call is bound at compile time.</summary>
public interface IScalarFunction
{
    /// <summary>The function's value [unit of f].</summary>
    /// <param name="x">Where [unit of x]; any finite value.</param>
    double Value(double x);
}
