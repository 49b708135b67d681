using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Testing;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Clearance.Learned;

/// <summary>One figure before and after new tests.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Before">With the earlier tests; "not rated" where these allow no rating.</param>
/// <param name="After">With the later tests.</param>
/// <param name="Change">Change over the value before; none where one of the two is missing.</param>
public sealed record MovedFigure(string Name, string Before, string After, Ratio? Change)
{
    /// <summary>Whether it reads differently now.</summary>
    public bool Moved => Before != After;
}

/// <summary>
/// What new tests change, from the rating through the allowed fill to apogee, timer and drift: the same vehicle twice, side by side.
/// </summary>
/// <remarks>Source: the models of rating and flight; nothing of its own.</remarks>
public sealed record TestsToLanding : Result
{
    private readonly VesselEvidence _tests;
    private readonly string _vehicle;

    internal TestsToLanding(string vehicle, VesselEvidence tests, FlightBand? before, FlightBand? after, IReadOnlyList<Finding> findings)
    {
        (_vehicle, _tests) = (vehicle, tests);
        (Before, After) = (before, after);
        Findings = findings;
        Figures = Compare(before, after);
    }

    /// <summary>With the earlier tests; none where they allow no rating, and a finding says why.</summary>
    public FlightBand? Before { get; }

    /// <summary>With the later tests; none where they allow no rating, and a finding says why.</summary>
    public FlightBand? After { get; }

    /// <summary>Every figure of the chain, from the rating to the landing.</summary>
    public IReadOnlyList<MovedFigure> Figures { get; }

    /// <summary>SHA-256 of the later tests, to rest requirements and decisions of a record on.</summary>
    public string Fingerprint => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n',
        _tests.Tests.Select(Line)))));

    /// <inheritdoc/>
    public override string Title => $"From tests to landing, {_vehicle}";

    /// <inheritdoc/>
    public override ModelCard Model => new("Rating and flight, with the earlier and with the later tests",
        [
            "The fill keeps its distance below the rating.",
            "Bands run from the flight with the most drag to the flight with the least; the wind is the site's.",
        ],
        "As the models of rating and flight.",
        (After ?? Before)?.Rating.Model.Sources ?? [Source.CommonPractice("rating, then flight")]);

    /// <inheritdoc/>
    public override ResultStatus Status => After is null ? ResultStatus.Failed : ResultStatus.Completed;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
        [.. Figures.Select(f => new ResultLine(f.Name, f.After, f.Moved ? $"was {f.Before}{Percent(f.Change)}" : "as before"))];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [.. Provenance.Cautions.ForFlight.Union(Provenance.Cautions.ForProof)];

    /// <inheritdoc/>
    public override Working Working => (After ?? Before)?.Rating.Working ?? new(Title, []);

    /// <summary>States the later tests in a design record, so that what rests on them is found when they change.</summary>
    /// <param name="design">The record.</param>
    /// <param name="name">Name of the evidence: "tests of Curlew's twins".</param>
    /// <exception cref="FormatException">The name is empty.</exception>
    public EvidenceMark Into(DesignRecordBuilder design, string name)
    {
        ArgumentNullException.ThrowIfNull(design);
        return design.Evidence(name, Fingerprint, $"{_tests.Tests.Count} tests: {string.Join(", ", _tests.Tests.Select(t => t.Id))}");
    }

    private static string Line(VesselTest test) => string.Join('|', test.GetType().Name, test.Id, test.Vessel.Name,
        test.Vessel.Length.Millimeters.ToString("R", CultureInfo.InvariantCulture),
        string.Join('+', test.Vessel.Plies.Select(p => p.Name)), Exact(test.Vessel.Liner.Bore), Exact(test.Vessel.Liner.Wall),
        End(test.Vessel.NozzleEnd, test.Vessel.Liner.Bore), End(test.Vessel.ForwardEnd, test.Vessel.Liner.Bore),
        test.Pressure.Pascals.ToString("R", CultureInfo.InvariantCulture), (test as BurstTest)?.Failed, test.Batch, test.Leak?.Where,
        test.Leak?.Pressure.Pascals.ToString("R", CultureInfo.InvariantCulture), test.DropsSeen,
        test.Growth is { } growth ? growth.Milliliters.ToString("R", CultureInfo.InvariantCulture) : "")
        + (test.GrowthUncertainty is { } off ? $"|± {off.Milliliters.ToString("R", CultureInfo.InvariantCulture)}" : "")
        + (test.GaugeError is { } gauge ? $"|less {gauge.Pascals.ToString("R", CultureInfo.InvariantCulture)}" : "")
        + (test.GrowthPressure is { } at ? $"|at {at.Pascals.ToString("R", CultureInfo.InvariantCulture)}" : "");

    private static string End(VesselEnd end, Length bore) => string.Join('/', end.Closure.Shape, end.Closure.Material.Name,
        Exact(end.Closure.Wall), Exact(end.Closure.Opening), Exact(end.Closure.Meridian(bore)), Exact(end.SleeveReach(bore)),
        string.Join('+', end.Joints.Select(j => j.Name)), end.Fitting?.Name, end.Discs?.Count);

    private static string Exact(Length length) => length.Millimeters.ToString("R", CultureInfo.InvariantCulture);

    private static string Percent(Ratio? change) =>
        change is { } c ? $", {c.Percent.ToString("+0.#;−0.#;0", CultureInfo.InvariantCulture)} %" : "";

    private static IReadOnlyList<MovedFigure> Compare(FlightBand? before, FlightBand? after)
    {
        return
        [
            Figure("Design burst", b => b.Rating.DesignBurst.Bar, b => b.Rating.DesignBurst.ToString()),
            Figure("Working pressure", b => b.Rating.WorkingPressure.Bar, b => b.Rating.WorkingPressure.ToString()),
            Words("Limited by", b => b.Rating.LimitedBy),
            Figure("Proof pressure", b => b.Rating.ProofPressure.Bar, b => b.Rating.ProofPressure.ToString()),
            Figure("Fill pressure", b => b.Fill.Bar, b => b.Fill.ToString()),
            Figure("Apogee", b => b.MiddleDrag.Apogee.Meters, b => Band(b.Apogee.Low.Show(), b.Apogee.High.Show())),
            Figure("Time of apogee", b => b.MiddleDrag.ApogeeTime.Seconds, b => Band(b.Timer.Low.Show(), b.Timer.High.Show())),
            Figure("Maximum speed", b => b.LeastDrag.MaximumSpeed.MetersPerSecond,
                b => b.LeastDrag.MaximumSpeed.Show(SpeedUnit.MeterPerSecond)),
            Figure("Drift", b => b.MiddleDrag.Drift.Meters, b => Band(b.Drift.Low.Show(), b.Drift.High.Show())),
        ];

        MovedFigure Words(string name, Func<FlightBand, string> text) => new(name, Text(before, text), Text(after, text), null);

        MovedFigure Figure(string name, Func<FlightBand, double> value, Func<FlightBand, string> text) => new(name, Text(before, text),
            Text(after, text), before is not null && after is not null && value(before) > 0
                ? Ratio.FromPercent(100 * (value(after) / value(before) - 1)) : null);

        static string Text(FlightBand? band, Func<FlightBand, string> text) => band is null ? "not rated" : text(band);
        static string Band(string low, string high) => low == high ? low : $"{low} to {high}";
    }
}
