using NotebookKit.Clearance;
using NotebookKit.Clearance.Cards;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;

namespace NotebookKit.Logs;

/// <summary>A club's folder as one thing: the design with its tests, the vessels' service records, the logs, the shelf.</summary>
/// <remarks>
/// <c>design.json</c>; <c>tests/*.json</c>, one test a file; <c>vessels/*.service.jsonl</c>; <c>vessels/*.proof.json</c>, records of
/// proofs; <c>logs/*.csv</c>; <c>stock.csv</c>; <c>day.json</c>, what was measured on the day of a flight. What isn't there is left
/// out; what lies there and is none of these is named.
/// </remarks>
public sealed record ClubFolder
{
    private const string DesignName = "design.json", StockName = "stock.csv", Mapping = ".columns.json", Service = ".service.jsonl",
        ProofEnding = ".proof.json", DayName = "day.json";

    private ClubFolder(string folder, Design design) => (Folder, Design) = (folder, design);

    /// <summary>Path of the folder.</summary>
    public string Folder { get; }

    /// <summary>The design, with the tests of the folder in its evidence.</summary>
    public Design Design { get; init; }

    /// <summary>Names of the files of tests, in order.</summary>
    public IReadOnlyList<string> Tests { get; private init; } = [];

    /// <summary>Service records, by file name.</summary>
    public IReadOnlyList<ServiceRecord> Vessels { get; private init; } = [];

    /// <summary>Files of the service records, in the same order.</summary>
    public IReadOnlyList<string> VesselFiles { get; private init; } = [];

    /// <summary>Records of proofs, by file name; each was judged anew from its own readings.</summary>
    public IReadOnlyList<ProofRecord> Proofs { get; private init; } = [];

    /// <summary>What was measured on the day of a flight; none where there is no such file.</summary>
    public FlightDay? Day { get; private init; }

    /// <summary>Logs, by file name.</summary>
    public IReadOnlyList<ClubLog> Logs { get; private init; } = [];

    /// <summary>What lies on the shelf; none where there is no list.</summary>
    public StockList? Stock { get; private init; }

    /// <summary>Files that nothing here reads, by their path in the folder.</summary>
    public IReadOnlyList<string> Unused { get; private init; } = [];

    /// <summary>Reads a folder.</summary>
    /// <param name="folder">Its path.</param>
    /// <exception cref="DesignFiles.Trees.DesignFileException">The design or a test can't be read; says where and what.</exception>
    /// <exception cref="ServiceFileException">A service record can't be opened.</exception>
    /// <exception cref="LogFormatException">The stock list can't be read; says where and what.</exception>
    /// <exception cref="FormatException">A record of a proof is cut off, was edited, or is none.</exception>
    public static ClubFolder Read(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        var design = Design.Read(Path.Combine(folder, DesignName)).WithTests(Path.Combine(folder, "tests"));
        string[] tests = design.Stages.Count == 1 ? Files(folder, "tests", ".json")
            : [.. Files(folder, "tests/booster", ".json"), .. Files(folder, "tests/sustainer", ".json")];
        string[] vessels = Files(folder, "vessels", Service), logs = Files(folder, "logs", ".csv");
        string[] proofs = Files(folder, "vessels", ProofEnding);
        var stock = Path.Combine(folder, StockName);
        HashSet<string> read = [DesignName, StockName, DayName, DesignSchema.FileName,
            DesignSchema.DayFileName, "README.md",
            .. tests, .. vessels, .. proofs, .. logs];
        return new(folder, design)
        {
            Tests = tests,
            VesselFiles = vessels,
            Vessels = [.. vessels.Select(v => ServiceFile.Read(Path.Combine(folder, v)))],
            Proofs = [.. proofs.Select(p => ProofRecord.FromJson(Text(Path.Combine(folder, p), p), p))],
            Day = File.Exists(Path.Combine(folder, DayName)) ? FlightDay.Read(Path.Combine(folder, DayName)) : null,
            Logs = [.. logs.Select(l => ClubLog.Of(Path.Combine(folder, l)))],
            Stock = File.Exists(stock) ? StockList.Read(stock) : null,
            Unused = [.. All(folder).Where(f => !read.Contains(f) && !f.EndsWith(".ipynb", StringComparison.Ordinal)
                && !(f.EndsWith(Mapping, StringComparison.Ordinal) && read.Contains(f[..^Mapping.Length])))],
        };
    }

    /// <summary>The service record of a vessel.</summary>
    /// <param name="serial">Its serial: "R-1".</param>
    /// <exception cref="InvalidDesignException">The folder has no record of it; names those that it has.</exception>
    public ServiceRecord Vessel(string serial)
    {
        ArgumentNullException.ThrowIfNull(serial);
        return Vessels.FirstOrDefault(v => string.Equals(v.Serial, serial.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? throw new InvalidDesignException(Design.Name, [Finding.Error($"the folder has no service record of \"{serial}\". "
                + (Vessels.Count == 0 ? "Begin one in its folder vessels." : $"It has those of {string.Join(", ",
                Vessels.Select(v => v.Serial))}."))]);
    }

    /// <summary>Holds the design against its requirements, and says what the vessels' service records, the tests and the logs of the
    /// folder say. Source: see the result's model card.</summary>
    /// <param name="on">Day it is asked for.</param>
    /// <param name="limits">The limits of a vessel's life; the club's unless given.</param>
    public ClubCheck Check(DateOnly on, LifeLimits? limits = null) => new(this, on, limits ?? LifeLimits.Club);

    /// <summary>The flight card on the evidence of the folder: its design, tests, records of proofs and service records, and what
    /// <c>day.json</c> says. What isn't there is not shown, and forbids. Source: as the card's.</summary>
    /// <param name="day">The day; that of <c>day.json</c> unless given.</param>
    /// <exception cref="InvalidDesignException">No day is given, or the day names other vessels than the design has stages, or
    /// changes what isn't a day's.</exception>
    /// <exception cref="DesignFileException">A change of the day means no value of the design, or can't be that.</exception>
    public IFlightCard Card(FlightDay? day = null) => Design.Card(day ?? Day ?? throw new InvalidDesignException(Design.Name,
        [Finding.Error($"the folder has no {DayName}. Write one: {{ \"day\": \"2026-05-02\", \"vessels\": [ {{ \"serial\": "
            + $"\"{(Vessels.Count > 0 ? Vessels[0].Serial : "R-1")}\", \"wall temperature\": \"24 °C\" }} ] }}.")]), Proofs, Vessels,
        UnreadTests());

    // A test that lies there and isn't read may be the one that speaks against the vessel.
    private List<Finding> UnreadTests()
    {
        var unread = Unused.Where(f => f.StartsWith("tests/", StringComparison.OrdinalIgnoreCase)).ToList();
        return unread.Count == 0 ? [] : [Finding.Error($"{string.Join(", ", unread)} in the folder of tests "
            + $"{(unread.Count == 1 ? "is" : "are")} not read as a test. Make each a test, a file that ends with .json, or take it "
            + "out of the folder with a reason.")];
    }

    /// <summary>Judges the log of a proof against the plan of the design's own proof. Source: as <see cref="ProofReadings"/>.</summary>
    /// <param name="path">Path of the log.</param>
    /// <param name="serial">Serial of the vessel; that in the log's remarks unless given.</param>
    /// <param name="day">Day of the proof; that of the log unless given.</param>
    /// <exception cref="LogFormatException">The log can't be read; says where and what.</exception>
    /// <exception cref="InvalidDesignException">The design gives no proof, the log no serial or day, or the readings can't be
    /// judged.</exception>
    public ProofRecord Judge(string path, string? serial = null, DateOnly? day = null)
    {
        var log = GaugeLog.Read(path);
        var own = serial ?? log.Serial ?? throw Refused(log, "the log doesn't say which vessel was proved. Add a line \"# serial: "
            + "R-1\" above its header, or give the serial.");
        if (log.Serial is { } logged && !Same(logged, own))
            throw Refused(log, $"the log is of {logged}, and {own} was asked for. A proof counts for the very vessel that was proved.");
        var on = day ?? log.Day ?? throw Refused(log, "the log doesn't say on which day the vessel was proved. Add a line \"# day: "
            + "2026-05-01\" above its header, or give the day.");
        if (log.Day is { } stamped && stamped != on)
            throw Refused(log, FormattableString.Invariant($"the log is of {stamped:yyyy-MM-dd}, and {on:yyyy-MM-dd} was asked for.")
                + " A proof keeps its day.");
        ThrowIfKnown(log);
        if (Vessels.FirstOrDefault(v => Same(v.Serial, own) && v.Events.Any(e => e is Retired)) is { } gone)
            throw Refused(log, $"{gone.Vessel} {gone.Serial} is retired by its service record, and a retired vessel isn't proved again. "
                + "Nothing is written. Check the serial; cut the retired vessel up, so that nobody fills it.");
        var stage = StageOf(own);
        if (log.FarAbove(stage.Proof.ProofPressure) is { } wrongUnit) throw Refused(log, wrongUnit);
        return (log.ToReadings(stage.Proof) with
        {
            Serial = own, Day = on, Vessel = log.Vessel ?? stage.Name, MadeAs = stage.Mark,
        }).Judge();
    }

    private void ThrowIfKnown(GaugeLog log)
    {
        SameReadings.Readings own = new(log.Time, log.Pressure, log.Temperature, log.Expansion);
        foreach (var known in Proofs.Select(p => p.Readings))
        {
            var isWhole = known.Pressure.Values.SequenceEqual(log.Pressure.Values)
                && known.Time.Values.SequenceEqual(log.Time.Values);
            var same = isWhole ? null : SameReadings.Find(own, new(known.Time, known.Pressure, known.Temperature, known.Expansion));
            if (!isWhole && same is null) continue;
            throw Refused(log, "its readings are those of the proof of " + FormattableString.Invariant(
                $"{known.Serial}{(known.Day is { } on ? $" on {on:yyyy-MM-dd}" : "")} that is written down already")
                + (same is { } s ? FormattableString.Invariant($": {s.Same} of {s.Of} changes of the pressure are the same to the digit")
                    : "") + ". One proof is one record: proof-test the vessel again, and log that.");
        }
    }

    private static InvalidDesignException Refused(GaugeLog log, string sentence) =>
        new(Path.GetFileName(log.File), [Finding.Error(sentence)]);

    // Of two stages the one that the vessel's service record is of.
    private DesignFiles.Parts.DesignStage StageOf(string serial) => Design.Stages.Count == 1 ? Design.Stages[0]
        : Design.Stages.FirstOrDefault(s => Vessels.Any(v => Same(v.Serial, serial) && Same(v.Vessel, s.Name)))
            ?? throw new InvalidDesignException(Design.Name, [Finding.Error($"the folder has no service record of {serial} that says "
                + $"of which stage it is. Begin one: vessel new, with the vessel {Design.Stages[0].Name} or {Design.Stages[1].Name}.")]);

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static string Text(string path, string name)
    {
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new FormatException($"{name} can't be read ({error.Message.TrimEnd('.')}); check the file and your rights there.", error);
        }
    }

    // By the rule by which the design reads its tests.
    private static string[] Files(string folder, string below, string ending) =>
        [.. DesignFiles.Disk.DesignFile.In(Path.Combine(folder, below), ending).Select(f => $"{below}/{Path.GetFileName(f)}")];

    // Hidden files and folders are nobody's concern here; pages of a run and sheets are made anew.
    private static IEnumerable<string> All(string folder) => Directory.EnumerateFiles(folder, "*", new EnumerationOptions
    {
        RecurseSubdirectories = true, MaxRecursionDepth = 3, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
        IgnoreInaccessible = true,
    }).Take(1000).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
        .Where(f => !f.StartsWith("out/", StringComparison.Ordinal) && !(f.StartsWith("sheets/", StringComparison.Ordinal)
            && f.EndsWith(".html", StringComparison.Ordinal))).Order(StringComparer.Ordinal);
}
