using System.Globalization;
using System.Text.Json;
using NotebookKit.DesignFiles;
using NotebookKit.Evidence.FlightFits;
using NotebookKit.Filling.Measured;
using NotebookKit.Flight.Site;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Logs.Learning;

/// <summary>Redoes what rests on a log: <c>design.Learn("logs/flight.csv")</c>.</summary>
public static class DesignLearning
{
    // From here on a fit can't tell drag from push; the library's own warning is given there, too.
    private const double MostCorrelation = 0.95;

    // What stays within so much of the highest pressure for so long is a hold.
    private const double StillShare = 0.015, ShortestHoldSeconds = 20;

    // The fit tries factors of 0.25 to 4; one that ends there, or that the log leaves open by more than half, says nothing of the drag.
    private const double LeastFactor = 0.2501, MostFactor = 3.999, MostUncertainty = 0.5;

    /// <summary>Reads a log with the mapping beside it, fits what it is the log of, and checks the design before and after. An altimeter's
    /// log gives the drag, the log of a proof gives what the vessel held, that of a fill the restrictor. Source: see the result's model
    /// card.</summary>
    /// <param name="design">The design; of one stage.</param>
    /// <param name="path">Path of the log.</param>
    /// <param name="use">What it is the log of; guessed from its columns and remarks, and said, unless given.</param>
    /// <param name="mapping">What the log doesn't say of itself; goes before the file beside it.</param>
    /// <exception cref="LogFormatException">The log can't be read, or nobody can tell what it is of.</exception>
    /// <exception cref="InvalidDesignException">The log can't be used, with the reason, or the design gives no place for what it
    /// says.</exception>
    public static LearnedFromLog Learn(this Design design, string path, LogUse? use = null, LogMapping? mapping = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        var table = LogReader.Read(path, mapping);
        List<Finding> said = [];
        var chosen = use ?? Guess(table, said);
        if (design.Stages.Count != 1) throw Refused(design.Name, "a log is fitted to a design of one stage; give the stage a design of "
            + "its own.");
        return chosen switch
        {
            LogUse.Flight => OfFlight(design, AltimeterLog.From(table), said),
            LogUse.Proof => OfProof(design, GaugeLog.From(table), said),
            _ => OfFill(design, GaugeLog.From(table), said),
        };
    }

    private static LogUse Guess(LogTable table, List<Finding> said)
    {
        bool Says(string word) => Path.GetFileName(table.File).Contains(word, StringComparison.OrdinalIgnoreCase)
            || table.Comments.Any(c => c.Contains(word, StringComparison.OrdinalIgnoreCase));
        var (use, why) = ClubLog.KindOf(table) switch
        {
            LogKind.Altimeter => (LogUse.Flight, "its columns are those of an altimeter"),
            LogKind.Gauge when table.Columns.Any(c => c.Unit == "mL") => (LogUse.Proof, "it has the water pumped in"),
            LogKind.Gauge when Says("proof") != Says("fill") => Says("proof") ? (LogUse.Proof, "its name or remarks say so")
                : (LogUse.Fill, "its name or remarks say so"),
            LogKind.Gauge => throw new LogFormatException(table.File, 0, "", "it may be a proof's log or a fill's", Steps(table)
                ? "its pressure rises in steps with holds, as a proof's does: write --as proof; or --as fill where it is a fill."
                : "say which: --as proof or --as fill."),
            _ => throw new LogFormatException(table.File, 0, "", "no column of it is a vessel's pressure, an altimeter's pressure or a "
                + "height", "a design learns from the logs of a flight, a proof and a fill."),
        };
        said.Add(Finding.Note($"The log was taken as that of a {use.ToString().ToLowerInvariant()}, for {why}."));
        return use;
    }

    // A fill rises without a stop; a proof stays at three pressures at least before it is at its highest.
    private static bool Steps(LogTable table)
    {
        List<(double Time, double Pressure)> read = [.. table.Time.Values.Zip(table.Columns.First(c => LogRole.GaugePressure.Units
            .Contains(c.Unit)).Values).Where(r => double.IsFinite(r.Second))];
        var (holds, first, top) = (0, 0, read.Select(r => r.Pressure).DefaultIfEmpty(0).Max());
        for (var i = 1; i < read.Count && read[i - 1].Pressure < top; i++)
        {
            if (Math.Abs(read[i].Pressure - read[first].Pressure) <= StillShare * top) continue;
            if (read[i - 1].Time - read[first].Time >= ShortestHoldSeconds && read[first].Pressure > 10 * StillShare * top) holds++;
            first = i;
        }

        return holds >= 3;
    }

    private static LearnedFromLog OfFlight(Design design, AltimeterLog log, List<Finding> said)
    {
        ThrowIfUnusable(log.File, log.Quality);
        if (design.Site is not { } site) throw Refused(design.Name, "a flight is fitted in the air of its site, which the design doesn't "
            + "give; add \"site\".");
        // Heights were made from pressure by the altimeter itself; only a pressure says what the day's was.
        if (log.Height is null && log.Temperature?.Values.FirstOrDefault(double.IsFinite) is { } warmth)
            site = site with { Atmosphere = Atmosphere.OfTheDay(site.Elevation, warmth.Celsius(), log.Pressure[0].BarAbsolute()) };
        var flight = new FlightLog
        {
            Vehicle = design.Vehicle, Site = site, Time = log.Time, Pressure = log.Pressure, Name = Path.GetFileName(log.File),
        };
        var fit = flight.Fit();
        if (Math.Abs(fit.Correlation) > MostCorrelation) fit = (flight with { TrustGauge = true }).Fit();
        if (fit.Status == ResultStatus.Failed) throw new InvalidDesignException(log.File, fit.Findings);
        if (fit.Calibration.Factor is <= LeastFactor or >= MostFactor || fit.Calibration.Uncertainty.DecimalFractions > MostUncertainty)
            throw Refused(design.Name, $"the flight of {Path.GetFileName(log.File)} doesn't determine its drag: the factor comes out as "
                + $"{Digits.Round(fit.Calibration.Factor)} within {Digits.Round(fit.Calibration.Uncertainty.Percent, 2)} %. Is the log of "
                + "another vehicle, or of another fill?");
        var (drag, calibration) = ("drag.calibration", fit.Calibration);
        var json = $$"""
            { "factor": {{Number(calibration.Factor)}}, "uncertainty": "{{Number(Math.Ceiling(10
                * calibration.Uncertainty.Percent) / 10)}} %", "log": {{Text($"fitted to {Path.GetFileName(log.File)}, "
                + $"{fit.Time.Count} readings")}} }
            """;
        return new(Path.GetFileName(log.File), LogUse.Flight, log.Quality.Line, fit, design,
            [design.HasPart("drag") ? new(drag, json) : new("drag", $$"""{ "calibration": {{json}} }""")], [.. said, .. log.Findings]);
    }

    private static LearnedFromLog OfProof(Design design, GaugeLog log, List<Finding> said)
    {
        ThrowIfUnusable(log.File, log.Quality);
        if (log.Serial is not { } serial) throw Refused(log.File, "the log doesn't say which vessel was proved; add a line \"# serial: "
            + "R-1\" above its header.");
        if (log.FarAbove(design.Stage.Proof.ProofPressure) is { } wrongUnit) throw Refused(log.File, wrongUnit);
        var record = log.ToReadings(design.Stage.Proof).Judge();
        if (record.Verdict != ProofVerdict.Accept || record.HeldAtLeast is not { } held)
            throw new InvalidDesignException($"{record.Title}, {Path.GetFileName(log.File)}", [.. record.Findings.Where(f =>
                f.Severity == FindingSeverity.Error).DefaultIfEmpty(Finding.Error("the proof wasn't accepted; read its record."))]);
        if (design.Evidence.Tests.Any(t => string.Equals(t.Id, serial, StringComparison.OrdinalIgnoreCase)))
            throw Refused(design.Name, $"its evidence has a test of {serial} already, and one vessel is one witness; take the old entry "
                + "out first.");
        var json = $$"""
            { "kind": "held proof", "vessel": {{Text(serial)}}, "pressure": "{{Number(Math.Floor(10 * held.Bar) / 10)}} bar gauge" }
            """;
        return new(Path.GetFileName(log.File), LogUse.Proof, log.Quality.Line, record, design,
            [design.HasPart("evidence") ? new(FormattableString.Invariant($"evidence.tests.{design.Evidence.Tests.Count + 1}"), json)
                : new("evidence", $$"""{ "tests": [ {{json}} ] }""")], said);
    }

    private static LearnedFromLog OfFill(Design design, GaugeLog log, List<Finding> said)
    {
        ThrowIfUnusable(log.File, log.Quality);
        if (design.Stage.PadFill is not { } fill) throw Refused(design.Name, "a fill's log says what the restrictor lets through, and the "
            + "design has no fill at the pad to put that in; add \"pad\" with its regulator and restrictor.");
        var fit = new FillLog { Fill = fill, Time = log.Time, Pressure = log.Pressure }.Fit();
        if (fit.Status == ResultStatus.Failed) throw new InvalidDesignException(log.File, fit.Findings);
        var json = $$"""
            { "kind": "measured", "conductance": "{{Number(fit.Conductance.LitresPerSecondBar)}} dm³/(s·bar)", "critical ratio": {{
                Number(fit.Restrictor.CriticalRatio)}}, "log": {{Text($"fitted to {Path.GetFileName(log.File)}")}} }
            """;
        // What was fitted is everything between regulator and vessel.
        return new(Path.GetFileName(log.File), LogUse.Fill, log.Quality.Line, fit, design,
            [new("pad.hose", null), new("pad.restrictor", json)], [.. said, .. log.Findings]);
    }

    // Rows that can't be told apart, or are mostly gone, make no fit.
    private static void ThrowIfUnusable(string file, LogQuality quality)
    {
        if (quality.Findings.FirstOrDefault(f => f.Severity == FindingSeverity.Error) is { } error)
            throw new InvalidDesignException(file, [error]);
        if (2 * quality.RowsUsed < quality.Rows)
            throw Refused(file, $"only {quality.RowsUsed} of {quality.Rows} rows can be used ({quality.Line}). Take a whole log, or "
                + $"{MappingFile.Write(file, "\"part\": 1")}, with the part that is meant.");
        if (quality.Interval.Seconds > 0 && 10 * quality.Gaps > quality.RowsUsed)
            throw Refused(file, $"more than one interval in ten is a gap ({quality.Line}). Take a log without them.");
    }

    private static InvalidDesignException Refused(string what, string sentence) => new(what, [Finding.Error(sentence)]);

    private static string Number(double value) => double.Parse(value.ToString("G4", CultureInfo.InvariantCulture),
        CultureInfo.InvariantCulture).ToString("R", CultureInfo.InvariantCulture);

    private static string Text(string text) => JsonSerializer.Serialize(text);
}
