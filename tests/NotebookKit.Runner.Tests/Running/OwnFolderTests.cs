namespace NotebookKit.Runner.Tests.Running;

/// <summary>A vehicle of one's own: a folder made, checked, run and swept.</summary>
[Trait("Length", "long")]
public sealed class OwnFolderTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_new_folder_holds_its_requirements_rests_on_no_test_of_another_and_runs_as_a_notebook()
    {
        var made = await ProgramRun.RunAsync(["new", "Our rocket", "--in", folder[""]]);
        Assert.Equal(0, made.ExitCode);
        var own = folder["our-rocket"];
        foreach (var part in new[] { "vessels", "tests", "logs" }) Assert.True(Directory.Exists(Path.Combine(own, part)), part);
        var design = await File.ReadAllTextAsync(Path.Combine(own, "design.json"));
        Assert.DoesNotContain("\"evidence\"", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"weighed\"", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"measured\"", design, StringComparison.Ordinal);
        var check = await ProgramRun.RunAsync(["check", own]);
        Assert.Contains("Check of Our rocket", check.Output, StringComparison.Ordinal);
        Assert.Contains("0 tests", check.Output, StringComparison.Ordinal);
        Assert.Equal(0, check.ExitCode);
        var run = await ProgramRun.RunAsync(["run", own, "--out", folder["out"]]);
        Assert.Contains("1 of 1 notebooks ran", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public async Task Two_stages_begin_with_the_two_stage_vehicle()
    {
        Assert.Equal(0, (await ProgramRun.RunAsync(["new", "Two up", "--stages", "2", "--in", folder[""]])).ExitCode);
        var check = await ProgramRun.RunAsync(["check", folder["two-up"]]);
        Assert.Contains("sustainer: design burst", check.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("can't be computed", check.Output, StringComparison.Ordinal);
    }

    // A file of one's own names its own material and a weighed end: the name stays, what was measured doesn't.
    [Fact]
    public async Task A_design_with_materials_of_its_own_keeps_their_names_and_no_measurement()
    {
        var own = (await File.ReadAllTextAsync(Path.Combine(TestFolder.Repository, "notebooks", "curlew.json")))
            .Replace("\"name\": \"laminating epoxy\"", "\"name\": \"our epoxy\", \"like\": \"laminating epoxy\"", StringComparison.Ordinal)
            .Replace("\"resin\": \"laminating epoxy\"", "\"resin\": \"our epoxy\"", StringComparison.Ordinal)
            .Replace("\"other parts\": \"15 g\"", "\"other parts\": \"15 g\", \"weighed\": \"80 g\"", StringComparison.Ordinal);
        await File.WriteAllTextAsync(folder["own.json"], own);
        var made = await ProgramRun.RunAsync(["new", "Named", "--from", folder["own.json"], "--in", folder[""]]);
        Assert.True(made.ExitCode == 0, made.Output + made.Errors);
        var design = await File.ReadAllTextAsync(Path.Combine(folder["named"], "design.json"));
        Assert.Contains("our epoxy", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"measured\"", design, StringComparison.Ordinal);
        Assert.DoesNotContain("\"weighed\"", design, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a/b", "can't be a folder's name")]
    [InlineData("...", "can't be a folder's name")]
    [InlineData("Fine", "There is no design", "--from", "heron")]
    public async Task A_name_that_is_no_folder_and_a_design_that_is_not_there_are_refused(string name, string sentence,
        params string[] more)
    {
        var made = await ProgramRun.RunAsync(["new", name, "--in", folder[""], .. more]);
        Assert.Contains(sentence, (made.Output + made.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, made.ExitCode);
    }

    // The name is written for good.
    [Fact]
    public async Task A_service_record_of_a_vessel_that_the_design_has_not_is_refused_before_it_is_begun()
    {
        await ProgramRun.RunAsync(["new", "Heron", "--in", folder[""]]);
        var file = Path.Combine(folder["heron"], "vessels", "r1.service.jsonl");
        var typo = await ProgramRun.RunAsync(["vessel", "new", file, "--vessel", "Herron", "--serial", "R-1"]);
        Assert.Equal(2, typo.ExitCode);
        Assert.Contains("has no vessel \"Herron\"; its vessel is \"Heron\"", (typo.Output + typo.Errors).ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.False(File.Exists(file));
        Assert.Equal(0, (await ProgramRun.RunAsync(["vessel", "new", file, "--vessel", "heron", "--serial", "R-1"])).ExitCode);
        var check = await ProgramRun.RunAsync(["check", folder["heron"]]);
        Assert.Matches("Mark of the vessel +[0-9a-f]{12}", check.Output);
    }

    [Fact]
    public async Task What_is_there_already_is_left_alone()
    {
        await File.WriteAllTextAsync(folder["mine"], "kept");
        Assert.Equal(2, (await ProgramRun.RunAsync(["new", "Mine", "--in", folder[""]])).ExitCode);
        Assert.Equal("kept", await File.ReadAllTextAsync(folder["mine"]));
    }

    [Fact]
    public async Task A_sweep_says_which_designs_hold_and_writes_its_table()
    {
        await ProgramRun.RunAsync(["new", "Swept", "--in", folder[""]]);
        var sweep = await ProgramRun.RunAsync(["sweep", folder["swept"], "--over", "fill pressure=10..30 bar gauge/5",
            "--table", folder["swept.csv"], "--out", folder["sweeps"]]);
        Assert.Contains("5 designs meet every requirement", sweep.Output, StringComparison.Ordinal);
        var file = Path.Combine(folder["sweeps"], "swept-sweep-fill-pressure.html");
        Assert.Contains(file, sweep.Output, StringComparison.Ordinal);
        var page = await File.ReadAllTextAsync(file);
        Assert.Contains("apogee below the ceiling: at most 600 m", page, StringComparison.Ordinal);
        Assert.Contains("fill pressure [bar gauge]", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script src", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http:", page.Replace("http://www.w3.org/", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(0, sweep.ExitCode);
        var lines = await File.ReadAllLinesAsync(folder["swept.csv"]);
        Assert.Equal(6, lines.Length);
        Assert.Contains("Apogee [m]", lines[0], StringComparison.Ordinal);
        // Another sweep of the same value leaves the first one as it is.
        var second = await ProgramRun.RunAsync(["sweep", folder["swept"], "--over", "fill pressure=10 bar gauge; 12 bar gauge", "--out",
            folder["sweeps"]]);
        Assert.Contains("swept-sweep-fill-pressure-2.html", second.Output, StringComparison.Ordinal);
        Assert.Equal(page, await File.ReadAllTextAsync(file));
        var refused = await ProgramRun.RunAsync(["sweep", folder["swept"], "--over", "fill pressure=1..2 bar gauge/1000",
            "--over", "throat=11..12 mm/1000"]);
        Assert.Contains("it must have 1 to 10000", (refused.Output + refused.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_check_sees_the_tests_the_vessels_and_the_logs_of_the_folder()
    {
        await ProgramRun.RunAsync(["new", "Whole", "--in", folder[""]]);
        var (own, vessel) = (folder["whole"], Path.Combine(folder["whole"], "vessels", "w1.service.jsonl"));
        await ProgramRun.RunAsync(["vessel", "new", vessel, "--vessel", "Whole", "--serial", "W-1"]);
        await ProgramRun.RunAsync(["vessel", "add", vessel, "made", "--day", "2026-02-01", "--batch", "one"]);
        await ProgramRun.RunAsync(["vessel", "add", vessel, "retired", "--reason", "chafed"]);
        await File.WriteAllTextAsync(Path.Combine(own, "tests", "r1.json"),
            """{ "kind": "burst", "vessel": "R-1", "pressure": "340 bar gauge", "failed": "wall" }""");
        File.Copy(Demo("curlew-flight.csv"), Path.Combine(own, "logs", "flight.csv"));
        await File.WriteAllTextAsync(Path.Combine(own, "logs", "notes.txt"), "windy");
        var check = await ProgramRun.RunAsync(["check", own]);
        Assert.Contains("1 test", check.Output, StringComparison.Ordinal);
        Assert.Matches("Vessel Whole W-1 +RETIRED", check.Output);
        Assert.Matches("Log flight.csv +altimeter +.2001 rows", check.Output);
        Assert.Matches("Not used here +1 +.logs/notes.txt", check.Output);
        Assert.Equal(0, check.ExitCode);
        await File.WriteAllTextAsync(Path.Combine(own, "tests", "r2.json"), "{ \"kind\": \"burst\" ");
        var torn = await ProgramRun.RunAsync(["check", own]);
        Assert.Contains("r2.json, line 1", torn.Output + torn.Errors, StringComparison.Ordinal);
        Assert.Equal(2, torn.ExitCode);
    }

    [Fact]
    public async Task A_new_log_says_what_it_moves_and_is_written_only_when_asked_for()
    {
        var (design, before) = (folder["curlew.json"], await File.ReadAllTextAsync(CurlewFile));
        await File.WriteAllTextAsync(design, before);
        var told = await ProgramRun.RunAsync(["learn", design, "--log", Demo("curlew-flight.csv")]);
        Assert.Matches("apogee +[0-9.]+ m +.before: [0-9.]+ m", told.Output);
        Assert.Equal((0, before), (told.ExitCode, await File.ReadAllTextAsync(design)));
        Assert.Equal(0, (await ProgramRun.RunAsync(["learn", design, "--log", Demo("curlew-flight.csv"), "--write"])).ExitCode);
        var after = await File.ReadAllTextAsync(design);
        Assert.Contains("fitted to curlew-flight.csv", after, StringComparison.Ordinal);
        Assert.Contains("// Readings of the kitchen scale", after, StringComparison.Ordinal);
        // Lines are added and none is changed.
        Assert.Empty(before.Split('\n').Except(after.Split('\n')));
        var refused = await ProgramRun.RunAsync(["learn", design, "--log", Demo("curlew-proof-first.csv"), "--write"]);
        Assert.Contains("proof pressure is 94.5 bar gauge", (refused.Output + refused.Errors).ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.Equal((2, after), (refused.ExitCode, await File.ReadAllTextAsync(design)));
    }

    [Fact]
    public async Task A_proof_of_a_folder_is_written_among_its_tests()
    {
        await ProgramRun.RunAsync(["new", "Curlew", "--in", folder[""]]);
        File.Copy(CurlewFile, Path.Combine(folder["curlew"], "design.json"), overwrite: true);
        Assert.Equal(0, (await ProgramRun.RunAsync(["learn", folder["curlew"], "--log", Demo("curlew-proof.csv"), "--write"])).ExitCode);
        var test = await File.ReadAllTextAsync(Path.Combine(folder["curlew"], "tests", "curlew-proof.json"));
        Assert.Contains("\"held proof\", \"vessel\": \"C-1\"", test, StringComparison.Ordinal);
        Assert.Contains("6 tests", (await ProgramRun.RunAsync(["check", folder["curlew"]])).Output, StringComparison.Ordinal);
    }

    // From an empty folder to GO by commands and files alone: nothing is computed here that the folder doesn't hold.
    [Fact]
    public async Task A_folder_goes_from_no_go_to_go_without_code()
    {
        await ProgramRun.RunAsync(["new", "Curlew", "--in", folder[""]]);
        var (own, vessel) = (folder["curlew"], Path.Combine(folder["curlew"], "vessels", "c1.service.jsonl"));
        File.Copy(CurlewFile, Path.Combine(own, "design.json"), overwrite: true);
        var bare = await ProgramRun.RunAsync(["card", own]);
        Assert.Contains("NOT SHOWN proved vessel", bare.Output, StringComparison.Ordinal);
        Assert.Contains("NO-GO", bare.Output, StringComparison.Ordinal);
        Assert.Equal(1, bare.ExitCode);
        await ProgramRun.RunAsync(["vessel", "new", vessel, "--vessel", "Curlew", "--serial", "C-1"]);
        await ProgramRun.RunAsync(["vessel", "add", vessel, "made", "--day", "2026-02-21", "--batch", "three", "--at", "2026-02-21"]);
        var first = await ProgramRun.RunAsync(["vessel", "proved", own, "--log", Demo("curlew-proof-first.csv")]);
        Assert.NotEqual(0, first.ExitCode);
        Assert.Empty(Directory.GetFiles(Path.Combine(own, "vessels"), "*.proof.json"));
        var proved = await ProgramRun.RunAsync(["vessel", "proved", own, "--log", Demo("curlew-proof.csv"), "--at", "2026-03-15"]);
        Assert.True(proved.ExitCode == 0, proved.Output + proved.Errors);
        Assert.Single(Directory.GetFiles(Path.Combine(own, "vessels"), "*.proof.json"));
        var inspected = await ProgramRun.RunAsync(["vessel", "add", vessel, "inspected", "--result", "sound", "--at", "2026-05-02"]);
        var label = System.Text.RegularExpressions.Regex.Match(inspected.Output,
            "label of C-1, in place of the last one: ([0-9a-f]{4}-[0-9a-f]{4})")
            .Groups[1].Value;
        var gear = string.Join(", ", new[] { ("cylinder", 232), ("regulator", 300), ("fill valve", 100), ("hose", 100), ("restrictor", 100),
            ("check valve", 100), ("gauge", 100), ("dump valve", 100) }.Select((g, i) =>
            $$"""{ "kind": "{{g.Item1}}", "serial": "P-{{i}}", "rated to": "{{g.Item2}} bar gauge" }"""));
        await File.WriteAllTextAsync(Path.Combine(own, "day.json"), $$"""
            {
              "day": "2026-05-02", "changes": [ { "of": "site.wind.speed", "is": "3 m/s" },
            { "of": "site.wind.reference", "is": "10 m" } ], "gear": [ {{gear}} ],
              "vessels": [ { "serial": "C-1", "label": "{{label}}", "wall temperature": "15 °C",
                "resin moisture": "0.5 %", "resin moisture by": "strip" } ]
            }
            """);
        var card = await ProgramRun.RunAsync(["card", own]);
        Assert.Contains("GO by the sums for 2026-05-02, and for no other day.", card.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("NOT SHOWN", card.Output, StringComparison.Ordinal);
        Assert.True(card.ExitCode == 0, card.Output);
        Assert.Contains("this card allows no flight today", card.Output, StringComparison.Ordinal);
        await ProgramRun.RunAsync(["sheets", own, "--out", folder["sheets"]]);
        var sheet = await File.ReadAllTextAsync(Path.Combine(folder["sheets"], "flight-card.html"));
        Assert.Contains("Curlew C-1", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("NOT SHOWN", sheet, StringComparison.Ordinal);
    }

    // A no with its reason, on paper too, and not a sentence in place of a card.
    [Fact]
    public async Task A_refused_rating_makes_a_card_and_a_sheet_that_say_no()
    {
        await ProgramRun.RunAsync(["new", "Curlew", "--in", folder[""]]);
        var own = folder["curlew"];
        await File.WriteAllTextAsync(Path.Combine(own, "design.json"), (await File.ReadAllTextAsync(CurlewFile))
            .ReplaceLineEndings("\n").Replace("\"60 bar gauge\",\n      \"from\": \"5 bar gauge\"",
            "\"80 bar gauge\",\n      \"from\": \"5 bar gauge\"", StringComparison.Ordinal));
        var card = await ProgramRun.RunAsync(["card", own]);
        Assert.Matches("Verdict +NO-GO", card.Output);
        Assert.Contains("80 bar gauge", card.Output, StringComparison.Ordinal);
        Assert.Contains("NOT SHOWN stability: Can't tell", card.Output, StringComparison.Ordinal);
        Assert.Equal(1, card.ExitCode);
        await ProgramRun.RunAsync(["sheets", own, "--out", folder["sheets"]]);
        var sheet = await File.ReadAllTextAsync(Path.Combine(folder["sheets"], "flight-card.html"));
        Assert.Contains("NO-GO", sheet, StringComparison.Ordinal);
        Assert.Contains("80 bar gauge", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_log_that_may_be_a_proofs_or_a_fills_names_the_option_that_says_so()
    {
        var lines = (await File.ReadAllLinesAsync(Demo("curlew-proof.csv"))).Where(l => !l.StartsWith('#'))
            .Select(l => string.Join(',', l.Split(',').Take(2)));
        await File.WriteAllLinesAsync(folder["log.csv"], lines);
        var refused = await ProgramRun.RunAsync(["learn", CurlewFile, "--log", folder["log.csv"]]);
        Assert.Contains("write --as proof", (refused.Output + refused.Errors).ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, refused.ExitCode);
    }

    // A proof that held in spring says nothing once a later one left a set in the wall.
    [Fact]
    public async Task A_proof_that_rejects_the_vessel_retires_the_vessel()
    {
        await ProgramRun.RunAsync(["new", "Curlew", "--in", folder[""]]);
        var (own, vessel) = (folder["curlew"], Path.Combine(folder["curlew"], "vessels", "c1.service.jsonl"));
        File.Copy(CurlewFile, Path.Combine(own, "design.json"), overwrite: true);
        await ProgramRun.RunAsync(["vessel", "new", vessel, "--vessel", "Curlew", "--serial", "C-1"]);
        await ProgramRun.RunAsync(["vessel", "add", vessel, "made", "--day", "2026-02-21", "--batch", "three", "--at", "2026-02-21"]);
        var lines = await File.ReadAllLinesAsync(Demo("curlew-proof.csv"));
        await File.WriteAllLinesAsync(folder["set.csv"], lines.Select((l, i) => i > lines.Length - 60 && l.Split(',') is
            [var time, var pressure, var warmth, var water] ? $"{time},{pressure},{warmth},{(water.Length == 0 ? "" : "25.0")}" : l));
        var rejected = await ProgramRun.RunAsync(["vessel", "proved", own, "--log", folder["set.csv"], "--at", "2026-03-15"]);
        Assert.Contains("was rejected: the vessel is retired", (rejected.Output + rejected.Errors).ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        Assert.NotEqual(0, rejected.ExitCode);
        Assert.Contains("retired: reason rejected by its proof", await ShownAsync(vessel), StringComparison.Ordinal);
    }

    private static async Task<string> ShownAsync(string vessel) =>
        (await ProgramRun.RunAsync(["vessel", "show", vessel, "--on", "2026-05-02"])).Output.ReplaceLineEndings(" ");

    // The record of an earlier check is the last one: what held then and doesn't now is said so at the head of the page.
    [Fact]
    public async Task A_folders_page_shows_its_requirements_beside_its_last_record()
    {
        await ProgramRun.RunAsync(["new", "Kept", "--in", folder[""]]);
        var (own, record) = (folder["kept"], folder["kept.record.json"]);
        Assert.Equal(0, (await ProgramRun.RunAsync(["check", own, "--record", record])).ExitCode);
        var design = Path.Combine(own, "design.json");
        await File.WriteAllTextAsync(design, (await File.ReadAllTextAsync(design)).Replace("\"value\": \"600 m\"",
            "\"value\": \"100 m\"", StringComparison.Ordinal));
        await ProgramRun.RunAsync(["run", own, "--out", folder["out"], "--last-record", record]);
        var page = await File.ReadAllTextAsync(Path.Combine(folder["out"], "pages", "kept.html"));
        Assert.Contains("beside the last record", page, StringComparison.Ordinal);
        // Each layup shows itself, and no table of a list stands around it.
        Assert.DoesNotContain("<i>index</i>", page, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">apogee below the ceiling</th><td>no longer holds</td>", page, StringComparison.Ordinal);
        Assert.Contains("<th scope=\"row\">static margin</th><td>holds</td>", page, StringComparison.Ordinal);
    }

    private static string CurlewFile => Path.Combine(TestFolder.Repository, "notebooks", "curlew.json");

    private static string Demo(string file) => Path.Combine(TestFolder.Repository, "data-demo", file);
}
