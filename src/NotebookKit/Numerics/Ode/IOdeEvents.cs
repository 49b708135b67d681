namespace NotebookKit.Numerics.Ode;

/// <summary>Scalar functions of the state whose zeros are located while integrating.</summary>
/// <remarks>
/// A zero is found where a function changes sign between two accepted steps; two zeros inside one step cancel and are missed, so limit
/// the step where that can happen. A function that starts at exactly zero does not count as a crossing.
/// </remarks>
public interface IOdeEvents
{
    /// <summary>Number of event functions; 0 or more, at most 16.</summary>
    int Count { get; }

    /// <summary>Which crossings count, and whether the integration ends there.</summary>
    /// <param name="index">Event; 0 to Count - 1.</param>
    OdeEventRule Rule(int index);

    /// <summary>Value of one event function [any unit].</summary>
    /// <param name="index">Event; 0 to Count - 1.</param>
    /// <param name="t">Independent variable [unit of t]; any finite value.</param>
    /// <param name="y">State [unit of each unknown].</param>
    /// <param name="dydt">Its derivative: exact at the ends of a step, that of the interpolant inside it.</param>
    double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt);

    /// <summary>Called once for every located event, in order of t, before the step is handed to the observer.</summary>
    /// <param name="index">Event; 0 to Count - 1.</param>
    /// <param name="t">Where it happened [unit of t]; any finite value.</param>
    /// <param name="y">State there [unit of each unknown].</param>
    void Located(int index, double t, ReadOnlySpan<double> y);
}

/// <summary>How an event function is watched.</summary>
/// <param name="Direction">Which crossings count.</param>
/// <param name="IsTerminal">Whether the integration ends at the first of them.</param>
public readonly record struct OdeEventRule(OdeEventDirection Direction, bool IsTerminal);

/// <summary>Which zero crossings of an event function count, seen in the direction of integration.</summary>
public enum OdeEventDirection
{
    /// <summary>Both.</summary>
    Any,

    /// <summary>From negative to positive.</summary>
    Rising,

    /// <summary>From positive to negative.</summary>
    Falling,
}
