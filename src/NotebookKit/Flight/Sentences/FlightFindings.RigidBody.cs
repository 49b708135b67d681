using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight;

internal static partial class FlightFindings
{
    // Flight/RigidBody/FreeBody
    internal static Finding LargestInertiaMoreThanSumOfOthers(double inertiasKg, double inertiasKg2) =>
        Finding.Error(
            $"the largest principal inertia is {Digits.Round(inertiasKg)} kg m², more than the sum of the other two "
            + $"({Digits.Round(inertiasKg2)} kg m²); no rigid body has that. Check the three values.");

    // Flight/RigidBody/FreeBodyFlight
    internal static Finding StartsOnGround(Length altitude, Speed down) =>
        Finding.Error(
            $"the body starts at {altitude.Show()}, on or below the ground, and moves down at {down.Show()}; there is no "
            + "motion to compute. Start the body higher, or upwards.");

    internal static Finding ResultWouldHaveTooManyRows(double durationOverInterval) =>
        Finding.Error(
            $"the result would have {Digits.Round(durationOverInterval)} rows; the maximum is 100 000. Lengthen the interval.");

    // Flight/RigidBody/FreeBodyResult
    internal static Finding HeightOutsideAtmosphere(double low, double highMetres, double lowest, double highestMetres) =>
        Finding.Warning(
            $"the body goes from {Digits.Round(low)} to {Digits.Round(highMetres)} m; the atmosphere is known from {lowest} "
            + $"to {highestMetres} m, and the air beyond is an extrapolation. Shorten the time, or compute without air.");
}
