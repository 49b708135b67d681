using System.Text.Json;
using System.Xml.Linq;
using Microsoft.DotNet.Interactive.Formatting;
using NotebookKit.Interactive.Formatters;

namespace NotebookKit.Interactive.Tests;

[Collection(nameof(NotebookSession))]
public sealed class FormatterTests(NotebookSession session)
{
    private const string Verdict = "application/vnd.notebookkit.verdict+json";
    private const string Figure = "application/vnd.plotly.v1+json";

    [Fact]
    public async Task A_result_shows_its_numbers_findings_cautions_and_working()
    {
        var forms = await session.ShowAsync("Samples.Result()");
        Assert.Equal(["text/html", "text/plain"], forms.Keys.Order());
        foreach (var text in new[] { "6.00 MPa", "<b>Error.</b> An error", "<b>Warning.</b>", "<b>Note.</b> A note", "Stored energy",
            "thin wall", "wall to radius below 1/10", "A. Author", "Working: Hoop stress", "6 MPa × 50 mm / 1 mm" })
            Assert.Contains(text, forms["text/html"], StringComparison.Ordinal);
        foreach (var text in new[] { "6.00 MPa", "inner wall", "error: an error", "CAUTION Stored energy" })
            Assert.Contains(text, forms["text/plain"], StringComparison.Ordinal);
    }

    // By reflection: what is added to the library later is shown too, or this fails.
    [Fact]
    public void Everything_public_of_ours_shows_itself_in_html_and_in_words()
    {
        var types = new[] { typeof(Provenance.IResult), typeof(Charts.EngineeringChart),
            typeof(Logs.LogReader) }.SelectMany(t => t.Assembly.GetExportedTypes()).Where(Registry.Shows).ToList();
        Assert.True(types.Count > 250);
        var silent = types.Where(t => !Formatter.GetPreferredMimeTypesFor(t).Order().SequenceEqual(["text/html", "text/plain"])
            && !Formatter.GetPreferredMimeTypesFor(t).Contains("text/plain"));
        Assert.Empty(silent.Select(t => t.FullName));
        // What nobody registered has html alone.
        Assert.Equal(["text/html"], Formatter.GetPreferredMimeTypesFor(typeof(FormatterTests)));
    }

    [Fact]
    public void Every_result_has_the_table_cautions_and_words_of_results()
    {
        var results = typeof(Provenance.IResult).Assembly.GetExportedTypes().Where(t => Registry.Shows(t)
            && typeof(Provenance.IResult).IsAssignableFrom(t)).ToList();
        Assert.True(results.Count > 40);
        // A form of its own has its own test of the same: A_flight_card_...
        Type[] apart = [typeof(Clearance.Cards.FlightCard), typeof(Clearance.Cards.TwoStageFlightCard),
            typeof(Clearance.Cards.CardWithoutFlight), typeof(Proofing.Plans.ProofPlan), typeof(Filling.Fills.PadPlumbing),
            .. results.Where(typeof(Sheets.ISheet).IsAssignableFrom)];
        foreach (var mime in new[] { "text/html", "text/plain" })
            Assert.All(results.Except(apart), t => Assert.Equal(typeof(Provenance.IResult),
                Formatter.GetPreferredFormatterFor(t, mime).Type));
    }

    [Fact]
    public async Task A_flight_card_has_the_table_cautions_and_words_of_results()
    {
        // Those that this session refers to.
        var namespaces = OurNamespaces.All.Where(n => !n.StartsWith("NotebookKit.Logs", StringComparison.Ordinal)
            && !n.StartsWith("NotebookKit.Interactive", StringComparison.Ordinal));
        await session.RunAsync(string.Join('\n', namespaces.Select(n => $"using {n};")));
        // The script names its design as it lies beside a notebook.
        var notebooks = Path.Combine(Repository(), "notebooks");
        await session.RunAsync(File.ReadAllText(Path.Combine(notebooks, "curlew.csx")).Replace("\"curlew.json\"",
            $"@\"{Path.Combine(notebooks, "curlew.json")}\"", StringComparison.Ordinal));
        var forms = await session.ShowAsync("curlew.Card(site, new FlightEvidence())");
        Assert.Equal(["application/vnd.notebookkit.sheet+json", Verdict, "text/html", "text/plain"], forms.Keys.Order());
        Assert.Contains("\"Words\":\"NO-GO\",\"Holds\":false", forms[Verdict], StringComparison.Ordinal);
        foreach (var text in new[] { "<table", "Verdict", "nk-cautions", "Stored energy", "Checklist", "Model:" }) Assert.Contains(text,
            forms["text/html"], StringComparison.Ordinal);
        foreach (var text in new[] { "Verdict", "CAUTION", "Checklist", "Model:" }) Assert.Contains(text, forms["text/plain"],
            StringComparison.Ordinal);
        _ = XElement.Parse(forms["text/html"]);
        // A design that can't be flown as it is has a card too.
        var grounded = await session.ShowAsync("club.Without(\"charge\").Card(FlightDay.Parse(\"{ \\\"day\\\": \\\"2026-05-02\\\", "
            + "\\\"vessels\\\": [ { \\\"serial\\\": \\\"C-1\\\" } ] }\"), [], [])");
        Assert.Contains("\"Words\":\"NO-GO\",\"Holds\":false", grounded[Verdict], StringComparison.Ordinal);
        foreach (var text in new[] { "<table", "Verdict", "nk-cautions", "Stored energy", "Model:" })
            Assert.Contains(text, grounded["text/html"], StringComparison.Ordinal);
        // What is drawn as well, and a sheet with its sections, keep the form of a result.
        foreach (var cell in new[] { "proof.Plan()", "PadPlumbing.Of(DesignSheets.FillOf(club.Stage), club.Stage.Pad)",
            "ProofSheet.Of(proof.Plan(), vessel)" })
        {
            var shown = await session.ShowAsync(cell);
            foreach (var text in new[] { "<table", "nk-cautions", "Stored energy", "Model:" })
                Assert.Contains(text, shown["text/html"], StringComparison.Ordinal);
            foreach (var text in new[] { "CAUTION", "Model:" }) Assert.Contains(text, shown["text/plain"], StringComparison.Ordinal);
        }

        static string Repository()
        {
            var at = new DirectoryInfo(AppContext.BaseDirectory);
            while (at is not null && !File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) at = at.Parent;
            return at?.FullName ?? throw new DirectoryNotFoundException("The tests do not lie in the repository.");
        }
    }

    [Theory]
    [InlineData("new NotebookKit.Recovery.Canopy(NotebookKit.Recovery.CanopyType.FlatCircular, 0.9.Metres())", "Canopy", "flat circular",
        "0.9 m")]
    [InlineData("NotebookKit.Propulsion.Charges.Nozzle.Rounded(13.Millimetres())", "Nozzle", "13 mm", "")]
    [InlineData("NotebookKit.Materials.Solids.MaterialLibrary.Typical.Braid(\"carbon sleeve 65 mm light\")", "carbon sleeve 65 mm light",
        "45", "")]
    public async Task A_design_shows_what_it_is_made_of(string cell, params string[] texts)
    {
        var forms = await session.ShowAsync(cell);
        Assert.Equal(["text/html", "text/plain"], forms.Keys.Order());
        Assert.All(texts, t => Assert.Contains(t, forms["text/plain"], StringComparison.Ordinal));
        Assert.All(texts, t => Assert.Contains(t, forms["text/html"], StringComparison.Ordinal));
        _ = XElement.Parse(forms["text/html"]);
    }

    [Fact]
    public async Task A_design_says_what_is_wrong_with_it()
    {
        var forms = await session.ShowAsync("new NotebookKit.Recovery.Canopy(NotebookKit.Recovery.CanopyType.FlatCircular, 90.Metres())");
        Assert.Contains("nk-error", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("error:", forms["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_formula_is_there_for_a_page_that_draws_it_and_in_plain_text()
    {
        var html = (await session.ShowAsync("Samples.Result()"))["text/html"];
        Assert.Contains("""<span class="tex">\sigma_h = \frac{p\,r}{t}</span>""", html, StringComparison.Ordinal);
        Assert.Contains("""<span class="nk-plain">σ_h = (p r)/t</span>""", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("null", "Your turn.")]
    [InlineData("150.Megapascals()", "Not yet.")]
    [InlineData("3000.Bar()", "Right.")]
    public async Task An_exercise_answers_back(string answer, string words)
    {
        var forms = await session.ShowAsync("new Exercise<Pressure>(\"Hoop stress < 1 GPa?\", 300.Megapascals(), 0.01, \"p r / "
            + $"t\").Check({answer})");
        Assert.Contains($"<b>{words}</b>", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("Hoop stress &lt; 1 GPa?", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("Hoop stress < 1 GPa?", forms["text/plain"], StringComparison.Ordinal);
        Assert.Equal(answer == "null", forms["text/html"].Contains("Your answer: <span class=\"nk-blank\">", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Limit.AtMost", "holds", "\"Words\":\"Holds\",\"Holds\":true")]
    [InlineData("Limit.AtLeast", "does not hold", "\"Words\":\"Not met\",\"Holds\":false")]
    public async Task A_requirement_shown_by_itself_is_a_decision_of_its_page(string side, string words, string decision)
    {
        var forms = await session.ShowAsync("new NotebookKit.Record.DesignRecordBuilder(\"x\").Require(\"apogee below <b> the ceiling\", "
            + $"446.Metres(), NotebookKit.Record.{side}, 600.Metres(), \"Agreed.\")");
        Assert.Contains($"{words}: at", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("below &lt;b&gt; the ceiling", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("446 m", forms["text/plain"], StringComparison.Ordinal);
        Assert.Contains(decision, forms[Verdict], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_comparison_of_records_shows_every_change_and_what_rests_on_it()
    {
        var forms = await session.ShowAsync("Samples.Comparison()");
        Assert.Equal(["text/html", "text/plain"], forms.Keys.Order());
        foreach (var text in new[] { "Givens that changed", "given 6: 2, was 1", "Evidence that changed",
            "proof: changed (&lt;b&gt; of C-1)", "requirement bore: rests on changed evidence, proof" })
        {
            Assert.Contains(text, forms["text/html"], StringComparison.Ordinal);
            Assert.Contains(text.Replace("&lt;", "<", StringComparison.Ordinal).Replace("&gt;", ">", StringComparison.Ordinal),
                forms["text/plain"], StringComparison.Ordinal);
        }

        _ = XElement.Parse(forms["text/html"]);
        Assert.Contains("Nothing changed, and everything holds.",
            (await session.ShowAsync("Samples.Record(1).ComparedWith(Samples.Record(1))"))["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_shows_its_evidence()
    {
        var forms = await session.ShowAsync("Samples.Record(1)");
        Assert.Contains("Evidence: proof", forms["text/plain"], StringComparison.Ordinal);
        Assert.Contains("Rests on proof.", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("\"Words\":\"The 1 requirement holds\",\"Holds\":true", forms[Verdict], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_result_that_failed_says_so_first()
    {
        var forms = await session.ShowAsync("Samples.Result() with { Status = ResultStatus.Failed }");
        Assert.Contains("Not completed", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("NOT COMPLETED", forms["text/plain"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Samples.HostileResult()")]
    [InlineData("Samples.HostileSeries()")]
    [InlineData("Samples.HostileChart()")]
    [InlineData("Samples.HostileResult().Working")]
    [InlineData("Samples.HostileResult().Model")]
    [InlineData("Samples.HostileResult().Findings")]
    [InlineData("Samples.HostileResult().Lines")]
    [InlineData("new Source(Samples.Hostile, Samples.Hostile, 2000)")]
    [InlineData("new ResultLine(Samples.Hostile, Samples.Hostile)")]
    [InlineData("new NotebookKit.Record.Exercise<UnitsNet.Length>(Samples.Hostile, 1.Metres(), 0.1, Samples.Hostile).Check(2.Metres())")]
    [InlineData("Finding.Error(Samples.Hostile)")]
    [InlineData("new Caution(Samples.Hostile, Samples.Hostile)")]
    [InlineData("new NotebookKit.Record.Headline(Samples.Hostile, Samples.Hostile)")]
    [InlineData("new OutOfRangeException(Samples.Hostile, Samples.Hostile, \"1\", \"2\", \"\")")]
    public async Task Hostile_text_stays_text(string cell)
    {
        var html = (await session.ShowAsync(cell))["text/html"];
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("alert('x')<", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>]", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("63.Millimetres()", "63 mm")]
    [InlineData("32.Percent()", "32 %")]
    [InlineData("UnitsNet.Pressure.FromMegapascals(0.0123456)", "0.0123 MPa")]
    [InlineData("GaugePressure.FromBar(55)", "55 bar gauge")]
    [InlineData("AbsolutePressure.FromBar(56)", "56 bar absolute")]
    public async Task A_quantity_shows_its_unit(string cell, string expected)
    {
        var forms = await session.ShowAsync(cell);
        Assert.Equal(expected, forms["text/plain"]);
        Assert.Equal($"<span class=\"nk-quantity\">{expected}</span>", forms["text/html"]);
    }

    [Fact]
    public async Task A_column_shows_its_extent_and_first_values()
    {
        var forms = await session.ShowAsync("new Series(\"Height\", \"m\", [0, 1.5, double.NaN, 3])");
        Assert.Equal("Height [m] 4 values, 0 to 3, 1 missing: 0, 1.5, missing, 3", forms["text/plain"].Trim());
    }

    [Fact]
    public async Task A_list_of_sentences_is_shown_whole()
    {
        var forms = await session.ShowAsync("Enumerable.Range(1, 40).Select(i => $\"Step {i} <a>.\").ToList()");
        Assert.Contains("<li>Step 1 &lt;a&gt;.</li>", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("<li>Step 40 &lt;a&gt;.</li>", forms["text/html"], StringComparison.Ordinal);
        Assert.EndsWith("Step 40 <a>.", forms["text/plain"].Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_checklist_has_boxes_and_blanks()
    {
        var forms = await session.ShowAsync("new[] { \"Proof.\", \"CAUTION. Stand back.\", \"[ ] Read ____ bar.\" }");
        var html = forms["text/html"];
        Assert.Contains("nk-checklist", html, StringComparison.Ordinal);
        Assert.Contains("<b>Caution.</b> Stand back.", html, StringComparison.Ordinal);
        Assert.Contains("<ol class=\"nk-ticks\"><li>Read <span class=\"nk-blank\"></span> bar.</li></ol>", html,
            StringComparison.Ordinal);
        Assert.Contains("[ ] Read ____ bar.", forms["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_chart_shows_a_figure_a_picture_and_words()
    {
        var forms = await session.ShowAsync("Samples.Chart()");
        Assert.Equal([Figure, "text/html", "text/plain"], forms.Keys.Order());
        using var figure = JsonDocument.Parse(forms[Figure]);
        Assert.Equal("Time [s]",
            figure.RootElement.GetProperty("layout").GetProperty("xaxis").GetProperty("title").GetProperty("text").GetString());
        Assert.Equal("Thrust: Thrust [N] over Time [s], 0 to 0.15. Thrust: maximum 400 N at 0 s, minimum 0 N at 0.15 s.",
            forms["text/plain"].Trim());
        Assert.Contains("<svg", forms["text/html"], StringComparison.Ordinal);
        Assert.DoesNotContain("<script", forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_drawing_shows_itself_and_words()
    {
        var forms = await session.ShowAsync("Samples.Drawing()");
        Assert.Contains("<svg", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("82.5 bar gauge", forms["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_main_number_has_a_form_for_the_program_that_runs_notebooks()
    {
        // Three digits, as every table has them.
        var forms = await session.ShowAsync("new[] { NotebookKit.Record.Headline.Of(\"Apogee\", UnitsNet.Length.FromMeters(148.63)) }");
        using var json = JsonDocument.Parse(forms["application/vnd.notebookkit.headline+json"]);
        Assert.Equal("149 m", json.RootElement[0].GetProperty("Value").GetString());
        Assert.Contains("<dd>149 m</dd>", forms["text/html"], StringComparison.Ordinal);
        Assert.Equal("Apogee: 149 m", forms["text/plain"]);
    }

    [Fact]
    public async Task A_vehicle_with_a_fault_shows_it_though_its_check_is_an_extension_method()
    {
        var forms = await session.ShowAsync("new NotebookKit.Flight.Design.Vehicle(\" \", new([], []), new([]), new(new(3.Litres(), "
            + "66.Millimetres(), 40.BarGauge()), 33.Percent(), 40.BarGauge(), 15.Celsius()), new(10.Millimetres()), 1.Metres())");
        Assert.Contains("The vehicle has no name", forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_refused_design_shows_all_its_findings()
    {
        var forms = await session.ShowAsync("new InvalidDesignException(\"Fin\", [Finding.Error(\"first\"), Finding.Error(\"second\")])");
        Assert.Contains("First", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("Second", forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Output_is_well_formed_and_carries_the_style_once()
    {
        var html = (await session.ShowAsync("Samples.Result()"))["text/html"];
        _ = XElement.Parse(html);
        Assert.Equal(2, html.Split(Stylesheet.Element).Length);
    }

    [Fact]
    public async Task Numbers_are_written_the_same_in_every_country()
    {
        var forms = await session.ShowAsync("""
            System.Globalization.CultureInfo.CurrentCulture = new System.Globalization.CultureInfo("");
            1234.5.Millimetres()
            """);
        Assert.Equal("1230 mm", forms["text/plain"]);
    }

    [Fact]
    public async Task An_explorer_carries_exactly_the_script_a_page_knows()
    {
        var forms = await session.ShowAsync("Samples.Explorer()");
        Assert.Equal(["text/html", "text/plain"], forms.Keys.Order());
        Assert.Contains($"<script>{NotebookKit.Charts.Explorers.ExplorerScript.Text}</script>", forms["text/html"],
            StringComparison.Ordinal);
        Assert.Contains("Stored energy", forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("Maximum error found at", forms["text/plain"], StringComparison.Ordinal);
    }
}
