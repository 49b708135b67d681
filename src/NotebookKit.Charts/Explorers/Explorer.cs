using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Charts.Explorers;

/// <summary>
/// A figure that answers while it is dragged, with no notebook behind it: the model is computed beforehand on a grid of settings, and the
/// page interpolates between them. How far off that was found to be is stated beside it.
/// </summary>
public sealed record Explorer
{
    internal const int ErrorChecks = 96;

    private readonly ExplorerGrid _grid;

    private Explorer(ExplorerGrid grid, ExplorerError error, Func<IReadOnlyList<double>, ExplorerState> model)
    {
        _grid = grid;
        Error = error;
        Model = model;
    }

    /// <summary>What it shows.</summary>
    public string Title => _grid.Title;

    /// <summary>What is dragged.</summary>
    public IReadOnlyList<ExplorerParameter> Parameters => _grid.Parameters;

    /// <summary>What is shown beside the curve.</summary>
    public IReadOnlyList<ExplorerNumber> Numbers => _grid.Numbers;

    /// <summary>Horizontal axis of the curve.</summary>
    public Axis X => _grid.X;

    /// <summary>Vertical axis of the curve.</summary>
    public Axis Y => _grid.Y;

    /// <summary>The model itself: its answer for one setting, the parameters in their order and unit. For whoever can compute while the
    /// reader drags.</summary>
    public Func<IReadOnlyList<double>, ExplorerState> Model { get; }

    /// <summary>How far interpolation is from the model.</summary>
    public ExplorerError Error { get; }

    /// <summary>The dangers that apply; shown below.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>What stays fixed, and which model answers; a sentence or two shown below the title.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Design and model by which a page beside the live page lets the library answer; none where only the grid is known.</summary>
    public ExplorerBase? Base { get; init; }

    /// <summary>Computes the grid, on all cores, and then how good interpolation on it is.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="x">Horizontal axis of the curve.</param>
    /// <param name="y">Vertical axis of the curve.</param>
    /// <param name="parameters">What is dragged; 1 to 4.</param>
    /// <param name="numbers">What is shown beside the curve.</param>
    /// <param name="model">The answer for one setting, the parameters in their order and unit. It is called from several threads at
    /// once.</param>
    /// <exception cref="InvalidDesignException">A parameter is out of range, the grid is too large, or the model's answers don't fit
    /// together.</exception>
    public static Explorer Build(
        string title, Axis x, Axis y, IReadOnlyList<ExplorerParameter> parameters, IReadOnlyList<ExplorerNumber> numbers,
            Func<IReadOnlyList<double>, ExplorerState> model)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentNullException.ThrowIfNull(numbers);
        ArgumentNullException.ThrowIfNull(model);
        InvalidDesignException.ThrowIfAny($"Explorer '{title}'", [.. Validate(parameters, numbers)]);
        var grid = ExplorerGrid.Compute(title, x, y, parameters, numbers, model);
        return new Explorer(grid, grid.FindError(model, ErrorChecks), model);
    }

    /// <summary>What the figure shows for a setting, interpolated as the page does it.</summary>
    /// <param name="setting">The parameters in their order [each in its own unit]; inside their ranges.</param>
    /// <exception cref="OutOfRangeException">A parameter is outside its range.</exception>
    public ExplorerState At(params IReadOnlyList<double> setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        if (setting.Count != Parameters.Count) throw new InvalidDesignException($"Explorer '{Title}'",
            [Finding.Error($"There are {setting.Count} values for {Parameters.Count} parameters; give one each.")]);
        foreach (var (value, parameter) in setting.Zip(Parameters))
            new ValidRange<double>(parameter.From, parameter.To).Check(value, $"{parameter.Name} in {parameter.Unit}",
                "The figure was computed for this range only.");
        return _grid.At(setting);
    }

    /// <summary>The figure as a piece of HTML with its data; it comes alive where <see cref="ExplorerScript.Text"/> runs after
    /// it.</summary>
    public string ToHtml() => ExplorerHtml.Write(this, _grid);

    /// <summary>The error of interpolation in words.</summary>
    public string ErrorText()
    {
        if (Parameters.All(p => p.IsChoice)) return "Every setting was computed; nothing is interpolated.";
        if (Error.Checked == 0) return "How far interpolation is off could not be checked.";
        var numbers = Numbers.Select((n, i) => $"{n.Name.ToLowerInvariant()} {Shown(Error.Numbers[i], _grid.MaximumPoints(i))} {n.Unit}");
        return $"Between the computed settings values are interpolated. Maximum error found at {Error.Checked} settings between them: "
            + $"{string.Join(", ", numbers)}, curve {Shown(Error.CurvePercent, 100)} % of its peak.";

        // Rounding noise is no error that anybody could see.
        static string Shown(double error, double largest) => error < 1e-6 * largest ? "0" : Digits.Round(error, 2);
    }

    /// <summary>Title, parameters, and the error of interpolation.</summary>
    public override string ToString() =>
        $"{Title}: {string.Join(", ", Parameters.Select(p => p.IsChoice ?
            $"pick {p.Name.ToLowerInvariant()} ({string.Join("; ", p.Choices)})"
            : $"drag {p.Name.ToLowerInvariant()} ({Digits.Round(p.From)} to {Digits.Round(p.To)} {p.Unit})"))}. {ErrorText()}";

    private static IEnumerable<Finding> Validate(IReadOnlyList<ExplorerParameter> parameters, IReadOnlyList<ExplorerNumber> numbers)
    {
        if (parameters.Count is < 1 or > 4) yield return Finding.Error($"There are {parameters.Count} parameters to drag; it "
            + "must be 1 to 4.");
        foreach (var finding in parameters.SelectMany(p => p.Validate())) yield return finding;
        foreach (var number in numbers.Where(n => string.IsNullOrWhiteSpace(n.Unit)))
            yield return Finding.Error($"'{number.Name}' has no unit. Give one; \"-\" says that it is a plain ratio.");
        var settings = parameters.Aggregate(1L, (n, p) => n * Math.Max(p.Points, 1));
        if (settings > 20_000) yield return Finding.Error($"There are {settings} settings to compute; take fewer values a parameter, 20 "
            + "000 in all at most.");
    }
}

/// <summary>How far interpolation was found to be from the model, at settings between the computed ones.</summary>
/// <param name="Checked">How many settings were computed to find out.</param>
/// <param name="Numbers">Largest error of each number [unit of the number].</param>
/// <param name="CurvePercent">Largest error of the curve as a share of its peak [%].</param>
public sealed record ExplorerError(int Checked, IReadOnlyList<double> Numbers, double CurvePercent);

/// <summary>A number that is shown beside the curve.</summary>
/// <param name="Name">What it is: "Apogee".</param>
/// <param name="Unit">Its unit; "-" for a plain ratio.</param>
public sealed record ExplorerNumber(string Name, string Unit);
