namespace NotebookKit.Numerics.Ode;

/// <summary>The right-hand side of a system of first-order ordinary differential equations, y' = f(t, y).</summary>
/// <remarks>
/// Contract: <see cref="Dimension"/> stays the same during an integration; <see cref="Derivatives"/> fills every element, keeps no
/// reference to the spans, and may be asked at states slightly past an event or slightly outside the physical range, where it returns
/// finite numbers or NaN (a NaN shortens the step). Implement it as a struct, so that the call is bound at compile
/// time; one that holds another struct by a type parameter isn't read-only, or every call would copy that.
/// </remarks>
public interface IOdeSystem
{
    /// <summary>Number of unknowns; 1 or more.</summary>
    int Dimension { get; }

    /// <summary>Computes y' at one state.</summary>
    /// <param name="t">Independent variable [unit of t]; any finite value.</param>
    /// <param name="y">State, of length <see cref="Dimension"/> [unit of each unknown].</param>
    /// <param name="dydt">Receives y', of length <see cref="Dimension"/> [unit of each unknown per unit of t].</param>
    void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt);
}
