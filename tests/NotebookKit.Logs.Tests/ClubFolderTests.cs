using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.Logs.Learning;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Logs.Tests;

/// <summary>A club's folder as one thing, and what a new log moves in its design.</summary>
public sealed class ClubFolderTests : IDisposable
{
    private static readonly DateOnly Today = new(2026, 5, 2);

    private readonly string _folder = Directory.CreateTempSubdirectory("nk-club-").FullName;

    public ClubFolderTests()
    {
        foreach (var below in new[] { "vessels", "tests", "logs" }) Directory.CreateDirectory(In(below));
        Curlew.Write(In("design.json"));
    }

    private static Design Curlew { get; } = Design.Read(Path.Combine(Root(), "notebooks", "curlew.json"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void An_empty_folder_is_its_design_and_the_mark_that_a_test_of_it_is_to_bear()
    {
        var check = ClubFolder.Read(_folder).Check(Today);
        Assert.True(check.Holds);
        Assert.Equal(check.Folder.Design.Stage.Mark, check.Lines.Except(check.Design.Lines).Single().Value);
    }

    // Against the service record's own answer, which is not worked out anew here.
    [Fact]
    public void Vessels_stand_as_their_service_records_say()
    {
        Record("c1", "C-1", retired: true);
        Record("c2", "C-2", retired: false);
        ServiceFile.Create(In("vessels", "c3.service.jsonl"), "Curlew", "C-3");
        var folder = ClubFolder.Read(_folder);
        var check = folder.Check(Today);
        Assert.Equal(folder.Vessels.Select(v => v.StatusOn(Today, LifeLimits.Club).Standing), check.Vessels.Select(v => v.Standing));
        Assert.Equal(["RETIRED", "in service", "GROUNDED"], check.Lines.Where(l => l.Name.StartsWith("Vessel", StringComparison.Ordinal))
            .Select(l => l.Value));
        Assert.Contains("1 fills", check.Lines.Single(l => l.Name == "Vessel Curlew C-2").Note, StringComparison.Ordinal);
        Assert.Contains(check.Findings, f => f.Message.Contains("Curlew C-3 may not be filled", StringComparison.Ordinal));
        // 60 bar held over a factor of 1.5 allow 40 bar; the design fills to 58.
        Assert.Contains(check.Findings, f => f.Message.Contains("Curlew C-2 allows 40 bar gauge; the design fills to 58 bar gauge",
            StringComparison.Ordinal));
        Assert.Equal("C-2", folder.Vessel("c-2").Serial);
        var unknown = Assert.Throws<InvalidDesignException>(() => folder.Vessel("C-9"));
        Assert.Contains("C-1, C-2, C-3", unknown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Logs_tests_and_the_shelf_are_seen_and_what_nothing_reads_is_named()
    {
        File.Copy(Demo("curlew-flight.csv"), In("logs", "flight.csv"));
        File.WriteAllText(In("logs", "torn.csv"), "time [s],pressure [bar gauge]\n0,1\n1\n");
        File.WriteAllText(In("logs", "notes.txt"), "windy");
        File.WriteAllText(In("tests", "x.json"), """{ "kind": "held proof", "vessel": "C-9", "pressure": "90 bar gauge" }""");
        File.Copy(Demo("stock.csv"), In("stock.csv"));
        var folder = ClubFolder.Read(_folder);
        Assert.Equal(Curlew.Evidence.Tests.Count + 1, folder.Design.Evidence.Tests.Count);
        Assert.Equal([LogKind.Altimeter, LogKind.Unknown], folder.Logs.Select(l => l.Kind));
        Assert.NotNull(folder.Stock);
        Assert.Equal(["logs/notes.txt"], folder.Unused);
        var check = folder.Check(Today);
        Assert.Contains(check.Lines, l => l is { Name: "Not used here", Note: "logs/notes.txt" });
        Assert.Contains(check.Findings, f => f.Message.Contains("torn.csv", StringComparison.Ordinal));
    }

    [Fact]
    public void A_flight_moves_the_drag_and_what_rests_on_it_and_keeps_the_remarks_of_the_file()
    {
        var learned = Curlew.Learn(Demo("curlew-flight.csv"));
        Assert.Equal(LogUse.Flight, learned.Use);
        Assert.Equal(Math.Round(((Evidence.FlightFits.FlightFit)learned.Fit).DragFactor, 3), learned.After.Stage.Vessel is null ? 0
            : learned.After.Vehicle.DragCalibration!.Factor, 1e-3);
        Assert.Contains(learned.Moved.Figures, f => f.Name == "apogee");
        Assert.DoesNotContain(learned.Moved.Figures, f => f.Name == "rated pressure");
        var text = learned.Into(Curlew).ToText();
        Assert.Contains("// Readings of the kitchen scale", text, StringComparison.Ordinal);
        Assert.Contains("fitted to curlew-flight.csv", text, StringComparison.Ordinal);
        Assert.Equal(Curlew, learned.Into(Curlew).Without("drag"));
    }

    // A gauge in plain psi was listed as an altimeter.
    [Fact]
    public void A_pressure_without_its_reference_is_the_airs_only_where_it_could_be()
    {
        File.WriteAllText(In("logs", "gauge.csv"), "time [s],pressure [psi]\n0,0\n1,150\n2,304\n");
        File.WriteAllText(In("logs", "air.csv"), "time [s],pressure [hPa]\n0,1013\n1,1000\n2,990\n");
        File.WriteAllText(In("design.json"), Curlew.ToText());
        var logs = ClubFolder.Read(_folder).Logs;
        Assert.Equal([LogKind.Altimeter, LogKind.Unknown], logs.Select(l => l.Kind));
        Assert.Null(logs[0].Finding);
        Assert.Contains("write 'gauge' or 'absolute'", logs[1].Finding!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flight_that_does_not_determine_the_drag_is_refused()
    {
        // The demo flight went up on 58 bar.
        var other = Curlew.With("fill pressure", "20 bar gauge");
        Assert.Contains("doesn't determine its drag", Assert.Throws<InvalidDesignException>(() => other.Learn(Demo("curlew-flight.csv")))
            .Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_proof_becomes_a_held_proof_once_and_its_logs_findings_are_said_with_it()
    {
        var learned = Curlew.Learn(Demo("curlew-proof.csv"));
        Assert.Equal(LogUse.Proof, learned.Use);
        Assert.Equal("C-1", learned.After.Evidence.Tests[^1].Id);
        Assert.True(learned.After.Evidence.Tests[^1].Pressure.Bar <= ((Proofing.Records.ProofRecord)learned.Fit).HeldAtLeast!.Value.Bar);
        Assert.Contains(learned.Findings, f => f.Message.Contains("gaps in temperature", StringComparison.Ordinal));
        Assert.Contains("already", Assert.Throws<InvalidDesignException>(() => learned.After.Learn(Demo("curlew-proof.csv"))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_fill_becomes_a_measured_restrictor_where_the_design_has_a_fill()
    {
        var refused = Assert.Throws<InvalidDesignException>(() => Curlew.Without("pad").Learn(Demo("curlew-fill.csv")));
        Assert.Contains("add \"pad\"", refused.Message, StringComparison.Ordinal);
        var design = Curlew.With("pad", """{ "regulator": "60 bar gauge", "restrictor": { "kind": "orifice", "diameter": "0.5 mm" } }""");
        var learned = design.Learn(Demo("curlew-fill.csv"));
        var fit = (Filling.Measured.FillFit)learned.Fit;
        Assert.Equal(LogUse.Fill, learned.Use);
        Assert.Equal(fit.Conductance.LitresPerSecondBar, learned.After.Stage.PadFill!.Restrictor.Conductance.LitresPerSecondBar,
            1e-3 * fit.Conductance.LitresPerSecondBar);
        Assert.Contains(learned.Moved.Figures, f => f.Name == "fill time");
    }

    [Fact]
    public void A_log_that_can_not_be_used_is_refused_with_its_reason()
    {
        var first = Assert.Throws<InvalidDesignException>(() => Curlew.Learn(Demo("curlew-proof-first.csv")));
        Assert.Contains("proof pressure is 94.5 bar gauge", first.Message, StringComparison.Ordinal);
        File.WriteAllText(In("logs", "gauge.csv"), "time [s],pressure [bar gauge]\n0,1\n1,2\n2,3\n");
        Assert.Contains("say which: --as proof or --as fill",
            Assert.Throws<LogFormatException>(() => Curlew.Learn(In("logs", "gauge.csv"))).Message,
            StringComparison.Ordinal);
        var rows = Enumerable.Range(0, 60).Select(i => FormattableString.Invariant($"{(i % 4 == 0 ? 5 * i : i)},{1.0 + i / 1000.0}"));
        File.WriteAllText(In("logs", "ragged.csv"), "time [s],pressure [bar absolute]\n" + string.Join('\n', rows));
        Assert.Contains("rows", Assert.ThrowsAny<Exception>(() => Curlew.Learn(In("logs", "ragged.csv"))).Message,
            StringComparison.Ordinal);
    }

    private void Record(string file, string serial, bool retired)
    {
        var record = ServiceFile.Create(In("vessels", $"{file}.service.jsonl"), "Curlew", serial);
        static DateTimeOffset Morning(int month, int day) => new(2026, month, day, 8, 0, 0, TimeSpan.Zero);
        record.Append(new Made(new(2026, 2, 21), "batch 3") { At = Morning(2, 21) });
        record.Append(new Proved(new(2026, 3, 14), 60.BarGauge(), 1.5, "Club rule", new string('a', 64)) { At = Morning(3, 15) });
        record.Append(new Filled(38.BarGauge(), 15.Celsius(), UnitsNet.Duration.FromMinutes(2)) { At = Morning(4, 1) });
        if (retired) record.Append(new Retired("chafed") { At = Morning(4, 2) });
    }

    private string In(params string[] parts) => Path.Combine([_folder, .. parts]);

    private static string Demo(string file) => Path.Combine(Root(), "data-demo", file);

    private static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests don't lie in the repository.");
    }
}
