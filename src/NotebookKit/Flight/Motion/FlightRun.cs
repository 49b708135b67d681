using NotebookKit.Flight.Design;
using NotebookKit.Flight.Drive;
using NotebookKit.Flight.RigidBody;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// A flight from the pad to the ground: along the rail, free, under the canopy, driven by water, gas or nothing. Free flight is in three
/// degrees of freedom, or in six where the vehicle's inertias and slopes are given. Allocates nothing while it runs unless rows are wanted.
/// </summary>
internal ref partial struct FlightRun
{
    private const int PointsPerStep = 4;
    private const int PointsPerTurn = 2;
    private const int MostUnknowns = RigidBodySystem<FlatEarth, NoAir, ConstantBody>.Own + DriveState.MostUnknowns;
    private const double LongestS = 3600;

    private readonly FlightNumbers _numbers;
    private readonly VehicleNumbers? _vehicle;
    private readonly OdeSettings _settings;
    private readonly FlightRows? _rows;
    private readonly double _relative;

    // Unknowns of whichever phase runs: way and speed on the rail, or position, velocity and (of six degrees) attitude and rates; the
    // drive's own come last.
    private readonly Span<double> _state;
    private FlightStage _stage;
    private double _time, _openAt;
    private SeparationNumbers _separation;

    private FlightRun(FlightNumbers numbers, VehicleNumbers? vehicle, OdeSettings settings, FlightRows? rows, Span<double> state)
    {
        _vehicle = vehicle;
        _numbers = numbers;
        _settings = settings;
        _relative = settings.RelativeTolerance;
        _rows = rows;
        _state = state;
        _openAt = numbers.Deployment.Trigger == DeploymentTrigger.Timer ? numbers.Deployment.DelayS : double.PositiveInfinity;
        Marks = new();
    }

    public FlightMarks Marks;

    private void Run()
    {
        _state.Clear();
        Fill(_numbers.Firing.TubeStrokeM > 0, RailPath<NoDrive>.Own);
        var onRail = true;
        while (onRail && !Marks.Failed)
        {
            onRail = _stage switch
            {
                FlightStage.Tube => Rail(new TubeDrive(_numbers.Firing, _numbers.ThrustFactor)),
                FlightStage.Water => Rail(Water),
                FlightStage.Gas => Rail(Gas),
                _ => Rail(None),
            };
        }

        if (!Marks.Failed) FlyFree();
    }

    private void FlyFree()
    {
        var inAir = true;
        while (inAir && !Marks.Failed)
        {
            inAir = _stage switch
            {
                FlightStage.Water => Free(Water),
                FlightStage.Gas => Free(Gas),
                _ => Free(None),
            };
        }

        if (!Marks.Failed && !Marks.HasLanded && _separation.Trigger == SeparationTrigger.None) Canopy();
    }

    private readonly WaterDrive Water => new(_numbers.Firing, _numbers.ThrustFactor);

    private readonly GasDrive Gas => new(_numbers.Firing, Marks.WaterLeftKg, _numbers.ThrustFactor);

    private readonly int FreeOwn => _vehicle is null ? FreePath<NoDrive>.OwnAt : VehiclePath<NoDrive>.OwnAt;

    private readonly NoDrive None => new(Marks.WaterLeftKg, Marks.GasLeftKg);

    /// <summary>One phase on the rail; false when the vehicle has left it.</summary>
    private bool Rail<TDrive>(TDrive drive)
        where TDrive : struct, IDrive
    {
        var path = new RailPath<TDrive>(_numbers, drive);
        if (_time == 0 && !Moves(path)) return false;
        var events = new RailEvents<TDrive>(path, _numbers.RailM, Marks);
        var result = Integrate(ref path, ref events, _time + LongestS, RailPath<TDrive>.Own, PointsPerStep);
        events.Offer(_time, _state);
        Take(events.Marks);
        if (!Reached(result, "rail")) return false;
        switch (result.TerminalEvent)
        {
            case RailEvents<TDrive>.Exit:
                LeaveRail(path);
                return false;
            case RailEvents<TDrive>.Stopped:
                Aboard(path.Drive, path.AmbientPa(_time, _state), RailPath<TDrive>.Own);
                Marks.Failure = StoppedOnRail();
                return false;
            default:
                NextDrive(result.TerminalEvent - RailEvents<TDrive>.FirstEnd, path.AmbientPa(_time, _state), RailPath<TDrive>.Own);
                return true;
        }
    }

    /// <summary>Whether it moves at all as it is let go.</summary>
    private bool Moves<TDrive>(in RailPath<TDrive> path)
        where TDrive : struct, IDrive
    {
        Span<double> rates = stackalloc double[path.Dimension];
        path.Derivatives(0, _state, rates);
        if (rates[1] > 0) return true;
        Marks.Failure = "the vehicle doesn't move: its thrust doesn't overcome weight and friction on the rail. Use more pressure, or a "
            + "steeper or smoother rail.";
        return false;
    }

    private void LeaveRail<TDrive>(in RailPath<TDrive> path)
        where TDrive : struct, IDrive
    {
        var air = path.Air(_time, _state);
        var through = path.ThroughAir(_state[1], air);
        Marks.ExitTime = _time;
        Marks.ExitSpeed = _state[1];
        Marks.ExitWind = air.WindMps.Length;
        Marks.ExitAngle = Math.Atan2(Vector.Cross(_numbers.RailDirection, through).Length, Vector.Dot(_numbers.RailDirection, through));

        Span<double> own = stackalloc double[DriveState.MostUnknowns];
        _state.Slice(RailPath<TDrive>.Own, DriveState.MostUnknowns).CopyTo(own);
        var contents = path.Drive.Run(air.PressurePa, 0, 0, _numbers.DryKg, own, stackalloc double[DriveState.MostUnknowns]);
        (Marks.ExitWaterKg, Marks.ExitGasKg) = (contents.WaterKg, contents.GasKg);
        var (way, speed, nose) = (_state[0], _state[1], _numbers.RailDirection);
        _state.Clear();
        (way * nose).CopyTo(_state);
        (speed * nose).CopyTo(_state[3..]);
        if (_vehicle is not null) Rotation.FromYawPitchRoll(Math.Atan2(nose.Y, nose.X), Math.Asin(-nose.Z), 0).CopyTo(_state[6..]);
        own.CopyTo(_state[FreeOwn..]);
    }

    /// <summary>One phase of free flight; false when the vehicle has landed or its canopy is out.</summary>
    private bool Free<TDrive>(TDrive drive)
        where TDrive : struct, IDrive =>
        _vehicle is null
            ? Free<FreePath<TDrive>, TDrive>(new(_numbers, drive), PointsPerStep)
            : Free<VehiclePath<TDrive>, TDrive>(new(_numbers, _vehicle, drive), PointsPerTurn);

    private bool Free<TPath, TDrive>(TPath path, int points)
        where TPath : struct, IFreePath<TDrive>
        where TDrive : struct, IDrive
    {
        if (_stage == FlightStage.Coast) PlanSeparation();
        if (Marks.Failed) return false;
        if (_openAt <= _time) return Contents(path.Drive);
        var events = new FreeEvents<TPath, TDrive>(path, Marks.IsPastApogee, Marks);
        var until = Math.Min(_openAt, _time + LongestS);
        var result = Integrate(ref path, ref events, until, path.Own, points);
        events.Offer(_time, _state);
        Take(events.Marks);
        if (result.Status == OdeStatus.Completed && double.IsFinite(_openAt)) return Contents(path.Drive);
        if (!Reached(result, "free flight")) return false;
        switch (result.TerminalEvent)
        {
            case FreeEvents<TPath, TDrive>.Apogee:
                ReachApogee();
                return _openAt > _time || Contents(path.Drive);
            case FreeEvents<TPath, TDrive>.Ground:
                Contents(path.Drive);
                Land();
                if (Marks.IsCharged) Marks.Failure = DownCharged();
                return false;
            case FreeEvents<TPath, TDrive>.TooFast:
                Marks.Failure = FormattableString.Invariant(
                    $"the vehicle exceeds Mach {Aerodynamics.Drag.DragCurve.MaximumMach:0.##} at {_time:0.###} s; ")
                    + "the drag model ends there. Use less pressure or more mass.";
                return false;
            default:
                NextDrive(result.TerminalEvent - FreeEvents<TPath, TDrive>.FirstEnd, path.Air(_time, _state).PressurePa, path.Own);
                return true;
        }
    }

    private void Canopy()
    {
        var speed = Math.Max((Vector.From(_state[3..]) - _numbers.AirAt(_time, -_state[2]).WindMps).Length, Terminal());
        Marks.OpeningTime = _time;
        Marks.OpeningM = -_state[2];
        Marks.OpeningSpeed = (Vector.From(_state[3..]) - _numbers.AirAt(_time, -_state[2]).WindMps).Length;
        Marks.OpeningDown = _state[5];
        var fill = _numbers.Deployment.FillM / speed;
        var full = _time + fill;
        var path = new CanopyPath(_numbers, Marks.WaterLeftKg, Marks.GasLeftKg, _time, fill);
        while (!Marks.Failed && !Marks.HasLanded)
        {
            var events = new LandingEvents(Marks.IsPastApogee);
            var result = Integrate(ref path, ref events, _time < full ? full : _time + LongestS, FreePath<NoDrive>.OwnAt, PointsPerStep);
            if (result.Status == OdeStatus.Completed && _time <= full) continue;
            if (!Reached(result, "canopy")) return;
            if (result.TerminalEvent == LandingEvents.Apogee) ReachApogee();
            else Land();
        }

        // The jet goes on under the canopy, which isn't followed: it has so long to empty the vessel.
        if (Marks.HasLanded && Marks.IsCharged && Marks.LandingTime - Marks.OpeningTime < EmptyingS()) Marks.Failure = DownCharged();
    }

    /// <summary>Speed at which the open canopy comes down [m/s].</summary>
    private readonly double Terminal() =>
        Math.Sqrt(2 * (_numbers.DryKg + Marks.WaterLeftKg + Marks.GasLeftKg) * StandardConstants.Gravity
            / (_numbers.AirAt(_time, -_state[2]).DensityKgM3 * _numbers.Deployment.DragM2));

    private void ReachApogee()
    {
        Marks.ApogeeTime = _time;
        Marks.ApogeeM = -_state[2];
        Marks.ApogeeSpeed = (Vector.From(_state[3..]) - _numbers.AirAt(_time, -_state[2]).WindMps).Length;
        if (_numbers.Deployment.Trigger == DeploymentTrigger.Apogee) _openAt = _time + _numbers.Deployment.DelayS;
    }

    private void Land()
    {
        Marks.LandingTime = _time;
        Marks.LandingAt = Vector.From(_state);
        Marks.LandingVelocity = Vector.From(_state[3..]);
        Marks.LandingSpeed = Marks.LandingVelocity.Length;
    }

    private void NextDrive(int way, double ambientPa, int own)
    {
        var setup = _numbers.Firing;
        if (_stage == FlightStage.Tube)
        {
            Begin(setup.HasWater ? FlightStage.Water : FlightStage.Gas, setup.GasM3, own);
        }
        else if (_stage == FlightStage.Water)
        {
            if (way == WaterDrive.WaterOut) Marks.WaterOutTime = _time;
            Marks.WaterLeftKg = way == WaterDrive.WaterOut ? 0 : Water.WaterKg(_state[own]);
            Begin(way == WaterDrive.WaterOut ? FlightStage.Gas : FlightStage.Coast, _state[own], own);
        }
        else
        {
            Marks.GasLeftKg = _state[own];
            _stage = FlightStage.Coast;
        }

        SkipSpentGas(ambientPa, own);
        if (_stage == FlightStage.Coast) Marks.JetEndTime = _time;
    }

    /// <summary>Gas that has no pressure left to drive with stays aboard.</summary>
    private void SkipSpentGas(double ambientPa, int own)
    {
        if (_stage == FlightStage.Gas && Gas.End(0, ambientPa, _state[own..]) <= 0) _stage = FlightStage.Coast;
    }

    /// <summary>Begins a stage with the gas at a volume [m³].</summary>
    private void Begin(FlightStage stage, double gasM3, int own)
    {
        var setup = _numbers.Firing;
        _stage = stage;
        if (stage != FlightStage.Gas)
        {
            _state[own] = gasM3;
            return;
        }

        // The temperature that pressure and mass give the leaving gas, as a firing has it; a closed gas of another law may show a slightly
        // different one.
        var aboard = setup.ClosedGas.ForStartVolume(setup.StartM3 * setup.AboardShare);
        _state[own + 1] = aboard.Pressure(gasM3) * gasM3 / (setup.GasConstant * setup.GasKg);
        _state[own] = setup.GasKg;
    }

    private OdeResult Integrate<TSystem, TEvents>(ref TSystem system, ref TEvents events, double until, int own, int points)
        where TSystem : struct, IOdeSystem, IDescribed
        where TEvents : struct, IOdeEvents
    {
        var state = _state[..system.Dimension];
        Span<double> absolute = stackalloc double[MostUnknowns];
        absolute = absolute[..system.Dimension];
        absolute.Fill(_relative);
        if (state.Length == own + 1) absolute[own] = _relative * _numbers.Firing.GasM3;
        if (state.Length == own + 2) (absolute[own], absolute[own + 1]) = (1e-2 * _relative * _numbers.Firing.GasKg, 100 * _relative);

        OdeResult result;
        if (_rows is null)
        {
            var none = new NoObserver();
            result = OdeDriver.Integrate(ref system, ref events, ref none, _time, until, state, _settings, absolute);
        }
        else
        {
            _rows.Add(system.Describe(_time, state));
            var recorder = new RowRecorder<TSystem>(system, _rows, points);
            result = OdeDriver.Integrate(ref system, ref events, ref recorder, _time, until, state, _settings, absolute);
        }

        _time = result.Time;
        Marks.Steps += result.AcceptedSteps;
        Marks.Rejected += result.RejectedSteps;
        Marks.Evaluations += result.Evaluations;
        return result;
    }

    /// <summary>Takes over what the events of a phase have marked; the cost is counted here.</summary>
    private void Take(in FlightMarks marks)
    {
        var (steps, rejected, evaluations) = (Marks.Steps, Marks.Rejected, Marks.Evaluations);
        Marks = marks;
        (Marks.Steps, Marks.Rejected, Marks.Evaluations) = (steps, rejected, evaluations);
    }

    private bool Reached(in OdeResult result, string where)
    {
        if (result.Status == OdeStatus.EndedByEvent) return true;
        Marks.Failure = result.Status == OdeStatus.Completed
            ? FormattableString.Invariant($"the {where} isn't over after an hour; check the inputs.")
            : $"the {where} could not be followed to its end. {result.Message}";
        return false;
    }
}
