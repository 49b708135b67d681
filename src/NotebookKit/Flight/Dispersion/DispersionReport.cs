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

    internal static readonly Source Rayleigh = new("", "Rayleigh distribution of the distance from the mean of a circular "
        + "normal scatter", null);

    private static readonly Source ClopperPearson = new("C. J. Clopper, E. S. Pearson",
        "The use of confidence or fiducial limits, Biometrika 26", 1934, "", SourceKind.Unverified);

    private static readonly Source Spearman = new("C. Spearman", "The proof and measurement of association between two things", 1904, "",
        SourceKind.Unverified);

    private static readonly Source Philox = new("J. K. Salmon et al.", "Parallel random numbers: as easy as 1, 2, 3, Proc. SC11", 2011);

    private static readonly Source Wilks = new("S. S. Wilks",
        "Determination of sample sizes for setting tolerance limits, Ann. Math. Stat. 12", 1941);

    public static ModelCard Card { get; } = new(
        "Dispersion by repeated flight",
        [
            "Everything that varies is drawn independently; wind speed and direction are those of the whole flight.",
            "Ellipses assume normally distributed landings; the share of landings inside is counted beside them.",
            "The result contains the scatter of the inputs, not the errors of the model.",
            "A drawn fill pressure may exceed the vessel's rating, as a gauge that reads low lets it: the scatter tells of the flight "
                + "then, not of the vessel.",
            "Of two stages each draws its own charge, thrust, drag, mass, timer and canopy; the drag of both together varies by their "
                + "shares of it.",
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
            new("Apogee, middle", result.MiddleApogee.Show(),
                $"90 % between {result.LowApogee.Show()} and {result.HighApogee.Show()}"),
            .. result.AboveCeiling is { } above ? [new ResultLine("Above the ceiling", above.ToString(),
                $"ceiling {result.Plan.Ceiling!.Value.Show()}, 95 % interval")] : Array.Empty<ResultLine>(),
            .. result.OffField is { } off ? [new ResultLine(result.Plan.Stages == 2 ? "Sustainer off the field" : "Off the field",
                off.ToString(), "95 % interval")] : Array.Empty<ResultLine>(),
            .. result.Plan.IsWindGiven ? [] : new[] { new ResultLine("Wind", "not given", "the landings below are those of still air") },
            new(Of("Mean landing"), $"{landings.MeanEast.Show()} east, {landings.MeanNorth.Show()} north"),
            new(Of("Scatter"), $"{landings.Major.Show()} by {landings.Minor.Show()}",
                $"standard deviations, longer axis towards {landings.Bearing.Show()}"),
            .. EllipsePercents.Select(p => new ResultLine($"{own}{p} % ellipse",
                $"{landings.Axes(p.Percent()).Major.Show()} by {landings.Axes(p.Percent()).Minor.Show()}",
                $"semi-axes; {Digits.Round(100.0 * landings.Inside(p.Percent()) / flown)} % of the flights lie inside; circle of "
                    + $"{landings.Circle(p.Percent()).Show()}")),
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
            findings.Add(FlightFindings.ShardIsPartOfDispersion(result.Part.ToString(), flights, result.Plan.Flights));
        if (!result.Plan.IsWindGiven)
            findings.Add(FlightFindings.WindOfDispersionIsNotGiven());
        if (result.Failed > 0)
            findings.Add(FlightFindings.SomeFlightsHaveNoAnswer(result.Failed, flights, result.Plan.Stages));
        if (result.Unparted > 0)
            findings.Add(FlightFindings.FlightsStagesDoNotSeparateInOrder(Likelihood.Of(result.Unparted, flights).ToString()));
        if (result.Landings is not { } landings)
        {
            findings.Add(FlightFindings.FewerThanTwoFlightsReachedGround());
            return findings;
        }

        if (result.AboveCeiling is { } above && above.High.Percent > 1)
            findings.Add(FlightFindings.CeilingIsPassed(above.ToString()));
        if (result.OffField is { } off && off.High.Percent > 1)
            findings.Add(FlightFindings.LandingsAreOffField(off.ToString()));
        if (result.Booster?.OffField is { } strays && strays.High.Percent > 1)
            findings.Add(FlightFindings.BoosterLandsOffField(strays.ToString()));
        var (low, high) = SampleSize.RadialDeviationInterval(landings.Count);
        findings.Add(FlightFindings.StandardDeviationsAreUncertain(
            landings.Count, 100 * (1 - low), 100 * (high - 1), 200 * SampleSize.QuantileRadiusError(landings.Count, 0.9) / Ninety));
        if (landings.Count < SampleSize.ForMaximumToCover(0.95))
            findings.Add(FlightFindings.FlightsAreTooFew(landings.Count, SampleSize.ForMaximumToCover(0.95)));
        return findings;
    }

    public static Working Working(DispersionResult result)
    {
        if (result.Landings is not { } landings) return new(result.Title, []);
        var (major, minor) = landings.Axes(90.Percent());
        return new(result.Title,
        [
            new("90 % factor", @"k = \sqrt{-2\,\ln(1 - P)}", "√(−2 ln 0.1)", Digits.Round(Ninety, 6), Rayleigh),
            new("90 % ellipse", @"a = k\,\sigma_1, \quad b = k\,\sigma_2",
                $"{Digits.Round(Ninety, 4)} × {landings.Major.Show(4)}, {Digits.Round(Ninety, 4)} × {landings.Minor.Show(4)}",
                $"{major.Show()} by {minor.Show()}", Rayleigh),
            .. result.AboveCeiling is { } above ? [new WorkingStep("Above the ceiling", @"\hat{p} = \frac{k}{n}",
                $"{above.Cases} / {above.Flights}", above.ToString(), ClopperPearson)] : Array.Empty<WorkingStep>(),
        ]);
    }

    private static IEnumerable<ResultLine> Booster(DispersionResult result)
    {
        if (result.Booster?.Landings is not { } landings) yield break;
        var (major, minor) = landings.Axes(90.Percent());
        yield return new("Booster's mean landing", $"{landings.MeanEast.Show()} east, {landings.MeanNorth.Show()} north");
        yield return new("Booster's 90 % ellipse", $"{major.Show()} by {minor.Show()}",
            $"semi-axes; longer axis towards {landings.Bearing.Show()}");
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
