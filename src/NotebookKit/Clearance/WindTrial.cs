namespace NotebookKit.Clearance;

/// <summary>One flight in some wind, as the search for the limit sees it.</summary>
/// <param name="RailWindMps">Wind at the end of the rail [m/s].</param>
/// <param name="LandsInside">Whether it was flown to the ground and everything came down on the field.</param>
/// <param name="OpensWithin">Whether every canopy opened within what its gear takes.</param>
internal readonly record struct WindTrial(double RailWindMps, bool LandsInside, bool OpensWithin);
