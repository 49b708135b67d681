namespace NotebookKit.Charts.Tests;

public sealed class PlotlyScriptTests
{
    [Fact]
    public void The_script_hides_module_loaders_and_sets_itself_once()
    {
        Assert.StartsWith("if(!window.Plotly){(function(){var define,module,exports;", PlotlyScript.Wrapped, StringComparison.Ordinal);
        Assert.EndsWith("}).call(window);}", PlotlyScript.Wrapped, StringComparison.Ordinal);
        Assert.Contains("Licensed under the MIT license", PlotlyScript.Wrapped[..400], StringComparison.Ordinal);
        Assert.DoesNotContain("</script", PlotlyScript.Wrapped, StringComparison.OrdinalIgnoreCase);
        Assert.Same(PlotlyScript.Wrapped, PlotlyScript.Wrapped);
    }
}
