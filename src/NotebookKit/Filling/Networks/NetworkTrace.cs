using NotebookKit.Numerics;
using NotebookKit.Numerics.Ode;

namespace NotebookKit.Filling.Networks;

/// <summary>What a run of a network left behind, in SI.</summary>
internal sealed class NetworkTrace
{
    private readonly NetworkModel _model;
    private readonly TrajectoryBuilder _states, _seen;
    private readonly Dictionary<string, double> _shutAt = [];
    private readonly Dictionary<int, double> _filledAt = [];

    private NetworkTrace(NetworkModel model)
    {
        _model = model;
        _states = new(model.Unknowns, 512);
        _seen = new(model.Nodes + model.Lines.Count, 512);
    }

    public int Count => _states.Count;

    /// <summary>Right-hand sides computed.</summary>
    public int Evaluations { get; private set; }

    /// <summary>The vessel that passed its rating, which ended the run; none where none did.</summary>
    public int? PassedRating { get; private set; }

    /// <summary>Why the integration ended early; none where it didn't.</summary>
    public string? Trouble { get; private set; }

    /// <summary>When valves were shut by their gauge, s.</summary>
    public IReadOnlyDictionary<string, double> ShutAt => _shutAt;

    /// <summary>When water that ran back had filled a line's hoses, s.</summary>
    public IReadOnlyDictionary<int, double> FilledAt => _filledAt;

    public double Seconds(int row) => _states.Time(row);

    public ReadOnlySpan<double> State(int row) => _states.State(row);

    public double Pascals(int row, int node) => _seen.State(row)[node];

    public double Flow(int row, int line) => _seen.State(row)[_model.Nodes + line];

    public static NetworkTrace Run(NetworkModel model, double seconds)
    {
        NetworkTrace trace = new(model);
        trace.Go(seconds);
        return trace;
    }

    /// <summary>Gauge of a vessel at given times, bar: every one of them ends a stretch, so nothing is read between rows.</summary>
    public static double[] GaugeAt(NetworkModel model, string vessel, IReadOnlyList<double> times)
    {
        NetworkTrace trace = new(model);
        trace.Go(times[^1], times);
        var node = model.Pad.Nodes.ToList().FindIndex(n => n.Name == vessel);
        var read = new double[times.Count];
        for (int i = 0, row = 0; i < read.Length; i++)
        {
            while (row < trace.Count - 1 && trace.Seconds(row) < times[i]) row++;
            read[i] = (trace.Pascals(row, node) - model.Pad.Ambient.Pascals) / 1e5;
        }

        return read;
    }

    private void Go(double seconds, IReadOnlyList<double>? stops = null)
    {
        var y = _model.Start();
        var tolerances = _model.Tolerances();
        OdeSettings settings = new() { RelativeTolerance = NetworkModel.StepTolerance(_model.Pad.Tolerance) };
        var system = new NetworkSystem(_model);
        var observer = new NetworkRecorder(_model, _states, _seen);
        double[] switches = [.. _model.Lines.SelectMany(l => l.Valves).SelectMany(v => v.Openings)
            .SelectMany(o => new[] { o.From.Seconds, o.To.Seconds }).Concat(stops ?? []).Where(t => t > 0
                && t < seconds).Distinct().Order(), seconds];
        int[] rated = [.. Enumerable.Range(0, _model.Stores.Count).Where(s => double.IsFinite(_model.Stores[s].RatedPa))];
        double t = 0;
        var run = WorkRun.Current;
        ShutByGauge(0, y);
        _model.Prepare(0, y);
        _states.Add(0, y);
        observer.Look(0, y);
        foreach (var until in switches)
        {
            while (t < until)
            {
                run.ThrowIfStopped();
                ShutByGauge(t, y);
                _model.Prepare(t, y);
                var gauges = Gauges();
                (int Line, int Kind)[] wet = [.. from line in Enumerable.Range(0, _model.Lines.Count)
                    where _model.Lines[line].WaterAt >= 0 || _model.Lines[line].FromUnderWater || _model.Lines[line].ToUnderWater
                    from kind in Enumerable.Range(0, NetworkModel.WaterEvents)
                    where _model.WaterEvent(line, kind, y) is < 0 and > -1
                    select (line, kind)];
                int[] safe = [.. rated.Where(s => _model.Gas(s, y).Pascals < _model.Stores[s].RatedPa)];
                var events = new NetworkEvents(_model, gauges, safe, wet);
                var result = RadauDriver.Integrate(ref system, ref events, ref observer, t, until, y, settings, tolerances);
                Evaluations += result.Evaluations;
                t = result.Time;
                if (!result.Succeeded)
                {
                    Trouble = result.Message;
                    return;
                }

                if (result.TerminalEvent < 0) continue;
                if (result.TerminalEvent < gauges.Length) Shut(gauges[result.TerminalEvent].Line, t);
                else if (result.TerminalEvent < gauges.Length + safe.Length)
                {
                    PassedRating = safe[result.TerminalEvent - gauges.Length];
                    return;
                }
                else
                {
                    var line = wet[result.TerminalEvent - gauges.Length - safe.Length].Line;
                    if (_model.Empty(line, y)) _filledAt.TryAdd(line, t);
                }
            }
        }
    }

    private (int Line, int Store, double Pascals)[] Gauges() =>
    [
        .. from line in Enumerable.Range(0, _model.Lines.Count)
           where !_model.Lines[line].ShutForGood
           from valve in _model.Lines[line].Valves
           where valve.ShutsAt is not null
           select (line, StoreOf(line, valve), valve.ShutsAt!.Value.ToAbsolute(_model.Pad.Ambient).Pascals),
    ];

    private void ShutByGauge(double t, double[] y)
    {
        foreach (var (line, store, pascals) in Gauges())
        {
            if (_model.Gas(store, y).Pascals >= pascals) Shut(line, t);
        }
    }

    private void Shut(int line, double t)
    {
        _model.Lines[line].ShutForGood = true;
        foreach (var valve in _model.Lines[line].Valves.Where(v => v.ShutsAt is not null)) _shutAt.TryAdd(valve.Name, t);
    }

    private int StoreOf(int line, ValvePart valve)
    {
        var watched = valve.Watches ?? _model.Lines[line].Link.To;
        return _model.Stores.ToList().FindIndex(s => s.Node.Name == watched);
    }
}
