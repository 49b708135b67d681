using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Numerics;
using NotebookKit.Propulsion.Flow;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>A vehicle, or a stage, that varies from flight to flight.</summary>
internal sealed class VariedStage
{
    private readonly Vehicle _vehicle;
    private readonly LaunchSite _site;
    private readonly StageSpread _spread;
    private readonly SeededSamples _samples;
    private readonly int _stage;
    private readonly VehicleNumbers? _sixDegrees;
    private readonly FiringTableFamily _tables;

    public VariedStage(Vehicle vehicle, LaunchSite site, Spread spread, SeededSamples samples, int stage, bool isSixDegrees)
    {
        (_vehicle, _site, _samples, _stage) = (vehicle, site, samples, stage);
        _spread = new(vehicle, site, spread);
        Nominal = vehicle.Numbers(site);
        _tables = new(vehicle.Charge, vehicle.Flow, site.Pressure.Pascals);
        _sixDegrees = isSixDegrees ? vehicle.SixDegrees() : null;
    }

    public FlightNumbers Nominal { get; }

    public StageDraw Draw(long flight) => StageDraw.Of(_spread, _samples, flight, _stage);

    /// <summary>The vehicle as drawn, on the nominal day.</summary>
    public FlightNumbers Numbers(in StageDraw draw)
    {
        var charge = _vehicle.Charge with { Pressure = _vehicle.Charge.Pressure * draw.Pressure };
        // A fraction that doesn't vary keeps its last digit, and with it the nominal flight its bits.
        if (draw.Water != 0) charge = charge with { WaterFraction =
            Ratio.FromDecimalFractions(Math.Clamp(charge.WaterFraction.DecimalFractions + draw.Water, 0, 0.95)) };
        var deployment = Nominal.Deployment;
        return Nominal with
        {
            DryKg = Nominal.DryKg * draw.Mass,
            DragFactor = draw.Drag,
            // Tables of a real gas are a good part of a flight's time; they depend on its pressure, not on how much water there is.
            Firing = _vehicle.Setup(charge, _site, draw.Pressure == 1 ? Nominal.Firing.Tables : _tables.For(charge)),
            ThrustFactor = draw.Thrust,
            Deployment = deployment with { DelayS = Math.Max(0, deployment.DelayS + draw.TimerS),
                DragM2 = deployment.DragM2 * draw.Canopy },
        };
    }

    /// <summary>What six degrees of freedom need besides; none in three.</summary>
    public VehicleNumbers? SixDegrees(in StageDraw draw) => _sixDegrees is null ? null
        : _sixDegrees with { Dry = Vary(_sixDegrees.Dry, draw), Cant = draw.Cant };

    /// <summary>Mass and inertias in the ratio of the drawn mass, with the drawn centre.</summary>
    public static MassState Vary(in MassState dry, in StageDraw draw) =>
        new(dry.MassKg * draw.Mass, dry.CentreM + draw.CentreM, dry.RollKgM2 * draw.Mass, dry.PitchKgM2 * draw.Mass);
}
