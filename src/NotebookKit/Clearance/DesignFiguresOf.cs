using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Stability;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Clearance;

/// <summary>The figures of a design, each step of the chain once, and the reason where a step gives none.</summary>
internal sealed class DesignFiguresOf(Design design)
{
    private readonly Dictionary<string, (object? Value, string Reason)> _steps = new(StringComparer.Ordinal);

    /// <summary>What the steps found, errors of steps that failed apart.</summary>
    public IReadOnlyList<Finding> Findings =>
        [.. _steps.Values.Select(s => s.Value).OfType<IResult>().SelectMany(r => r.Findings).Distinct()];

    public Rating? RatingOf(DesignStage stage, out string reason) => Step<Rating>($"rating of {stage.Name}", () => stage.Rating,
        out reason);

    /// <summary>A figure, the worst of its stages on a side; none, with the reason, where it can't be computed.</summary>
    public object? Of(string figure, Limit side, out string reason)
    {
        reason = "";
        var worst = side == Limit.AtLeast ? -1 : 1;
        switch (figure)
        {
            case DesignFigures.Rated: return OfRatings(r => r.WorkingPressure, worst, ref reason);
            case DesignFigures.Proof: return OfRatings(r => r.ProofPressure, worst, ref reason);
            case DesignFigures.DesignBurst: return OfRatings(r => r.DesignBurst, worst, ref reason);
            case DesignFigures.Fill: return OfStages((s, _) => s.FillPressure, worst, ref reason);
            case DesignFigures.FillOverRated: return OfStages((s, r) => s.FillPressure is { } fill ? fill / r.WorkingPressure : null, worst,
                ref reason);
            case DesignFigures.Chance: return OfStages((s, r) => s.FillPressure is { } fill ? r.RiskAt(fill).Chance : null, worst,
                ref reason);
            case DesignFigures.Margin: return Margin(out reason)?.MinimumMargin;
            case DesignFigures.DryMass:
                var masses = Step<List<Mass>>("masses", () => [.. design.Stages.Select(s => s.Masses.MassProperties().Mass)], out reason);
                return masses?.Aggregate((a, b) => a + b);
            case DesignFigures.HighestApogee: return OfFlight("light drag", light: true, f => f.Apogee, worst, out reason);
            case DesignFigures.Apogee: return OfFlight("flight", light: false, f => f.Apogee, 1, out reason);
            case DesignFigures.ApogeeTime: return OfFlight("flight", light: false, f => f.ApogeeTime, 1, out reason);
            case DesignFigures.RailSpeed: return OfFlight("flight", light: false, f => f.RailExitSpeed, 1, out reason);
            case DesignFigures.TopSpeed: return OfFlight("flight", light: false, f => f.MaximumSpeed, 1, out reason);
            case DesignFigures.Descent: return OfFlight("flight", light: false, f => f.DescentSpeed, worst, out reason, all: true);
            case DesignFigures.Landing: return OfFlight("flight", light: false, f => f.LandingSpeed, worst, out reason, all: true);
            case DesignFigures.Drift when design.Site is { Wind.IsGiven: false }:
                reason = ClearanceFindings.WindIsNotGiven();
                return null;
            default: return OfFlight("flight", light: false, f => f.Drift, worst, out reason, all: true);
        }
    }

    private StabilityResult? Margin(out string reason) => Step<StabilityResult>("stability", () =>
    {
        if (design.Stages.Count == 1) return design.Vehicle.Stability();
        // Both together, and the sustainer alone: the smaller margin counts.
        var whole = design.TwoStageVehicle;
        StabilityResult[] both = [whole.Stack(Site()).Stability(), whole.Sustainer.Stability()];
        return both.MinBy(s => s.MinimumMargin)!;
    }, out reason);

    private object? OfFlight(string step, bool light, Func<FlightFigures, object> figure, int worst, out string reason, bool all = false)
    {
        var figures = Step<List<FlightFigures>>($"{step}, figures", () =>
        {
            var site = Site();
            if (design.Stages.Count == 1)
            {
                var flight = (light ? design.Vehicle with { DragEnd = DragEnd.Low } : design.Vehicle).Fly(site);
                _steps[step] = (flight, "");
                return [flight.Figures];
            }

            var pair = design.TwoStageVehicle;
            var both = (light ? pair with
            {
                Booster = pair.Booster with { DragEnd = DragEnd.Low }, Sustainer = pair.Sustainer with { DragEnd = DragEnd.Low },
            } : pair).Fly(site);
            _steps[step] = (both, "");
            return [both.Sustainer.Figures, both.Booster.Figures];
        }, out reason);
        return figures is null ? null : Worst(figures.Take(all ? 2 : 1).Select(figure), worst);
    }

    private Flight.Site.LaunchSite Site() => design.Site ?? throw new InvalidOperationException(ClearanceFindings.SiteIsNotGiven());

    private object? OfRatings(Func<Rating, object> figure, int worst, ref string reason) => OfStages((_, r) => figure(r), worst,
        ref reason);

    private object? OfStages(Func<DesignStage, Rating, object?> figure, int worst, ref string reason)
    {
        List<object> values = [];
        foreach (var stage in design.Stages)
        {
            var why = "";
            var rating = RatingOf(stage, out var unrated);
            var value = rating is null ? null : Step<object>($"figure of {stage.Name} {figure.Method.Name}", () => figure(stage, rating)
                ?? throw new InvalidOperationException(ClearanceFindings.FillIsNotGiven(stage.Name)), out why);
            if (value is null)
            {
                reason = unrated.Length > 0 ? unrated : why;
                return null;
            }

            values.Add(value);
        }

        return Worst(values, worst);
    }

    // Figures of one kind have an order.
    private static object? Worst(IEnumerable<object> values, int worst) =>
        values.Aggregate((a, b) => worst * Order(a, b) >= 0 ? a : b);

    /// <summary>The order of two figures of one kind: below 0, 0 or above 0.</summary>
    public static int Order(object one, object other) => one is GaugePressure pressure && other is GaugePressure against
        ? pressure.Pascals.CompareTo(against.Pascals) : System.Collections.Comparer.Default.Compare(one, other);

    private T? Step<T>(string name, Func<T> compute, out string reason) where T : class
    {
        if (!_steps.TryGetValue(name, out var step))
        {
            try
            {
                step = (compute(), "");
            }
            catch (InvalidDesignException wrong)
            {
                step = (null, string.Join(' ', wrong.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => f.Message)));
            }
            catch (Exception wrong) when (wrong is ArgumentException or InvalidOperationException)
            {
                step = (null, wrong.Message);
            }

            _steps[name] = step;
        }

        reason = step.Reason;
        return (T?)step.Value;
    }
}
