using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Evidence.FlightFits;

/// <summary>A flight as its altimeter logged it, beside the flight as it was predicted: drag, push and moment of launch are fitted to the
/// way up.</summary>
/// <remarks>
/// Least squares of the predicted height on the logged one from before launch to the top, over the factor on drag, the fill pressure that
/// the push looks like, the moment
/// of launch, and the zero of the height. Source: D. W. Marquardt, J. SIAM 11 (1963) 431; intervals as G. A. F. Seber, C. J. Wild,
/// Nonlinear Regression, 1989.
/// </remarks>
public sealed record FlightLog
{
    /// <summary>The vehicle as it was filled and weighed.</summary>
    public required Vehicle Vehicle { get; init; }

    /// <summary>Where it flew, with the air of the day.</summary>
    public required LaunchSite Site { get; init; }

    /// <summary>The log's clock, in s, rising.</summary>
    public required Series Time { get; init; }

    /// <summary>Static pressure, in bar absolute.</summary>
    public required Series Pressure { get; init; }

    /// <summary>Temperature of the air at the pad; the site's unless given.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Whether the push is kept at what the gauge read, so that the drag alone is fitted: for logs that can't tell the two
    /// apart.</summary>
    public bool TrustGauge { get; init; }

    /// <summary>What the log is called where its numbers are used.</summary>
    public string Name { get; init; } = "flight log";

    /// <summary>Height above the pad at the log's times, the first readings taken as its zero. Source: see
    /// <see cref="PressureHeight"/>.</summary>
    public Series Height
    {
        get
        {
            var kelvins = (Temperature ?? Site.Temperature).Kelvins;
            var atPad = GroundBar;
            return new("Height above pad", "m", [.. Pressure.Values.Select(p => PressureHeight.Metres(p / atPad, kelvins))]);
        }
    }

    /// <summary>
    /// Speed of the way down, the slope of a straight line through the heights between four fifths and one fifth of the top; none where the
    /// log ends before.
    /// Source: least squares, as any text of statistics.
    /// </summary>
    public Speed? DescentSpeed
    {
        get
        {
            var height = Height.Values.ToList();
            var top = height.Max();
            var from = height.IndexOf(top);
            var down = Enumerable.Range(from, height.Count - from).SkipWhile(i => height[i] > 0.8 * top).TakeWhile(i => height[i] > 0.2 *
                top).ToList();
            if (down.Count < 10 || height[down[^1]] > 0.3 * top) return null;
            var (meanTime, meanHeight) = (down.Average(i => Time[i]), down.Average(i => height[i]));
            return Speed.FromMetersPerSecond(-down.Sum(i => (Time[i] - meanTime) * (height[i] - meanHeight)) / down.Sum(i => (Time[i] -
                meanTime) * (Time[i] - meanTime)));
        }
    }

    // Median of the first readings: a door slammed, or a hand on the vent hole, moves a mean.
    internal double GroundBar => Pressure.Values.Take(Math.Max(3, Math.Min(20, Pressure.Count / 20))).Order().ElementAt(Math.Max(3,
        Math.Min(20, Pressure.Count / 20)) / 2);

    /// <summary>Everything wrong with this log.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            Time.Unit == "s" ? null : EvidenceFindings.TimeUnitRefused(Time.Unit),
            Pressure.Unit == "bar absolute" ? null : EvidenceFindings.PressureUnitRefused(Pressure.Unit),
            Time.Count == Pressure.Count ? null : EvidenceFindings.TimesAndPressuresDiffer(Time.Count, Pressure.Count),
            Time.Count >= 40 ? null : EvidenceFindings.TooFewReadings(Time.Count),
            Time.Values.Concat(Pressure.Values).All(double.IsFinite) ? null : EvidenceFindings.SomeReadingsAreNotNumbers(),
            Time.Values.Zip(Time.Values.Skip(1)).All(p => p.Second > p.First) ? null : EvidenceFindings.TimesDoNotRise(),
            Pressure.Values.All(p => p is > 0.2 and < 1.2) ? null : EvidenceFindings.PressureOutsideAltimeterRange(),
            .. Vehicle.Validate(Site),
        ];
        if (findings.All(f => f is null || f.Severity != FindingSeverity.Error))
        {
            var height = Height.Values;
            var top = height.Max();
            if (top < 10) findings.Add(EvidenceFindings.LogRisesTooLittle(top));
            else if (FlightFitting.LaunchAt(height, height.ToList().IndexOf(top)) < 10)
                findings.Add(EvidenceFindings.TooFewReadingsBeforeLaunch());
        }

        return [.. findings.OfType<Finding>()];
    }

    /// <summary>Fits the flight to the log. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">The log or the vehicle can't be used; all reasons are in it.</exception>
    public FlightFit Fit()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Flight log", findings);
        return FlightFitting.Fit(this, findings);
    }
}
