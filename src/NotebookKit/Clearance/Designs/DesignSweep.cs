using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Record.Givens;
using UnitsNet;

namespace NotebookKit.Clearance.Designs;

/// <summary>A design computed anew for every combination of some of its values, each held against the requirements.</summary>
/// <remarks>Source: none of its own; each design is checked as <see cref="DesignCheck"/> says.</remarks>
public sealed record DesignSweep : Result
{
    /// <summary>Most designs of one sweep.</summary>
    public const int MostDesigns = 10_000;

    private static readonly string[] Shown = [DesignFigures.Apogee, DesignFigures.Rated, DesignFigures.DryMass, DesignFigures.Drift,
        DesignFigures.Margin];

    private readonly IReadOnlyList<string> _shared;

    private DesignSweep(Design design, IReadOnlyList<SweepAxis> axes, IReadOnlyList<SweptDesign> designs)
    {
        (Design, Axes, Designs) = (design, axes, designs);
        var holding = designs.Count(d => d.Holds);
        // What several designs have in common is said once.
        _shared = [.. designs.Select(d => d.Why).Where(w => w.Length > 0).GroupBy(w => w, StringComparer.Ordinal)
            .Where(g => g.Count() > 1).Select(g => g.Key)];
        Findings = [ClearanceFindings.SweepCounted(holding, designs.Count),
            .. _shared.Select((why, i) => ClearanceFindings.SharedReason(i + 1, why))];
    }

    /// <summary>The design that it starts from.</summary>
    public Design Design { get; }

    /// <summary>What is varied; the first varies slowest.</summary>
    public IReadOnlyList<SweepAxis> Axes { get; }

    /// <summary>Every combination, the last axis fastest.</summary>
    public IReadOnlyList<SweptDesign> Designs { get; }

    /// <summary>Names of the figures that a column or a requirement may be of: "apogee", "drift".</summary>
    public static IReadOnlyList<string> FigureNames => [.. DesignFigures.Kinds.Keys];

    /// <inheritdoc/>
    public override string Title => $"Sweep of {Design.Name} over {string.Join(" and ", Axes.Select(a => a.Name))}";

    /// <inheritdoc/>
    public override ModelCard Model => new("Check of every combination",
        ["Every design is computed anew from its values; requirements are those of the design's file."], "As the check of a design.",
        [Source.CommonPractice("One check a combination")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Designs.Select(d => new ResultLine(string.Join(", ", Axes.Zip(d.Labels, (a, v) => $"{a.Name} {v}")),
            d.Holds ? "all hold" : d.Outcomes is null ? "can't be made" : "DOES NOT HOLD",
            string.Join("; ", Shown.Select(f => (f, Value: d.Figure(f))).Where(f => f.Value is not null)
                .Select(f => $"{f.f} {GivenText.Result(f.Value!)}").Append(d.Outcomes is null ? "" : d.Against).Append(Reason(d))
                .Where(t => t.Length > 0)))),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override Working Working => new("Each design shows its own working: its check.", []);

    /// <summary>One figure over all designs, in the unit that its first value has; not a number where it can't be computed.</summary>
    /// <param name="figure">Its name, one of <see cref="FigureNames"/>.</param>
    /// <exception cref="InvalidDesignException">There is no such figure.</exception>
    public Series Column(string figure)
    {
        if (!DesignFigures.Kinds.ContainsKey(figure))
            throw new InvalidDesignException(Title, [ClearanceFindings.NoSuchFigure(figure, FigureNames)]);
        var values = Designs.Select(d => d.Figure(figure)).ToList();
        var unit = values.OfType<IQuantity>().FirstOrDefault();
        var symbol = unit is not null ? unit.ToString("a", System.Globalization.CultureInfo.InvariantCulture)
            : values.Any(v => v is GaugePressure) ? "bar gauge" : "-";
        return new($"{char.ToUpperInvariant(figure[0])}{figure[1..]}", symbol, [.. values.Select(v => v switch
        {
            IQuantity quantity => (double)quantity.As(unit!.Unit),
            GaugePressure gauge => gauge.Bar,
            double number => number,
            _ => double.NaN,
        })]);
    }

    /// <summary>The limit of a requirement [unit of its figure's column].</summary>
    /// <param name="requirement">One of the design's requirements.</param>
    /// <exception cref="InvalidDesignException">It is of no figure.</exception>
    public double LimitOf(DesignRequirement requirement)
    {
        ArgumentNullException.ThrowIfNull(requirement);
        var unit = Designs.Select(d => d.Figure(requirement.Of)).OfType<IQuantity>().FirstOrDefault()?.Unit;
        return requirement.Value switch
        {
            IQuantity quantity => (double)quantity.As(unit ?? quantity.Unit),
            GaugePressure gauge => gauge.Bar,
            double number => number,
            _ => throw new InvalidDesignException(Title, [ClearanceFindings.NoSuchFigure(requirement.Of, FigureNames)]),
        };
    }

    /// <summary>One value of the design over all designs: its numbers, or its place in the list where it has none.</summary>
    /// <param name="axis">Which axis; 0 to the number of axes less one.</param>
    public Series Input(int axis)
    {
        var texts = Designs.Select(d => d.Values[axis]).ToList();
        var numbers = texts.Select(t => t.Split(' ', 2)).Select(p => (double.TryParse(p[0], System.Globalization.NumberStyles.Float,
            System.Globalization.CultureInfo.InvariantCulture, out var n) ? n : double.NaN, Unit: p.Length > 1 ? p[1] : "-")).ToList();
        return numbers.TrueForAll(n => !double.IsNaN(n.Item1) && n.Unit == numbers[0].Unit)
            ? new(Axes[axis].Name, numbers[0].Unit, [.. numbers.Select(n => n.Item1)])
            : new($"{Axes[axis].Name}, in the order given", "-", [.. texts.Select(t => (double)Axes[axis].Values.ToList().IndexOf(t) + 1)]);
    }

    internal static DesignSweep Of(Design design, IReadOnlyList<SweepAxis> axes)
    {
        var count = axes.Aggregate(1L, (n, a) => Math.Min(n * a.Values.Count, int.MaxValue));
        if (axes.Count == 0 || count is 0 or > MostDesigns)
            throw new InvalidDesignException($"Sweep of {design.Name}", [ClearanceFindings.SweepTooLarge(count, MostDesigns)]);
        if (axes.Select(a => a.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count() < axes.Count)
            throw new InvalidDesignException($"Sweep of {design.Name}", [ClearanceFindings.SweptTwice()]);
        // A name that means nothing is one mistake, not one for every design.
        foreach (var axis in axes) design.With(axis.Name, axis.Values[0]);
        var run = WorkRun.Current;
        var designs = new SweptDesign[(int)count];
        var done = 0;
        Parallel.For(0, designs.Length, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            var left = i;
            var (values, labels) = (new string[axes.Count], new string[axes.Count]);
            for (var k = axes.Count - 1; k >= 0; k--)
            {
                var at = left % axes[k].Values.Count;
                (values[k], labels[k]) = (axes[k].Values[at], axes[k].Labels[at]);
                left /= axes[k].Values.Count;
            }

            designs[i] = One(design, axes, values) with { Labels = labels };
            run.Tell(new WorkDone("designs", Interlocked.Increment(ref done), designs.Length));
        });
        return new(design, axes, designs);
    }

    // Of two stages the worse one is shown: the smaller of what has to be large.
    internal static Limit WorseSide(string figure) => figure is DesignFigures.Rated or DesignFigures.DesignBurst or DesignFigures.Proof
        or DesignFigures.Margin or DesignFigures.RailSpeed or DesignFigures.Flutter or DesignFigures.SheetFactor
        or DesignFigures.BondFactor ? Limit.AtLeast : Limit.AtMost;

    private string Reason(SweptDesign design) => _shared.Contains(design.Why) ? $"reason {_shared.ToList().IndexOf(design.Why) + 1}"
        : design.Why;

    private static SweptDesign One(Design design, IReadOnlyList<SweepAxis> axes, string[] values)
    {
        try
        {
            for (var k = 0; k < values.Length; k++) design = design.With(axes[k].Name, values[k]);
            var check = new DesignCheck(design);
            var figures = new Dictionary<string, object>(StringComparer.Ordinal);
            foreach (var name in DesignFigures.Kinds.Keys.Where(n => !DesignFigures.IsCostly(n)
                || design.Requirements.Any(r => r.Of == n)))
                if (check.Figures.Of(name, WorseSide(name), out _) is { } value) figures[name] = value;
            return new(values, check.Outcomes, "") { Figures = figures };
        }
        catch (DesignFileException refused)
        {
            return new(values, null, refused.Message);
        }
        catch (InvalidDesignException refused)
        {
            return new(values, null, refused.Message);
        }
    }
}
