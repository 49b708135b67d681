using NotebookKit.Materials.Solids;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Vessels.Search;

/// <summary>Every layup that sleeves and wraps in stock make on one vessel, with every end in question, rated and weighed.</summary>
/// <param name="Vessel">The vessel; its own sleeves and wraps are replaced, its veils stay outermost.</param>
/// <param name="Sleeves">Sleeves in stock.</param>
/// <param name="Wraps">Cloth and hoop wraps in stock; they go over the sleeves.</param>
/// <remarks>Source: burst and rating as <see cref="BurstPrediction"/>; a layup is a choice where none is both lighter and stronger
/// (Pareto).</remarks>
public sealed record LayupSearch(PressureVessel Vessel, IReadOnlyList<Braid> Sleeves, IReadOnlyList<Ply> Wraps)
{
    private const int MostOptions = 5000;

    /// <summary>Most sleeves one over the other; 0 to 6.</summary>
    public int MaximumSleeves { get; init; } = 2;

    /// <summary>Most wraps one over the other; 0 to 6.</summary>
    public int MaximumWraps { get; init; } = 2;

    /// <summary>Nozzle ends to choose from; the vessel's own where none is named.</summary>
    public IReadOnlyList<EndOption> NozzleEnds { get; init; } = [];

    /// <summary>Forward ends to choose from; the vessel's own where none is named.</summary>
    public IReadOnlyList<EndOption> ForwardEnds { get; init; } = [];

    /// <summary>Rule set to rate by.</summary>
    public RuleSet Rules { get; init; } = RuleSets.Club;

    /// <summary>Working pressure that has to be reached; none for any; 0.5 to 300 bar gauge.</summary>
    public GaugePressure? RequiredPressure { get; init; }

    /// <summary>Heaviest empty vessel that will do; none for any; above 0.</summary>
    public Mass? Heaviest { get; init; }

    /// <summary>All that is wrong with the search itself.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        if (Sleeves.Count + Wraps.Count == 0) findings.Add(VesselsFindings.NeitherSleeveNorWrapInStock());
        if (MaximumSleeves is < 0 or > 6) findings.Add(VesselsFindings.MostSleevesOutOfRange(MaximumSleeves));
        if (MaximumWraps is < 0 or > 6) findings.Add(VesselsFindings.MostWrapsOutOfRange(MaximumWraps));
        if (Wraps.Any(w => w is BraidedSleeve or VeilWrap)) findings.Add(VesselsFindings.WrapKindRefused());
        if (RequiredPressure is { } wanted && new ValidRange<GaugePressure>(0.5.BarGauge(), 300.BarGauge()).Find(wanted,
            "working pressure wanted", "Club vessels work at 5 to 90 bar.") is { } range) findings.Add(range);
        findings.AddRange(OfNames("nozzle end", NozzleEnds));
        findings.AddRange(OfNames("forward end", ForwardEnds));
        if (findings.Count == 0 && Count(Sleeves.Count, MaximumSleeves) * Count(Wraps.Count, MaximumWraps)
            * Math.Max(1, NozzleEnds.Count) * Math.Max(1, ForwardEnds.Count) > MostOptions)
            findings.Add(VesselsFindings.StockMakesTooManyLayups(MostOptions));
        return findings;
    }

    private static IEnumerable<Finding> OfNames(string end, IReadOnlyList<EndOption> options) =>
        from twice in options.GroupBy(o => o.Name.Trim(), StringComparer.OrdinalIgnoreCase)
        where twice.Key.Length == 0 || twice.Count() > 1
        select twice.Key.Length == 0 ? VesselsFindings.EndToChooseHasNoName(end)
            : VesselsFindings.EndNameIsNotUnique(end, twice.Key, twice.Count());

    /// <summary>Tries them all. Source: see the result's model card.</summary>
    /// <exception cref="InvalidDesignException">The search isn't valid.</exception>
    public LayupTradeOff Run()
    {
        InvalidDesignException.ThrowIfAny("Layup search", Validate());
        var veils = Vessel.Plies.Where(p => p is VeilWrap).ToList();
        List<(PressureVessel Vessel, string Ends)> vessels =
        [
            .. from nozzle in Or(NozzleEnds, Vessel.NozzleEnd)
               from forward in Or(ForwardEnds, Vessel.ForwardEnd)
               from sleeves in Combinations(Sleeves.Count, MaximumSleeves)
               from wraps in Combinations(Wraps.Count, MaximumWraps)
               where sleeves.Length + wraps.Length > 0
               select (Vessel with { Plies = [.. sleeves.Select(s => new BraidedSleeve(Sleeves[s])), .. wraps.Select(w => Wraps[w]),
                   .. veils], NozzleEnd = nozzle.End, ForwardEnd = forward.End },
                   Said("nozzle end", nozzle.Name) + Said("forward end", forward.Name)),
        ];
        var options = new LayupOption[vessels.Count];
        var run = WorkRun.Current;
        Parallel.For(0, vessels.Count, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            options[i] = Try(vessels[i].Vessel, vessels[i].Ends);
        });
        return new LayupTradeOff(this, [.. Judge(options).OrderBy(o => o.Mass?.Grams ?? double.PositiveInfinity)]);
    }

    private static IReadOnlyList<EndOption> Or(IReadOnlyList<EndOption> options, VesselEnd own) =>
        options.Count > 0 ? options : [new EndOption("", own)];

    private static string Said(string end, string name) => name.Length > 0 ? $"; {end}: {name}" : "";

    private LayupOption Try(PressureVessel vessel, string ends)
    {
        var name = Name(vessel) + ends;
        var wrong = vessel.Validate().Where(f => f.Severity == FindingSeverity.Error).ToList();
        if (wrong.Count > 0) return new LayupOption(name, vessel, null, null, "", Finding.Errors(wrong));
        var prediction = vessel.Burst();
        var rating = prediction.Rate(Rules);
        var mass = prediction.Layup.Mass;
        var limit = rating.LimitedBy;
        if (!rating.IsRated)
            return new LayupOption(name, vessel, mass, null, limit,
                "Not rated: " + Finding.Errors(rating.Findings));
        var whyNot = RequiredPressure is { } wanted && rating.WorkingPressure < wanted
            ? $"Rated {rating.WorkingPressure} only, {wanted} is wanted; the {limit} limits it."
            : Heaviest is { } heaviest && mass > heaviest ? $"Weighs {mass.Show()}, over the {heaviest.Show()} that will do."
            : "";
        return new LayupOption(name, vessel, mass, rating.WorkingPressure, limit, whyNot);
    }

    /// <summary>Marks every option that another one beats.</summary>
    private static IEnumerable<LayupOption> Judge(IReadOnlyList<LayupOption> options)
    {
        var standing = options.Where(o => o.IsChoice).OrderBy(o => o.Mass!.Value.Grams).ThenByDescending(o => o.Rated!.Value.Bar).ToList();
        var beaten = new Dictionary<LayupOption, LayupOption>(ReferenceEqualityComparer.Instance);
        LayupOption? best = null;
        foreach (var option in standing)
        {
            if (best is not null && best.Rated!.Value >= option.Rated!.Value) beaten[option] = best;
            else best = option;
        }

        return options.Select(o => beaten.TryGetValue(o, out var by)
            ? o with { Refusal = $"{by.Name} holds {by.Rated} at {by.Mass!.Value.Show()}: no less pressure and no more mass." }
            : o);
    }

    private static string Name(PressureVessel vessel) => string.Join(" + ", vessel.Plies.Where(p => p is not VeilWrap)
        .GroupBy(p => p.Name).Select(g => g.Count() > 1 ? $"{g.Count()} × {g.Key}" : g.Key));

    /// <summary>Choices of up to so many out of a stock, each as often as wanted, in the stock's order.</summary>
    private static IEnumerable<int[]> Combinations(int stock, int most)
    {
        IEnumerable<int[]> layer = [[]];
        for (var size = 0; ; size++)
        {
            foreach (var choice in layer) yield return choice;
            if (size == most) yield break;
            layer = [.. layer.SelectMany(c => Enumerable.Range(c.Length > 0 ? c[^1] : 0,
                stock - (c.Length > 0 ? c[^1] : 0)).Select(i => (int[])[.. c, i]))];
        }
    }

    private static double Count(int stock, int most)
    {
        double total = 1, size = 1;
        for (var k = 1; k <= most; k++)
        {
            size = size * (stock + k - 1) / k;
            total += size;
        }

        return total;
    }
}
