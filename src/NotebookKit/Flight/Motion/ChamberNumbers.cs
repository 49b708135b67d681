using NotebookKit.Flight.Design;

namespace NotebookKit.Flight.Motion;

/// <summary>The vessel's inside as a step loop needs it: the same column of water and gas as <see cref="WaterChamber"/>, in SI
/// numbers.</summary>
internal readonly struct ChamberNumbers(WaterChamber tank)
{
    private readonly double _insideM = tank.InsideLength.Meters;
    private readonly double _nozzleEndM = tank.NozzleEndAt.Meters;
    private readonly double _quarterRadiusSquare = Math.Pow(tank.Bore.Meters / 2, 2) / 4;
    private readonly double _metrePerKg = 1 / (tank.WaterDensity.KilogramsPerCubicMeter * Math.PI / 4 * tank.Bore.Meters *
        tank.Bore.Meters);

    public double NozzleEndM => _nozzleEndM;

    /// <summary>Mass, centre and inertia of what is inside.</summary>
    public MassState Contents(double waterKg, double gasKg)
    {
        var level = Math.Min(_insideM, waterKg * _metrePerKg);
        var ullage = _insideM - level;
        return Column(waterKg, level, _nozzleEndM - (level / 2)).With(Column(gasKg, ullage, _nozzleEndM - level - (ullage / 2)));
    }

    private MassState Column(double massKg, double lengthM, double centreM)
        => new(massKg, centreM, 0, massKg * (_quarterRadiusSquare + (lengthM * lengthM / 12)));
}
