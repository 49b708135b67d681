using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>What one test may be expected to bring.</summary>
/// <param name="Option">The test.</param>
/// <param name="Expected">B-basis of the vessel to be expected after it, the mean over what may come out.</param>
/// <param name="GainPerHour">What the B-basis may be expected to gain for each hour of work, in bar [bar/h]; below 0 where it would
/// fall.</param>
/// <param name="ChanceOfLess">Chance that the B-basis falls [-].</param>
public sealed record TestGain(TestOption Option, GaugePressure Expected, double GainPerHour, double ChanceOfLess);
