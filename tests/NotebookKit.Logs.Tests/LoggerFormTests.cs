using System.Globalization;
using System.Text;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Logs.Tests;

/// <summary>Logs as loggers write them: separators, decimals, brackets, clocks, encodings.</summary>
public class LoggerFormTests
{
    private const string Plain = "time [s],P1 [psi gauge]\n0,100\n1,110\n2,120\n";

    public static TheoryData<string> SameLogs => new()
    {
        Plain,
        "Time (s);P1 (psig)\r\n0;100\r\n1;110\r\n2;120\r\n",
        "Time_s\tP1_psi_g\n0,0\t100,0\n1,0\t110,0\n2,0\t120,0",
        "Timestamp,P1 psi (gauge)\n2026-03-14T10:00:00+01:00,100\n2026-03-14T09:00:01Z,110\n2026-03-14T10:00:02+01:00,120\n",
        "Date;Time;P1 [PSI(g)]\n14.03.2026;23:59:59,0;100,0\n15.03.2026;00:00:00,0;110,0\n15.03.2026;00:00:01,0;120,0\n",
        "time,P1 [psi gauge]\n23:59:59,100\n00:00:00,110\n00:00:01,120",
        "time,P1 [psi gauge]\n11:59:59 AM,100\n12:00:00 PM,110\n12:00:01 PM,120",
        "Device X\nSerial 12, rev 3\nTime [ms],P1 [psi gauge],\n0,100,\n1000,110,\n2000,120,\n",
        "P1 [psi gauge],Time [min]\n100,0\n110,0.016666666666666666\n120,0.033333333333333333\n",
        "time [s],\"P1, (front)\" [psi gauge],note\n0,100,\"a, b\"\n1,110,\"c \"\"d\"\", e\"\n2,120,\n",
        "\uFEFFtime [s],P1 [psi gauge]\r0,100\r1,110\r2,120\r",
    };

    [Theory]
    [MemberData(nameof(SameLogs))]
    public void Every_way_of_writing_a_log_gives_the_same_readings(string text)
    {
        var log = GaugeLog.From(LogReader.Parse(text, "x.csv"));
        Assert.Equal(3, log.Time.Count);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(i, log.Time[i] - log.Time[0], 9);
            // 1 psi is 6.894757293168 kPa (NIST SP 811, B.8).
            Assert.Equal((100 + 10 * i) * 0.06894757293168, log.Pressure[i], 9);
        }
    }

    [Theory]
    [InlineData("utf-16", true)]
    [InlineData("utf-16BE", true)]
    [InlineData("utf-8", true)]
    [InlineData("utf-8", false)]
    public void Every_encoding_with_its_mark_is_read(string encoding, bool marked)
    {
        var path = Path.GetTempFileName();
        try
        {
            var codes = Encoding.GetEncoding(encoding);
            File.WriteAllBytes(path, [.. marked ? codes.GetPreamble() : [],
                .. codes.GetBytes("time [s],T [°F],pressure [bar gauge]\n0,68,1\n1,77,2\n")]);
            Assert.Equal(25, GaugeLog.Read(path).Temperature![1], 9);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("inHg absolute", 29.92126, 1.013250)]
    [InlineData("inHg", 29.92126, 1.013250)]
    [InlineData("hPa", 1013.25, 1.013250)]
    [InlineData("mmHg (abs)", 760, 1.013250)]
    [InlineData("kPa(a)", 101.325, 1.013250)]
    public void Altimeter_units_are_read_and_a_missing_reference_is_said(string unit, double written, double bar)
    {
        var log = AltimeterLog.From(LogReader.Parse(FormattableString.Invariant($"time [s],baro [{unit}]\n0,{written}\n1,{written}"),
            "a.csv"));
        // 1 atm = 101 325 Pa = 29.92126 inHg = 760 mmHg (NIST SP 811, B.8).
        Assert.Equal(bar, log.Pressure[0], 5);
        Assert.Equal("bar absolute", log.Pressure.Unit);
        Assert.Equal(!unit.Contains('a', StringComparison.Ordinal) || unit == "hPa", Says(log.Findings, "taken as absolute"));
    }

    [Fact]
    public void A_gauge_log_that_does_not_say_its_reference_is_refused_until_the_mapping_says_it()
    {
        const string text = "time [s],P1 (psi)\n0,100\n1,110\n";
        var error = Assert.Throws<LogFormatException>(() => GaugeLog.From(LogReader.Parse(text, "x.csv")));
        Assert.Contains("read against", error.Found, StringComparison.Ordinal);
        Assert.Contains("psi gauge", error.Allowed, StringComparison.Ordinal);
        var given = GaugeLog.From(LogReader.Parse(text, "x.csv", new() { Pressure = new("P1 (psi)", "psi gauge") }));
        Assert.Equal(100 * 0.06894757293168, given.Pressure[0], 9);
    }

    [Fact]
    public void Two_columns_that_could_be_the_pressure_are_refused_by_name_and_the_mapping_chooses()
    {
        const string text = "time [s],P1 (barg),P2 (barg)\n0,1,5\n1,2,6\n";
        var error = Assert.Throws<LogFormatException>(() => GaugeLog.From(LogReader.Parse(text, "x.csv")));
        Assert.Contains("'P1', 'P2'", error.Found, StringComparison.Ordinal);
        Assert.Equal(6, GaugeLog.From(LogReader.Parse(text, "x.csv", new() { Pressure = "P2" })).Pressure[1]);
        var wrong = Assert.Throws<LogFormatException>(() => LogReader.Parse(text, "x.csv", new() { Pressure = "P22" }));
        Assert.Contains("did you mean 'P2'", wrong.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_beside_the_log_maps_its_columns_and_the_call_goes_before_it()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var path = Path.Combine(folder.FullName, "log.csv");
            File.WriteAllText(path, "Stamp,P1,P2\n0,1,5\n1,2,6\n");
            var beside = path + ".columns.json";
            File.WriteAllText(beside, """
                { "time": { "column": "Stamp", "unit": "s" }, "pressure": { "column": "P1", "unit": "bar gauge", "sensorRange": "0 to 2" } }
                """);
            var log = GaugeLog.Read(path);
            Assert.Equal(2, log.Pressure[1]);
            Assert.Equal(1, log.Quality.SaturatedReadings);
            Assert.Equal(6, GaugeLog.Read(path, mapping: new() { Pressure = new("P2", "bar gauge") }).Pressure[1]);
            File.WriteAllText(beside, """{ "presure": "P1" }""");
            Assert.Contains("did you mean 'pressure'", Assert.Throws<LogFormatException>(() => GaugeLog.Read(path)).Message,
                StringComparison.Ordinal);
            File.WriteAllText(beside, "{ \"pressure\": ");
            Assert.Contains("JSON", Assert.Throws<LogFormatException>(() => GaugeLog.Read(path)).Message, StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(true);
        }
    }

    [Fact]
    public void What_was_guessed_and_what_was_skipped_is_said()
    {
        var log = GaugeLog.From(LogReader.Parse("Elapsed_s,P_front_barg,RSSI,humidity [qq]\n0,1,-60,4\n1,2,-61,4\n", "x.csv"));
        Assert.True(Says(log.Findings, "clock was taken from column 'Elapsed_s', in s"));
        Assert.True(Says(log.Findings, "pressure was taken from column 'P_front', read as bar gauge"));
        Assert.True(Says(log.Findings, "2 columns were skipped: 'RSSI' (the column has no unit); 'humidity' (the unit is 'qq')"));
    }

    [Fact]
    public void Quality_is_counted_in_one_line()
    {
        var rows = new StringBuilder("time [s],pressure [bar gauge],T [°C]\n");
        for (var i = 0; i < 40; i++)
        {
            var t = i < 20 ? i : i + 5;
            rows.AppendLine(CultureInfo.InvariantCulture, $"{t},{i},{(i == 3 ? "NaN" : i == 4 ? "" : "20")}");
            if (i == 10) rows.AppendLine(CultureInfo.InvariantCulture, $"{t},{i},20");
            if (i == 12) rows.AppendLine(CultureInfo.InvariantCulture, $"{t - 4},{i},20");
        }

        var log = GaugeLog.From(LogReader.Parse(rows.ToString(), "q.csv"));
        Assert.Equal("42 rows, 40 used; every 1 s; 1 gap, the longest 6 s at 19 s; 1 duplicate stamp; 1 row out of order; 1 empty cell; "
            + "1 cell without a number", log.Quality.Line);
        Assert.True(Says(log.Findings, "1 cell without a number, the first in line 5"));
        Assert.All(log.Temperature!.Values, v => Assert.True(double.IsFinite(v)));
    }

    [Fact]
    public void A_clock_that_was_reset_needs_its_part_named_where_a_proof_rests_on_it()
    {
        const string text = "time [s],pressure [bar gauge]\n0,1\n1,2\n2,3\n0,4\n1,5\n";
        var table = LogReader.Parse(text, "r.csv");
        Assert.Equal(1, table.Quality.Resets);
        Assert.Equal(3, table.Count);
        Assert.Contains("write { \"part\": 1 } into the file r.csv.columns.json beside the log, with the part that is meant, 1 to 2",
            Assert.Throws<LogFormatException>(() => GaugeLog.From(table)).Message, StringComparison.Ordinal);
        Assert.Equal([4, 5], GaugeLog.From(LogReader.Parse(text, "r.csv", new() { Part = 2 })).Pressure.Values);
        Assert.Contains("2 parts", Assert.Throws<LogFormatException>(() => LogReader.Parse(text, "r.csv", new() { Part = 3 })).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_header_that_a_restarted_logger_wrote_again_is_no_reading()
    {
        const string text = "time [s],pressure [bar gauge]\n0,1\n1,2\ntime [s],pressure [bar gauge]\n0,3\n1,4\n2,5\n";
        var table = LogReader.Parse(text, "r.csv");
        Assert.Equal((1, 3), (table.Quality.Resets, table.Count));
        Assert.True(Says(table.Findings, "stands 1 more time"));
    }

    [Fact]
    public void A_temperature_that_the_logger_measures_of_itself_is_not_taken_for_the_vessels()
    {
        const string text = "time [s],pressure [bar gauge],CPU temp [°C],speed m/s\n0,1,40,0\n1,2,41,0\n";
        var log = GaugeLog.From(LogReader.Parse(text, "r.csv"));
        Assert.Null(log.Temperature);
        Assert.True(Says(log.Findings, "'CPU temp' could be the temperature and isn't used"));
        Assert.Equal(41, GaugeLog.From(LogReader.Parse(text, "r.csv", new() { Temperature = "CPU temp" })).Temperature![1]);
        Assert.Equal("m/s", LogReader.Parse(text, "r.csv").Column("speed").Unit);
    }

    [Fact]
    public void A_clipped_reading_is_called_saturated_and_a_hold_is_not()
    {
        string Log(Func<int, double> bar) => "time [s],pressure [bar gauge]\n"
            + string.Concat(Enumerable.Range(0, 60).Select(i => FormattableString.Invariant($"{i},{Math.Round(bar(i), 2)}\n")));
        Assert.Equal(0, LogReader.Parse(Log(i => Math.Min(10, 0.25 * i)), "hold").Quality.SaturatedReadings);
        var clipped = LogReader.Parse(Log(i => i < 12 ? 0.01 * (i % 2) : Math.Min(10, 12 - 0.02 * (i - 35) * (i - 35))), "clipped");
        Assert.True(clipped.Quality.SaturatedReadings >= 20);
        Assert.True(Says(clipped.Findings, "may be saturated"));
    }

    [Fact]
    public void Times_of_day_keep_their_day_and_zone()
    {
        const string text = "stamp [UTC],pressure [bar gauge]\n2026-03-14 22:59:59,1\n2026-03-14 23:00:01,2\n";
        var log = LogReader.Parse(text, "z.csv", new() { Time = "stamp", UtcOffset = 60.Minutes() });
        Assert.Equal(new DateTime(2026, 3, 14, 22, 59, 59), log.Start);
        Assert.Equal(60, log.UtcOffset!.Value.Minutes);
        Assert.Equal(new DateOnly(2026, 3, 14), GaugeLog.From(log).Day);
        Assert.True(Says(log.Findings, "2026-03-14 22:59:59, 1 h before universal time"));
    }

    [Fact]
    public void An_altimeter_that_logs_heights_gives_the_pressure_of_the_standard_atmosphere()
    {
        // U.S. Standard Atmosphere, 1976, Table I: 954.613 hPa at 499.961 m, 898.763 hPa at 999.843 m of geopotential height.
        var log = AltimeterLog.From(LogReader.Parse(FormattableString.Invariant(
            $"time [s],Alt (ft)\n0,0\n1,{499.961 / 0.3048}\n2,{999.843 / 0.3048}\n"), "h.csv"));
        Assert.Equal(0.954613, log.Pressure[1], 6);
        Assert.Equal(0.898763, log.Pressure[2], 6);
        Assert.Equal(499.961, log.Height![1], 6);
        Assert.True(Says(log.Findings, "above the pad"));
        Assert.Equal("Height above sea level", AltimeterLog.From(LogReader.Parse("time [s],Alt_m\n0,35\n1,60\n", "h.csv",
            new() { HeightAbove = HeightDatum.SeaLevel })).Height!.Name);
        Assert.Contains("11000 m", Assert.Throws<LogFormatException>(
            () => AltimeterLog.From(LogReader.Parse("time [s],Alt_m\n0,0\n1,99999\n",
            "h.csv"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Temperature_of_an_altimeter_holds_no_reading_that_is_not_a_number()
    {
        var rows = string.Concat(Enumerable.Range(0, 30).Select(i => $"{i},1000,{(i is 5 or 15 or 25 ? "14" : "")}\n"));
        var log = AltimeterLog.From(LogReader.Parse("time [s],pressure [hPa absolute],temperature [°C]\n" + rows, "t.csv"));
        Assert.All(log.Temperature!.Values, v => Assert.Equal(14, v));
        Assert.True(Says(log.Findings, "gaps in temperature were drawn"));
    }

    [Fact]
    public void Scales_and_load_cells_are_read_by_the_same_reader()
    {
        Assert.Equal(283.49523125, ScaleLog.From(LogReader.Parse("t [s];weight (oz)\n0;10,0\n1;9,5\n", "s.csv")).Mass[0], 8);
        var force = ForceLog.From(LogReader.Parse("time_ms,Load lbf,Accel [g]\n0,1,1\n10,2,1\n", "f.csv"));
        Assert.Equal(8.896443230521, force.Force[1], 9);
        Assert.True(Says(force.Findings, "acceleration"));
    }

    [Fact]
    public void A_frame_holds_the_same_rows()
    {
        var frame = LogReader.Parse(Plain, "x.csv").ToFrame();
        Assert.Equal(3, frame.RowCount);
        Assert.Equal(["P1"], frame.ColumnKeys);
    }

    private static bool Says(IEnumerable<Finding> findings, string words) =>
        findings.Any(f => f.Message.Contains(words, StringComparison.Ordinal));

    // T may be the time or a temperature; a column that is called after a unit of time is the clock.
    [Theory]
    [InlineData("ms;Luftdruck hPa;T\n0;1013,2;18,0\n50;1013,1;18,1\n100;1013,0;18,2\n", 0.05)]
    [InlineData("T,s,p [hPa]\n18.0,0,1013\n18.1,1,1012\n18.2,2,1011\n", 1)]
    [InlineData("T,min,p [hPa]\n18.0,0,1013\n18.1,1,1012\n18.2,2,1011\n", 60)]
    [InlineData("time [s],T,p [hPa]\n0,18.0,1013\n1,18.1,1012\n2,18.2,1011\n", 1)]
    public void A_column_called_after_a_unit_of_time_is_the_clock_and_not_a_T(string text, double seconds)
    {
        var table = LogReader.Parse(text, "x.csv");
        Assert.Equal(seconds, table.Time[1] - table.Time[0], 9);
        Assert.Equal(LogKind.Altimeter, ClubLog.KindOf(table));
    }

    // The water of a proof is called "water" by those who pump it.
    [Fact]
    public void The_mapping_calls_the_water_water_or_expansion_and_not_both()
    {
        var folder = Directory.CreateTempSubdirectory("nk-map-").FullName;
        try
        {
            var path = Path.Combine(folder, "proof.csv");
            File.WriteAllText(path, "Uhrzeit;Druck;Wasser\n10:02:11;14,5;1,0\n10:02:12;29,0;2,0\n10:02:13;43,5;3,0\n");
            const string others = """ "time": "Uhrzeit", "pressure": { "column": "Druck", "unit": "psi gauge" } """;
            File.WriteAllText($"{path}.columns.json", $$"""{ {{others}}, "water": { "column": "Wasser", "unit": "mL" } }""");
            Assert.Equal([1.0, 2, 3], GaugeLog.Read(path).Expansion!.Values);
            File.WriteAllText($"{path}.columns.json", $$"""{ {{others}}, "expansion": { "column": "Wasser", "unit": "L" } }""");
            Assert.Equal([1000.0, 2000, 3000], GaugeLog.Read(path).Expansion!.Values);
            File.WriteAllText($"{path}.columns.json", $$"""{ {{others}}, "water": "Wasser", "expansion": "Wasser" }""");
            Assert.Contains("two names for one column", Assert.Throws<LogFormatException>(() => GaugeLog.Read(path)).Message,
                StringComparison.Ordinal);
            File.WriteAllText($"{path}.columns.json", $$"""{ {{others}} }""");
            var proof = DesignFiles.Design.Read(Path.Combine(FolderOfRepository(), "notebooks", "curlew.json")).Stage.Proof;
            Assert.Contains(GaugeLog.Read(path).ToReadings(proof).OfLog, f => f.Message.StartsWith("No column was taken for the water "
                + "pumped in, and 'Wasser' was skipped. Where that is the water, write { \"water\": { \"column\": \"Wasser\", "
                + "\"unit\": \"mL\" } } into the file proof.csv.columns.json", StringComparison.Ordinal));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_header_without_units_is_answered_with_the_whole_mapping()
    {
        var wrong = Assert.Throws<LogFormatException>(() => LogReader.Parse("Uhrzeit;Druck;Wasser\n10:02:11;1;2\n", "proof.csv"));
        Assert.Contains("holds clock times such as 10:02:11, write { \"time\": \"its name\", \"pressure\": { \"column\": \"its name\", "
            + "\"unit\": \"bar gauge\" }, \"water\": { \"column\": \"its name\", \"unit\": \"mL\" } } into the file", wrong.Message,
            StringComparison.Ordinal);
    }

    private static string FolderOfRepository()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "NotebookKit.sln"))) return at.FullName;
        throw new DirectoryNotFoundException("The tests don't lie in the repository.");
    }
}
