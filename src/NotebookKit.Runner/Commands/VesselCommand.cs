using System.CommandLine;
using System.Globalization;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Interactive;
using NotebookKit.Proofing.Records;
using NotebookKit.Provenance;
using NotebookKit.Runner.Notebooks;
using Spectre.Console;

namespace NotebookKit.Runner.Commands;

/// <summary>The commands that keep a vessel's service record.</summary>
internal static class VesselCommand
{
    // Values of events, by the names that the file gives them.
    private static readonly (string Name, string Description)[] Values =
    [
        ("pressure", "Fill pressure: \"36 bar gauge\"."),
        ("temperature", "Temperature of the wall: \"18 °C\"."),
        ("hold", "Time at pressure: \"2 min\"."),
        ("medium", "What pressed on the wall: water or gas."),
        ("day", "Day it was made or proved: 2026-05-01."),
        ("batch", "Batches of fibre and resin."),
        ("dry-mass", "Mass before resin: \"310 g\"."),
        ("cured-mass", "Mass when cured: \"412 g\"."),
        ("mass", "Mass: \"412 g\"."),
        ("held", "Pressure held in the proof: \"54 bar gauge\"."),
        ("factor", "Pressure held over maximum fill pressure: 1.5."),
        ("rules", "Rule set of the factor."),
        ("record", "Fingerprint of the proof's record."),
        ("flight", "Name or number of the flight."),
        ("height", "Height of the drop: \"0.8 m\"."),
        ("duration", "How long it was hot: \"2 h\"."),
        ("what", "What was repaired."),
        ("result", "What an inspection found: sound or not-sound."),
        ("reason", "Why it was retired."),
    ];

    /// <summary>Their description for the command line.</summary>
    public static Command Create() => new("vessel", "Keeps the service record of a vessel.") { New(), Add(), Proved(), Show() };

    private static Command New()
    {
        var file = FileArgument();
        var vessel = new Option<string>("--vessel") { Description = "Name of the vessel.", Required = true };
        var serial = new Option<string>("--serial") { Description = "Serial of the vessel.", Required = true };
        var command = new Command("new", "Begins the record of a vessel.") { file, vessel, serial };
        command.SetAction(parsed => Sensibly(() =>
        {
            ThrowIfOfNoDesign(parsed.GetRequiredValue(file), parsed.GetRequiredValue(vessel));
            var begun = ServiceFile.Create(parsed.GetRequiredValue(file), parsed.GetRequiredValue(vessel), parsed.GetRequiredValue(serial));
            Say($"{begun.Location} is the service record of {begun.Vessel} {begun.Serial}. Write down first how it was made: vessel "
                + "add <file> made");
            SayLabel(begun.Serial, ServiceFile.Read(begun.Location).EndMark);
            return ExitCodes.Success;
        }));
        return command;
    }

    private static Command Add()
    {
        var file = FileArgument();
        var kind = new Argument<string>("event") { Description = $"What happened: {string.Join(", ", ServiceEvent.Kinds)}." };
        var at = new Option<string?>("--at") { Description = "Day, 2026-05-01, or day and time in UTC, 2026-05-01T09:30:00Z; now "
            + "if not given." };
        var by = new Option<string?>("--by") { Description = "Who saw or did it." };
        var notes = new Option<string?>("--notes") { Description = "What else is worth keeping." };
        var values = Values.Select(v => (v.Name, Option: new Option<string?>("--" + v.Name) { Description = v.Description })).ToList();
        var command = new Command("add", "Writes down what happened to the vessel.") { file, kind, at, by, notes };
        foreach (var (_, option) in values) command.Options.Add(option);
        command.SetAction(parsed => Sensibly(() =>
        {
            var given = values.Where(v => parsed.GetValue(v.Option) is not null).ToDictionary(v => v.Name, v => parsed.GetValue(v.Option)!,
                StringComparer.Ordinal);
            var happened = ServiceEvent.Read(parsed.GetRequiredValue(kind), given) with
            {
                At = parsed.GetValue(at) is { } time ? Time(time) : null,
                By = parsed.GetValue(by) ?? "",
                Notes = parsed.GetValue(notes) ?? "",
            };
            var path = parsed.GetRequiredValue(file);
            ThrowIfMadeAgain(happened, path);
            var receipt = ServiceFile.Open(path).Append(happened);
            foreach (var finding in receipt.Findings) Say(finding.ToString());
            Say($"Line {receipt.Entry.Line}: {receipt.Entry}");
            SayLabel(ServiceFile.Open(path).Serial, receipt.Entry.EndMark);
            var status = ServiceFile.Read(path).StatusOn(Today(receipt.Entry.Day), LifeLimits.Club);
            Say(status.Title);
            foreach (var reason in status.Reasons) Say($"  {reason.Sentence}");
            return status.Record.IsIntact ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }

    private static Command Proved()
    {
        var folder = new Argument<string>("folder") { Description = "The club's folder." };
        var log = new Option<string>("--log") { Description = "Log of the proof: time, pressure, temperature, water pumped in.",
            Required = true };
        var serial = new Option<string?>("--serial") { Description = "Serial of the vessel; that in the log's remarks if not given." };
        var on = new Option<string?>("--day") { Description = "Day of the proof, 2026-05-01; that of the log if not given." };
        var at = new Option<string?>("--at") { Description = "Day on which it is written down, 2026-05-02; now if not given." };
        var command = new Command("proved", "Judges the log of a proof; where the vessel held, keeps the record of the proof beside its "
            + "service record and writes the proof into that.") { folder, log, serial, on, at };
        command.SetAction(parsed => DesignRequest.Sensibly(() =>
        {
            var club = DesignRequest.Club(parsed.GetRequiredValue(folder));
            var record = club.Judge(parsed.GetRequiredValue(log), parsed.GetValue(serial), parsed.GetValue(on) is { } d ? Day(d) : null);
            var service = club.Vessel(record.Readings.Serial!);
            Console.Out.Write(ResultText.Of(record));
            // A proof before the making is a wrong day, and a line is never taken back.
            if (service.Events.OfType<Made>().FirstOrDefault() is { } made && record.Readings.Day is { } tested && tested < made.Day)
                throw new RequestException(FormattableString.Invariant($"The proof is of {tested:yyyy-MM-dd}, and {service.Serial} was ")
                    + FormattableString.Invariant($"made on {made.Day:yyyy-MM-dd}. Correct the day in the log; nothing is written."));
            DateTimeOffset? written = parsed.GetValue(at) is { } time ? Time(time) : null;
            var stage = club.Design.Stages.FirstOrDefault(s => string.Equals(s.Name, service.Vessel, StringComparison.OrdinalIgnoreCase))
                ?? club.Design.Stages[0];
            var place = Path.Combine(parsed.GetRequiredValue(folder), club.VesselFiles[club.Vessels.ToList().IndexOf(service)]);
            var stem = place[..place.LastIndexOf(".service.jsonl", StringComparison.Ordinal)];
            var kept = Enumerable.Range(1, int.MaxValue).Select(n => FormattableString.Invariant(
                $"{stem}-{record.Readings.Day:yyyy-MM-dd}{(n > 1 ? $"-{n}" : "")}.proof.json")).First(f => !File.Exists(f));
            if (record.Verdict == ProofVerdict.Reject)
            {
                // A vessel that failed its proof is never filled again, whatever it held before.
                var retired = Retire(place, service.Serial, new Retired("rejected by its proof")
                    { At = written, Notes = $"record {record.Fingerprint}" });
                Say($"Line {retired.Entry.Line} of {place}: {retired.Entry}");
                SayLabel(service.Serial, retired.Entry.EndMark);
                throw new RequestException($"The proof of {record.Readings.Serial} was rejected: the vessel is retired. Cut the vessel "
                    + $"up, so that nobody fills it by mistake.{Lost(kept, record)}");
            }

            var proved = record.ToProvedVessel(stage.Rating);
            // The record first: a line is never taken back, and one without its record would prove nothing.
            DesignRequest.Keep(kept, record.ToJson());
            var receipt = WriteDown(place, kept, new Proved(proved.Day, proved.Held,
                stage.Rating.ProofPressure / stage.Rating.WorkingPressure, proved.RuleSet, proved.Fingerprint)
                { At = written, Tests = stage.TestMarks });
            Say($"Line {receipt.Entry.Line} of {place}: {receipt.Entry}");
            SayLabel(service.Serial, receipt.Entry.EndMark);
            Say($"Record of the proof: {kept}");
            return ExitCodes.Success;
        }));
        return command;
    }

    // Whatever becomes of the line, whoever reads this has to know that the vessel failed.
    private static ServiceReceipt Retire(string place, string serial, Retired retired)
    {
        try
        {
            return ServiceFile.Open(place).Append(retired);
        }
        catch (ServiceFileException error)
        {
            throw new RequestException($"The proof of {serial} was rejected, and {serial} is not yet retired in its record: "
                + $"{error.Message} Don't fill the vessel; cut the vessel up.");
        }
    }

    private static string Lost(string kept, ProofRecord record)
    {
        try
        {
            DesignRequest.Keep(kept, record.ToJson());
            return "";
        }
        catch (RequestException error)
        {
            return $" The record of the proof isn't kept: {error.Message}";
        }
    }

    private static ServiceReceipt WriteDown(string place, string kept, Proved proved)
    {
        try
        {
            return ServiceFile.Open(place).Append(proved);
        }
        catch (Exception error) when (error is ServiceFileException or InvalidDesignException)
        {
            if (!MayHold(place, proved)) AtomicFile.TryDelete(kept);
            throw;
        }
    }

    private static bool MayHold(string place, Proved proved)
    {
        try
        {
            return ServiceFile.Read(place).Events.OfType<Proved>().Any(p => p.Record == proved.Record);
        }
        catch (ServiceFileException)
        {
            return true;
        }
    }

    private static Command Show()
    {
        var file = FileArgument();
        var on = new Option<string?>("--on") { Description = "Day to look at, 2026-05-01; today if not given." };
        var head = new Option<string?>("--head") { Description = "Head fingerprint kept elsewhere, to see that no line was taken "
            + "away at the end." };
        var command = new Command("show", "Says what happened to the vessel, and whether it may be filled, by the club's limits.") { file,
            on, head };
        command.SetAction(parsed => Sensibly(() =>
        {
            var day = parsed.GetValue(on) is { } text ? Day(text) : Today(DateOnly.MinValue);
            var record = ServiceFile.Read(parsed.GetRequiredValue(file), parsed.GetValue(head));
            var status = record.StatusOn(day, LifeLimits.Club);
            Console.Out.Write(ResultText.Of(record));
            Console.Out.WriteLine();
            Console.Out.Write(ResultText.Of(status));
            return status.Standing == ServiceStanding.InService ? ExitCodes.Success : ExitCodes.Failed;
        }));
        return command;
    }

    private static Argument<string> FileArgument() => new("file") { Description = "The record, for example curlew-c1.service.jsonl." };

    // The name is written for good: in a club's folder it has to be one of its design's.
    private static void ThrowIfOfNoDesign(string file, string vessel)
    {
        var beside = Path.GetDirectoryName(Path.GetDirectoryName(Path.GetFullPath(file))) is { } club
            ? Path.Combine(club, DesignRequest.InFolder) : "";
        if (!File.Exists(beside)) return;
        List<string> names;
        try
        {
            names = [.. Design.Read(beside).Stages.Select(s => s.Name)];
        }
        catch (DesignFileException)
        {
            return;
        }

        if (!names.Exists(n => string.Equals(n, vessel.Trim(), StringComparison.OrdinalIgnoreCase)))
            throw new RequestException($"The design of this folder has no vessel \"{vessel}\"; "
                + $"{(names.Count == 1 ? "its vessel is" : "its vessels are")} \"{string.Join("\" and \"", names)}\". Write --vessel with "
                + "that name: a service record keeps its name for good.");
    }

    // A line is never taken back, and one that says again that the vessel was made grounds a vessel that was proved.
    private static void ThrowIfMadeAgain(ServiceEvent happened, string path)
    {
        if (happened is Made && ServiceFile.Read(path) is var record && record.Events.Any(e => e is Made)
            && record.Events.Any(e => e is Proved))
            throw new RequestException($"The record of {record.Serial} says already that the vessel was made, and holds a proof of it. "
                + "Nothing is written: give the later vessel a serial of its own and begin a record for that serial, vessel new.");
    }

    private static int Sensibly(Func<int> action)
    {
        try
        {
            return action();
        }
        catch (Exception error) when (error is InvalidDesignException or ServiceFileException)
        {
            throw new RequestException(error.Message);
        }
    }

    private static DateOnly Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new RequestException($"\"{text}\" isn't a day; write year, month and day, for example 2026-05-01.");

    private static DateTimeOffset Time(string text) =>
        DateTimeOffset.TryParseExact(text, ["yyyy-MM-dd", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm'Z'"],
            CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)
            ? at
            : throw new RequestException($"\"{text}\" isn't a day or a time in UTC; write 2026-05-01 or 2026-05-01T09:30:00Z.");

    // A clock that was set back doesn't make the event that was just written lie in the future.
    private static DateOnly Today(DateOnly atLeast) => DateOnly.FromDateTime(DateTime.UtcNow) is var today && today < atLeast ? atLeast :
        today;

    // The file alone can't show that lines at its end were taken away; the label on the vessel can.
    private static void SayLabel(string serial, string mark) => Say($"Write this mark on the label of {serial}, in place of the last one: "
        + mark);

    private static void Say(string text) => AnsiConsole.Console.Profile.Out.Writer.WriteLine(text);
}
