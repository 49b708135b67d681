using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Provenance;

namespace NotebookKit.Logs.Tests;

/// <summary>The flight card of a club's folder rests on what lies in the folder, and on nothing else. Demo data are invented.</summary>
public sealed class ClubCardTests : FolderOnGo
{
    [Fact]
    public void With_all_of_its_evidence_in_the_folder_the_card_says_go()
    {
        var card = ClubFolder.Read(Folder).Card();
        Assert.DoesNotContain(card.Findings, f => f.Severity == FindingSeverity.Error);
        Assert.True(card.IsGo);
        Assert.All(card.Shown, item => Assert.True(item.IsShown, item.Name));
    }

    // The same pieces handed over in a notebook, as the first lesson does, make the same card.
    [Fact]
    public void The_folders_card_has_the_numbers_of_one_that_was_made_by_hand()
    {
        var folder = ClubFolder.Read(Folder);
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
        var card = ClubFolder.Read(Folder).Card();
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
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        var item = card.Shown.Single(i => i.Name == evidence);
        Assert.False(item.IsShown);
        Assert.Contains(remedy, item.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_parts_with_one_serial_forbid()
    {
        File.WriteAllText(In("day.json"), Today.Replace("\"serial\": \"H-2\"", "\"serial\": \"g-4\"", StringComparison.Ordinal));
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains(
            "gives hose and gauge the same serial, g-4", StringComparison.Ordinal));
    }

    [Fact]
    public void A_day_without_gear_names_the_parts_that_the_design_has()
    {
        File.WriteAllText(In("day.json"), Today.Replace("\"gear\":", "\"gear\": [], \"changes\":", StringComparison.Ordinal)
            .Replace($"\"changes\": {Gear},", "", StringComparison.Ordinal));
        Assert.Contains("the design's pad has cylinder, regulator,", ClubFolder.Read(Folder).Card().Shown
            .Single(i => i.Name == "gear on the pad").What, StringComparison.Ordinal);
    }

    // A rule set of one's own that is as strict as the club's, put in after the proof.
    [Fact]
    public void A_rule_set_that_was_changed_since_the_proof_is_named()
    {
        Curlew.With("rating.rules", """
            { "kind": "own", "name": "Our rule", "proof": 1.5, "burst": 3, "overshoot": 1.05, "maximum proof use": "67 %",
              "source": "invented", "covers": "our vessels" }
            """).Write(In("design.json"));
        Assert.Contains(ClubFolder.Read(Folder).Card().Findings, f => f.Message.Contains(
            "the proof of C-1 on 2026-03-14 was written down under Club rule; the design now asks for Our rule", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wall_temperature_that_nobody_measured_forbids()
    {
        File.WriteAllText(In("day.json"), """{ "day": "2026-05-02", "vessels": [ { "serial": "C-1" } ] }""");
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Message.Contains("gives no wall temperature of C-1", StringComparison.Ordinal));
    }

    [Fact]
    public void The_day_after_an_inspection_the_card_says_no()
    {
        File.WriteAllText(In("day.json"), Today.Replace("2026-05-02", "2026-05-03", StringComparison.Ordinal));
        Assert.False(ClubFolder.Read(Folder).Card().IsGo);
    }

    // The wind of the day is the day's, not the design's.
    [Fact]
    public void A_change_of_the_day_counts_for_the_card_and_moves_no_file()
    {
        File.WriteAllText(In("day.json"), Today.Replace("\"is\": \"3 m/s\"", "\"is\": \"9 m/s\"", StringComparison.Ordinal));
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("wind", StringComparison.Ordinal));
        Assert.Equal(Curlew, Design.Read(In("design.json")));
    }

    [Fact]
    public void A_wind_that_was_not_measured_today_forbids()
    {
        File.WriteAllText(In("day.json"), """
            { "day": "2026-05-02",
              "vessels": [ { "serial": "C-1", "wall temperature": "15 °C", "resin moisture": "0.5 %", "resin moisture by": "strip" } ] }
            """);
        Forbids("not shown: wind. The wind wasn't measured today");
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
        Assert.Contains("isn't changed for a day", Refusal(() => ClubFolder.Read(Folder).Card()), StringComparison.Ordinal);
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
            Assert.Contains(says, ClubFolder.Read(Folder).Card().Shown.Single(i => i.Name == "proved vessel").What,
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
        var folder = ClubFolder.Read(Folder);
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
        Assert.Contains("was edited", Assert.Throws<FormatException>(() => ClubFolder.Read(Folder)).Message, StringComparison.Ordinal);
    }

    // A fingerprint that was only typed into the service record has no readings behind it.
    [Fact]
    public void A_proof_that_only_the_service_record_tells_of_is_named_by_the_check()
    {
        File.Delete(In("vessels", "c1-2026-03-14.proof.json"));
        var check = ClubFolder.Read(Folder).Check(new(2026, 5, 2));
        Assert.Contains(check.Findings, f => f.Message.Contains("no record of the proof", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{ "day": "2 May", "vessels": [ { "serial": "C-1" } ] }""", "year, month, day")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperatur": "15 °C" } ] }""", "wall temperature")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "wall temperature": "15" } ] }""", "unit")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ ] }""", "1 to 2")]
    [InlineData("""{ "day": "2026-05-02", "vessels": [ { "serial": "C-1", "label": "3f9a-71" } ] }""", "isn't the mark of a label")]
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
        var error = Assert.Throws<InvalidDesignException>(() => ClubFolder.Read(Folder).Card());
        Assert.Contains("no day.json", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_that_nobody_read_forbids_and_the_card_does_not_say_what_stands_on_it()
    {
        File.WriteAllText(In("day.json"), WithoutLabel);
        Forbids("not shown: label of the vessel");
        Assert.DoesNotContain(Label, string.Join(' ', ClubFolder.Read(Folder).Card().Findings.Select(f => f.Message)),
            StringComparison.Ordinal);
    }

    // The chain of fingerprints of a record that was cut at its end is whole; the label on the vessel tells.
    [Fact]
    public void A_service_record_that_was_cut_at_its_end_forbids()
    {
        var (file, lines) = (In("vessels", "c1.service.jsonl"), File.ReadAllLines(In("vessels", "c1.service.jsonl")));
        ServiceFile.Open(file).Append(new LandedHard { At = new(2026, 5, 2, 9, 0, 0, TimeSpan.Zero) });
        File.WriteAllText(In("day.json"), Labelled(ServiceFile.Read(file).EndMark));
        File.WriteAllText(file, string.Join('\n', lines) + "\n");
        Assert.True(ServiceFile.Read(file).IsIntact);
        Forbids("lines were taken away at the end of the record");
    }

    [Fact]
    public void A_line_that_was_added_after_the_label_was_written_forbids_and_is_counted()
    {
        ServiceFile.Open(In("vessels", "c1.service.jsonl")).Append(new Inspected(InspectionResult.Sound)
            { At = new(2026, 5, 2, 9, 0, 0, TimeSpan.Zero) });
        Forbids("goes on after that for 1 line");
    }

    [Theory]
    [InlineData("-", " ")]
    [InlineData("-", "")]
    public void A_label_may_be_written_with_a_space_or_nothing_between(string was, string now)
    {
        File.WriteAllText(In("day.json"), Labelled(Label.Replace(was, now, StringComparison.Ordinal).ToUpperInvariant()));
        Assert.True(ClubFolder.Read(Folder).Card().IsGo);
    }

    [Fact]
    public void The_card_shows_the_label_that_was_read()
    {
        var card = ClubFolder.Read(Folder).Card();
        Assert.Contains(card.Lines, l => l.Name == "Label" && l.Value == Label);
    }

    // The tests of the design's own file are those that lay there at the proof.
    [Fact]
    public void A_test_that_is_gone_since_the_proof_forbids_and_is_named()
    {
        Curlew.Without("evidence.tests.2").Write(In("design.json"));
        Forbids($"is gone: {Curlew.Stage.TestMarks[1].Name}");
    }

    [Fact]
    public void A_test_that_was_altered_since_the_proof_forbids_and_is_named()
    {
        var text = Curlew.ToText();
        var pressure = Curlew.Evidence.Tests[0].Pressure.Bar.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var at = text.IndexOf($"\"{pressure} bar gauge\"", text.IndexOf("\"tests\"", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(at > 0);
        File.WriteAllText(In("design.json"), text[..at] + $"\"{pressure}.5 bar gauge\"" + text[(at + pressure.Length + 12)..]);
        Forbids($"was altered: {Curlew.Stage.TestMarks[0].Name}");
    }

    [Fact]
    public void A_test_that_has_come_since_the_proof_is_a_note_and_a_remark_in_a_test_is_nothing()
    {
        File.WriteAllText(In("tests", "t9.json"), """
            // A twin.
            { "kind": "held proof", "vessel": "T-9", "pressure": "40 bar gauge" }
            """);
        var findings = ClubFolder.Read(Folder).Card().Findings;
        Assert.Contains(findings, f => f.Severity == FindingSeverity.Note && f.Message.Contains("has come since the proof of C-1 on "
            + "2026-03-14: held proof of T-9", StringComparison.Ordinal));
        Assert.DoesNotContain(findings, f => f.Message.Contains("altered", StringComparison.Ordinal)
            || f.Message.Contains("is gone", StringComparison.Ordinal));
    }

    [Fact]
    public void The_list_of_tests_in_a_service_record_is_read_back_as_it_was_written()
    {
        var proved = ServiceFile.Read(In("vessels", "c1.service.jsonl")).Events.OfType<Proved>().Single();
        Assert.Equal(Curlew.Stage.TestMarks, proved.Tests);
    }

    [Theory]
    [InlineData("\"serial\": \"H-2\", \"rated to\": \"100 bar gauge\"", "\"rated to\": \"100 bar gauge\"",
        "the hose on the pad has no serial")]
    [InlineData("\"serial\": \"H-2\", \"rated to\": \"100 bar gauge\"", "\"serial\": \"H-9\", \"rated to\": \"15 bar gauge\"",
        "on the pad today: The hose is rated to 15 bar gauge")]
    [InlineData("\"serial\": \"H-2\", \"rated to\": \"100 bar gauge\"", "\"serial\": \"H-9\"", "on the pad today: Rating not given: hose")]
    [InlineData("\"kind\": \"gauge\", \"serial\": \"G-4\"", "\"kind\": \"hose\", \"serial\": \"G-4\"", "names a hose twice")]
    [InlineData("\"kind\": \"gauge\", \"serial\": \"G-4\"", "\"kind\": \"hose\", \"serial\": \"G-4\"",
        "the plan of the fill has a gauge, and the gear of the day names none")]
    public void What_stands_on_the_pad_is_judged_and_not_what_the_design_asks_for(string was, string now, string says)
    {
        var text = Today.Replace(was, now, StringComparison.Ordinal);
        Assert.NotEqual(Today, text);
        File.WriteAllText(In("day.json"), text);
        Forbids(says);
    }

    [Fact]
    public void Gear_that_the_day_does_not_name_forbids()
    {
        File.WriteAllText(In("day.json"), Today.Replace($"\"gear\": {Gear},", "", StringComparison.Ordinal));
        Forbids("not shown: gear on the pad");
    }

    [Fact]
    public void A_refused_rating_makes_a_card_that_says_no_with_its_reason()
    {
        Curlew.With("rating.working pressure", "80 bar gauge").Write(In("design.json"));
        var card = ClubFolder.Read(Folder).Card();
        Assert.False(card.IsGo);
        Assert.Equal("NO-GO", card.Lines[0].Value);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("80 bar gauge",
            StringComparison.Ordinal));
        Assert.Contains(card.Shown, i => i is { Name: "stability", IsShown: false } && i.What.StartsWith("Can't tell",
            StringComparison.Ordinal));
        Assert.Contains(card.Shown, i => i is { Name: "service record", IsShown: true });
    }

    [Theory]
    [InlineData("site", "gives no site")]
    [InlineData("charge", "charge")]
    [InlineData("body", "body")]
    public void A_design_that_can_not_be_flown_makes_a_card_that_says_no_with_its_reason(string key, string says)
    {
        var design = key switch
        {
            "body" => Curlew.Without("fin structure").Without("masses"),
            "site" => Curlew.Without("decisions").Without("requirements"),
            _ => Curlew,
        };
        design.Without(key).Write(In("design.json"));
        File.WriteAllText(In("day.json"), """{ "day": "2026-05-02", "vessels": [ { "serial": "C-1" } ] }""");
        Forbids(says);
    }

    [Theory]
    [InlineData("""{ "of": "site.wind.speed", "is": "3 m/s" }""", "the height above ground at which it was measured")]
    [InlineData("""{ "of": "site.wind.reference", "is": "2 m" }""", "not shown: wind. The wind wasn't measured today")]
    [InlineData("""{ "of": "site.wind.from", "is": "180°" }""", "not shown: wind. The wind wasn't measured today")]
    [InlineData("""{ "of": "site.wind.speed", "is": "9 m/s" }, { "of": "site.wind.speed", "is": "2 m/s" }""", "is changed twice")]
    public void A_wind_without_its_height_or_said_twice_is_no_wind_of_the_day(string changes, string says)
    {
        File.WriteAllText(In("day.json"), Today.Replace("""{ "of": "site.wind.speed", "is": "3 m/s" }""", changes, StringComparison.Ordinal)
            .Replace(says.Contains("twice", StringComparison.Ordinal) ? "\0" : """{ "of": "site.wind.reference", "is": "10 m" }""",
                """{ "of": "site.rail.guided", "is": "2 m" }""", StringComparison.Ordinal));
        Forbids(says);
    }

    [Theory]
    [InlineData("site.wind.sped", "3 m/s")]
    [InlineData("site.wind.speed", "3 bar gauge")]
    public void A_wrong_change_of_the_day_is_said_with_its_line_in_the_file_of_the_day(string of, string to)
    {
        File.WriteAllText(In("day.json"), $$"""
            {
              "day": "2026-05-02", "vessels": [ { "serial": "C-1" } ],
              "changes": [
                { "of": "{{of}}", "is": "{{to}}" } ]
            }
            """);
        var error = Assert.Throws<DesignFileException>(() => ClubFolder.Read(Folder).Card());
        Assert.StartsWith("day.json, line 4, column 5: ", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_that_is_not_a_days_is_refused_with_its_line()
    {
        File.WriteAllText(In("day.json"), """
            { "day": "2026-05-02", "vessels": [ { "serial": "C-1" } ],
              "changes": [ { "of": "site.ceiling", "is": "2000 m" } ] }
            """);
        Assert.Contains("day.json, line 2, column 16: \"site.ceiling\" isn't changed for a day",
            Refusal(() => ClubFolder.Read(Folder).Card()), StringComparison.Ordinal);
    }

    // What the program itself writes into the folder is nobody's mistake.
    [Fact]
    public void Sheets_that_were_written_into_the_folder_are_not_named_as_unused()
    {
        Directory.CreateDirectory(In("sheets"));
        File.WriteAllText(In("sheets", "flight-card.html"), "");
        File.WriteAllText(In("sheets", "notes.txt"), "");
        Assert.Equal(["sheets/notes.txt"], ClubFolder.Read(Folder).Unused);
    }
}
