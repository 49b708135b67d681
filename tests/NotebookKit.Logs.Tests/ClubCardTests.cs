using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.Logs.Tests;

/// <summary>The flight card of a club's folder rests on what lies in the folder, and on nothing else. Demo data are invented.</summary>
public sealed class ClubCardTests : IDisposable
{
    private const string Today = """
        { "day": "2026-05-02", "flight": "first", "changes": [ { "of": "site.wind.speed", "is": "3 m/s" } ],
          "vessels": [ { "serial": "C-1", "wall temperature": "15 °C", "resin moisture": "0.5 %" } ] }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("nk-card-").FullName;

    public ClubCardTests()
    {
        foreach (var below in new[] { "vessels", "tests", "logs" }) Directory.CreateDirectory(In(below));
        Curlew.Write(In("design.json"));
        File.Copy(Path.Combine(Root(), "data-demo", "curlew-proof.csv"), In("logs", "proof.csv"));
        File.WriteAllText(In("day.json"), Today);
        var record = ClubFolder.Read(_folder).Judge(In("logs", "proof.csv"));
        var proved = record.ToProvedVessel(Curlew.Rating);
        File.WriteAllText(In("vessels", "c1-2026-03-14.proof.json"), record.ToJson());
        var service = ServiceFile.Create(In("vessels", "c1.service.jsonl"), "Curlew", "C-1");
        static DateTimeOffset Morning(int month, int day) => new(2026, month, day, 8, 0, 0, TimeSpan.Zero);
        service.Append(new Made(new(2026, 2, 21), "batch 3") { At = Morning(2, 21) });
        service.Append(new Proved(proved.Day, proved.Held, Curlew.Rating.ProofPressure / Curlew.Rating.WorkingPressure, proved.RuleSet,
            proved.Fingerprint) { At = Morning(3, 15) });
        service.Append(new Inspected(InspectionResult.Sound) { At = Morning(5, 2) });
    }

    private static Design Curlew { get; } = Design.Read(Path.Combine(Root(), "notebooks", "curlew.json"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void With_all_of_its_evidence_in_the_folder_the_card_says_go()
    {
        var card = ClubFolder.Read(_folder).Card();
        Assert.DoesNotContain(card.Findings, f => f.Severity == FindingSeverity.Error);
        Assert.True(card.IsGo);
        Assert.All(card.Shown, item => Assert.True(item.IsShown, item.Name));
    }

    // The same pieces handed over in a notebook, as the first lesson does, make the same card.
    [Fact]
    public void The_folders_card_has_the_numbers_of_one_that_was_made_by_hand()
    {
        var folder = ClubFolder.Read(_folder);
        var proved = folder.Proofs[0].ToProvedVessel(Curlew.Rating);
        var (vehicle, site) = (Curlew.Vehicle.On(proved), Curlew.Site!);
        var card = (FlightCard)folder.Card();
        Assert.Equal(vehicle.Fly(site).Figures.Apogee, card.Flight!.Figures.Apogee);
        Assert.Equal(vehicle.StandOff(site).Spectators, card.Evidence.StandOff!.Spectators);
        Assert.Equal(proved.Allowed, card.Allowance!.Vessel.Allowed);
    }

    [Theory]
    [InlineData("vessels/c1-2026-03-14.proof.json", "proved vessel")]
    [InlineData("vessels/c1.service.jsonl", "service record")]
    public void Without_a_file_it_says_no_and_names_what_is_missing(string file, string evidence)
    {
        File.Delete(In(file));
        var card = ClubFolder.Read(_folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.StartsWith($"not shown: {evidence}", StringComparison.Ordinal)
            && f.Message.Contains("C-1", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pad", "fill or its plan", "Add \"pad\"")]
    [InlineData("fin structure", "fins judged", "Add \"fin structure\"")]
    [InlineData("recovery.gear", "recovery gear", "Add \"recovery.gear\"")]
    [InlineData("scatter", "scatter of landings", "Add \"scatter\"")]
    public void What_the_design_does_not_give_is_not_shown_and_the_key_is_named(string key, string evidence, string remedy)
    {
        Curlew.Without(key).Write(In("design.json"));
        var card = ClubFolder.Read(_folder).Card();
        Assert.False(card.IsGo);
        var item = card.Shown.Single(i => i.Name == evidence);
        Assert.False(item.IsShown);
        Assert.Contains(remedy, item.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wall_temperature_that_nobody_measured_forbids()
    {
        File.WriteAllText(In("day.json"), """{ "day": "2026-05-02", "vessels": [ { "serial": "C-1" } ] }""");
        var card = ClubFolder.Read(_folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Message.Contains("gives no wall temperature of C-1", StringComparison.Ordinal));
    }

    [Fact]
    public void The_day_after_an_inspection_the_card_says_no()
    {
        File.WriteAllText(In("day.json"), Today.Replace("2026-05-02", "2026-05-03", StringComparison.Ordinal));
        Assert.False(ClubFolder.Read(_folder).Card().IsGo);
    }

    // The wind of the day is the day's, not the design's.
    [Fact]
    public void A_change_of_the_day_counts_for_the_card_and_moves_no_file()
    {
        File.WriteAllText(In("day.json"), Today.Replace("\"is\": \"3 m/s\"", "\"is\": \"9 m/s\"", StringComparison.Ordinal));
        var card = ClubFolder.Read(_folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("wind", StringComparison.Ordinal));
        Assert.Equal(Curlew, Design.Read(In("design.json")));
    }

    [Fact]
    public void A_wind_that_was_not_measured_today_forbids()
    {
        File.WriteAllText(In("day.json"), """
            { "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperature": "15 °C", "resin moisture": "0.5 %" } ] }
            """);
        Forbids("not measured today: wind");
    }

    [Theory]
    [InlineData("site.ceiling", "2000 m")]
    [InlineData("ceiling", "2000 m")]
    [InlineData("Ceiling", "2000 m")]
    [InlineData("site", """{ \"name\": \"wide\" }""")]
    [InlineData("throat", "12 mm")]
    [InlineData("pad.parts.4.rated to", "300 bar gauge")]
    [InlineData("recovery.gear.anchor", "1000 N")]
    [InlineData("fin structure.bond.strength", "40 MPa")]
    [InlineData("scatter.seed", "12")]
    [InlineData("rating.working pressure", "80 bar gauge")]
    public void What_is_permitted_required_or_tested_is_not_changed_for_a_day(string of, string to)
    {
        File.WriteAllText(In("day.json"), Today.Replace("\"changes\": [", $$"""
            "changes": [ { "of": "{{of}}", "is": "{{to}}" },
            """, StringComparison.Ordinal));
        Assert.Contains("isn't changed for a day", Refusal(() => ClubFolder.Read(_folder).Card()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "kind": "hose", "rated to": "100 bar gauge" }""", """{ "kind": "hose", "rated to": "15 bar gauge" }""",
        "The hose is rated to 15 bar gauge")]
    [InlineData("""{ "kind": "hose", "rated to": "100 bar gauge" }""", """{ "kind": "hose" }""", "Rating not given: hose")]
    [InlineData("""
        ,
              { "kind": "dump valve", "rated to": "100 bar gauge" }
        """, "", "No dump valve is given")]
    [InlineData("\"regulator\": \"60 bar gauge\"", "\"regulator\": \"90 bar gauge\"", "the regulator is set to 90 bar gauge")]
    [InlineData("\"at most\": 1,", "\"at most\": 0.5,", "a requirement of the design doesn't hold: fill pressure within the rating")]
    [InlineData("\"depth\": \"24 mm\",\n        \"opening\"", "\"depth\": \"20 mm\",\n        \"opening\"",
        "was changed since the proof", true)]
    public void What_is_wrong_in_the_design_forbids(string was, string now, string says, bool withoutTests = false)
    {
        var design = withoutTests ? Curlew.Without("evidence").Without("rating.working pressure") : Curlew;
        var text = design.ToText().Replace(was, now, StringComparison.Ordinal);
        Assert.NotEqual(design.ToText(), text);
        File.WriteAllText(In("design.json"), text);
        if (!withoutTests) Forbids(says);
        else
        {
            Assert.Contains(says, ClubFolder.Read(_folder).Card().Shown.Single(i => i.Name == "proved vessel").What,
                StringComparison.Ordinal);
        }
    }

    // A test that speaks against the vessel isn't put away by another ending.
    [Theory]
    [InlineData("tests/t2.txt")]
    [InlineData("tests/old/t2.json")]
    public void A_file_among_the_tests_that_is_not_read_forbids(string file)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(file))!);
        File.WriteAllText(In(file), """{ "kind": "burst", "vessel": "T-2", "pressure": "70 bar gauge", "failed": "wall" }""");
        Forbids($"{file} in the folder of tests is not read");
    }

    // A history that was begun anew would hide what the first one tells.
    [Fact]
    public void Two_service_records_of_one_vessel_forbid()
    {
        ServiceFile.Create(In("vessels", "a.service.jsonl"), "Curlew", "c-1");
        Forbids("Two service records are of C-1");
    }

    [Fact]
    public void A_proof_counts_for_its_own_vessel_and_its_own_day_and_once()
    {
        var folder = ClubFolder.Read(_folder);
        Assert.Contains("the log is of C-1, and C-2 was asked for", Refusal(() => folder.Judge(In("logs", "proof.csv"), "C-2")),
            StringComparison.Ordinal);
        Assert.Contains("the log is of 2026-03-14, and 2026-05-01 was asked for",
            Refusal(() => folder.Judge(In("logs", "proof.csv"), null, new(2026, 5, 1))), StringComparison.Ordinal);
        Assert.Contains("written down already", Refusal(() => folder.Judge(In("logs", "proof.csv"))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_a_proof_that_was_edited_is_refused()
    {
        var file = In("vessels", "c1-2026-03-14.proof.json");
        File.WriteAllText(file, File.ReadAllText(file).Replace("\"C-1\"", "\"C-2\"", StringComparison.Ordinal));
        Assert.Contains("was edited", Assert.Throws<FormatException>(() => ClubFolder.Read(_folder)).Message, StringComparison.Ordinal);
    }

    // A fingerprint that was only typed into the service record has no readings behind it.
    [Fact]
    public void A_proof_that_only_the_service_record_tells_of_is_named_by_the_check()
    {
        File.Delete(In("vessels", "c1-2026-03-14.proof.json"));
        var check = ClubFolder.Read(_folder).Check(new(2026, 5, 2));
        Assert.Contains(check.Findings, f => f.Message.Contains("no record of the proof", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{ "day": "2 May", "vessels": [ { "serial": "C-1" } ] }""", "year, month, day")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperatur": "15 °C" } ] }""", "wall temperature")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperature": "15" } ] }""", "unit")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ ] }""", "1 to 2")]
    public void A_mistake_in_the_file_of_the_day_is_said_with_its_place(string text, string says)
    {
        var error = Assert.Throws<DesignFileException>(() => FlightDay.Parse(text, "day.json"));
        Assert.Contains("day.json, line 1, column", error.Message, StringComparison.Ordinal);
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_file_of_the_day_the_card_says_what_to_write()
    {
        File.Delete(In("day.json"));
        var error = Assert.Throws<InvalidDesignException>(() => ClubFolder.Read(_folder).Card());
        Assert.Contains("no day.json", error.Message, StringComparison.Ordinal);
    }

    private void Forbids(string says)
    {
        var card = ClubFolder.Read(_folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains(says, StringComparison.Ordinal));
    }

    private static string Refusal(Action action) => Assert.Throws<InvalidDesignException>(action).Message;

    private string In(params string[] parts) => Path.Combine([_folder, .. parts]);

    private static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests don't lie in the repository.");
    }
}
