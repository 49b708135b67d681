using NotebookKit.Flight.Design;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Numerics;

namespace NotebookKit.Flight.Dispersion;

/// <summary>The flights of a dispersion of two stages: the stack to separation, then each stage to the ground.</summary>
internal sealed class TwoStageDispersion : DispersionRun
{
    private const int PartingVariable = 2 * StageDraw.Variables;

    private readonly VariedStage _booster, _sustainer;
    private readonly VariedDay _day;
    private readonly FlightNumbers _stack;
    private readonly VehicleNumbers? _stackSixDegrees;
    private readonly SeparationNumbers _separation;
    private readonly SeededSamples _samples;
    private readonly double _partingS, _shiftM, _sustainerDragShare;
    private readonly MassState _sustainerDry, _boosterDry;
    private readonly MassState _charge;

    public TwoStageDispersion(TwoStageVehicle vehicle, LaunchSite site, TwoStageSpread spread, int flights, ulong seed, bool isSixDegrees)
        : base(vehicle.Name, site, flights, seed, isSixDegrees, stages: 2, DispersionSubject.Of(vehicle, site))
    {
        const double Mach = 0.1;
        _samples = new(seed);
        _booster = new(vehicle.Booster, site, spread.Booster ?? spread.Both, _samples, 0, isSixDegrees: false);
        _sustainer = new(vehicle.Sustainer, site, spread.Sustainer ?? spread.Both, _samples, 1, isSixDegrees);
        var stack = vehicle.Stack(site);
        _stack = stack.Numbers(site);
        _stackSixDegrees = isSixDegrees ? stack.SixDegrees() : null;
        _separation = vehicle.Numbers(site);
        _partingS = spread.Separation.Seconds;
        _shiftM = vehicle.BoosterShift.Meters;
        (_sustainerDry, _boosterDry, _charge) = (vehicle.Sustainer.Parts.State(), vehicle.Booster.Parts.State(),
            vehicle.SustainerCharge(site));
        _sustainerDragShare = Math.Min(1, _sustainer.Nominal.DragM2(Mach, false) / _stack.DragM2(Mach, false));
        _day = new(site, spread.Both, _samples, VehicleDispersion.GustTop(spread.Both, NominalApogeeM));
    }

    /// <summary>Everything that one flight is flown with.</summary>
    internal TwoStageNumbers Numbers(long flight) => Numbers(flight, Draw(flight));

    protected override void Fly(long flight, Span<double> row)
    {
        row.Fill(double.NaN);
        var draw = Draw(flight);
        draw.CopyTo(row);
        var outputs = row[TwoStageDraw.Count..];
        var numbers = Numbers(flight, draw);
        var marks = FlightRun.FlyStack(numbers.Stack, numbers.StackSixDegrees, numbers.Separation, FlightAccuracy.Fast, null,
            out var parting);
        if (StageSeparation.Fault(marks, parting) != SeparationFault.None) return;
        var sustainer = FlightRun.Continue(
            numbers.Sustainer, numbers.SustainerSixDegrees, FlightAccuracy.Fast, parting, isDriven: true, StageSeparation.Marks(marks));
        var booster = FlightRun.Continue(
            numbers.Booster, null, FlightAccuracy.Fast, parting, isDriven: false,
                StageSeparation.Marks(marks) with { JetEndTime = marks.JetEndTime });
        FlightOutputs.Write(sustainer, outputs[..FlightOutputs.Count]);
        SeparationOutputs.Write(parting, booster, outputs[FlightOutputs.Count..]);
    }

    private TwoStageDraw Draw(long flight)
    {
        // A normal draw about no delay is folded: what waits for the booster's end can't come before it.
        var late = new FlightVariables(_samples, flight, 0).Normal(PartingVariable, _partingS);
        var delay = _separation.Trigger == SeparationTrigger.Timer ? Math.Max(0, _separation.DelayS + late)
            : Math.Abs(_separation.DelayS + late);
        return new(_booster.Draw(flight), _day.Draw(flight), _sustainer.Draw(flight), delay - _separation.DelayS);
    }

    private TwoStageNumbers Numbers(long flight, in TwoStageDraw draw)
    {
        var gusts = _day.Gusts(flight);
        var booster = _day.Apply(_booster.Numbers(draw.Booster), draw.Day, gusts);
        var sustainer = _day.Apply(_sustainer.Numbers(draw.Sustainer), draw.Day, gusts);
        var heavier = Loaded(sustainer) - Loaded(_sustainer.Nominal);
        // What isn't the booster's own in the stack: exactly the nominal where nothing varies.
        var stack = _day.Apply(_stack, draw.Day, gusts) with
        {
            DryKg = _stack.DryKg + (booster.DryKg - _booster.Nominal.DryKg) + heavier,
            DragFactor = draw.Booster.Drag + ((draw.Sustainer.Drag - draw.Booster.Drag) * _sustainerDragShare),
            Firing = booster.Firing,
            ThrustFactor = booster.ThrustFactor,
        };
        var separation = _separation with
        {
            DelayS = _separation.DelayS + draw.SeparationS,
            SustainerKg = _separation.SustainerKg + heavier,
            BoosterKg = booster.DryKg,
            SustainerDragFactor = draw.Sustainer.Drag,
        };
        return new(stack, StackSixDegrees(draw, sustainer), separation, booster, sustainer, _sustainer.SixDegrees(draw.Sustainer));
    }

    private static double Loaded(FlightNumbers stage) => stage.DryKg + stage.Firing.WaterKg + stage.Firing.GasKg;

    private VehicleNumbers? StackSixDegrees(in TwoStageDraw draw, FlightNumbers sustainer)
    {
        if (_stackSixDegrees is null) return null;
        var charge = (sustainer.Firing.WaterKg + sustainer.Firing.GasKg) / _charge.MassKg;
        var booster = VariedStage.Vary(_boosterDry, draw.Booster);
        return _stackSixDegrees with
        {
            Dry = VariedStage.Vary(_sustainerDry, draw.Sustainer)
                .With(_charge with { MassKg = charge * _charge.MassKg, PitchKgM2 = charge * _charge.PitchKgM2 })
                .With(booster with { CentreM = booster.CentreM + _shiftM }),
            Cant = draw.Booster.Cant,
        };
    }

    private double NominalApogeeM()
    {
        var marks = FlightRun.FlyStack(_stack, null, _separation, FlightAccuracy.Fast, null, out var parting);
        return StageSeparation.Fault(marks, parting) == SeparationFault.None
            ? FlightRun.Continue(_sustainer.Nominal, null, FlightAccuracy.Fast, parting, isDriven: true,
                StageSeparation.Marks(marks)).ApogeeM
            : marks.ApogeeM;
    }
}

/// <summary>One flight of two stages as the SI numbers that it is flown with.</summary>
internal sealed record TwoStageNumbers(
    FlightNumbers Stack, VehicleNumbers? StackSixDegrees, SeparationNumbers Separation, FlightNumbers Booster, FlightNumbers Sustainer,
    VehicleNumbers? SustainerSixDegrees);
