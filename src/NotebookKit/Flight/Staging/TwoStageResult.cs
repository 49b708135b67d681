using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Motion;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Staging;

/// <summary>A flight of two stages: together to their parting, then each to the ground. Source: see <see cref="Model"/>.</summary>
public sealed record TwoStageResult : Result
{
    private readonly string? _failure;
    private readonly StackAscent? _ascent;
    private readonly FlightResult? _sustainer, _booster;
    private readonly FlightMarks _marks;
    private readonly AirStart _parting;

    internal TwoStageResult(
        TwoStageVehicle vehicle, LaunchSite site, Vehicle stack, IReadOnlyList<FlightRow> rows, in FlightMarks marks, in AirStart parting,
        FlightResult sustainer, FlightResult booster, IReadOnlyList<Finding> findings)
    {
        Vehicle = vehicle;
        Site = site;
        _ascent = StackAscent.From(rows, stack.Parts.State().MassKg);
        (_sustainer, _booster, _marks, _parting) = (sustainer, booster, marks, parting);
        Findings =
        [
            .. findings,
            .. FlightReport.SayOfMargin(stack, rows, marks).Select(f => f with { Message = $"stack: {f.Message}" }),
            .. sustainer.Findings.Select(f => f with { Message = $"sustainer: {f.Message}" }),
            .. booster.Findings.Select(f => f with { Message = $"booster: {f.Message}" }),
        ];
    }

    private TwoStageResult(TwoStageVehicle vehicle, LaunchSite site, IReadOnlyList<Finding> findings, string failure)
    {
        Vehicle = vehicle;
        Site = site;
        _failure = failure;
        Findings = [.. findings, Finding.Error(failure)];
    }

    /// <summary>What was flown.</summary>
    public TwoStageVehicle Vehicle { get; }

    /// <summary>Where it was flown.</summary>
    public LaunchSite Site { get; }

    /// <summary>Both together up to their parting.</summary>
    /// <exception cref="InvalidOperationException">The stages never separated.</exception>
    public StackAscent Ascent => _ascent ?? throw Broken();

    /// <summary>The sustainer from separation on; its rail figures are those of the stack.</summary>
    /// <exception cref="InvalidOperationException">The stages never separated.</exception>
    public FlightResult Sustainer => _sustainer ?? throw Broken();

    /// <summary>The spent booster from separation on; its rail figures are those of the stack.</summary>
    /// <exception cref="InvalidOperationException">The stages never separated.</exception>
    public FlightResult Booster => _booster ?? throw Broken();

    /// <summary>Time from release to separation.</summary>
    /// <exception cref="InvalidOperationException">The stages never separated.</exception>
    public Duration SeparationTime => _failure is null ? _parting.Time.Seconds() : throw Broken();

    /// <summary>Height of separation above the pad.</summary>
    /// <exception cref="InvalidOperationException">The stages never separated.</exception>
    public Length SeparationHeight => _failure is null ? (-_parting.Position.Z).Metres() : throw Broken();

    /// <summary>Speed at separation.</summary>
    /// <exception cref="InvalidOperationException">The stages never separated.</exception>
    public Speed SeparationSpeed => _failure is null ? _parting.Velocity.Length.MetresPerSecond() : throw Broken();

    /// <summary>Height of the sustainer's top above the pad.</summary>
    /// <exception cref="InvalidOperationException">The flight failed.</exception>
    public Length Apogee => Sustainer.Apogee;

    /// <inheritdoc/>
    public override string Title => $"Flight of two stages, {Vehicle.Name} from {Site.Name}";

    /// <inheritdoc/>
    public override ResultStatus Status =>
        _sustainer is { Status: ResultStatus.Completed } && _booster is { Status: ResultStatus.Completed }
        ? ResultStatus.Completed : ResultStatus.Failed;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model
    {
        get
        {
            var flight = FlightModel.Card(Vehicle.Sustainer, Site, _sustainer?.Attitude is not null);
            return flight with
            {
                Name = $"Two stages; {flight.Name.ToLowerInvariant()}",
                Assumptions =
                [
                    $"The stages separate by {Vehicle.Separation}; both keep the velocity they have then, and the "
                    + "sustainer's jet starts at once.",
                    "During separation neither jet acts on the other stage, and the joint has no friction.",
                    "The booster's drag in the stack is that of the stack less that of the sustainer alone.",
                    "The sustainer keeps its pressure and temperature while the booster drives.",
                    .. flight.Assumptions,
                ],
            };
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => Status == ResultStatus.Failed ? [] :
    [
        new("End of the booster's jet", $"{Digits.Round(_marks.JetEndTime * 1000)} ms"),
        new("Stages separate", SeparationTime.Show(), $"at {SeparationHeight.Show()}, {SeparationSpeed.Show()}"),
        new("Booster comes down", Site.Wind.IsGiven ? Booster.Drift.Show() : "wind not given",
            $"{(Site.Wind.IsGiven ? "" : $"in still air {Booster.Drift.Show()} ")}from the pad, at {Booster.Figures.LandingSpeed.Show()} "
            + $"over the ground, after {Booster.Figures.LandingTime.Show()}"),
        .. Sustainer.Lines,
    ];

    /// <inheritdoc/>
    public override Working Working => TwoStageWorking.For(this);

    internal static TwoStageResult Failed(TwoStageVehicle vehicle, LaunchSite site, IReadOnlyList<Finding> findings, string failure)
        => new(vehicle, site, findings, failure);

    private InvalidOperationException Broken() => new($"{Title} has no separation: {_failure}");
}
