using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Motion/ChargedRest
    internal static Finding FlightIsHop(Force thrust, Force weight, Length height, Duration time, string aboard, string remedy) =>
        Finding.Warning(
            $"this flight is a hop: thrust at release is {thrust.Show()} and the vehicle weighs {weight.Show()}, but thrust "
            + $"falls below weight and the vehicle comes to rest at about {height.Show()}, {time.Show()} after release, with "
            + $"{aboard} still aboard. The vehicle comes down under pressure. {remedy}");

    internal static Finding VehicleNeverLifts(Duration time, Length height, string aboard, string remedy) =>
        Finding.Error(
            $"the vehicle comes to rest {time.Show()} after release, at {height.Show()}, with {aboard} still aboard, and "
            + "comes down under pressure; this is not a flight. Don't fly like this, and vent a vehicle that comes down "
            + $"under pressure from afar. {remedy}");

    internal static Finding VehicleComesDownCharged(Duration time, Length height, string aboard, string remedy) =>
        Finding.Warning(
            $"the vehicle comes to rest {time.Show()} after release, at {height.Show()}, with {aboard} still aboard: the "
            + $"vehicle turns over while its jet drives it, and nothing beyond that height is computed. {remedy}");

    internal static Finding GasStillLeavesAtRest(string aboard, Length height, Duration time) =>
        Finding.Warning(
            $"gas still leaves at {aboard} when the vehicle comes to rest at {height.Show()}, {time.Show()} after release: the "
            + "vehicle may come down under pressure. Stay away until the gas is out; a wider nozzle empties the vehicle sooner.");
}
