using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.ByHand;

/// <summary>Actions at the valve run one after the other, in SI.</summary>
internal sealed class HandRun
{
    private const double LongestSeconds = 3600;

    private static readonly OdeSettings Settings = new() { RelativeTolerance = 1e-8 };

    private readonly HandFill _plan;
    private readonly double _conductance;
    private readonly TrajectoryBuilder _rows = new(FillSystem.Unknowns);
    private readonly List<double> _seconds = [], _gauges = [], _kelvins = [];

    private HandRun(HandFill plan, double conductance) => (_plan, _conductance) = (plan, conductance);

    /// <summary>Time when each action is done, s.</summary>
    public IReadOnlyList<double> Seconds => _seconds;

    /// <summary>Gauge reading when each action is done, Pa above ambient.</summary>
    public IReadOnlyList<double> GaugesPa => _gauges;

    /// <summary>Gas temperature when each action is done, K.</summary>
    public IReadOnlyList<double> Kelvins => _kelvins;

    /// <summary>Action that couldn't be done, and why; none where all could.</summary>
    public (int Action, string Why)? Trouble { get; private set; }

    /// <summary>All rows: time, gauge above ambient, gas temperature.</summary>
    public IEnumerable<(double Seconds, double GaugePa, double Kelvins)> Rows(FillSystem system)
    {
        for (var i = 0; i < _rows.Count; i++)
        {
            var y = _rows.State(i).ToArray();
            yield return (_rows.Time(i), system.Gas(y).Pascals - _plan.Fill.Ambient.Pascals, y[FillSystem.Kelvins]);
        }
    }

    /// <summary>Runs a plan with conductance and film coefficient changed by factors.</summary>
    public static HandRun Of(HandFill plan, double conductance, double film)
    {
        var wall = plan.Followed.WallOrPlain;
        HandRun run = new(plan, conductance);
        run.Go(plan.Followed with { Wall = wall with { FilmFactor = wall.FilmFactor * film } });
        return run;
    }

    private void Go(PadFill fill)
    {
        double[] y = FillSimulation.StateOf(fill);
        double t = 0, ambientPa = fill.Ambient.Pascals, ratedPa = fill.Chamber.RatedPressure.Pascals + ambientPa;
        // As far as the supply goes where the reading that is asked for is the supply's own.
        var mostPa = _plan.Actions.Any(a => a.Gauge > fill.Supply) ? double.MaxValue : fill.Supply.Pascals - 2 * FillEvents.StallPa;
        var system = FillSimulation.SystemOf(fill with { Restrictor = Scaled(fill.Restrictor) });
        _rows.Add(0, y);
        for (var i = 0; i < _plan.Actions.Count && Trouble is null; i++)
        {
            var action = _plan.Actions[i];
            switch (action.Kind)
            {
                case HandActionKind.OpenTo:
                    // The very last pascals before the supply's own pressure take for ever; nobody sees them on a gauge.
                    var goalPa = Math.Min(action.Gauge!.Value.Pascals, mostPa) + ambientPa;
                    if (system.Gas(y).Pascals >= goalPa) break;
                    if (!Step(ref system, y, ref t, LongestSeconds, true, new(goalPa, 0))) Trouble = (i, NotReached(action, system, y));
                    break;
                case HandActionKind.Hold when action.Cooled is { } above:
                    var restK = fill.Temperature.Kelvins + above.Kelvins;
                    if (y[FillSystem.Kelvins] > restK && !Step(ref system, y, ref t, LongestSeconds, false, new(0, restK)))
                        Trouble = (i, "the gas doesn't cool that far within an hour: hold to a higher temperature");
                    break;
                case HandActionKind.Hold:
                    Step(ref system, y, ref t, action.Time.Seconds, false, default);
                    break;
                case HandActionKind.Clicks:
                    for (var k = 0; k < action.Count && Trouble is null; k++)
                    {
                        if (Step(ref system, y, ref t, action.Click.Open.Seconds, true, new(ratedPa + 1, 0)))
                            Trouble = (i, $"click {k + 1} takes the vessel past its rated pressure of {fill.Chamber.RatedPressure}: "
                                + $"click less "
                                + "often or shorter");
                        else Step(ref system, y, ref t, action.Click.Shut.Seconds, false, default);
                    }

                    break;
                default:
                    system = FillSimulation.SystemOf(fill with { Restrictor = Scaled(action.Passage!) });
                    break;
            }

            _seconds.Add(t);
            _gauges.Add(system.Gas(y).Pascals - ambientPa);
            _kelvins.Add(y[FillSystem.Kelvins]);
        }
    }

    // True where what was waited for came about.
    private bool Step(ref FillSystem system, double[] y, ref double t, double seconds, bool open, HandWait wait)
    {
        system.Open = open;
        var events = new HandEvents(system, wait);
        var observer = new TrajectoryRecorder(_rows, 2);
        var result = OdeDriver.Integrate(ref system, ref events, ref observer, t, t + seconds, y, Settings, FillSimulation.Tolerances);
        var end = t + seconds;
        t = result.Time;
        if (!result.Succeeded) throw new Provenance.InvalidDesignException("Fill by hand", [Provenance.Finding.Error(result.Message)]);
        // Level with the supply: nothing more comes in until the click is over. Whoever waits for a pressure waits in vain.
        if (result.TerminalEvent == HandEvents.Stalled && seconds < LongestSeconds) Step(ref system, y, ref t, end - t, false, default);
        return result.TerminalEvent == HandEvents.Come;
    }

    private string NotReached(HandAction action, FillSystem system, double[] y) =>
        $"{action.Gauge} isn't reached: the gauge stays at "
        + $"{GaugePressure.FromPascals(system.Gas(y).Pascals - _plan.Fill.Ambient.Pascals)}. Use a fuller cylinder, or raise the "
            + $"regulator within "
        + "the rating";

    private IRestrictor Scaled(IRestrictor passage) => _conductance == 1 ? passage : new SonicRestrictor(
        SonicConductance.FromCubicMetresPerSecondPascal(passage.Conductance.CubicMetresPerSecondPascal * _conductance),
        Math.Clamp(passage.CriticalRatio, 0, 0.7));
}
