using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Motion;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Staging;

/// <summary>Both stages together from release to their parting, a row for every row of the time.</summary>
/// <param name="Time">Time from release [s].</param>
/// <param name="Height">Height above the pad [m].</param>
/// <param name="Speed">Speed over ground [m/s].</param>
/// <param name="Thrust">Thrust of the booster [N].</param>
/// <param name="Mass">Mass of both with what is aboard [kg].</param>
/// <param name="Load">Felt acceleration [g].</param>
/// <param name="DynamicPressure">Dynamic pressure [kPa].</param>
/// <param name="Mach">Mach number [-].</param>
public sealed record StackAscent(
    Series Time, Series Height, Series Speed, Series Thrust, Series Mass, Series Load, Series DynamicPressure, Series Mach)
{
    internal static StackAscent From(IReadOnlyList<FlightRow> rows, double dryKg) => new(
        FlightResult.Column("Time from release", "s", rows, r => r.Time),
        FlightResult.Column("Height above pad", "m", rows, r => -r.Position.Z),
        FlightResult.Column("Speed over ground", "m/s", rows, r => r.Velocity.Length),
        FlightResult.Column("Thrust", "N", rows, r => r.ThrustN),
        FlightResult.Column("Mass", "kg", rows, r => dryKg + r.WaterKg + r.GasKg),
        FlightResult.Column("Felt acceleration", "g", rows, r => r.LoadG),
        FlightResult.Column("Dynamic pressure", "kPa", rows, r => r.DynamicPressurePa / 1000),
        FlightResult.Column("Mach number", "-", rows, r => r.Mach));
}
