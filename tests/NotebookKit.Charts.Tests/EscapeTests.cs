namespace NotebookKit.Charts.Tests;

public sealed class EscapeTests
{
    [Theory]
    [InlineData("<b title='x'>\"&\"", "&lt;b title=&#39;x&#39;&gt;&quot;&amp;&quot;")]
    [InlineData("σ ≥ 45° + 5 µm\n\t👍", "σ ≥ 45° + 5 µm\n\t👍")]
    [InlineData("a\u0001\u001b\u0085b", "ab")]
    [InlineData(null, "")]
    public void Markup_is_written_as_text_and_nothing_else_is_changed(string? text, string written) =>
        Assert.Equal(written, Escape.Text(text));

    [Fact]
    public void Half_a_letter_is_written_as_the_sign_for_none() => Assert.Equal("a\ufffdb", Escape.Text("a\ud800\uffffb"));

    [Fact]
    public void A_figure_keeps_quotation_marks() => Assert.Equal("&lt;i&gt; \"it's\" &amp;", Escape.Figure("<i> \"it's\" &"));
}
