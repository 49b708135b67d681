using NotebookKit.Flight.Motion;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Columns;

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
    internal static StackAscent From(IReadOnlyList<FlightRow> rows, double dryKg) => From(new Lazy<IReadOnlyList<FlightRow>>(rows), dryKg);

    private static StackAscent From(Lazy<IReadOnlyList<FlightRow>> rows, double dryKg) => new(
        LazyColumn<FlightRow>.Of("Time from release", "s", rows, r => r.Time),
        LazyColumn<FlightRow>.Of("Height above pad", "m", rows, r => -r.Position.Z),
        LazyColumn<FlightRow>.Of("Speed over ground", "m/s", rows, r => r.Velocity.Length),
        LazyColumn<FlightRow>.Of("Thrust", "N", rows, r => r.ThrustN),
        LazyColumn<FlightRow>.Of("Mass", "kg", rows, r => dryKg + r.WaterKg + r.GasKg),
        LazyColumn<FlightRow>.Of("Felt acceleration", "g", rows, r => r.LoadG),
        LazyColumn<FlightRow>.Of("Dynamic pressure", "kPa", rows, r => r.DynamicPressurePa / 1000),
        LazyColumn<FlightRow>.Of("Mach number", "-", rows, r => r.Mach));
}
