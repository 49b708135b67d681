using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;

namespace NotebookKit.Flight.Staging;

/// <summary>A vehicle of two stages on a site, looked at and turned into the numbers that its equations of motion run on, so that it can be
/// flown at more than one end of its drag band without doing that again.</summary>
internal sealed class ReadyStages
{
    private readonly TwoStageVehicle _vehicle;
    private readonly LaunchSite _site;
    private readonly bool _isSixDegrees;
    private readonly List<Finding> _findings;
    private readonly Vehicle _stack;
    private readonly FlightNumbers _stackNumbers, _sustainerNumbers, _boosterNumbers;
    private readonly SeparationNumbers _separation;

    /// <exception cref="InvalidDesignException">Something can't be computed; carries all findings.</exception>
    public ReadyStages(TwoStageVehicle vehicle, LaunchSite site, bool isSixDegrees = false)
        : this(vehicle, site, isSixDegrees, Find(vehicle, site, isSixDegrees), vehicle.Stack(site), null)
    {
    }

    private ReadyStages(TwoStageVehicle vehicle, LaunchSite site, bool isSixDegrees, List<Finding> findings, Vehicle stack,
        (FiringSetup Booster, FiringSetup Sustainer)? firing)
    {
        (_vehicle, _site, _isSixDegrees, _findings, _stack) = (vehicle, site, isSixDegrees, findings, stack);
        // The stack is driven by the booster's charge; spent, the booster still carries what is left of the charge.
        var booster = firing?.Booster ?? stack.Setup(stack.Charge, site);
        var sustainer = firing?.Sustainer ?? vehicle.Sustainer.Setup(vehicle.Sustainer.Charge, site);
        _stackNumbers = stack.Numbers(site, booster);
        _sustainerNumbers = vehicle.Sustainer.Numbers(site, sustainer);
        _boosterNumbers = vehicle.Booster.Numbers(site, booster);
        _separation = vehicle.Numbers(site);
    }

    /// <summary>The same with both stages at an end of their drag bands, which nothing that was found depends on.</summary>
    public ReadyStages At(DragEnd end) => new(
        _vehicle with { Booster = _vehicle.Booster with { DragEnd = end }, Sustainer = _vehicle.Sustainer with { DragEnd = end } },
        _site, _isSixDegrees, _findings, _stack with { DragEnd = end }, (_stackNumbers.Firing, _sustainerNumbers.Firing));

    /// <summary>Flies the stack to separation, then the sustainer and the booster each to the ground.</summary>
    public TwoStageResult Fly()
    {
        var settings = _isSixDegrees ? FlightAccuracy.RecordedSixDegrees : FlightAccuracy.Recorded;
        var (rows, sustainerRows, boosterRows) = (new FlightRows(), new FlightRows(), new FlightRows());
        var marks = FlightRun.FlyStack(_stackNumbers, _isSixDegrees ? _stack.SixDegrees() : null, _separation, settings, rows,
            out var parting);
        if (Failure(marks, parting) is { } failure) return TwoStageResult.Failed(_vehicle, _site, _findings, failure);

        var sustainer = FlightRun.Continue(
            _sustainerNumbers, _isSixDegrees ? _vehicle.Sustainer.SixDegrees() : null, settings, parting, isDriven: true,
                StageSeparation.Marks(marks), sustainerRows);
        var booster = FlightRun.Continue(
            _boosterNumbers, null, FlightAccuracy.Recorded, parting, isDriven: false,
                StageSeparation.Marks(marks) with { JetEndTime = marks.JetEndTime }, boosterRows);
        return new(_vehicle, _site, _stack, rows, marks, parting,
            FlightReport.For(_vehicle.Sustainer, _site, sustainer, sustainerRows, _isSixDegrees, [], _stack),
            FlightReport.For(_vehicle.Booster, _site, booster, boosterRows, false, [], _stack, isSpent: true), _findings);
    }

    private static List<Finding> Find(TwoStageVehicle vehicle, LaunchSite site, bool isSixDegrees)
    {
        var findings = vehicle.Validate(site, isSixDegrees);
        InvalidDesignException.ThrowIfAny(vehicle.Name, findings);
        findings.AddRange(site.WindFindings());
        return findings;
    }

    private string? Failure(in FlightMarks marks, in AirStart parting) => StageSeparation.Fault(marks, parting) switch
    {
        SeparationFault.None => null,
        SeparationFault.OnGround =>
            $"the stages come down together: they separate by {_vehicle.Separation}, and the ground comes first. The "
            + $"sustainer still holds {_vehicle.Sustainer.Charge.Pressure}. Separate the stages sooner.",
        SeparationFault.AfterApogee =>
            "the stages separate after apogee, and the sustainer would drive itself into the ground. Separate the "
            + "stages sooner.",
        SeparationFault.WhileDriven => FormattableString.Invariant($"the stages would separate at {parting.Time:0.###} s, ")
            + "while the booster's jet still runs and presses them together. Separate the stages later.",
        _ => marks.HasLanded || marks.IsCharged ?
            $"both stages together: {marks.Failure} The sustainer still holds {_vehicle.Sustainer.Charge.Pressure}." : marks.Failure,
    };
}
