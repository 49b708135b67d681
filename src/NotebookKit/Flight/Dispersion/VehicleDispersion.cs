using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>The flights of a dispersion of one vehicle.</summary>
internal sealed class VehicleDispersion : DispersionRun
{
    private readonly VariedStage _stage;
    private readonly VariedDay _day;

    public VehicleDispersion(Vehicle vehicle, LaunchSite site, Spread spread, int flights, ulong seed, bool isSixDegrees)
        : base(vehicle.Name, site, flights, seed, isSixDegrees, stages: 1, DispersionSubject.Of(vehicle, site))
    {
        var samples = new SeededSamples(seed);
        _stage = new(vehicle, site, spread, samples, 0, isSixDegrees);
        _day = new(site, spread, samples, GustTop(spread, () => FlightRun.Fly(_stage.Nominal, null, FlightAccuracy.Fast).ApogeeM));
    }

    protected override void Fly(long flight, Span<double> row)
    {
        var (draw, day) = (_stage.Draw(flight), _day.Draw(flight));
        draw.CopyTo(row);
        day.CopyTo(row[StageDraw.Count..]);
        var numbers = _day.Apply(_stage.Numbers(draw), day, _day.Gusts(flight));
        FlightOutputs.Write(FlightRun.Fly(numbers, _stage.SixDegrees(draw), FlightAccuracy.Fast), row[(StageDraw.Count + DayDraw.Count)..]);
    }

    /// <summary>How high a flight's own gusts have to reach: some way above the nominal top; beyond they hold their last value.</summary>
    public static Length GustTop(Spread spread, Func<double> nominalM)
    {
        var apogee = spread.Gusts is null ? double.NaN : nominalM();
        return Math.Clamp(double.IsNaN(apogee) ? 0 : 1.3 * apogee, 100, 5000).Metres();
    }
}
