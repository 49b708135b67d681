using NotebookKit.Provenance;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/Site/FlyingField
    internal static Finding FieldHasTooFewCorners(int cornersCount) =>
        Finding.Error($"the field has {cornersCount} corners; it must have 3 or more. List the corners in order round the field.");

    internal static Finding PadDoesNotLieOnField() =>
        Finding.Warning("the pad doesn't lie on the field; corners are measured from the pad, east and north positive. Check the corners.");

    // Flight/Site/LaunchSite.Field
    internal static Finding WindOfFlightIsNotGiven() =>
        Finding.Warning(
            "wind isn't given; the flight is computed in still air, and drift and weathercocking are not shown. Give the "
            + "site a wind, or state WindProfile.Calm where there is none.");
}
