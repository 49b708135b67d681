using NotebookKit.Quantities;

namespace NotebookKit.Flight.Flights;

/// <summary>How the vehicle lies in the air along a flight in six degrees of freedom, a row for every row of the flight up to the canopy's opening.</summary>
/// <param name="Time">Time from release [s].</param>
/// <param name="AngleOfAttack">Angle between axis and relative wind [°].</param>
/// <param name="Elevation">Angle of the nose above the horizon [°].</param>
/// <param name="Heading">Where the nose leans to, clockwise from north [°].</param>
/// <param name="RollRate">Turning about the axis [rev/s].</param>
/// <param name="PitchRate">Turning across the axis, about the body's right-hand axis [°/s].</param>
/// <param name="PitchFrequency">Natural frequency of pitching [Hz]; negative where it is unstable.</param>
/// <param name="YawRate">Turning across the axis, about the body's downward axis [°/s].</param>
public sealed record AttitudeSeries(
    Series Time, Series AngleOfAttack, Series Elevation, Series Heading, Series RollRate, Series PitchRate, Series YawRate, Series PitchFrequency);
