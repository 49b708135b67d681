using NotebookKit.Clearance;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Cards;

public class FlightCardTests
{
    [Fact]
    public void With_everything_shown_the_card_says_go_and_who_decides()
    {
        var card = CardOf(Whole);
        Assert.True(card.IsGo, string.Join("\n", card.Findings));
        Assert.Equal("GO", card.Lines[0].Value);
        Assert.Contains("range safety officer decides", card.Lines[0].Note, StringComparison.Ordinal);
        Assert.All(card.Shown, i => Assert.True(i.IsShown, i.Name));
    }

    [Fact]
    public void Two_stages_with_everything_shown_go_too()
    {
        var card = Pair.Vehicle.Card(Pair.Site, Pair.Evidence);
        Assert.True(card.IsGo, string.Join("\n", card.Findings));
    }
}
