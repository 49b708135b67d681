using NotebookKit.Flight.Design;

namespace NotebookKit.Flight.Motion;

/// <summary>What six degrees of freedom need besides the numbers of three.</summary>
/// <param name="Dry">Mass, centre and inertias of all that isn't water or gas of the running drive.</param>
/// <param name="Chamber">The vessel's inside.</param>
/// <param name="Aero">Slopes and strips.</param>
/// <param name="Cant">Cant of every fin on top of what is built in [rad].</param>
internal sealed record VehicleNumbers(MassState Dry, ChamberNumbers Chamber, AeroTable Aero, double Cant = 0);
