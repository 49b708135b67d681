using System.Text;
using NotebookKit.Numerics;

namespace NotebookKit.Logs.Tests;

/// <summary>Whatever a file holds, the library answers with a log or with one bounded sentence of its own.</summary>
public class BadLogTests
{
    private static readonly string[] Demo = ["curlew-proof.csv", "curlew-flight.csv", "curlew-fill.csv", "stock.csv"];

    public static TheoryData<string> Files => [.. Demo];

    [Theory]
    [InlineData("time [s],pressure [bar gauge]\n0,1\n1,", "")]
    [InlineData("time [s],", " [bar gauge]\n0,1\n1,2")]
    [InlineData("", ",time [s]\n0,1\n1,2")]
    [InlineData("time [s],p [", "]\n0,1\n1,2")]
    [InlineData("", "")]
    public void A_megabyte_in_one_place_is_not_repeated(string before, string after)
    {
        foreach (var filling in new[] { new string('x', 900_000), new string('9', 900_000), string.Concat(Enumerable.Repeat("a/b,",
            220_000)) })
        {
            var error = Xunit.Record.Exception(() => GaugeLog.From(LogReader.Parse(before + filling + after, "m.csv")));
            Assert.IsType<LogFormatException>(error);
            Assert.True(error.Message.Length < 2500, $"{error.Message.Length} characters");
        }
    }

    [Fact]
    public void A_line_without_an_end_is_refused_before_it_is_held()
    {
        var error = Assert.Throws<LogFormatException>(() => LogReader.Parse("time [s],p [m]\n0,1\n" + new string('1', 3_000_000), "m.csv"));
        Assert.Equal(3, error.Line);
        Assert.Contains("longer than", error.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_text_is_refused()
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, [.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 7919 % 251))]);
            Assert.Throws<LogFormatException>(() => GaugeLog.Read(path));
            File.WriteAllBytes(path, new byte[5000]);
            Assert.Contains("isn't text", Assert.Throws<LogFormatException>(() => GaugeLog.Read(path)).Message, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("a\0b")]
    [InlineData(".")]
    public void A_path_that_is_none_is_refused_by_the_library_itself(string path) =>
        Assert.Throws<LogFormatException>(() => GaugeLog.Read(path));

    [Theory]
    [MemberData(nameof(Files))]
    public void Random_changes_to_a_log_never_get_past_the_librarys_own_exception(string file)
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "data-demo"))) folder = Path.GetDirectoryName(folder)!;
        var lines = File.ReadLines(Path.Combine(folder, "data-demo", file)).Take(60).ToArray();
        var chance = new SeededSamples(20261127);
        for (var trial = 0; trial < 400; trial++)
        {
            var text = new StringBuilder(string.Join('\n', lines));
            for (var change = 0; change < 1 + trial % 6; change++) Change(text, chance, trial, 4 * change);
            var made = text.ToString();
            Refused(() => Assert.All(GaugeLog.From(LogReader.Parse(made, file)).Pressure.Values, v => Assert.True(double.IsFinite(v))));
            Refused(() => Assert.All(AltimeterLog.From(LogReader.Parse(made, file)).Pressure.Values, v => Assert.True(double.IsFinite(v))));
            Refused(() => StockList.Parse(made, file));
        }
    }

    private static void Refused(Action read)
    {
        try
        {
            read();
        }
        catch (LogFormatException e)
        {
            Assert.True(e.Message.Length < 2500);
        }
    }

    private static void Change(StringBuilder text, SeededSamples chance, int trial, int stream)
    {
        string[] pieces = [",", ";", "\n", "\"", "NaN", "1e999", "-", "[", "]", "(psi)", "10:00:00", "\0", "\uFEFF", "°",
            "2026-02-30", "1e308",
            "#", "\t", " ", "99999999999999999999", "−", "time", "pressure [psi]"];
        int Pick(int of, int what) => (int)(chance.Uniform(trial, stream + what) * of);
        var at = Pick(Math.Max(1, Math.Min(text.Length, trial % 2 == 0 ? 600 : text.Length)), 0);
        switch (Pick(3, 1))
        {
            case 0:
                text.Insert(at, pieces[Pick(pieces.Length, 2)]);
                break;
            case 1:
                text.Remove(at, Math.Min(text.Length - at, 1 + Pick(12, 2)));
                break;
            default:
                text.Length = Math.Max(1, text.Length - Pick(text.Length, 3) / 3);
                break;
        }
    }

    // A true proof to 4.3 bar would pass for one to 62 bar.
    [Fact]
    public void A_mapping_with_another_unit_than_the_header_is_refused()
    {
        var mapping = new LogMapping { Pressure = new("P1", "bar gauge") };
        var error = Assert.Throws<LogFormatException>(() => LogReader.Parse("time [s],P1 [psi gauge]\n0,62\n1,62\n", "x.csv", mapping));
        Assert.Contains("the header says 'psi gauge' and the mapping 'bar gauge'", error.Message, StringComparison.Ordinal);
        // Only what it is measured from may be added.
        Assert.Equal(2, LogReader.Parse("time [s],P1 [bar]\n0,62\n1,62\n", "x.csv", mapping).Count);
    }
}
