using System.Globalization;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

namespace NotebookKit.Logs.Tests;

/// <summary>Ways to talk a flight card into GO: each is refused, with the remedy. Demo data are invented.</summary>
public sealed class CardAttackTests : FolderOnGo
{
    [Theory]
    [InlineData("t3.JSON")]
    [InlineData("T3.Json")]
    public void A_bad_burst_counts_whatever_the_case_of_its_files_ending(string name)
    {
        File.WriteAllText(In("tests", name), """
            { "kind": "burst", "vessel": "T-3", "pressure": "70 bar gauge", "failed": "wall" }
            """);
        var folder = ClubFolder.Read(Folder);
        Assert.Contains($"tests/{name}", folder.Tests);
        Assert.Contains(folder.Design.Evidence.Tests, t => t.Id == "T-3");
        Assert.False(folder.Card().IsGo);
    }

    // The rows of the proof that is written down already, and what was done to them.
    [Theory]
    [InlineData("first row taken away")]
    [InlineData("last row taken away")]
    [InlineData("a row in the middle taken away")]
    [InlineData("every second row taken away")]
    [InlineData("five rows at the end taken away")]
    [InlineData("a hundred rows of the hold taken away")]
    [InlineData("a row added in front")]
    [InlineData("rows added between")]
    [InlineData("an hour later")]
    [InlineData("without the water and with another temperature")]
    public void The_log_of_a_proof_that_is_written_down_is_no_new_proof_whatever_was_done_to_its_rows(string done)
    {
        var lines = File.ReadAllLines(In("logs", "proof.csv")).Where(l => !l.StartsWith('#')).ToList();
        var (header, rows) = (lines[0], lines.Skip(1).ToList());
        var changed = done switch
        {
            "first row taken away" => rows.Skip(1),
            "last row taken away" => rows.SkipLast(1),
            "a row in the middle taken away" => rows.Where((_, i) => i != rows.Count / 2),
            "every second row taken away" => rows.Where((_, i) => i % 2 == 0),
            "five rows at the end taken away" => rows.SkipLast(5),
            "a hundred rows of the hold taken away" => rows.Where((_, i) => i is < 500 or > 600),
            "a row added in front" => rows.Prepend("-1,0.10,,0.0"),
            "rows added between" => rows.SelectMany((r, i) => i % 3 == 0 ? new[] { r, Moved(r, 0.5) } : [r]),
            "an hour later" => rows.Select(r => Moved(r, 3600)),
            _ => rows.Select((r, i) => string.Create(CultureInfo.InvariantCulture, $"{r.Split(',')[0]},{r.Split(',')[1]},{18 + i % 7},")),
        };
        foreach (var serial in new[] { "C-1", "C-2" })
        {
            File.WriteAllLines(In("logs", "again.csv"), [$"# serial: {serial}", "# day: 2026-05-01", header, .. changed]);
            var refused = Refusal(() => ClubFolder.Read(Folder).Judge(In("logs", "again.csv")));
            Assert.Contains("its readings are those of the proof of C-1 on 2026-03-14 that is written down already", refused,
                StringComparison.Ordinal);
            Assert.Contains("proof-test the vessel again", refused, StringComparison.Ordinal);
        }
    }

    // Two proofs of one plan that differ in the noise of the gauge alone, the hardest honest case: read at 0.1 bar, once a second.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Two_honest_proofs_of_one_plan_are_two(bool hasWater)
    {
        for (var seed = 1; seed <= 8; seed++)
        {
            File.WriteAllLines(In("logs", "one.csv"), Log("C-7", seed, hasWater));
            File.WriteAllLines(In("logs", "two.csv"), Log("C-8", seed + 100, hasWater));
            GaugeLog one = GaugeLog.Read(In("logs", "one.csv")), two = GaugeLog.Read(In("logs", "two.csv"));
            Assert.Null(SameReadings.Find(Columns(one), Columns(two)));
            File.WriteAllLines(In("logs", "three.csv"), Log("C-8", seed, hasWater).Where((l, i) => i < 4 || i % 2 == 0));
            Assert.NotNull(SameReadings.Find(Columns(one), Columns(GaugeLog.Read(In("logs", "three.csv")))));
        }
    }

    [Theory]
    [InlineData("braids", """{ "name": "carbon sleeve 65 mm heavy", "like": "glass sleeve 65 mm" }""")]
    [InlineData("braids", """{ "name": "carbon sleeve 65 mm heavy", "yarn width": "3 mm" }""")]
    [InlineData("cloths", """{ "name": "carbon tape 150 g", "areal weight": "170 g/m²" }""")]
    [InlineData("solids", """{ "name": "aluminium 6061-T6", "yield strength": "300 MPa" }""")]
    public void A_material_that_is_made_otherwise_under_the_same_name_is_another_vessel(string kind, string material)
    {
        Curlew.Write(In("design.json"));
        var text = Curlew.ToText().Replace("\"materials\": {", $"\"materials\": {{ \"{kind}\": [ {material} ],", StringComparison.Ordinal);
        Assert.NotEqual(Curlew.Stage.Mark, Design.Parse(text).Stage.Mark);
        File.WriteAllText(In("design.json"), text);
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Shown, i => i is { Name: "proved vessel", IsShown: false });
    }

    [Fact]
    public void A_glass_temperature_or_a_source_or_a_material_of_another_vessel_leaves_the_mark()
    {
        var text = Curlew.ToText();
        foreach (var same in new[]
        {
            text.Replace("\"88 °C\"", "\"90 °C\"", StringComparison.Ordinal),
            text.Replace("invented: a strip of the batch", "invented: another strip", StringComparison.Ordinal),
            text.Replace("\"materials\": {", """
                "materials": { "braids": [ { "name": "glass sleeve 65 mm", "yarn width": "3 mm" } ],
                """, StringComparison.Ordinal),
            Curlew.Without("materials").ToText(),
        })
        {
            Assert.NotEqual(text, same);
            Assert.Equal(Curlew.Stage.Mark, Design.Parse(same).Stage.Mark);
        }
    }

    [Fact]
    public void Moisture_that_nobody_says_how_it_was_measured_is_not_counted()
    {
        var hot = Day("\"wall temperature\": \"15 °C\"", "\"wall temperature\": \"30 °C\"");
        File.WriteAllText(In("day.json"), hot);
        var measured = (FlightCard)ClubFolder.Read(Folder).Card();
        Assert.Contains(measured.Lines, l => l is { Name: "Water in the resin", Value: "0.5 %", Note: "measured: strip" });
        File.WriteAllText(In("day.json"), hot.Replace(", \"resin moisture by\": \"strip\"", "", StringComparison.Ordinal));
        var claimed = (FlightCard)ClubFolder.Read(Folder).Card();
        Assert.Contains(claimed.Findings, f => f.Severity == FindingSeverity.Warning && f.Message.StartsWith(
            "the resin's moisture of 0.5 % isn't counted: the file of the day doesn't say how it was measured. 2 % is taken",
            StringComparison.Ordinal));
        File.WriteAllText(In("day.json"), hot.Replace(", \"resin moisture\": \"0.5 %\", \"resin moisture by\": \"strip\"", "",
            StringComparison.Ordinal));
        var none = (FlightCard)ClubFolder.Read(Folder).Card();
        Assert.Equal(none.Allowance!.Pressure, claimed.Allowance!.Pressure);
        Assert.True(claimed.Allowance.Pressure < measured.Allowance!.Pressure);
    }

    [Fact]
    public void A_vessel_that_is_made_a_second_time_after_its_proof_needs_a_record_of_its_own()
    {
        var file = In("vessels", "c1.service.jsonl");
        ServiceFile.Open(file).Append(new Made(new(2026, 4, 20), "batch 4") { At = new(2026, 5, 2, 8, 30, 0, TimeSpan.Zero) });
        ServiceFile.Open(file).Append(new Inspected(InspectionResult.Sound) { At = new(2026, 5, 2, 9, 0, 0, TimeSpan.Zero) });
        File.WriteAllText(In("day.json"), Labelled(ServiceFile.Read(file).EndMark));
        Forbids("says again that the vessel was made, after a proof of it");
        Forbids("Give the later vessel a serial of its own, begin a new record for that serial");
    }

    [Fact]
    public void A_fill_that_warms_the_inside_of_the_wall_beyond_liner_or_resin_forbids()
    {
        var text = Curlew.ToText();
        var at = text.IndexOf("\"restrictor\"", StringComparison.Ordinal);
        var from = text.IndexOf("\"diameter\": \"", at, StringComparison.Ordinal) + 13;
        File.WriteAllText(In("design.json"), text[..from] + "8 mm" + text[text.IndexOf('"', from)..]);
        Forbids("the fill may warm the inside of the wall to");
    }

    [Fact]
    public void The_wind_limit_on_the_card_is_no_more_than_the_gust_that_the_fins_were_judged_with()
    {
        Curlew.With("fin structure.gust", "3.5 m/s").Write(In("design.json"));
        var card = (FlightCard)ClubFolder.Read(Folder).Card();
        Assert.Equal(3.5, card.Wind!.Limit.MetersPerSecond);
        Assert.True(card.Wind.RailExit.MetersPerSecond > 3.5);
        Assert.Contains(card.Checklist, c => c.Contains("at most 3.5 m/s", StringComparison.Ordinal)
            && c.Contains("the gust that the fins were judged with sets it", StringComparison.Ordinal));
        Assert.Contains(card.Lines, l => l is { Name: "Wind limit at the rail", Value: "3.5 m/s" });
    }

    [Fact]
    public void Readings_of_psi_taken_for_bar_prove_and_reject_nothing()
    {
        var lines = Log("C-9", 5, hasWater: true, scale: 14.5);
        File.WriteAllLines(In("logs", "psi.csv"), lines);
        var refused = Refusal(() => ClubFolder.Read(Folder).Judge(In("logs", "psi.csv")));
        Assert.Contains("times the planned proof of 94.5 bar gauge; is the column in psi? Correct the unit and judge the log again: "
            + "nothing is written", refused, StringComparison.Ordinal);
    }

    [Fact]
    public void A_retired_vessel_is_not_proved_again()
    {
        ServiceFile.Open(In("vessels", "c1.service.jsonl")).Append(new Retired("rejected by its proof")
            { At = new(2026, 5, 2, 9, 0, 0, TimeSpan.Zero) });
        File.WriteAllLines(In("logs", "good.csv"), Log("C-1", 5, hasWater: true));
        Assert.Contains("Curlew C-1 is retired by its service record, and a retired vessel isn't proved again. Nothing is written",
            Refusal(() => ClubFolder.Read(Folder).Judge(In("logs", "good.csv"), day: new(2026, 5, 1))), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_after_the_labels_mark_that_can_not_be_read_are_not_counted_as_none()
    {
        File.AppendAllText(In("vessels", "c1.service.jsonl"), "{}\n");
        Forbids("its service record goes on with what can't be read");
        Assert.DoesNotContain(ClubFolder.Read(Folder).Card().Findings, f => f.Message.Contains("for 0 lines", StringComparison.Ordinal));
    }

    private string Day(string was, string now)
    {
        var text = Today.Replace(was, now, StringComparison.Ordinal);
        Assert.NotEqual(Today, text);
        return text;
    }

    private static SameReadings.Readings Columns(GaugeLog log) => new(log.Time, log.Pressure, log.Temperature, log.Expansion);

    private static string Moved(string row, double seconds)
    {
        var cut = row.IndexOf(',', StringComparison.Ordinal);
        var time = double.Parse(row[..cut], CultureInfo.InvariantCulture) + seconds;
        return string.Create(CultureInfo.InvariantCulture, $"{time}{row[cut..]}");
    }

    // Ramps of 1 bar/s between holds, all alike; only the seed of the noise, 0.1 bar and 0.1 mL, differs.
    private static List<string> Log(string serial, int seed, bool hasWater, double scale = 1)
    {
        var chance = new Random(seed);
        double Noise(double size) => size * (2 * chance.NextDouble() - 1);
        List<string> lines = [$"# serial: {serial}", "# day: 2026-05-01", $"time [s],pressure [bar gauge]{(hasWater
            ? ",temperature [°C],expansion [mL]" : "")}"];
        var (time, bar) = (0, 0.0);
        void Row()
        {
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{time++},{scale * bar + Noise(0.1):F1}{(hasWater
                ? string.Create(CultureInfo.InvariantCulture, $",{18 + Noise(0.05):F1},{0.75 * bar + Noise(0.1):F1}") : "")}"));
        }

        foreach (var (target, hold) in new[] { (0.0, 20), (24, 60), (47, 60), (71, 60), (85, 60), (95.4, 125), (60, 610), (0, 60) })
        {
            while (Math.Abs(bar - target) > 1)
            {
                bar += bar < target ? 1 : -1;
                Row();
            }

            bar = target;
            for (var i = 0; i < hold; i++) Row();
        }

        return lines;
    }
}
