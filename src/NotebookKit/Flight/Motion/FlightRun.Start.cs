using NotebookKit.Flight.Design;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Motion;

internal ref partial struct FlightRun
{
    /// <summary>Flies from rest on the pad to the ground.</summary>
    /// <param name="numbers">The vehicle on its site.</param>
    /// <param name="vehicle">Inertias and slopes, for six degrees of freedom.</param>
    /// <param name="settings">Error control.</param>
    /// <param name="rows">Receives the rows, where wanted.</param>
    public static FlightMarks Fly(FlightNumbers numbers, VehicleNumbers? vehicle, OdeSettings settings, FlightRows? rows = null)
    {
        Span<double> state = stackalloc double[MostUnknowns];
        var flight = new FlightRun(numbers, vehicle, settings, rows, state);
        flight.Run();
        return flight.Marks;
    }

    /// <summary>Flies two stages together from rest on the pad to where they part, or to the ground where they don't.</summary>
    /// <param name="stack">Both stages on their site, driven by the booster.</param>
    /// <param name="vehicle">Their inertias and slopes, for six degrees of freedom.</param>
    /// <param name="separation">What separates them.</param>
    /// <param name="settings">Error control.</param>
    /// <param name="rows">Receives the rows, where wanted.</param>
    /// <param name="end">Where they part.</param>
    public static FlightMarks FlyStack(
        FlightNumbers stack, VehicleNumbers? vehicle, in SeparationNumbers separation, OdeSettings settings, FlightRows? rows, out
            AirStart end)
    {
        Span<double> state = stackalloc double[MostUnknowns];
        var flight = new FlightRun(stack, vehicle, settings, rows, state)
        {
            _separation = separation,
            _openAt = separation.Trigger == SeparationTrigger.Timer ? separation.DelayS : double.PositiveInfinity,
        };
        flight.Run();
        end = new(flight._time, Vector.From(state), Vector.From(state[3..]),
            vehicle is null ? Rotation.None : Rotation.From(state[6..]), vehicle is null ? default : Vector.From(state[10..]));
        return flight.Marks;
    }

    /// <summary>Flies on from a state in the air to the ground.</summary>
    /// <param name="numbers">What flies on, on its site.</param>
    /// <param name="vehicle">Inertias and slopes, for six degrees of freedom.</param>
    /// <param name="settings">Error control.</param>
    /// <param name="start">Where it starts.</param>
    /// <param name="isDriven">Whether its own drive starts then; it coasts with what the marks say is aboard where not.</param>
    /// <param name="marks">What has been marked before.</param>
    /// <param name="rows">Receives the rows, where wanted.</param>
    public static FlightMarks Continue(
        FlightNumbers numbers, VehicleNumbers? vehicle, OdeSettings settings, in AirStart start, bool isDriven, in FlightMarks marks,
            FlightRows? rows = null)
    {
        Span<double> state = stackalloc double[MostUnknowns];
        var flight = new FlightRun(numbers, vehicle, settings, rows, state) { _time = start.Time, _stage = FlightStage.Coast, Marks =
            marks };
        if (marks.IsPastApogee && numbers.Deployment.Trigger == DeploymentTrigger.Apogee) flight._openAt = marks.ApogeeTime +
            numbers.Deployment.DelayS;
        start.Position.CopyTo(state);
        start.Velocity.CopyTo(state[3..]);
        if (vehicle is not null)
        {
            start.Attitude.CopyTo(state[6..]);
            start.Rates.CopyTo(state[10..]);
        }

        if (isDriven) flight.Fill(onTube: false, flight.FreeOwn);
        flight.FlyFree();
        return flight.Marks;
    }

    /// <summary>Puts the whole charge aboard and begins with it.</summary>
    private void Fill(bool onTube, int own)
    {
        var setup = _numbers.Firing;
        Marks.WaterLeftKg = setup.WaterKg;
        Marks.GasLeftKg = setup.GasKg;
        if (onTube) Begin(FlightStage.Tube, setup.StartM3, own);
        else Begin(setup.HasWater ? FlightStage.Water : FlightStage.Gas, setup.GasM3, own);
        SkipSpentGas(_numbers.AirAt(_time, onTube || own == RailPath<Drive.NoDrive>.Own ? 0 : -_state[2]).PressurePa, own);
    }

    /// <summary>Once the booster is spent: when the stages separate, where that depends on it.</summary>
    private void PlanSeparation()
    {
        if (_separation.Trigger is SeparationTrigger.None or SeparationTrigger.Timer || double.IsFinite(_openAt)) return;
        if (_separation.Trigger == SeparationTrigger.PressureLatch)
        {
            _openAt = _time + _separation.DelayS;
            return;
        }

        var air = _numbers.AirAt(_time, -_state[2]);
        var speed = (Vector.From(_state[3..]) - air.WindMps).Length;
        var (sustainer, booster) = _separation.Decelerations(_numbers, air, speed);
        if (booster > sustainer) _openAt = _time + Math.Sqrt(2 * _separation.JointM / (booster - sustainer)) + _separation.DelayS;
        else Marks.Failure = FormattableString.Invariant(
            $"the stages don't part: at {speed:0.#} m/s drag slows the booster by {booster:0.##} m/s² ")
            + FormattableString.Invariant($"and the sustainer by {sustainer:0.##} m/s², ")
            + "which presses them together. Use a spring, trapped pressure or a timed release.";
    }
}
