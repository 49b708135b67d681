using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What a dispersion says of itself.</summary>
internal static class DispersionReport
{
    // √(−2 ln 0.1): the radius in standard deviations that holds nine in ten.
    private static readonly double Ninety = Math.Sqrt(-2 * Math.Log(0.1));

    private static readonly int[] EllipsePercents = [50, 90, 99];

    private static readonly Source Rayleigh = new("", "Rayleigh distribution of the distance from the mean of a circular normal scatter", null);

    private static readonly Source ClopperPearson = new("C. J. Clopper, E. S. Pearson", "The use of confidence or fiducial limits, Biometrika 26", 1934, "", SourceKind.Unverified);

    private static readonly Source Spearman = new("C. Spearman", "The proof and measurement of association between two things", 1904, "", SourceKind.Unverified);

    private static readonly Source Philox = new("J. K. Salmon et al.", "Parallel random numbers: as easy as 1, 2, 3, Proc. SC11", 2011);

    private static readonly Source Wilks = new("S. S. Wilks", "Determination of sample sizes for setting tolerance limits, Ann. Math. Stat. 12", 1941);

    public static ModelCard Card { get; } = new(
        "Dispersion by repeated flight",
        [
            "Everything that varies is drawn independently; wind speed and direction are those of the whole flight.",
            "Ellipses take the landings as normal; how many really lie inside is counted beside them.",
            "It knows the scatter that was put in, not the errors of the model itself.",
            "A drawn fill pressure may exceed the vessel's rating, as a gauge that reads low lets it: the scatter tells of the flight then, not of the vessel.",
            "Of two stages each draws its own charge, thrust, drag, mass, timer and canopy; the drag of both together varies by their shares of it.",
            "Flight number and seed alone decide a flight's draw: the same on any number of threads or machines.",
        ],
        "As the flight's own model; 2 to 1 000 000 flights.",
        [Philox, Rayleigh, ClopperPearson, Spearman, Wilks]);

    public static IReadOnlyList<ResultLine> Lines(DispersionResult result)
    {
        if (result.Landings is not { } landings) return [];
        var flown = landings.Count;
        var own = result.Plan.Stages == 2 ? "Sustainer's " : "";
        string Of(string name) => own.Length == 0 ? name : $"{own}{char.ToLowerInvariant(name[0])}{name[1..]}";
        return
        [
            new("Apogee, middle", result.MiddleApogee.Show(), $"nine in ten between {result.LowApogee.Show()} and {result.HighApogee.Show()}"),
            .. result.AboveCeiling is { } above ? [new ResultLine("Above the ceiling", above.ToString(), $"ceiling {result.Plan.Ceiling!.Value.Show()}, 95 % interval")] : Array.Empty<ResultLine>(),
            .. result.OffField is { } off ? [new ResultLine(result.Plan.Stages == 2 ? "Sustainer off the field" : "Off the field", off.ToString(), "95 % interval")] : Array.Empty<ResultLine>(),
            .. result.Plan.IsWindGiven ? [] : new[] { new ResultLine("Wind", "not given", "the landings below are those of still air") },
            new(Of("Mean landing"), $"{landings.MeanEast.Show()} east, {landings.MeanNorth.Show()} north"),
            new(Of("Scatter"), $"{landings.Major.Show()} by {landings.Minor.Show()}", $"standard deviations, longer axis towards {landings.Bearing.Show()}"),
            .. EllipsePercents.Select(p => new ResultLine($"{own}{p} % ellipse", $"{landings.Axes(p.Percent()).Major.Show()} by {landings.Axes(p.Percent()).Minor.Show()}",
                $"semi-axes; {Digits.Round(100.0 * landings.Inside(p.Percent()) / flown)} % of the flights lie inside; circle of {landings.Circle(p.Percent()).Show()}")),
            CorrelationWith("Sensitivity of apogee", result.OnApogee),
            CorrelationWith(Of("Sensitivity of landing"), result.OnLanding),
            .. Booster(result),
        ];
    }

    public static IReadOnlyList<Finding> Findings(DispersionResult result)
    {
        var findings = new List<Finding>();
        var flights = result.Apogee.Count;
        if (result.Part != ShardNumber.Whole)
            findings.Add(Finding.Warning($"this is shard {result.Part}, {flights} of {result.Plan.Flights} flights: merge all of them before you judge by it."));
        if (!result.Plan.IsWindGiven)
            findings.Add(Finding.Warning("wind isn't given; the flights are computed in still air, and drift and weathercocking are not in the scatter. Give the site a wind, or say WindProfile.Calm where there is none."));
        if (result.Failed > 0)
            findings.Add(Finding.Warning($"{result.Failed} of {flights} flights have no answer: too fast for the drag model, never off the rail, or down with water and pressure still aboard{(result.Plan.Stages == 2 ? ", or the stages never separated" : "")}. They are left out; look at what they have in common."));
        if (result.Unparted > 0)
            findings.Add(Finding.Warning($"in {Likelihood.Of(result.Unparted, flights)} of the flights the stages don't separate in order: before the end of the booster's jet, after apogee, or not at all. What comes down then is under pressure; part them more surely."));
        if (result.Landings is not { } landings)
        {
            findings.Add(Finding.Error("fewer than two flights reached the ground by the model; there is no scatter to tell of."));
            return findings;
        }

        if (result.AboveCeiling is { } above && above.High.Percent > 1)
            findings.Add(Finding.Warning($"the ceiling is passed in {above}: use less pressure, or ask for a higher ceiling."));
        if (result.OffField is { } off && off.High.Percent > 1)
            findings.Add(Finding.Warning($"landings are off the field in {off}: lean the rail into the wind, deploy lower, or wait for less wind."));
        if (result.Booster?.OffField is { } strays && strays.High.Percent > 1)
            findings.Add(Finding.Warning($"the booster lands off the field in {strays}."));
        var (low, high) = SampleSize.RadialDeviationInterval(landings.Count);
        findings.Add(Finding.Note($"with {landings.Count} flights the standard deviations are known within {Digits.Round(100 * (1 - low), 2)} % below and {Digits.Round(100 * (high - 1), 2)} % above, and the 90 % radius within {Digits.Round(200 * SampleSize.QuantileRadiusError(landings.Count, 0.9) / Ninety, 2)} %."));
        if (landings.Count < SampleSize.ForMaximumToCover(0.95))
            findings.Add(Finding.Warning($"{landings.Count} flights are few: the worst of them covers 95 % of all with confidence only from {SampleSize.ForMaximumToCover(0.95)} flights on."));
        return findings;
    }

    public static Working Working(DispersionResult result)
    {
        if (result.Landings is not { } landings) return new(result.Title, []);
        var (major, minor) = landings.Axes(90.Percent());
        return new(result.Title,
        [
            new("90 % factor", @"k = \sqrt{-2\,\ln(1 - P)}", "√(−2 ln 0.1)", Digits.Round(Ninety, 6), Rayleigh),
            new("90 % ellipse", @"a = k\,\sigma_1, \quad b = k\,\sigma_2", $"{Digits.Round(Ninety, 4)} × {landings.Major.Show(4)}, {Digits.Round(Ninety, 4)} × {landings.Minor.Show(4)}",
                $"{major.Show()} by {minor.Show()}", Rayleigh),
            .. result.AboveCeiling is { } above ? [new WorkingStep("Above the ceiling", @"\hat{p} = \frac{k}{n}", $"{above.Cases} / {above.Flights}", above.ToString(), ClopperPearson)] : Array.Empty<WorkingStep>(),
        ]);
    }

    private static IEnumerable<ResultLine> Booster(DispersionResult result)
    {
        if (result.Booster?.Landings is not { } landings) yield break;
        var (major, minor) = landings.Axes(90.Percent());
        yield return new("Booster's mean landing", $"{landings.MeanEast.Show()} east, {landings.MeanNorth.Show()} north");
        yield return new("Booster's 90 % ellipse", $"{major.Show()} by {minor.Show()}", $"semi-axes; longer axis towards {landings.Bearing.Show()}");
        if (result.Booster.OffField is { } off) yield return new("Booster off the field", off.ToString(), "95 % interval");
        yield return CorrelationWith("Sensitivity of the booster's landing", result.Booster.OnLanding);
    }

    // The first one as the answer, as the others may have long names.
    private static ResultLine CorrelationWith(string name, IReadOnlyList<Sensitivity> found)
    {
        if (found.Count == 0) return new(name, "nothing", "nothing varies");
        var others = string.Join(", ", found.Skip(1).Take(2).Select(Share));
        return new(name, Share(found[0]), (others.Length > 0 ? $"then {others}; " : "") + "shares of the squared rank correlations");

        static string Share(Sensitivity s) => $"{s.Input.ToLowerInvariant()} {s.Share.Show(2)}";
    }
}
