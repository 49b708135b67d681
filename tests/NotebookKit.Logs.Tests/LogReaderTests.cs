using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs.Tests;

public class LogReaderTests
{
    private const string Good = """
        # proof of a test vessel
        time [s], pressure [bar gauge], temperature [°C], expansion [mL]
        0, 0.0, 18.0, 0
        1, 5.1, , 3.5
        # a pause

        2, , 18.2, 7.0
        3.5, 15.2, 18.3, 10.5
        """;

    [Fact]
    public void Reads_columns_comments_and_gaps()
    {
        var log = LogReader.Parse(Good, "good.csv");
        Assert.Equal(4, log.Count);
        Assert.Equal(["proof of a test vessel", "a pause"], log.Comments);
        Assert.Equal([0, 1, 2, 3.5], log.Time.Values);
        Assert.Equal("bar gauge", log.Column("Pressure").Unit);
        Assert.True(double.IsNaN(log.Column("pressure")[2]));
        Assert.Equal(15.2, log.Column("pressure")[3]);
    }

    [Theory]
    [InlineData("psi gauge", 100, 6.894757, "bar gauge")]
    [InlineData("hPa absolute", 1013.25, 1.01325, "bar absolute")]
    [InlineData("MPa gauge", 6, 60, "bar gauge")]
    [InlineData("kPa absolute", 99.5, 0.995, "bar absolute")]
    [InlineData("°F", 68, 20, "°C")]
    [InlineData("K", 293.15, 20, "°C")]
    [InlineData("ft", 100, 30.48, "m")]
    [InlineData("oz", 1, 28.349523, "g")]
    [InlineData("L", 0.25, 250, "mL")]
    [InlineData("lbf", 1, 4.4482216, "N")]
    public void Converts_every_unit_to_one(string unit, double written, double read, string canonical)
    {
        var log = LogReader.Parse(FormattableString.Invariant($"time [ms], x [{unit}]\n0, {written}\n1500, {written}\n"), "u.csv");
        Assert.Equal(canonical, log.Columns[0].Unit);
        Assert.Equal(read, log.Columns[0][0], 6);
        Assert.Equal(1.5, log.Time[1]);
    }

    [Theory]
    [InlineData("time [s], pressure [barx]\n0,1\n1,2", 1, "pressure", "'barx'", "did you mean 'bar'")]
    [InlineData("time [s], pressure\n0,1\n1,2", 1, "pressure", "no unit", "in brackets")]
    [InlineData("time [s], [bar gauge]\n0,1\n1,2", 1, "[bar gauge]", "no name", "before the unit")]
    [InlineData("pressure [bar gauge], depth [m]\n0,1\n1,2", 1, "", "no column is a clock", "time [s]")]
    [InlineData("time [s]\n0\n1", 1, "", "only a clock", "one more column")]
    [InlineData("time [s], p [m], P [m]\n0,1,1\n1,2,2", 1, "P", "stands twice", "name of its own")]
    [InlineData("time [s]; p [m]\n0;1\n1,2", 3, "", "1 cell", "separate this line by it and not by ','")]
    [InlineData("time [s], p [m]\n0,5, 1,2\n1,5, 2,3", 2, "", "4 cells", "separate the columns by ';'")]
    [InlineData("time [s]; p [m]\n0;1,5\n1;2.5", 3, "p", "decimal point", "decimalComma")]
    [InlineData("time [s]; p [m]\n0;1,250\n1;950", 0, "p", "thousands", "decimalComma")]
    [InlineData("0, 1\n1, 2", 1, "", "holds numbers", "put a header")]
    [InlineData("time, p [m]\n0, 1\n1, 2", 2, "time", "says no unit", "time [s]")]
    [InlineData("time, p [m]\n03/04/2026 10:00:00, 1\n03/04/2026 10:00:01, 2", 2, "time", "is not a time that can be read", "dayFirst")]
    [InlineData("time [s], p [m]\n10:00:00, 1\n10:00:01, 2", 2, "time", "is a clock time", "leave out the unit")]
    [InlineData("time [s], p [psi gauge]\n0, 1\n1, 1e14\n2, 1e309", 4, "p", "not a finite number", "decimal point")]
    [InlineData("time [s], p [ft]\n0, 1\n1, -1e400", 3, "p", "not a finite number", "decimal point")]
    [InlineData("time [s], p [psi gauge]\n0, 1\n1, 1e308", 3, "p", "more than any sensor reads", "leave the cell empty")]
    [InlineData("time [s], p [ft]\n0, 1\n1, -1e300", 3, "p", "more than any sensor reads", "leave the cell empty")]
    [InlineData("time [s], p [lbf]\n0, 1\n1, 1e300", 3, "p", "more than any sensor reads", "leave the cell empty")]
    [InlineData("time [s], t [°F]\n0, 1\n1, 1e308", 3, "t", "more than any sensor reads", "leave the cell empty")]
    [InlineData("time [s], p [m]\n-1e308, 1\n1e308, 2", 2, "time", "more than any clock shows", "check the number")]
    [InlineData("time [h], p [m]\n0, 1\n1e306, 2", 3, "time", "is not a finite time", "check the number")]
    [InlineData("time [s], p [kN]\n0, 1\n1, 1e306", 3, "p", "no finite number of N", "check the number")]
    [InlineData("# c\ntime [s], p [m]\n0, 1\n1", 4, "", "1 cell", "cut off")]
    [InlineData("time [s], p [m]\n0, 1\n1, 2, 3", 3, "", "3 cells", "2 columns")]
    [InlineData("time [s], p [m]\n0, 1\n1, 2..5", 3, "p", "'2..5'", "decimal point")]
    [InlineData("time [s], p [m]\n2, 2\n2, 3", 0, "time", "1 rows with a stamp", "times must rise")]
    [InlineData("time [s], p [m]\n, 1\n2, 2", 2, "time", "no time", "gaps")]
    [InlineData("time [s], p [bar absolute]\n0, 1\n1, -0.5", 3, "p", "below vacuum", "gauge reading")]
    [InlineData("time [s], t [K]\n0, 280\n1, -5", 3, "t", "below absolute zero", "check the unit")]
    [InlineData("time [s], p [m]\n0, 1", 0, "", "1 rows", "at least 2")]
    [InlineData("# nothing", 0, "", "no header", "names the columns")]
    [InlineData("", 0, "", "no header", "names the columns")]
    public void Says_line_column_what_was_found_and_what_is_allowed(string text, int line, string column, string found, string allowed)
    {
        var error = Assert.Throws<LogFormatException>(() => LogReader.Parse(text, "bad.csv"));
        Assert.Equal(line, error.Line);
        Assert.Equal(column, error.Column);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Contains(allowed, error.Allowed, StringComparison.Ordinal);
        Assert.StartsWith("bad.csv", error.Message, StringComparison.Ordinal);
        if (line > 0) Assert.Contains(FormattableString.Invariant($"line {line}"), error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Says_that_a_file_is_missing_and_where_it_looked()
    {
        var error = Assert.Throws<LogFormatException>(() => LogReader.Read("no-such-folder/none.csv"));
        Assert.Contains("no such file", error.Message, StringComparison.Ordinal);
        Assert.Contains(Directory.GetCurrentDirectory(), error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Shifts_the_clock_cuts_and_fills()
    {
        var log = LogReader.Parse(Good, "good.csv").ShiftClock(10.Seconds());
        Assert.Equal(13.5, log.Time[3]);
        Assert.Equal(2, log.Between(11.Seconds(), 12.Seconds()).Count);
        Assert.Contains("10 s to 13.5 s", Assert.Throws<LogFormatException>(() => log.Between(20.Seconds(), 30.Seconds())).Message,
            StringComparison.Ordinal);
        Assert.Equal(5.1 + (15.2 - 5.1) / 2.5, log.Filled("pressure")[2], 9);
        Assert.Equal(18.1, log.Filled("temperature")[1], 9);
    }

    [Fact]
    public void Puts_a_column_of_another_clock_beside_and_leaves_open_what_it_does_not_reach()
    {
        var slow = LogReader.Parse("time [s], outside [°C]\n-1, 10\n3, 14", "weather.csv");
        var both = LogReader.Parse(Good, "good.csv").With(slow, "outside");
        var added = both.Column("outside (weather.csv)");
        Assert.Equal([11, 12, 13], added.Values.Take(3));
        Assert.True(double.IsNaN(added[3]));
        Assert.Contains("no such column", Assert.Throws<LogFormatException>(() => both.With(slow, "wind")).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_a_column_that_stands_beside_already()
    {
        var slow = LogReader.Parse("time [s], outside [°C]\n-1, 10\n3, 14", "weather.csv");
        var both = LogReader.Parse(Good, "good.csv").With(slow, "outside");
        var error = Assert.Throws<LogFormatException>(() => both.With(slow, "Outside"));
        Assert.Equal("outside (weather.csv)", error.Column);
        Assert.Contains("stands twice", error.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e20, "1E+20 s of row 2")]
    [InlineData(double.MaxValue, "of row 2")]
    public void Refuses_a_shift_after_which_the_clock_does_not_rise(double seconds, string found)
    {
        var log = LogReader.Parse(Good, "good.csv");
        var error = Assert.Throws<LogFormatException>(() => log.ShiftClock(seconds.Seconds()));
        Assert.Equal("time", error.Column);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Cuts_at_times_that_no_row_has_and_refuses_times_the_wrong_way_round()
    {
        var log = LogReader.Parse(Good, "good.csv");
        var cut = log.Between(0.5.Seconds(), 3.Seconds());
        Assert.Equal([1, 2], cut.Time.Values);
        Assert.Equal([5.1, double.NaN], cut.Column("pressure").Values);
        Assert.Equal(["pressure", "temperature", "expansion"], cut.Columns.Select(c => c.Name));
        Assert.Contains("no row lies", Assert.Throws<LogFormatException>(() => log.Between(3.Seconds(), 0.5.Seconds())).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Gauge_log_leaves_out_rows_without_pressure_and_says_so()
    {
        var log = GaugeLog.From(LogReader.Parse(Good, "good.csv"));
        Assert.Equal([0, 5.1, 15.2], log.Pressure.Values);
        Assert.Equal([0, 1, 3.5], log.Time.Values);
        Assert.Equal(18.1, log.Temperature![1], 9);
        Assert.Equal([0, 3.5, 10.5], log.Expansion!.Values);
        Assert.Contains(log.Findings, f => f.Message.Contains("1 of 4 rows", StringComparison.Ordinal)
            && f.Message.Contains("2.5 s", StringComparison.Ordinal));
        Assert.Contains(log.Findings, f => f.Message.Contains("1 gaps in temperature", StringComparison.Ordinal));
    }

    [Fact]
    public void Slow_thermometer_stands_for_the_ends_but_not_for_long()
    {
        string Text(int rows) => "time [s], pressure [bar gauge], temperature [°C]\n"
            + string.Join("\n", Enumerable.Range(0, rows).Select(i => $"{i}, 1, {(i is 5 or 15 ? "20" : "")}"));
        Assert.Equal(20, GaugeLog.From(LogReader.Parse(Text(25), "slow")).Temperature![24]);
        var late = GaugeLog.From(LogReader.Parse(Text(40), "late"));
        Assert.Null(late.Temperature);
        Assert.Contains(late.Findings, f => f.Message.Contains("doesn't reach the ends", StringComparison.Ordinal));
    }

    [Fact]
    public void Gauge_log_of_absolute_pressure_takes_the_ambient_from_the_file_beside_it()
    {
        var folder = Directory.CreateTempSubdirectory("nk-ambient-").FullName;
        try
        {
            var log = Path.Combine(folder, "abs.csv");
            File.WriteAllText(log, "time [s],pressure [kPa absolute]\n0,101.325\n1,601.325\n");
            Assert.Contains("\"ambient\": \"1.013 bar absolute\" } into the file abs.csv.columns.json",
                Assert.Throws<LogFormatException>(() => GaugeLog.Read(log)).Message, StringComparison.Ordinal);
            File.WriteAllText(log + ".columns.json", """{ "ambient": "1.01325 bar absolute" }""");
            Assert.Equal(5, GaugeLog.Read(log).Pressure.Values[1], 9);
            File.WriteAllText(log + ".columns.json", """{ "ambient": "1.01325 bar gauge" }""");
            Assert.Contains("is no pressure of the air around", Assert.Throws<LogFormatException>(() => GaugeLog.Read(log)).Message,
                StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Gauge_log_of_absolute_pressure_asks_for_the_ambient()
    {
        var table = LogReader.Parse("time [s], pressure [kPa absolute]\n0, 101.325\n1, 601.325", "abs.csv");
        Assert.Contains("ambient", Assert.Throws<LogFormatException>(() => GaugeLog.From(table)).Message, StringComparison.Ordinal);
        Assert.Equal(5, GaugeLog.From(table, AbsolutePressure.StandardSeaLevel).Pressure[1], 9);
    }

    [Fact]
    public void Gauge_log_refuses_a_pressure_in_metres_and_a_temperature_in_grams()
    {
        Assert.Contains("unit is m", Assert.Throws<LogFormatException>(() =>
            GaugeLog.From(LogReader.Parse("time [s], pressure [m]\n0,1\n1,2", "x"))).Message, StringComparison.Ordinal);
        Assert.Contains("must be in °C", Assert.Throws<LogFormatException>(() =>
            GaugeLog.From(LogReader.Parse("time [s], pressure [bar gauge], temperature [g]\n0,1,1\n1,2,2", "x"))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Altimeter_log_refuses_gauge_pressure()
    {
        var error = Assert.Throws<LogFormatException>(() => AltimeterLog.From(LogReader.Parse("time [s], pressure [bar gauge]\n0,1\n1,2",
            "x")));
        Assert.Contains("absolute pressure", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_at_even_times_is_drawn_straight_and_left_empty_in_a_long_gap()
    {
        var log = LogReader.Parse("time [s],mass [g]\n0,10\n1,20\n2,\n3,40\n8,90\n", "even.csv");
        var even = log.Every(0.5.Seconds(), 2.Seconds());
        Assert.Equal(17, even.Count);
        Assert.Equal([10, 15, 20, 25, 30, 35, 40], even.Column("mass").Values.Take(7));
        Assert.All(even.Column("mass").Values.Skip(7).Take(9), v => Assert.True(double.IsNaN(v)));
        Assert.Equal(90, even.Column("mass")[16]);
        // A longer gap may be drawn over: 40 g at 3 s to 90 g at 8 s.
        Assert.Equal(65, log.Every(0.5.Seconds(), 5.Seconds()).Column("mass")[11], 12);
        Assert.Throws<OutOfRangeException>(() => log.Every(Duration.Zero, 2.Seconds()));
        Assert.Throws<OutOfRangeException>(() => log.Every(0.5.Seconds(), 0.1.Seconds()));
    }
}
