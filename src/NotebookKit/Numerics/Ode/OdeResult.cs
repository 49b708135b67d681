using System.Globalization;

namespace NotebookKit.Numerics.Ode;

/// <summary>How an integration ended and what it cost. The state itself is in the span that was integrated.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Time">Independent variable reached [unit of t]; any finite value.</param>
/// <param name="TerminalEvent">Index of the event that ended it; -1 where none did.</param>
/// <param name="AcceptedSteps">Steps taken; 0 or more.</param>
/// <param name="RejectedSteps">Steps tried and thrown away; 0 or more.</param>
/// <param name="Evaluations">Right-hand sides computed; 0 or more.</param>
/// <param name="SuggestedStep">Step that the error control would try next [unit of t], 0 or above; a good first step for what
/// follows.</param>
public readonly record struct OdeResult(
    OdeStatus Status, double Time, int TerminalEvent, int AcceptedSteps, int RejectedSteps, int Evaluations, double SuggestedStep)
{
    /// <summary>Whether the end of the interval or a terminal event was reached.</summary>
    public bool Succeeded => Status is OdeStatus.Completed or OdeStatus.EndedByEvent;

    /// <summary>The ending in a sentence.</summary>
    public string Message => Status switch
    {
        OdeStatus.Completed => "The end of the interval was reached.",
        OdeStatus.EndedByEvent => string.Create(CultureInfo.InvariantCulture,
            $"Event {TerminalEvent} ended the integration at t = {Time:G6}."),
        OdeStatus.TooManySteps => string.Create(CultureInfo.InvariantCulture,
            $"{AcceptedSteps} steps were taken up to t = {Time:G6} without reaching the end; loosen the tolerance or allow more steps."),
        OdeStatus.StepTooSmall => string.Create(CultureInfo.InvariantCulture,
            $"The step became too small at t = {Time:G6}; the equations are stiff or break off there, or the tolerance is too tight."),
        _ => string.Create(CultureInfo.InvariantCulture, $"The state stopped being a finite number after t = {Time:G6}; check the inputs."),
    };
}
