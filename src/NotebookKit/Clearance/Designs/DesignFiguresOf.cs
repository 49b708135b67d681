using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Clearance.Cards;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Parts;
using NotebookKit.Flight.Design;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Stability;
using NotebookKit.Flight.Staging;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Clearance.Designs;

/// <summary>The figures of a design, each step of the chain once, and the reason where a step gives none.</summary>
internal sealed class DesignFiguresOf(Design design)
{
    private const string Fins = "fin structure", Fill = "pad";

    private readonly Dictionary<string, (object? Value, string Reason)> _steps = new(StringComparer.Ordinal);

    // Both ends of the drag band are flown of one vehicle made ready once.
    private ReadyFlight? _ready;
    private ReadyStages? _readyStages;

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
            case DesignFigures.Rated: return OfRatings(figure, r => r.WorkingPressure, worst, ref reason);
            case DesignFigures.Proof: return OfRatings(figure, r => r.ProofPressure, worst, ref reason);
            case DesignFigures.DesignBurst: return OfRatings(figure, r => r.DesignBurst, worst, ref reason);
            case DesignFigures.Fill: return OfStages(figure, (s, _) => s.FillPressure, worst, ref reason);
            case DesignFigures.FillOverRated:
                return OfStages(figure, (s, r) => s.FillPressure is { } fill ? fill / r.WorkingPressure : null, worst, ref reason);
            case DesignFigures.Chance:
                return OfStages(figure, (s, r) => s.FillPressure is { } fill ? r.RiskAt(fill).Chance : null, worst, ref reason);
            case DesignFigures.Margin: return Margin(out reason)?.MinimumMargin;
            case DesignFigures.DryMass:
                var masses = Step<List<Mass>>("masses", () => [.. design.Stages.Select(s => s.Masses.MassProperties().Mass)], out reason);
                return masses?.Aggregate((a, b) => a + b);
            case DesignFigures.HighestApogee: return OfFlight(light: true, f => f.Apogee, worst, out reason);
            case DesignFigures.Apogee: return OfFlight(light: false, f => f.Apogee, 1, out reason);
            case DesignFigures.ApogeeTime: return OfFlight(light: false, f => f.ApogeeTime, 1, out reason);
            case DesignFigures.RailSpeed: return OfFlight(light: false, f => f.RailExitSpeed, 1, out reason);
            case DesignFigures.TopSpeed: return OfFlight(light: false, f => f.MaximumSpeed, 1, out reason);
            case DesignFigures.Descent: return OfFlight(light: false, f => f.DescentSpeed, worst, out reason, all: true);
            case DesignFigures.Landing: return OfFlight(light: false, f => f.LandingSpeed, worst, out reason, all: true);
            case DesignFigures.FillTime: return OfEquipment(figure, Fill, s => s.PadFill,
                (fill, _, _) => fill.Run() is var run ? run.DurationWithWater ?? run.Duration : null, worst, out reason);
            case DesignFigures.Flutter: return OfFins(figure, f => f.Flutter.Margin, out reason);
            case DesignFigures.SheetFactor: return OfFins(figure, f => f.SheetFactor, out reason);
            case DesignFigures.BondFactor: return OfFins(figure, f => f.BondFactor, out reason);
            case DesignFigures.OpeningLoad: return OfEquipment(figure, "recovery.canopy", s => s.Canopy, (_, s, f) => Load(s, f), 1,
                out reason);
            case DesignFigures.OpeningShare: return OfEquipment(figure, "recovery.gear", s => s.RecoveryGear,
                (gear, s, f) => Load(s, f) / gear.Check().AllowedLoad, 1, out reason);
            case DesignFigures.Scatter: return Scatter(out reason)?.Landings!.Circle(95.Percent());
            case DesignFigures.OffField:
                if (design.Site is { Field: null })
                {
                    reason = ClearanceFindings.FieldIsNotGiven();
                    return null;
                }

                return Scatter(out reason)?.OffField?.High.DecimalFractions;
            case DesignFigures.Drift when design.Site is { Wind.IsGiven: false }:
                reason = ClearanceFindings.WindIsNotGiven();
                return null;
            default: return OfFlight(light: false, f => f.Drift, worst, out reason, all: true);
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

    private object? OfFlight(bool light, Func<FlightFigures, object> figure, int worst, out string reason, bool all = false)
        => Flown(light, out reason) is not { } figures ? null : Worst(figures.Take(all ? 2 : 1).Select(figure), worst);

    // The sustainer's figures before the booster's.
    private List<FlightFigures>? Flown(bool light, out string reason)
    {
        var step = light ? "light drag" : "flight";
        return Step<List<FlightFigures>>($"{step}, figures", () =>
        {
            var site = Site();
            if (design.Stages.Count == 1)
            {
                _ready ??= new(design.Vehicle, site);
                var flight = (light ? _ready.At(DragEnd.Low) : _ready).Fly();
                _steps[step] = (flight, "");
                return [flight.Figures];
            }

            _readyStages ??= new(design.TwoStageVehicle, site);
            var both = (light ? _readyStages.At(DragEnd.Low) : _readyStages).Fly();
            _steps[step] = (both, "");
            return [both.Sustainer.Figures, both.Booster.Figures];
        }, out reason);
    }

    // A figure of what a stage is equipped with; the worst of the stages that give it.
    private object? OfEquipment<T>(string figure, string key, Func<DesignStage, T?> part,
        Func<T, DesignStage, FlightFigures, object?> compute, int worst, out string reason) where T : class
    {
        List<object> values = [];
        for (var i = 0; i < design.Stages.Count; i++)
        {
            var stage = design.Stages[i];
            var given = Step<T>($"{key} of {stage.Name}", () => part(stage)
                ?? throw new InvalidOperationException(ClearanceFindings.EquipmentIsNotGiven(figure, stage.Name, key)), out reason);
            if (given is null) return null;
            // A fill is computed without a flight.
            var flight = key == Fill ? [] : Flown(light: key == Fins, out reason);
            var own = flight is { Count: > 0 } ? flight[^(i + 1)] : null!;
            var value = flight is null ? null : Step<object>($"{figure} of {stage.Name}", () => compute(given, stage, own)
                ?? throw new InvalidOperationException(ClearanceFindings.EquipmentIsNotGiven(figure, stage.Name, key)), out reason);
            if (value is null) return null;
            values.Add(value);
        }

        reason = "";
        return Worst(values, worst);
    }

    private object? OfFins(string figure, Func<FinStructureResult, double> value, out string reason) =>
        OfEquipment(figure, Fins, s => s.FinSheet, (sheet, s, _) => s.Body is not { Fins.Count: > 0 } body ? null
            // The booster's fins see the speed of both together, which the sustainer's flight has.
            : Enumerable.Range(0, body.Fins.Count).Min(i => value(body.FinStructure(sheet, s.FinBond!,
                Flown(light: true, out var _)!.Max(f => f.MaximumSpeed), s.FinGust!.Value,
                new(Site().Pressure, Site().Temperature), i))), -1, out reason);

    private Force Load(DesignStage stage, FlightFigures figures) => (figures.Opening ?? (figures.OpeningSpeed is { MetersPerSecond: < 1 }
        ? StageJudge.SlowOpening(stage.Vehicle, Site(), stage.Masses.MassProperties().Mass) : null))?.DesignLoad
        ?? throw new InvalidOperationException(ClearanceFindings.NoOpeningLoad(stage.Name));

    private DispersionResult? Scatter(out string reason) => Step<DispersionResult>("scatter", () =>
    {
        var scatter = design.Scatter ?? throw new InvalidOperationException(ClearanceFindings.ScatterIsNotGiven());
        var site = Site();
        if (!site.Wind.IsGiven) throw new InvalidOperationException(ClearanceFindings.WindIsNotGiven());
        var flown = design.Stages.Count == 1 ? design.Vehicle.Disperse(site, scatter.Spread, scatter.Flights, scatter.Seed)
            : design.TwoStageVehicle.Disperse(site, new TwoStageSpread { Both = scatter.Spread }, scatter.Flights, scatter.Seed);
        return flown.Landings is not null ? flown : throw new InvalidOperationException(ClearanceFindings.NothingLanded());
    }, out reason);

    private Flight.Site.LaunchSite Site() => design.Site ?? throw new InvalidOperationException(ClearanceFindings.SiteIsNotGiven());

    private object? OfRatings(string name, Func<Rating, object> figure, int worst, ref string reason) =>
        OfStages(name, (_, r) => figure(r), worst, ref reason);

    private object? OfStages(string name, Func<DesignStage, Rating, object?> figure, int worst, ref string reason)
    {
        List<object> values = [];
        foreach (var stage in design.Stages)
        {
            var why = "";
            var rating = RatingOf(stage, out var unrated);
            var value = rating is null ? null : Step<object>($"{name} of {stage.Name}", () => figure(stage, rating)
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
                step = (null, wrong.Reasons);
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
