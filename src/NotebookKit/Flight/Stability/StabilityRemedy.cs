using UnitsNet;

namespace NotebookKit.Flight.Stability;

/// <summary>What brings the least margin up to the limit; either is enough. Source: moments about the wanted centre of gravity; component method.</summary>
/// <param name="NoseBallast">Mass to add; none where no mass there is enough.</param>
/// <param name="BallastAt">Where, aft of the nose tip.</param>
/// <param name="FinSpan">Span of the aft-most fins that does it without ballast, their chords and sweep distance kept; none where four times the span isn't enough.</param>
public sealed record StabilityRemedy(Mass? NoseBallast, Length BallastAt, Length? FinSpan);
