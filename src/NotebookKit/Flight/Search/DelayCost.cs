using NotebookKit.Quantities;

namespace NotebookKit.Flight.Search;

/// <summary>What waiting between the stages costs. In a vacuum every second costs the sustainer's own gain in speed, in metres.</summary>
/// <param name="Delay">Time from the end of the booster's jet to the parting [s].</param>
/// <param name="Apogee">Height of the sustainer's top [m]; NaN where the flight fails.</param>
public sealed record DelayCost(Series Delay, Series Apogee);
