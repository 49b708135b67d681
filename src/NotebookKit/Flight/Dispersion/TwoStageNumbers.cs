using NotebookKit.Flight.Motion;

namespace NotebookKit.Flight.Dispersion;

/// <summary>One flight of two stages as the SI numbers that it is flown with.</summary>
internal sealed record TwoStageNumbers(
    FlightNumbers Stack, VehicleNumbers? StackSixDegrees, SeparationNumbers Separation, FlightNumbers Booster, FlightNumbers Sustainer,
    VehicleNumbers? SustainerSixDegrees);
