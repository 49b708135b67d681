using System.Text.Json;

namespace NotebookKit.Interactive.Tests;

public sealed class FormatterTests(NotebookSession session) : IClassFixture<NotebookSession>
{
    [Fact]
    public async Task A_result_shows_its_numbers_findings_cautions_and_working()
    {
        var forms = await session.ShowAsync("Samples.Result()");
        Assert.Equal(["text/html", "text/plain"], forms.Keys.Order());
        foreach (var text in new[] { "6.00 MPa", "an error", "Stored energy", "thin wall", "Working: Hoop stress", @"<span class=""tex"">\sigma_h = \frac{p\,r}{t}</span>", "σ_h = (p r)/t" })
            Assert.Contains(text, forms["text/html"], StringComparison.Ordinal);
        Assert.Contains("6.00 MPa", forms["text/plain"], StringComparison.Ordinal);
        Assert.Contains("CAUTION Stored energy", forms["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hostile_text_stays_text()
    {
        var html = (await session.ShowAsync("Samples.HostileResult()"))["text/html"];
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("63.Millimetres()", "63.0 mm")]
    [InlineData("GaugePressure.FromBar(55)", "55.0 bar gauge")]
    [InlineData("AbsolutePressure.FromBar(56)", "56.0 bar absolute")]
    public async Task A_quantity_shows_its_unit(string cell, string expected)
    {
        var forms = await session.ShowAsync(cell);
        Assert.Equal(expected, forms["text/plain"]);
        Assert.Contains(expected, forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_chart_shows_a_figure_and_words()
    {
        var forms = await session.ShowAsync("Samples.Chart()");
        using var figure = JsonDocument.Parse(forms["application/vnd.plotly.v1+json"]);
        Assert.Equal("Time [s]", figure.RootElement.GetProperty("layout").GetProperty("xaxis").GetProperty("title").GetProperty("text").GetString());
        Assert.Contains("Thrust [N]", forms["text/plain"], StringComparison.Ordinal);
        Assert.True(forms.ContainsKey("text/html"));
    }

    [Fact]
    public async Task The_command_lists_every_caution()
    {
        var forms = await session.ShowAsync("#!cautions");
        foreach (var topic in new[] { "Proof", "Stored energy", "Composite", "Bench", "Flight", "Prediction" })
            Assert.Contains(topic, forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Loading_twice_does_no_harm()
    {
        await NotebookKitExtension.LoadAsync(session.Root);
        var forms = await session.ShowAsync("Samples.Result()");
        Assert.Contains("6.00 MPa", forms["text/plain"], StringComparison.Ordinal);
    }
}
