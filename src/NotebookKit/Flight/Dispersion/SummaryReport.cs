using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.Dispersion;

/// <summary>What a dispersion that keeps no flight says of itself.</summary>
internal static class SummaryReport
{
    private static readonly Source Welford = new("B. P. Welford",
        "Note on a method for calculating corrected sums of squares and products, Technometrics 4", 1962, "", SourceKind.Unverified);

    private static readonly Source Chan = new("T. F. Chan, G. H. Golub, R. J. LeVeque",
        "Algorithms for computing the sample variance: analysis and recommendations, Am. Stat. 37", 1983, "", SourceKind.Unverified);

    public static ModelCard Card { get; } = DispersionReport.Card with
    {
        Name = "Dispersion by repeated flight, no flight kept",
        Assumptions =
        [
            .. DispersionReport.Card.Assumptions,
            "Means, variances and covariances are gathered flight by flight and added up by blocks of 256 in their order.",
            "Quantiles come from counts in 4096 bins, which reach as far again to both sides as the first 1024 flights; each quantile is "
                + "given with how far at most it is from the flights' own.",
        ],
        ValidRange = "As the flight's own model; 2 to 10 000 000 flights.",
        Sources = [.. DispersionReport.Card.Sources, Welford, Chan],
    };

    public static IReadOnlyList<ResultLine> Lines(DispersionSummary result)
    {
        if (result.Landings is not { } landings) return [];
        var own = result.Plan.Stages == 2 ? "Sustainer's m" : "M";
        var ninety = landings.Axes(90.Percent());
        return
        [
            new("Apogee, middle", Metres(result.Apogee.Quantile(0.5).Value),
                $"90 % between {Metres(result.Apogee.Quantile(0.05).Value)} and {Metres(result.Apogee.Quantile(0.95).Value)}"),
            new("Apogee, mean", Metres(result.Apogee.Mean), $"standard deviation {Metres(result.Apogee.Deviation)}; from "
                + $"{Metres(result.Apogee.Minimum)} to {Metres(result.Apogee.Maximum)}"),
            .. result.AboveCeiling is { } above ? [new ResultLine("Above the ceiling", above.ToString(),
                $"ceiling {result.Plan.Ceiling!.Value.Show()}, 95 % interval")] : Array.Empty<ResultLine>(),
            .. result.OffField is { } off ? [new ResultLine(result.Plan.Stages == 2 ? "Sustainer off the field" : "Off the field",
                off.ToString(), "95 % interval")] : Array.Empty<ResultLine>(),
            .. result.Plan.IsWindGiven ? [] : new[] { new ResultLine("Wind", "not given", "the landings below are those of still air") },
            new($"{own}ean landing", $"{landings.MeanEast.Show()} east, {landings.MeanNorth.Show()} north"),
            new("Scatter", $"{landings.Major.Show()} by {landings.Minor.Show()}",
                $"standard deviations, longer axis towards {landings.Bearing.Show()}"),
            new("90 % ellipse", $"{ninety.Major.Show()} by {ninety.Minor.Show()}",
                $"semi-axes, were the landings normal; circle of {landings.Circle(90.Percent()).Show()}"),
            .. result.BoosterLandings is { } booster ? [new ResultLine("Booster's mean landing",
                $"{booster.MeanEast.Show()} east, {booster.MeanNorth.Show()} north")] : Array.Empty<ResultLine>(),
            .. result.BoosterOffField is { } strays ? [new ResultLine("Booster off the field", strays.ToString(), "95 % interval")]
                : Array.Empty<ResultLine>(),
        ];

        static string Metres(double value) => value.Metres().Show();
    }

    public static IReadOnlyList<Finding> Findings(DispersionSummary result)
    {
        var findings = new List<Finding>();
        var flights = result.Plan.Flights;
        if (!result.Plan.IsWindGiven) findings.Add(FlightFindings.WindOfDispersionIsNotGiven());
        if (result.Failed > 0) findings.Add(FlightFindings.SomeFlightsHaveNoAnswer(result.Failed, flights, result.Plan.Stages));
        if (result.Unparted > 0)
            findings.Add(FlightFindings.FlightsStagesDoNotSeparateInOrder(Likelihood.Of(result.Unparted, flights).ToString()));
        if (result.Landings is not { } landings)
        {
            findings.Add(FlightFindings.FewerThanTwoFlightsReachedGround());
            return findings;
        }

        if (result.AboveCeiling is { } above && above.High.Percent > 1) findings.Add(FlightFindings.CeilingIsPassed(above.ToString()));
        if (result.OffField is { } off && off.High.Percent > 1) findings.Add(FlightFindings.LandingsAreOffField(off.ToString()));
        if (result.BoosterOffField is { } strays && strays.High.Percent > 1)
            findings.Add(FlightFindings.BoosterLandsOffField(strays.ToString()));
        if (landings.Count < SampleSize.ForMaximumToCover(0.95))
            findings.Add(FlightFindings.FlightsAreTooFew((int)landings.Count, SampleSize.ForMaximumToCover(0.95)));
        return findings;
    }

    public static Working Working(DispersionSummary result)
    {
        if (result.Landings is not { } landings) return new(result.Title, []);
        var (middle, deviation) = (result.Apogee.Quantile(0.5), result.Apogee.Deviation.Metres());
        return new(result.Title,
        [
            new("Standard error of the mean apogee", @"s_{\bar h} = \frac{s}{\sqrt{n}}", $"{deviation.Show(4)} / √{result.Apogee.Count}",
                (deviation / Math.Sqrt(result.Apogee.Count)).Show(), Welford),
            new("Middle apogee", @"h_{50}", $"{Digits.Round(middle.Value, 6)} m ± {Digits.Round(middle.Error, 2)} m by the bins",
                middle.Value.Metres().Show(), Welford),
            new("90 % ellipse", @"a = k\,\sigma_1, \quad k = \sqrt{-2\,\ln(1 - P)}", $"√(−2 ln 0.1) × {landings.Major.Show(4)}",
                landings.Axes(90.Percent()).Major.Show(), DispersionReport.Rayleigh),
        ]);
    }
}
