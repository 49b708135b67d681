using NotebookKit.Numerics;
using NotebookKit.Provenance;

namespace NotebookKit.Charts.Explorers;

/// <summary>The computed settings of an explorer and what lies between them.</summary>
internal sealed class ExplorerGrid
{
    private readonly ExplorerState[] _states;

    private ExplorerGrid(string title, Axis x, Axis y, IReadOnlyList<ExplorerParameter> parameters, IReadOnlyList<ExplorerNumber> numbers,
        ExplorerState[] states)
    {
        (Title, X, Y, Parameters, Numbers, _states) = (title, x, y, parameters, numbers, states);
        CurvePoints = states.FirstOrDefault(s => s.RefusedBecause.Length == 0)?.X.Count ?? 0;
    }

    public string Title { get; }

    public Axis X { get; }

    public Axis Y { get; }

    public IReadOnlyList<ExplorerParameter> Parameters { get; }

    public IReadOnlyList<ExplorerNumber> Numbers { get; }

    public IReadOnlyList<ExplorerState> States => _states;

    /// <summary>Points of every curve.</summary>
    public int CurvePoints { get; }

    public static ExplorerGrid Compute(
        string title, Axis x, Axis y, IReadOnlyList<ExplorerParameter> parameters, IReadOnlyList<ExplorerNumber> numbers,
            Func<IReadOnlyList<double>, ExplorerState> model)
    {
        var states = new ExplorerState[parameters.Aggregate(1, (n, p) => n * p.Points)];
        // Each setting has its own place, so the answer doesn't depend on how many threads there are.
        var run = WorkRun.Current;
        Parallel.For(0, states.Length, run.Parallel(), node =>
        {
            run.ThrowIfStopped();
            states[node] = model(Setting(parameters, node));
        });
        var grid = new ExplorerGrid(title, x, y, parameters, numbers, states);
        InvalidDesignException.ThrowIfAny($"Explorer '{title}'", [.. grid.Validate()]);
        return grid;
    }

    /// <summary>The state at a setting inside the ranges.</summary>
    public ExplorerState At(IReadOnlyList<double> setting)
    {
        var places = setting.Select((v, d) => Parameters[d].PlaceOf(v)).ToArray();
        return Blend(places, linear: false) ?? Blend(places, linear: true) ?? Nearest(places);
    }

    /// <summary>Compares interpolation with the model between settings, at cells spread evenly over the grid.</summary>
    public ExplorerError FindError(Func<IReadOnlyList<double>, ExplorerState> model, int most)
    {
        // Where all is picked and nothing dragged, nothing is interpolated.
        if (Parameters.All(p => p.IsChoice)) return new ExplorerError(0, [.. Numbers.Select(_ => 0.0)], 0);
        var cells = Parameters.Aggregate(1, (n, p) => n * p.Cells);
        var errors = new (double[] Numbers, double Curve)?[most];
        var run = WorkRun.Current;
        Parallel.For(0, most, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            var setting = Between((int)((long)i * cells / most), i);
            var (found, truth) = (At(setting), model(setting));
            if (found.RefusedBecause.Length > 0 || truth.RefusedBecause.Length > 0) return;
            var peak = truth.Y.Select(Math.Abs).DefaultIfEmpty(0).Max();
            var curve = peak > 0 ? 100 * truth.Y.Zip(found.Y, (a, b) => Math.Abs(a - b)).Max() / peak : 0;
            errors[i] = ([.. truth.Numbers.Zip(found.Numbers, (a, b) => Math.Abs(a - b))], curve);
        });
        var known = errors.OfType<(double[] Numbers, double Curve)>().ToList();
        return known.Count == 0
            ? new ExplorerError(0, [.. Numbers.Select(_ => double.NaN)], double.NaN)
            : new ExplorerError(known.Count, [.. Numbers.Select((_, n) => known.Max(e => e.Numbers[n]))], known.Max(e => e.Curve));
    }

    /// <summary>Largest size of a number anywhere on the grid [unit of the number].</summary>
    public double MaximumPoints(int number) => _states.Where(s => s.RefusedBecause.Length == 0).Max(s => Math.Abs(s.Numbers[number]));

    private static double[] Setting(IReadOnlyList<ExplorerParameter> parameters, int node)
    {
        var setting = new double[parameters.Count];
        for (var d = parameters.Count - 1; d >= 0; d--)
        {
            setting[d] = parameters[d].At(node % parameters[d].Points);
            node /= parameters[d].Points;
        }
        return setting;
    }

    // Places inside a cell where cubics err most: in the middle where the fourth derivative rules, a quarter off it where the third does.
    private double[] Between(int cell, int check)
    {
        double[] places = [0.25, 0.5, 0.75];
        var setting = new double[Parameters.Count];
        for (var d = Parameters.Count - 1; d >= 0; d--)
        {
            var cells = Parameters[d].Cells;
            setting[d] = Parameters[d].At((cell % cells) + (Parameters[d].IsChoice ? 0 : places[check % 3]));
            cell /= cells;
            if (!Parameters[d].IsChoice) check /= 3;
        }
        return setting;
    }

    private ExplorerState? Blend(double[] places, bool linear)
    {
        List<(int Node, double Weight)> nodes = [(0, 1)];
        for (var d = 0; d < places.Length; d++)
        {
            var row = Parameters[d].WeightsAt(places[d], linear);
            var points = Parameters[d].Points;
            nodes = [.. nodes.SelectMany(n => row.Where(w => w.Weight != 0).Select(w => ((n.Node * points) + w.Index,
                n.Weight * w.Weight)))];
        }
        if (nodes.Any(n => _states[n.Node].RefusedBecause.Length > 0)) return null;
        double[] Sum(int count, Func<ExplorerState, IReadOnlyList<double>> column)
            => [.. Enumerable.Range(0, count).Select(i => nodes.Sum(n => n.Weight * column(_states[n.Node])[i]))];
        return new ExplorerState { X = Sum(CurvePoints, s => s.X), Y = Sum(CurvePoints, s => s.Y),
            Numbers = Sum(Numbers.Count, s => s.Numbers) };
    }

    // A cell with a refused corner is refused; the reason is that of the refused corner nearest to the place.
    private ExplorerState Nearest(double[] places)
    {
        List<(int Node, double Distance)> corners = [(0, 0)];
        for (var d = 0; d < places.Length; d++)
        {
            var (points, place, parameter) = (Parameters[d].Points, places[d], Parameters[d]);
            corners = [.. corners.SelectMany(c => parameter.WeightsAt(place,
                linear: true).Where(w => w.Weight != 0).Select(w
                => ((c.Node * points) + w.Index, c.Distance + Math.Abs(place - w.Index))))];
        }
        return _states[corners.Where(c => _states[c.Node].RefusedBecause.Length > 0).MinBy(c => c.Distance).Node];
    }

    private IEnumerable<Finding> Validate()
    {
        var answers = _states.Where(s => s.RefusedBecause.Length == 0).ToList();
        if (answers.Count == 0)
        {
            yield return Finding.Error($"The model refuses every setting: {_states[0].RefusedBecause}");
            yield break;
        }
        if (CurvePoints < 2 || answers.Any(s => s.X.Count != CurvePoints || s.Y.Count != CurvePoints))
            yield return Finding.Error("The curves of the settings don't all have the same number of points, at least 2; "
                + "sample them alike.");
        if (answers.Any(s => s.Numbers.Count != Numbers.Count))
            yield return Finding.Error($"The model doesn't give {Numbers.Count} numbers for every setting.");
        if (answers.Any(s => s.X.Concat(s.Y).Concat(s.Numbers).Any(v => !double.IsFinite(v))))
            yield return Finding.Error("The model gives a value that isn't a number; refuse that setting with a reason instead.");
    }
}
