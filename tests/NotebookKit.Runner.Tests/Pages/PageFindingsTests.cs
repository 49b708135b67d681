using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

public sealed class PageFindingsTests
{
    private const string Warned = "<div class=\"nk-out nk-result\"><div class=\"nk-finding nk-warning\"><b>Warning.</b> "
        + "The margin falls below one calibre when half the water is out.</div></div>";

    [Fact]
    public void A_warning_is_said_in_full_once_and_leads_back_after_that()
    {
        var page = new PageFindings();
        Assert.Contains("<div id=\"finding-1\" class=\"nk-finding nk-warning\"><b>Warning.</b> The margin", page.Settle(Warned),
            StringComparison.Ordinal);
        var again = page.Settle(Warned);
        Assert.Contains("<a class=\"again\" href=\"#finding-1\">Warning as above: The margin falls below one calibre …</a>", again,
            StringComparison.Ordinal);
        Assert.DoesNotContain("half the water", again, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("card")]
    [InlineData("checklist")]
    public void What_is_printed_by_itself_keeps_every_warning(string kind)
    {
        var page = new PageFindings();
        page.Settle(Warned);
        var card = Warned.Replace("nk-result", "nk-" + kind, StringComparison.Ordinal);
        Assert.Equal(card, page.Settle(card));
    }
}
