using NotebookKit.Runner.Engine;
using NotebookKit.Runner.Tests.Engine;

namespace NotebookKit.Runner.Tests.Wording;

public sealed class BuilderWordsTests(SharedEngine shared) : IClassFixture<SharedEngine>
{
    private async Task<CellError> ErrorOf(string code) =>
        (await shared.Engine.RunAsync(code, _ => { }, CancellationToken.None)).Error
            ?? throw new InvalidOperationException("It ran: " + code);

    private async Task<CellStatus> RunAsync(string code) =>
        (await shared.Engine.RunAsync(code, _ => { }, CancellationToken.None)).Status;

    [Theory]
    [InlineData("GaugePressure p = 500.Psi();", "A pressure must say gauge or absolute: write 500.PsiGauge().")]
    [InlineData("GaugePressure p = Pressure.FromBars(35);", "A pressure must say gauge or absolute: write 35.BarGauge().")]
    [InlineData("AbsolutePressure p = 7.BarGauge();", "A gauge pressure was given and an absolute pressure is wanted: write")]
    [InlineData("Length bore = 66;", "A length is wanted and this number has no unit: write 66.Millimetres() (or")]
    [InlineData("Proof.For(66);", "wanted")]
    [InlineData("var total = 66.Millimetres() + 2;", "A length is wanted and this number has no unit: write 12.Millimetres()")]
    [InlineData("var bore = 66.Milimetres();", "There is no unit Milimetres; the nearest name is Millimetres; #!units lists them.")]
    [InlineData("MaterialLibrary.Typicla.All", "has no Typicla; the nearest name is Typical.")]
    [InlineData("MaterialLibrary.Typical.Brade(\"x\")", "has no Brade; the nearest name is Braid().")]
    [InlineData("MaterialLibary.Typical", "There is no MaterialLibary here; the nearest name is MaterialLibrary.")]
    [InlineData("new DesignRecordBuilder()", "DesignRecordBuilder needs title as well: What the record is about.")]
    [InlineData("new Headline(\"a\", vaule: \"b\")", "Headline has no input vaule; the nearest name is Value; its inputs are Name, Value.")]
    public async Task What_the_compiler_refuses_is_said_in_the_builders_words(string code, string sentence) =>
        Assert.Contains(sentence, (await ErrorOf(code)).Message, StringComparison.Ordinal);

    [Fact]
    public async Task A_mistyped_variable_is_told_its_nearest_name()
    {
        await RunAsync("var curlew = 1;");
        Assert.Equal("There is no curlw here; the nearest name is curlew.", (await ErrorOf("curlw + 1")).Message);
    }

    [Theory]
    [InlineData("head with { Value = \"2\" }")]
    [InlineData("var a = 1;\nhead with\n{\n    Value = \"2\"\n}")]
    public async Task A_changed_copy_at_the_start_of_a_line_says_what_to_write(string code)
    {
        await RunAsync("var head = new Headline(\"a\", \"1\");");
        var error = await ErrorOf(code);
        Assert.Equal("A changed copy needs a name: write var changed = head with { ... }; or, to see it only, (head with { ... }).",
            error.Message);
        Assert.Empty(error.Trace);
        Assert.StartsWith("head with", error.SourceLine, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_error_is_said_once()
    {
        var lines = ErrorText.Lines(await ErrorOf("int b = nowhere;\nint c = nowhere;")).ToList();
        Assert.Single(lines, l => l.StartsWith("There is no nowhere here.", StringComparison.Ordinal));
        Assert.Single(lines, l => l.Contains("line 2: There is no nowhere here.", StringComparison.Ordinal));
        Assert.Equal(3, lines.Count);
    }

    [Fact]
    public async Task An_error_at_an_empty_line_shows_the_line_before() =>
        Assert.Equal("var a = (1 +", (await ErrorOf("var a = (1 +\n\n")).SourceLine);

    [Fact]
    public async Task A_refusal_of_the_library_is_its_sentence_and_nothing_else()
    {
        var error = await ErrorOf("var lib = MaterialLibrary.Typical;\nlib.Braid(\"nothing of this name\");");
        Assert.Equal(["There is no braid named", "  line 2 > lib.Braid("],
            ErrorText.Lines(error).Select(l => l[..Math.Min(l.Length, l.StartsWith(' ') ? 21 : 23)]));
    }

    [Fact]
    public async Task A_number_that_is_none_is_refused_without_the_frameworks_note() => Assert.Equal(
        "gauge pressure is NaN Pa; it must be a finite number. Check the value it was computed from.",
        (await ErrorOf("GaugePressure.FromBar(double.NaN)")).Message);

    [Fact]
    public async Task A_missing_file_is_told_with_folder_and_nearest()
    {
        using var folder = new TestFolder();
        File.WriteAllText(folder["gauge-log.csv"], "");
        var path = folder["guage-log.csv"].Replace("\\", "/", StringComparison.Ordinal);
        var sentence = $"There is no file guage-log.csv in {folder.Path}; the nearest is gauge-log.csv.";
        Assert.Equal(sentence, (await ErrorOf($"File.ReadAllText(\"{path}\")")).Message);
        Assert.Equal(sentence, (await ErrorOf($"LogReader.Read(\"{path}\")")).Message);
        Assert.StartsWith("There is no folder ", (await ErrorOf($"File.ReadAllText(\"{path}/x.csv\")")).Message, StringComparison.Ordinal);
    }

    private async Task<IReadOnlyList<string>> CompletedAsync(string code) =>
        [.. (await shared.Engine.CompleteAsync(code, code.Length, CancellationToken.None)).Entries.Select(e => e.Text)];

    [Fact]
    public async Task Names_inside_strings_are_completed()
    {
        await RunAsync("var stock = MaterialLibrary.Typical;\nvar design = new DesignRecordBuilder(\"T\");\n"
            + "design.Given(\"fill pressure\", 1.0, 0.0, 2.0, \"why\");");
        Assert.Equal(Materials.Solids.MaterialLibrary.Typical.AllOf<Materials.Solids.Braid>().Select(b => b.Name)
                .Order(StringComparer.Ordinal),
            await CompletedAsync("var s = stock.Braid(\""));
        Assert.Contains("PET", await CompletedAsync("stock.Solid(\"pe"));
        Assert.Equal(["fill pressure"], await CompletedAsync("design.Given(\"fi"));
    }

    [Fact]
    public async Task Names_of_vessels_and_of_a_designs_values_are_completed()
    {
        using var folder = new TestFolder();
        File.Copy(Path.Combine(TestFolder.Repository, "notebooks", "curlew.json"), folder["design.json"]);
        Directory.CreateDirectory(folder["vessels"]);
        foreach (var serial in new[] { "K-1", "K-2" })
            Clearance.Service.ServiceFile.Create(folder["vessels", $"{serial}.service.jsonl"], "Curlew", serial);
        var path = folder.Path.Replace("\\", "/", StringComparison.Ordinal);
        await RunAsync($"var folder = ClubFolder.Read(\"{path}\");\nvar club = folder.Design;");
        Assert.Equal(["K-1", "K-2"], await CompletedAsync("folder.Vessel(\""));
        Assert.Equal(["K-2"], await CompletedAsync("var v = folder.Vessel(\"K-2"));
        Assert.Contains("fill pressure", await CompletedAsync("club.With(\"fill"));
    }

    [Fact]
    public async Task Properties_are_completed_after_with()
    {
        await RunAsync("var card = new Headline(\"a\", \"1\");");
        Assert.Equal(["Name", "Value"], await CompletedAsync("card with { "));
        Assert.Equal(["Value"], await CompletedAsync("var c = card with { Name = \"b\", V"));
    }

    [Fact]
    public async Task Help_on_a_verb_tells_the_range_of_its_inputs()
    {
        const string code = "vehicle.Disperse(";
        await RunAsync("Vehicle vehicle = null;");
        var described = await shared.Engine.DescribeAsync(code, code.Length, CancellationToken.None);
        Assert.Contains("flights: Number of flights; 2 to 1 000 000.", described!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Help_lists_verbs_and_commands()
    {
        var outputs = new List<CellOutput>();
        Assert.Equal(CellStatus.Succeeded, (await shared.Engine.RunAsync("Help()", outputs.Add, CancellationToken.None)).Status);
        var text = (string?)Assert.IsType<ResultOutput>(outputs[0]).Data["text/plain"];
        Assert.Contains("#!kit", text, StringComparison.Ordinal);
        Assert.Contains("vehicle.Fly(site)", text, StringComparison.Ordinal);
    }
}
