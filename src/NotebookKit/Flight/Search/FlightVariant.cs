using NotebookKit.Flight.Vertical;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Search;

/// <summary>One flight with a few things changed, for searches and maps: tables are shared, refused settings are not a number.</summary>
internal static class FlightVariant
{
    /// <summary>The goal's value [m or m/s]; not a number where the setting is refused, the flight fails or the vehicle comes down
    /// charged.</summary>
    public static double Value(VerticalFlight flight, FiringTables tables, FlightGoal goal)
    {
        if (flight.Validate().Any(f => f.Severity == FindingSeverity.Error)) return double.NaN;
        var peak = flight.PeakUnchecked(tables);
        if (peak.Status == ResultStatus.Failed) return double.NaN;
        return goal == FlightGoal.Apogee ? peak.ApogeeMetres : peak.MaximumSpeedMetresPerSecond;
    }

    public static VerticalFlight WithWater(VerticalFlight flight, double share) =>
        flight with { Charge = flight.Charge with { WaterFraction = Ratio.FromPercent(100 * share) } };

    public static VerticalFlight WithThroat(VerticalFlight flight, double metres) =>
        flight with { Nozzle = flight.Nozzle with { Throat = (1e3 * metres).Millimetres() } };
}
