using System.Net;
using System.Text.RegularExpressions;
using CsCheck;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

public sealed class CodeColouringTests
{
    [Theory]
    [InlineData("var x = 1;", "<span class=\"k\">var</span> x = <span class=\"n\">1</span>;")]
    [InlineData("Draw(\"a<b\")", "<span class=\"m\">Draw</span>(<span class=\"s\">&quot;a&lt;b&quot;</span>)")]
    [InlineData("new Series() // end", "<span class=\"k\">new</span> <span class=\"t\">Series</span>() <span class=\"c\">// end</span>")]
    public void Parts_are_marked(string code, string html) => Assert.Equal(html, CodeColouring.ToHtml(code));

    [Fact]
    public void Any_text_comes_out_whole() => Gen.String.Sample(code =>
        Assert.Equal(code, WebUtility.HtmlDecode(Regex.Replace(CodeColouring.ToHtml(code), "</?span[^>]*>", ""))), iter: 2000);
}
