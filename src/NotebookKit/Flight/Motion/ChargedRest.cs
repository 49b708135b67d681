using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Motion;

/// <summary>A vehicle at rest in the air with its charge aboard: time [s], height [m], water [kg] and gauge pressure [Pa].</summary>
internal readonly record struct ChargedRest(double TimeS, double HeightM, double WaterKg, double GaugePa)
{
    public const string Remedy = "Use less water, more pressure, a wider nozzle or less dry mass.";

    /// <summary>What is said of it before the flight.</summary>
    public Finding Hop(double thrustN, double weightN) => FlightFindings.FlightIsHop(
        thrustN.Newtons(), weightN.Newtons(), HeightM.Metres(), TimeS.Seconds(), ChargedLanding.Aboard(WaterKg, GaugePa), Remedy);

    /// <summary>What is said of it after the flight.</summary>
    public Finding CameDown() => FlightFindings.VehicleNeverLifts(
        TimeS.Seconds(), HeightM.Metres(), ChargedLanding.Aboard(WaterKg, GaugePa), Remedy);

    /// <summary>What is said where the rest leaves before the ground.</summary>
    public Finding TurnsOver() => FlightFindings.VehicleComesDownCharged(
        TimeS.Seconds(), HeightM.Metres(), ChargedLanding.Aboard(WaterKg, GaugePa), Remedy);

    /// <summary>What is said where only gas is left.</summary>
    public Finding StillBlows() => FlightFindings.GasStillLeavesAtRest(
        ChargedLanding.Aboard(0, GaugePa), HeightM.Metres(), TimeS.Seconds());
}
