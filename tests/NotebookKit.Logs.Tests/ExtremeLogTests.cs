using System.Globalization;
using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs.Tests;

/// <summary>Numbers at the edge of what a double holds: a log is refused by the library's own exceptions, or every number that it hands on
/// is one, unless a finding says otherwise.</summary>
public class ExtremeLogTests
{
    private static readonly string[] Written = ["0", "1", "-1", "5e-324", "-5e-324", "1e-300", "1e14", "-1e14", "1e15", "1e16", "1e100",
        "-1e100", "1e300", "1.7976931348623157e308", "-1.7976931348623157e308", "1e309", "NaN", "", "20", "55"];

    private static readonly string[] Units = ["psi gauge", "Pa absolute", "kgf/cm² gauge", "inHg absolute", "psi", "lbf", "kgf", "ft", "in",
        "km", "°F", "K", "°C", "L", "mL", "lb", "oz", "%"];

    private static readonly string[] Clocks = ["s", "ms", "µs", "h", "min"];

    [Fact]
    public void Extreme_numbers_in_any_unit_are_read_or_refused_by_the_library_itself()
    {
        var chance = new SeededSamples(20261127);
        var read = 0;
        for (var trial = 0; trial < 4000; trial++)
        {
            int Pick(int of, int stream) => (int)(chance.Uniform(trial, stream) * of);
            var unit = Units[Pick(Units.Length, 0)];
            var name = unit is "°F" or "K" or "°C" ? "temperature" : unit is "L" or "mL" ? "expansion" : unit is "lb" or "oz" ? "mass"
                : unit is "lbf" or "kgf" ? "force" : unit is "ft" or "in" or "km" ? "height" : unit == "%" ? "share" : "pressure";
            var beside = name is "temperature" or "expansion" or "share" ? "pressure [bar gauge]" : "temperature [°F]";
            var text = $"time [{Clocks[Pick(Clocks.Length, 1)]}];{name} [{unit}];{beside}\n" + string.Concat(Enumerable.Range(0, 6).Select(
                row => string.Create(CultureInfo.InvariantCulture,
                    $"{(Pick(30, 10 + row) == 0 ? Written[Pick(Written.Length, 20 + row)] : row.ToString(CultureInfo.InvariantCulture))};")
                    + $"{Cell(30 + row)};{Cell(40 + row)}\n"));
            string Cell(int stream) => Pick(8, 30 + stream) == 0 ? Written[Pick(Written.Length, stream)] : "20";
            read += Try(() => Looked(LogReader.Parse(text, "x.csv")));
            read += Try(() => All(GaugeLog.From(LogReader.Parse(text, "x.csv"), 1.0.BarAbsolute()) is var g
                ? [g.Time, g.Pressure, g.Temperature, g.Expansion] : []));
            read += Try(() => All(AltimeterLog.From(LogReader.Parse(text, "x.csv")) is var a ? [a.Time, a.Pressure, a.Height, a.Temperature]
                : []));
            read += Try(() => All(ForceLog.From(LogReader.Parse(text, "x.csv")) is var f ? [f.Time, f.Force] : []));
            read += Try(() => All(ScaleLog.From(LogReader.Parse(text, "x.csv")) is var s ? [s.Time, s.Mass] : []));
        }

        Assert.True(read > 100, $"only {read} logs were read at all");
    }

    [Theory]
    [InlineData("length [ft]", "1e308")]
    [InlineData("width [in]", "1e308")]
    [InlineData("mass [lb]", "1e307")]
    [InlineData("pot life [h]", "1e306")]
    [InlineData("hardener [%]", "1e308")]
    [InlineData("pieces [%]", "1e308")]
    public void A_stock_list_with_an_extreme_number_is_refused_with_its_line(string column, string number)
    {
        var error = Assert.Throws<LogFormatException>(() => StockList.Parse(
            $"item [text], kind [text], {column}\nbraid, sleeve, {number}", "stock.csv"));
        Assert.Equal(2, error.Line);
        Assert.Contains("check the number", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("item [text], kind [text], length [m]\n", ", sleeve, 1")]
    [InlineData("item [text], kind [text], length [m]\nbraid, ", ", 1")]
    [InlineData("item [text], kind [text], length [m]\nbraid, sleeve, ", "")]
    [InlineData("item [text], kind [text], ", "\nbraid, sleeve, 1")]
    [InlineData("item [text], kind [text], price [text]\nbraid, sleeve, ", "")]
    public void A_megabyte_in_a_stock_list_is_not_repeated(string before, string after)
    {
        if (Xunit.Record.Exception(() => StockList.Parse(before + new string('x', 1_000_000) + after, "stock.csv"))
            is not { } error) return;
        Assert.IsType<LogFormatException>(error);
        Assert.True(error.Message.Length < 1000, $"{error.Message.Length} characters");
    }

    // The sensor's first and last rows have no temperature: the nearest reading stands for them only as long as readings lie apart.
    [Theory]
    [InlineData("0;1;\n1;1;20\n2;1;21\n3;1;", false)]
    [InlineData("0;1;\n1;1;\n2;1;\n3;1;20\n4;1;21", true)]
    [InlineData("0;1;20\n1;1;21\n2;1;\n3;1;\n4;1;", true)]
    [InlineData("0;1;20\n1;1;\n2;1;", true)]
    public void A_temperature_that_does_not_reach_the_ends_is_drawn_or_left_out_with_a_finding(string rows, bool isLeftOut)
    {
        var log = AltimeterLog.From(LogReader.Parse($"time [s];pressure [bar absolute];temperature [°C]\n{rows}\n", "a.csv"));
        Assert.Equal(isLeftOut, log.Temperature is null);
        Assert.Equal(isLeftOut, log.Findings.Any(f => f.Message.Contains("doesn't reach the ends", StringComparison.Ordinal)));
        if (log.Temperature is { } drawn) Assert.All(drawn.Values, v => Assert.InRange(v, 20, 21));
    }

    private static void Looked(LogTable table)
    {
        foreach (var column in table.Columns)
        {
            Assert.All(column.Values, v => Assert.False(double.IsInfinity(v)));
            if (column.Values.Any(double.IsFinite)) Assert.All(table.Filled(column.Name).Values, v => Assert.False(double.IsInfinity(v)));
        }

        Assert.True(double.IsFinite(table.Quality.LongestGap.Seconds));
        _ = table.ShiftClock(Duration.FromSeconds(1e300)).ToString();
    }

    private static void All(IReadOnlyList<Series?> columns) =>
        Assert.All(columns.OfType<Series>(), c => Assert.All(c.Values, v => Assert.True(double.IsFinite(v), c.Name)));

    private static int Try(Action read)
    {
        try
        {
            read();
            return 1;
        }
        catch (LogFormatException e)
        {
            Assert.True(e.Message.Length < 2500);
            return 0;
        }
    }
}
