using System.Text.RegularExpressions;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Interactive.Help;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;

namespace NotebookKit.Interactive.Tests;

public sealed class HelpTests
{
    [Fact]
    public void Every_verb_that_help_names_is_there()
    {
        var missing = KitHelp.Verbs.Select(v => Regex.Match(v.Write, @"(\w+)\([^)]*\)?$").Groups[1].Value)
            .Where(v => LibraryDocs.Named(v).Count == 0);
        Assert.Empty(missing);
    }

    [Fact]
    public void Help_on_a_verb_says_the_range_of_every_input() =>
        Assert.Contains(KitHelp.Help("Disperse").Rows, r => r[1] == "flights" && r[2] == "Number of flights; 2 to 1 000 000.");

    [Fact]
    public void Help_on_a_mistyped_verb_names_the_nearest() =>
        Assert.Equal("Disperse", KitHelp.Help("Dispers").Rows[0][0]);

    [Fact]
    public void A_card_says_which_givens_the_run_changed()
    {
        var givens = GivenOverrides.Parse(["fill pressure=25 bar gauge", "mass of another design=2 kg"]);
        new DesignRecordBuilder("T", givens).Given("fill pressure", 8.BarGauge(), 2.BarGauge(), 40.BarGauge(), "");
        var (html, plain) = (new StringWriter(), new StringWriter());
        FlightCardFormatter.Html(new Card(), givens, html);
        FlightCardFormatter.Plain(new Card(), givens, plain);
        Assert.Contains("<b>Changed givens</b> fill pressure was set to 25 bar gauge for this run.</div>", html.ToString(),
            StringComparison.Ordinal);
        Assert.Contains("Changed givens: fill pressure was set to 25 bar gauge for this run.", plain.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("another design", html.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_of_a_run_on_its_own_givens_says_nothing_of_them()
    {
        var html = new StringWriter();
        FlightCardFormatter.Html(new Card(), GivenOverrides.None, html);
        Assert.DoesNotContain("Changed givens", html.ToString(), StringComparison.Ordinal);
    }

    private sealed class Card : IFlightCard
    {
        private readonly Samples.Sample _sample = new("Card", "GO");

        public string Title => _sample.Title;
        public ModelCard Model => _sample.Model;
        public ResultStatus Status => _sample.Status;
        public IReadOnlyList<ResultLine> Lines => _sample.Lines;
        public IReadOnlyList<Finding> Findings => _sample.Findings;
        public IReadOnlyList<Caution> Cautions => _sample.Cautions;
        public Working Working => _sample.Working;
        public Flight.Site.LaunchSite Site => throw new NotSupportedException();
        public bool IsGo => true;
        public IReadOnlyList<EvidenceItem> Shown => [];
        public IReadOnlyList<string> Checklist => [];
    }
}
