using NotebookKit.Charts.Drawings;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Tests.Drawings;

/// <summary>Invented vehicles to draw.</summary>
public static class Vehicles
{
    public static DrawingModel Trainer() => new("Curlew (invented)", [.. Ogive(210, 35), P(210, 35), P(1210, 35), P(1250, 24), P(1262, 24)])
    {
        Fins = [new FinOutline(3, [P(1040, 35), P(1110, 125), P(1190, 125), P(1200, 35)], 2.Millimetres())],
        Vessel = [P(420, 6), P(432, 31), P(1205, 31), P(1245, 9)],
        WaterLevel = 935.Millimetres(),
        CentresOfGravity = [new StationMark("filled", 742.Millimetres()), new StationMark("empty", 655.Millimetres())],
        CentreOfPressure = 905.Millimetres(),
        Labels = [new StationMark("nose with altimeter", 120.Millimetres()), new StationMark("canopy bay", 300.Millimetres()),
            new StationMark("vessel", 560.Millimetres()), new StationMark("nozzle end", 1230.Millimetres())],
    };

    public static DrawingModel LongAndThin() => new("Long & thin <test>", [.. Ogive(150, 20), P(150, 20), P(2600, 20)])
    {
        Fins = [new FinOutline(4, [P(2480, 20), P(2520, 80), P(2590, 80), P(2600, 20)], 1.5.Millimetres())],
        Vessel = [P(1900, 18), P(2590, 18)],
        WaterLevel = 2300.Millimetres(),
        CentresOfGravity = [new StationMark("filled", 2000.Millimetres())],
        CentreOfPressure = 1950.Millimetres(),
        Labels = [new StationMark("payload", 100.Millimetres())],
    };

    public static OutlinePoint P(double stationMm, double radiusMm)
        => new(Length.FromMillimeters(stationMm), Length.FromMillimeters(radiusMm));

    // Tangent ogive: a circular arc from tip to base that meets the body without a crease.
    private static IEnumerable<OutlinePoint> Ogive(double length, double radius)
    {
        var rho = ((radius * radius) + (length * length)) / (2 * radius);
        return Enumerable.Range(0, 40).Select(i =>
        {
            var x = length * i / 40;
            return P(x, Math.Sqrt((rho * rho) - ((length - x) * (length - x))) + radius - rho);
        });
    }
}
