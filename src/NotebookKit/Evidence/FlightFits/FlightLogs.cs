using MathNet.Numerics.Distributions;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;

namespace NotebookKit.Evidence.FlightFits;

/// <summary>Logs of several flights of one shape, fitted together: the drag is shared, fill, launch and zero of the height are each
/// flight's own.</summary>
/// <remarks>
/// Every flight is fitted by itself, the factors on the drag are combined with a scatter from flight to flight, and then every flight is
/// fitted again with the shared factor. Source: R. DerSimonian, N. Laird, Controlled Clinical Trials 7 (1986) 177, unverified; a single
/// flight as <see cref="FlightLog"/>.
/// </remarks>
public sealed record FlightLogs
{
    private const int MostFlights = 30;
    private const double SameShape = 1e-6;

    private static readonly double[] ComparedMach = [0.05, 0.2, 0.4];

    /// <summary>The flights, 2 to 30, each with a name of its own. Masses, fills and sites may differ; the shape may not.</summary>
    public required IReadOnlyList<FlightLog> Flights { get; init; }

    /// <summary>Everything wrong with these logs.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding> findings = [];
        if (Flights.Count is < 2 or > MostFlights) return [EvidenceFindings.TooFewFlights(Flights.Count)];
        findings.AddRange(Flights.GroupBy(f => f.Name).Where(g => g.Count() > 1).Select(g =>
            EvidenceFindings.FlightNameStandsTwice(g.Key)));
        foreach (var flight in Flights)
            findings.AddRange(flight.Validate().Select(f => EvidenceFindings.OfFlight(flight.Name, f)));
        if (findings.Any(f => f.Severity == FindingSeverity.Error)) return findings;
        foreach (var flight in Flights.Skip(1))
        {
            var difference = ComparedMach.Max(m => Math.Abs(Drag(flight, m) / Drag(Flights[0], m) - 1));
            if (difference > SameShape) findings.Add(EvidenceFindings.FlightsOfAnotherShape(flight.Name, Flights[0].Name, difference));
        }

        return findings;
    }

    /// <summary>Fits the flights together. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">The flights can't be fitted together; all reasons are in it.</exception>
    public JointFlightFit Fit()
    {
        var findings = Validate().ToList();
        InvalidDesignException.ThrowIfAny("Flight logs", findings);
        var own = Numbers(null);
        findings.AddRange(Flights.Where((_, i) => !own[i].Settled).Select(f => EvidenceFindings.FlightDidNotSettle(f.Name)));
        InvalidDesignException.ThrowIfAny("Flight logs", findings);
        double[] factors = [.. own.Select(f => f.LogFactor)], errors = [.. own.Select(f => f.FactorError)];
        var drag = RandomEffects.Of(factors, errors);
        var shared = Numbers(drag.Mean);
        findings.AddRange(Flights.Where((_, i) => !shared[i].Settled).Select(f => EvidenceFindings.FlightDidNotSettle(f.Name)));
        var disagreeing = Disagreeing(factors, errors, findings);
        return new(this, drag, [.. Flights.Select((f, i) => new SharedFlight(f, own[i], shared[i], disagreeing.Contains(i)))], findings);
    }

    private HashSet<int> Disagreeing(double[] factors, double[] errors, List<Finding> findings)
    {
        HashSet<int> named = [];
        // A chance of 5 % that any flight is named where none differs.
        var limit = Normal.InvCDF(0, 1, 1 - 0.025 / factors.Length);
        if (factors.Length == 2)
        {
            if (Math.Abs(factors[0] - factors[1]) > Normal.InvCDF(0, 1, 0.975) * Math.Sqrt(errors[0] * errors[0] + errors[1] * errors[1]))
                findings.Add(EvidenceFindings.TwoFlightsDisagree(Flights[0].Name, Flights[1].Name));
            findings.Add(EvidenceFindings.TwoFlightsGiveAWideInterval());
            return named;
        }

        var deviations = RandomEffects.Deviations(factors, errors);
        for (var i = 0; i < factors.Length; i++)
        {
            if (Math.Abs(deviations[i]) <= limit) continue;
            named.Add(i);
            var others = RandomEffects.Of([.. factors.Where((_, k) => k != i)], [.. errors.Where((_, k) => k != i)]).Mean;
            findings.Add(EvidenceFindings.FlightDisagrees(Flights[i].Name, Math.Exp(factors[i]), Math.Exp(others), deviations[i]));
        }

        return named;
    }

    private OneFlightNumbers[] Numbers(double? logFactor)
    {
        var numbers = new OneFlightNumbers[Flights.Count];
        var run = WorkRun.Current;
        Parallel.For(0, Flights.Count, run.Parallel(), i =>
        {
            run.ThrowIfStopped();
            var (fit, used) = FlightFitting.Numbers(Flights[i], logFactor);
            var free = 4 - (logFactor is null ? 0 : 1) - (Flights[i].TrustGauge ? 1 : 0);
            var student = StudentT.InvCDF(0, 1, Math.Max(1, used.Length - free), 0.975);
            numbers[i] = new(fit.Parameters[0], fit.HalfWidths[0] / student, fit.Parameters[1], fit.HalfWidths[1] / student,
                fit.Parameters[2], fit.Scatter, used.Length, fit.Settled);
        });
        return numbers;
    }

    // In the air of one site, so that only the shape is compared.
    private double Drag(FlightLog flight, double mach) => flight.Vehicle.DragCoefficient(mach, Flights[0].Site);
}

/// <summary>Numbers of one flight's fit: ln of the factor on drag and its standard error, fill pressure and its [bar gauge], moment of
/// launch [s], scatter [m].</summary>
internal sealed record OneFlightNumbers(double LogFactor, double FactorError, double FillBar, double FillErrorBar, double LaunchSeconds,
    double ScatterMetres, int Readings, bool Settled);
