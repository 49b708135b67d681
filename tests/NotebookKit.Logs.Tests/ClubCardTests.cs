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
        { "day": "2026-05-02", "flight": "first",
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
        File.WriteAllText(In("day.json"), Today.Replace("\"flight\": \"first\",",
            "\"changes\": [ { \"of\": \"site.wind.speed\", \"is\": \"9 m/s\" } ],", StringComparison.Ordinal));
        var card = ClubFolder.Read(_folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("wind", StringComparison.Ordinal));
        Assert.Equal(Curlew, Design.Read(In("design.json")));
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

    private string In(params string[] parts) => Path.Combine([_folder, .. parts]);

    private static string Root()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests don't lie in the repository.");
    }
}
