using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using NotebookKit.Tests.Clearance;
using NotebookKit.Tests.DesignFiles;
using UnitsNet;

namespace NotebookKit.Tests.Sheets;

public sealed class SheetTests
{
    private static readonly Design Curlew = Design.Parse(DesignFixture.CurlewText, "curlew.json");

    private static readonly ResinSystem Epoxy = new("laminating epoxy", 30.Percent(), 40.Minutes());

    private static readonly DesignSheets Made = DesignSheets.Of(Curlew.Stage, Curlew.Site,
        [new("carbon sleeve 65 mm heavy") { Length = 3.5.Metres(), Price = MaterialPrice.Parse("18.60 EUR/m") },
            new("carbon tape 150 g") { Length = 10.Metres(), Price = MaterialPrice.Parse("2.30 EUR/m") },
            new("laminating epoxy") { Mass = 1850.Grams(), Price = MaterialPrice.Parse("31 EUR/kg") }], Epoxy);

    [Fact]
    public void A_card_is_of_a_design_by_its_flight_and_not_by_its_name()
    {
        var mark = FlightSheet.SubjectOf(Curlew);
        Assert.NotEmpty(mark);
        Assert.Equal(mark, FlightSheet.Of(Curlew.Vehicle.Card(Curlew.Site!, new FlightEvidence())).Content.Subject);
        var other = Curlew.With("fill pressure", "50 bar gauge");
        Assert.Equal(Curlew.Name, other.Name);
        Assert.NotEqual(mark, FlightSheet.SubjectOf(other));
    }

    [Fact]
    public void Every_line_of_the_proof_checklist_stands_on_the_sheet_and_every_step_of_pressure_is_a_row()
    {
        var (plan, content) = (Made.Proof!.Plan, Made.Proof.Content);
        var steps = content.Sections.SelectMany(s => s.Steps).ToList();
        var ticked = plan.Checklist.Where(l => l.StartsWith("[ ] ", StringComparison.Ordinal)).Select(l => l[4..]).ToList();
        var pressed = ticked.Where(l => l.StartsWith("Up to", StringComparison.Ordinal) || l.StartsWith("Down to",
            StringComparison.Ordinal)).ToList();
        Assert.Equal(ticked.Except(pressed), steps);
        var table = content.Sections.Single(s => s.Table is not null).Table!;
        Assert.Equal(plan.Steps.Count, table.Rows.Count);
        Assert.Equal(plan.Steps.Count, pressed.Count);
        Assert.All(table.Rows, r => Assert.Equal(table.Headings.Count, r.Count));
        Assert.All(table.Rows.Zip(plan.Steps), p => Assert.Contains(Digits.Round(p.Second.Pressure.Bar), p.First[1],
            StringComparison.Ordinal));
        Assert.Equal(Cautions.ForProof, content.Cautions);
        Assert.NotEmpty(content.Sections.Single(s => s.Heading == "When to stop").Rules);
    }

    // Around a circle that grows by a strain: the girth grows by the bore's growth times pi.
    [Fact]
    public void The_girth_to_expect_grows_with_the_bore()
    {
        var sheet = Made.Proof!;
        Assert.All(sheet.Girths.Zip(sheet.Plan.Steps), p => Assert.Equal(
            sheet.Outside!.Value.Millimeters + (Math.PI * 66 * Curlew.Vessel.Expansion(p.Second.Pressure).Strain.Hoop.DecimalFractions),
            p.First.Millimeters, 1e-6));
        Assert.True(sheet.Girths[4] > sheet.Girths[0]);
        Assert.Empty(ProofSheet.Of(sheet.Plan).Girths);
        Assert.Contains(ProofSheet.Of(sheet.Plan).Content.Sections[0].Facts, f => f.Value == "not given");
    }

    [Fact]
    public void The_flight_sheet_has_the_verdict_of_its_card_and_says_no_where_nothing_was_shown()
    {
        var card = Curlew.Vehicle.Card(Curlew.Site!, new FlightEvidence());
        var content = FlightSheet.Of(card).Content;
        Assert.False(card.IsGo);
        Assert.Equal("NO-GO", content.Verdict);
        Assert.False(content.IsInFavour);
        Assert.Contains("range safety officer decides", content.VerdictNote, StringComparison.Ordinal);
        Assert.Equal(card.Cautions, content.Cautions);
        Assert.Equal(card.Checklist, content.Sections.Single(s => s.Heading == "Checklist").Steps);
        var missing = Assert.Single(content.Findings, f => f.Message.StartsWith("Not shown: ", StringComparison.Ordinal));
        Assert.All(card.Shown.Where(i => !i.IsShown), i => Assert.Contains(i.Name, missing.Message, StringComparison.Ordinal));
        // No call of the library on paper.
        Assert.DoesNotContain(content.Findings, f => f.Message.Contains("()", StringComparison.Ordinal));
        foreach (var box in new[] { "Wind", "gauge", "mass" })
            Assert.Contains(content.Sections.SelectMany(s => s.Blanks), b => b.Name.Contains(box, StringComparison.Ordinal));
    }

    [Fact]
    public void A_card_in_favour_is_a_sheet_in_favour()
    {
        var card = CardFixture.CardOf(CardFixture.Whole);
        Assert.True(card.IsGo);
        var content = FlightSheet.Of(card).Content;
        Assert.Equal("GO", content.Verdict);
        Assert.True(content.IsInFavour);
        Assert.DoesNotContain(content.Sections.Single(s => s.Heading == "Vessel").Facts, f => f.Value == "not shown");
    }

    [Fact]
    public void The_pad_sheet_counts_up_to_the_fill_and_says_what_to_do_in_an_abort()
    {
        var (sheet, content) = (Made.Pad!, Made.Pad!.Content);
        var times = content.Sections.Single(s => s.Table is not null).Table!.Rows.Select(r => double.Parse(r[2],
            System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(times.Order(), times);
        Assert.Equal(sheet.Fill.Duration.Seconds, times[^1], 0.05);
        Assert.Contains(content.Sections.Single(s => s.Heading == "Abort and misfire").Rules,
            r => r.Contains(Made.Vent!.Slowest.Show(), StringComparison.Ordinal));
        var states = content.Sections.Single(s => s.Heading.StartsWith("States of the pad", StringComparison.Ordinal)).Facts;
        Assert.Equal(9, states.Count);
        Assert.Contains(states, f => f.Name == "Venting" && f.Value == (2 * Made.Vent!.WorstState).Show());
        Assert.Equal(Cautions.ForFilling, content.Cautions);
        Assert.Contains(sheet.Plumbing.Lines, l => l is { Name: "Restrictor", Value: "to 100 bar gauge" });
    }

    [Fact]
    public void A_design_that_does_not_say_what_it_is_filled_with_gets_no_pad_sheet_and_a_sentence()
    {
        var silent = Curlew.Without("pad");
        var made = DesignSheets.Of(silent.Stage, silent.Site, []);
        Assert.Null(made.Pad);
        Assert.Contains("doesn't say what it is filled with", made.Refused["pad sheet"], StringComparison.Ordinal);
        Assert.NotNull(made.Proof);
        Assert.Contains(made.Shopping!.Content.Sections, s => s.Text.Contains("share of hardener", StringComparison.Ordinal));
    }

    // 3.21 m of sleeve at 18.60: by hand from the cut list's own lengths.
    [Fact]
    public void The_list_adds_up_what_has_a_price_and_names_what_has_none()
    {
        var list = Made.Shopping!;
        var cuts = list.Cuts;
        var used = (cuts.LengthOf("carbon sleeve 65 mm heavy").Meters * 18.6) + (cuts.LengthOf("carbon tape 150 g").Meters * 2.3)
            + (list.Cups!.Resin.Kilograms * 31);
        Assert.Equal(used, list.Items.Sum(i => i.Cost ?? 0), 1e-9);
        var total = list.Lines.Single(l => l.Name == "Total of what is used");
        Assert.Equal(MaterialPrice.Money(used, "EUR"), total.Value);
        Assert.Contains("glass veil 30 g", total.Note, StringComparison.Ordinal);
        Assert.Equal(list.Items.Where(i => i.Cost is null).Select(i => i.Name).Distinct(), list.LeftOut);
        // Ten metres of tape lie there, more is needed; of sleeve there is enough.
        var tape = list.Items.Single(i => i.Name == "carbon tape 150 g");
        Assert.Equal(tape.Length!.Value.Meters - 10, tape.ToBuyShare * tape.Length.Value.Meters, 1e-9);
        Assert.Equal("nothing", list.Items.Single(i => i.Name == "carbon sleeve 65 mm heavy").ToBuy);
    }

    // By hand: two domed closures at 24, one fitting at 12.50, three rings at 0.90; 0.9 m across is 0.636 m2, over 1.5 m 0.424 m.
    [Fact]
    public void Ends_liner_fins_and_canopy_have_the_prices_of_the_stock_list_and_what_it_lacks_is_not_given()
    {
        var list = DesignSheets.Of(Curlew.Stage, Curlew.Site,
            [Each("domed closure aluminium 6061-T6 3 mm", "24 EUR each"), Each("threaded fitting", "12.50 EUR each"),
                Each("O-ring", "0.90 EUR each"), Each("PET tube bore 66 mm wall 0.4 mm", "3.20 EUR/m"),
                Each("fin sheet 2 mm", "9.80 EUR each") with { Length = 200.Millimetres(), Width = 100.Millimetres() },
                Each("canopy cloth", "8.50 EUR/m") with { Length = 3.Metres(), Width = 1.5.Metres() }]).Shopping!;
        Assert.Equal(48, Cost(list, "domed closure"), 1e-9);
        Assert.Equal(12.5, Cost(list, "threaded fitting"), 1e-9);
        Assert.Equal(2.7, Cost(list, "O-ring"), 1e-9);
        Assert.Equal(3.2 * Curlew.Vessel.Length.Meters, Cost(list, "PET tube"), 1e-9);
        // A sheet of 200 mm by 100 mm holds one fin of 130 mm by 80 mm.
        Assert.Equal(3 * 9.8, Cost(list, "fin sheet"), 1e-9);
        Assert.Equal(8.5 * Math.PI / 4 * 0.9 * 0.9 / 1.5, Cost(list, "canopy cloth"), 1e-9);
        Assert.Contains("peel ply", list.LeftOut);
        var row = list.Content.Sections.Single(s => s.Heading == "To buy").Table!.Rows.Single(r => r[1] == "peel ply");
        Assert.Equal("not given", row[^1]);
        Assert.Contains("price not given", list.Lines.Single(l => l.Name == "peel ply").Note, StringComparison.Ordinal);

        static ShelfItem Each(string name, string price) => new(name) { Price = MaterialPrice.Parse(price) };
        static double Cost(ShoppingSheet of, string name) =>
            of.Items.Where(i => i.Name.StartsWith(name, StringComparison.Ordinal)).Sum(i => i.Cost!.Value);
    }

    // Two rings for the nozzle end and one for the forward end, of two that lie there; one closure of two.
    [Fact]
    public void A_piece_on_the_shelf_serves_one_need_only()
    {
        var list = DesignSheets.Of(Curlew.Stage, Curlew.Site, [new ShelfItem("O-ring") { Pieces = 2 },
            new ShelfItem("domed closure aluminium 6061-T6 3 mm") { Pieces = 1 }, new ShelfItem("threaded fitting")]).Shopping!;
        Assert.Equal([("2", "nothing"), ("0", "1")], Of("O-ring"));
        Assert.Equal([("1", "nothing"), ("0", "1")], Of("domed closure"));
        Assert.Equal([("not given", "1")], Of("threaded fitting"));

        List<(string, string)> Of(string name) => [.. list.Items.Where(i => i.Name.StartsWith(name, StringComparison.Ordinal))
            .Select(i => (i.OnShelf, i.ToBuy))];
    }

    [Theory]
    [InlineData("9.80 EUR/m", 9.8, PricedBy.Metre)]
    [InlineData("24 EUR/kg", 24, PricedBy.Kilogram)]
    [InlineData("3 EUR each", 3, PricedBy.Piece)]
    public void A_price_is_read(string text, double amount, PricedBy per) =>
        Assert.Equal(new MaterialPrice(amount, "EUR", per), MaterialPrice.Parse(text));

    [Theory]
    [InlineData("9.80")]
    [InlineData("EUR 9/m")]
    [InlineData("-1 EUR/m")]
    [InlineData("9 EUR/yd")]
    public void What_is_no_price_is_refused(string text) =>
        Assert.Contains("isn't a price", Assert.Throws<FormatException>(() => MaterialPrice.Parse(text)).Message, StringComparison.Ordinal);
}
