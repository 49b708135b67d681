using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

public sealed class PageCautionsTests
{
    private const string Words = "Prove with water. Never proof with air.";
    private const string Result = "<div class=\"nk-out nk-result\"><div class=\"nk-cautions\"><b>Cautions</b><ul><li><b>Proof.</b> " + Words
        + "</li></ul></div></div>";

    private const string List = "<div class=\"nk-out nk-checklist\"><p class=\"nk-finding nk-warning\"><b>Caution.</b> Proof: " + Words
        + "</p><ol class=\"nk-ticks\"><li>Weigh the vessel dry.</li></ol></div>";

    [Fact]
    public void A_checklist_leads_back_to_a_caution_that_the_page_has_said()
    {
        var page = new PageCautions();
        Assert.Contains($"<li id=\"caution-Proof\"><b>Proof.</b> {Words}</li>", page.Settle(Result), StringComparison.Ordinal);
        var list = page.Settle(List);
        Assert.DoesNotContain(Words, list, StringComparison.Ordinal);
        Assert.Contains("<b>Cautions as above:</b> <a href=\"#caution-Proof\">Proof</a>.", list, StringComparison.Ordinal);
        Assert.Contains("Weigh the vessel dry.", list, StringComparison.Ordinal);
    }

    [Fact]
    public void A_checklist_that_comes_first_says_its_cautions_in_full_and_later_results_lead_there()
    {
        var page = new PageCautions();
        Assert.Contains($"<p id=\"caution-Proof\" class=\"nk-finding nk-warning\"><b>Caution.</b> Proof: {Words}</p>", page.Settle(List),
            StringComparison.Ordinal);
        Assert.Contains("<b>Cautions as above:</b> <a href=\"#caution-Proof\">Proof</a>.", page.Settle(Result), StringComparison.Ordinal);
    }

    [Fact]
    public void A_flight_card_keeps_its_cautions()
    {
        var page = new PageCautions();
        page.Settle(Result);
        Assert.Contains(Words, page.Settle(Result.Replace("nk-result", "nk-card", StringComparison.Ordinal)), StringComparison.Ordinal);
    }
}
