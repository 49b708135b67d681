using NotebookKit.Runner.Givens;
using NotebookKit.Runner.Notebooks;

namespace NotebookKit.Runner.Tests.Givens;

public sealed class GivenReaderTests
{
    private static NotebookGivens Read(string fixture) => GivenReader.Read(NotebookFile.Read(TestFolder.Fixture(Path.Combine("givens",
        fixture + ".ipynb"))));

    private static NotebookGivens OfCell(string code) => GivenReader.Read(NotebookFile.Parse(
        TestFolder.Fixture("x.ipynb"), System.Text.Json.JsonSerializer.Serialize(new {
            cells = new[] { new { cell_type = "code", source = code } }, nbformat = 4 })));

    [Fact]
    public void Givens_are_found_in_cells_and_in_files_loaded_by_loaded_files() => Assert.Equal(
        [
            "bore: length, 5 cm to 68 mm",
            "working pressure: gauge pressure, 0 bar gauge to 60 bar gauge",
            "air: temperature, −30 °C to 40 °C",
            "ends: whole number, 1 to 3",
            "length: length, 300 mm to 800 mm",
            "fill pressure: gauge pressure, 5 bar gauge to 60 bar gauge",
            "water fraction: ratio, 0 % to 90 %",
            "share: plain number, 0 to 1",
        ],
        Read("trainer").Givens.Select(g => $"{g.Name}: {g.Words}"));

    [Fact]
    public void A_name_made_at_run_time_is_told() => Assert.Equal(["cell 1 makes the name of a given while it runs"],
        Read("at-run-time").Unreadable);

    [Fact]
    public void A_file_that_is_not_there_is_told() => Assert.Equal(["cell 1 loads gone.csx, which isn't there"],
        OfCell("#load \"gone.csx\"").Unreadable);

    [Fact]
    public void A_file_that_a_command_imports_is_read_too() => Assert.Contains(OfCell("#!import givens/parts/vessel.csx\n1 + 1").Givens,
        g => g.Name == "bore");

    [Theory]
    [InlineData("design?.Given(\"a\", 1.5, 1, 2, \"\");", "plain number, 1 to 2")]
    [InlineData("design.Given(@\"a\", low, low, high, \"\")", "value computed in the notebook, low to high")]
    [InlineData("design.Given(\"a\", 1.Bar().Gauge(), 0.Bar().Gauge(), 2.Bar().Gauge(), \"\")",
        "gauge pressure, 0 bar gauge to 2 bar gauge")]
    [InlineData("design.Given(\"a\", UnitsNet.Mass.FromKilograms(1.5), 1.Kilograms(), 2000.Grams(), \"\")", "mass, 1 kg to 2000 g")]
    [InlineData("if (deep) { Run(() => design.Given(\"a\", 1.BarAbsolute(), 0.BarAbsolute(), 2.BarAbsolute(), \"\")); }",
        "absolute pressure, 0 bar absolute to 2 bar absolute")]
    [InlineData("design.Given(\"a\", 1.Bar(), 0.Bar(), 2.Bar(), \"\"); var broken = ;", "pressure, 0 bar to 2 bar")]
    public void Values_are_read_however_they_are_written(string code, string words) =>
        Assert.Equal(words, Assert.Single(OfCell(code).Givens).Words);

    [Theory]
    [InlineData("// design.Given(\"a\", 1, 0, 2, \"\")")]
    [InlineData("#if OFF\ndesign.Given(\"a\", 1, 0, 2, \"\");\n#endif")]
    [InlineData("var text = \"design.Given(1)\";")]
    public void What_never_runs_is_no_given(string code)
    {
        Assert.Empty(OfCell(code).Givens);
        Assert.Empty(OfCell(code).Unreadable);
    }
}
