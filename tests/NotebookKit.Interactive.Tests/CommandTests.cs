using Microsoft.DotNet.Interactive.Events;

namespace NotebookKit.Interactive.Tests;

[Collection(nameof(NotebookSession))]
public sealed class CommandTests(NotebookSession session)
{
    [Fact]
    public async Task Kit_lists_every_command()
    {
        var forms = await session.ShowAsync("#!kit");
        foreach (var name in new[] { "#!kit", "#!cautions", "#!units", "#!working" }) Assert.Contains(name, forms["text/plain"],
            StringComparison.Ordinal);
        Assert.Contains("<table", forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cautions_lists_every_caution()
    {
        var forms = await session.ShowAsync("#!cautions");
        foreach (var topic in new[] { "Proof", "Stored energy", "Composite", "Bench", "Flight", "Prediction" })
            Assert.Contains(topic, forms["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_lists_the_literals_of_the_library()
    {
        var forms = await session.ShowAsync("#!units");
        foreach (var literal in new[] { "12.Millimetres()", "12.Inches()", "12.BarGauge()", "12.Percent()" })
            Assert.Contains(literal, forms["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Working_shows_the_working_of_a_variable()
    {
        await session.RunAsync("var hoop = Samples.Result();");
        var forms = await session.ShowAsync("#!working hoop");
        Assert.Contains("6 MPa × 50 mm / 1 mm", forms["text/plain"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#!working nothing_here", "There is no variable 'nothing_here'")]
    [InlineData("#!working seven", "'seven' holds a Int32, which shows no working")]
    public async Task Working_says_what_is_wrong(string cell, string expected)
    {
        await session.RunAsync("var seven = 7;");
        var failed = Assert.Single((await session.RunAsync(cell)).OfType<CommandFailed>());
        Assert.Contains(expected, failed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Working_without_a_name_is_refused() =>
        Assert.Contains(await session.RunAsync("#!working"), e => e is CommandFailed);

    [Fact]
    public async Task Loading_twice_does_no_harm()
    {
        await NotebookKitExtension.LoadAsync(session.Root, passesFigures: true);
        var forms = await session.ShowAsync("#!kit");
        Assert.Contains("#!cautions", forms["text/plain"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Loaded_from_a_cell_it_greets_in_one_line()
    {
        using var csharp = new Microsoft.DotNet.Interactive.CSharp.CSharpKernel();
        using var root = new Microsoft.DotNet.Interactive.CompositeKernel { csharp };
        csharp.AddAssemblyReferences([typeof(NotebookKitExtension).Assembly.Location,
            typeof(Microsoft.DotNet.Interactive.Kernel).Assembly.Location]);
        var events = (await root.SendAsync(new Microsoft.DotNet.Interactive.Commands.SubmitCode(
            "await NotebookKit.Interactive.NotebookKitExtension.LoadAsync(Microsoft.DotNet.Interactive.Kernel.Root, "
                + "passesFigures: true);"))).Events;
        Assert.DoesNotContain(events, e => e is CommandFailed);
        var text = Assert.Single(events.OfType<DisplayedValueProduced>()).FormattedValues.Single().Value;
        Assert.Equal(NotebookKitExtension.Greeting, text);
        Assert.DoesNotContain('\n', text);
    }
}
