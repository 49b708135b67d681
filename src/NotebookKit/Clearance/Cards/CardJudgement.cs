using NotebookKit.Flight.Dispersion;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>Collects what is shown, what isn't and what stands against a flight; every sentence is said once.</summary>
internal sealed class CardJudgement(IReadOnlyDictionary<string, string> missing)
{
    /// <summary>Name of the wind among the pieces of evidence.</summary>
    public const string WindToday = "wind";

    // A rule that is broken more often than this, beyond the doubt of few flights, is broken; a doubt alone is a warning. Common practice,
    // no source.
    private static readonly Ratio MostBroken = 1.Percent();

    // Where something never happens in this many flights, it happens in fewer than 1 % of them at 95 %: 3 over the flights (Clopper and
    // Pearson 1934).
    private const int FewestFlights = 300;

    // What has to differ from flight to flight for a scatter to tell anything.
    private static readonly string[] Varied = ["fill pressure", "thrust", "drag", "wind speed", "wind direction", "rail tilt to north",
        "rail tilt to east"];

    private readonly List<EvidenceItem> _items = [];
    private readonly List<Finding> _findings = [];
    private readonly Dictionary<string, (int At, List<string> Names)> _unshown = new(StringComparer.Ordinal);

    public IReadOnlyList<EvidenceItem> Items => _items;

    /// <summary>Errors first: the reasons of a no stand on top. A warning that comes with another number from another computation of the
    /// same thing is said once, as it came first.</summary>
    public IReadOnlyList<Finding> Findings => [.. _findings.DistinctBy(f => (f.Severity, f.Severity == FindingSeverity.Error ? f.Message
        : new string([.. f.Message.Where(c => !char.IsAsciiDigit(c) && c != '.')]))).OrderBy(f => f.Severity == FindingSeverity.Error ? 0
        : f.Severity == FindingSeverity.Warning ? 1 : 2)];

    public void Add(Finding finding) => _findings.Add(finding);

    public void AddRange(IEnumerable<Finding> findings) => _findings.AddRange(findings);

    /// <summary>A flight, or none where the vehicle can't be flown as it is; every reason is put on the card.</summary>
    public static T? Try<T>(CardJudgement card, Func<T> fly)
        where T : class
    {
        try
        {
            return fly();
        }
        catch (InvalidDesignException refused)
        {
            card.AddRange(refused.Findings);
            return null;
        }
    }

    /// <summary>The numbers of a flight at an end of the drag band; an error where it has no answer though the expected flight has
    /// one.</summary>
    public static FlightFigures? Band(CardJudgement card, FlightFigures? expected, Func<FlightResult> fly, string end)
    {
        if (expected is null) return null;
        if (Try(card, fly) is { Status: ResultStatus.Completed } flight) return flight.Figures;
        card.Add(ClearanceFindings.FlightAtBandEndHasNoAnswer(end));
        return null;
    }

    /// <summary>Notes a piece of evidence; false where it wasn't handed over.</summary>
    public bool Shown(string name, bool isShown, string what, string remedy)
    {
        // Where it was tried and didn't come about, the reason says more than the usual remedy.
        var why = missing.GetValueOrDefault(name, remedy);
        if (why.Length > 0) why = char.ToUpperInvariant(why[0]) + why[1..];
        _items.Add(new(name, isShown, isShown ? what : why));
        if (!isShown) NotShown(name, why);
        return isShown;
    }

    // Pieces that one reason keeps away are named together, where the first of them stands.
    private void NotShown(string name, string why)
    {
        if (_unshown.TryGetValue(why, out var others))
        {
            others.Names.Add(name);
            _findings[others.At] = ClearanceFindings.EvidenceIsNotShown(others.Names, why);
            return;
        }

        _unshown[why] = (_findings.Count, [name]);
        Add(ClearanceFindings.EvidenceIsNotShown([name], why));
    }

    /// <summary>Whether somebody looked for a piece and can say why it isn't here.</summary>
    public bool Misses(string name) => missing.ContainsKey(name);

    /// <summary>What the site has to give.</summary>
    public void Site(LaunchSite site)
    {
        // The wind of the design is no wind of the day.
        Shown(WindToday, site.Wind.IsGiven && !Misses(WindToday), site.Wind.Name, "Measure the wind and give it to the site.");
        Shown("field", site.Field is not null, site.Field?.Radius is { } radius ? $"circle of {radius.Show()} about the pad"
            : $"{site.Field?.Corners.Count} corners", "Give the site its field.");
        Shown("ceiling", site.Ceiling is not null, site.Ceiling?.Show() ?? "", "Give the site its ceiling.");
    }

    /// <summary>The day of the flight.</summary>
    public void Day(DateOnly? day) =>
        Shown("day of the flight", day is not null, day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) ?? "",
            "Give the day: proof and inspections hold for a time only.");

    /// <summary>The stand-off against the charges that it has to be for.</summary>
    public void StandOff(LaunchStandOff? standOff, string vehicle, IReadOnlyList<Propulsion.Charges.Charge> charges, Length highest)
    {
        if (!Shown("stand-off", standOff is not null, standOff is null ? ""
            : $"crew {standOff.Crew.Show()}, spectators {standOff.Spectators.Show()}",
            "Compute the stand-off for this vehicle and fill.")) return;
        if (standOff!.Unlike(vehicle, charges) is { } unlike) Add(ClearanceFindings.StandOffIsOfAnotherFill(unlike));
        if (standOff.Spectators.Meters < LaunchStandOff.ShareOfApogee * highest.Meters - 0.01)
            Add(ClearanceFindings.SpectatorsDistanceIsOfLowerApogee(standOff.Spectators, standOff.Apogee, highest));
    }

    /// <summary>The scatter against the flight that it has to be of.</summary>
    public void Scatter(DispersionResult? scatter, string subject, string vehicle, LaunchSite site, int stages)
    {
        if (!Shown("scatter of landings", scatter is not null, scatter is null ? "" : $"{scatter.Apogee.Count} flights",
            "Disperse this vehicle on this site.")) return;
        if (scatter!.Plan.Subject != subject || scatter.Plan.Stages != stages)
        {
            Add(scatter.Plan.Vehicle != vehicle || scatter.Plan.Site != site.Name
                ? ClearanceFindings.ScatterIsOfAnotherVehicle(scatter.Plan.Vehicle, scatter.Plan.Site, vehicle, site.Name)
                : ClearanceFindings.ScatterIsOfAnotherFlight(vehicle));
        }

        if (scatter.Part != ShardNumber.Whole) Add(ClearanceFindings.ScatterIsPart(scatter.Part.ToString()));
        if (scatter.Apogee.Count < FewestFlights)
            Add(ClearanceFindings.ScatterHasTooFewFlights(scatter.Apogee.Count, FewestFlights));
        var still = Varied.Where(name => scatter.Inputs.Where(i => IsOf(i.Name, name)).Any(i => i.Values.All(v => v == i[0]))).ToList();
        if (still.Count > 0)
            Add(ClearanceFindings.ScatterVariesTooLittle(still));
        if (scatter.Plan.Ceiling?.Meters != site.Ceiling?.Meters)
            Add(ClearanceFindings.ScatterHasAnotherCeiling(scatter.Plan.Ceiling));
        if (!SameField(scatter.Plan.Field, site.Field)) Add(ClearanceFindings.ScatterHasAnotherField());
        if (scatter.Failed > 0 && Likelihood.Of(scatter.Failed, scatter.Apogee.Count) is var failed && failed.Low > MostBroken)
            Add(ClearanceFindings.ScatterHasTooManyFailures(failed.ToString(), MostBroken));
        if (scatter.AboveCeiling is { } above && above.Low > MostBroken)
            Add(ClearanceFindings.ScatterIsAboveCeiling(above.ToString(), MostBroken));
        if (scatter.OffField is { } off && off.Low > MostBroken)
            Add(ClearanceFindings.ScatterIsOffField(stages == 2 ? "the sustainer" : "the vehicle", off.ToString(), MostBroken));
        if (scatter.Booster?.OffField is { } strays && strays.Low > MostBroken)
            Add(ClearanceFindings.BoosterScatterIsOffField(strays.ToString(), MostBroken));
        AddRange(scatter.Findings);
    }

    /// <summary>The wind planned for against the limit.</summary>
    public void Wind(WindLimits limits, Speed planned)
    {
        if (planned > limits.Limit)
            Add(ClearanceFindings.WindPlannedIsAboveLimit(planned, limits.Limit, limits.SetBy));
    }

    // "Drag", or "Booster's drag" where there are two stages; not "Canopy drag".
    private static bool IsOf(string column, string name) =>
        string.Equals(column, name, StringComparison.OrdinalIgnoreCase) || column.EndsWith($"'s {name}", StringComparison.Ordinal);

    private static bool SameField(FlyingField? one, FlyingField? other) =>
        one is null || other is null
            ? one is null && other is null
            : one.Radius?.Meters == other.Radius?.Meters && one.Corners.SequenceEqual(other.Corners);
}
