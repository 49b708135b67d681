using System.Text;
using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Clearance.Service;

public sealed class ServiceFileTests : IDisposable
{
    private readonly SampleRecord sample = new();

    public static TheoryData<string, ServiceEvent> EveryKind => new()
    {
        { "made", SampleRecord.Made() },
        { "made without masses", new Made(SampleRecord.Day("2026-02-20"), "b") { At = SampleRecord.Time("2026-03-01") } },
        { "weighed", new Weighed(14.5.Ounces()) },
        { "proved", SampleRecord.Proved("2026-03-02", 54.37) },
        { "sound", new Inspected(InspectionResult.Sound) { By = "A. Member" } },
        { "not sound", new Inspected(InspectionResult.NotSound) },
        { "filled", SampleRecord.Filled("2026-05-01", 35.9, 1.7, 17.3) },
        { "filled, little known", new Filled(520.PsiGauge(), null, 90.Seconds()) },
        { "flown", new Flown("7/2026") },
        { "landed hard", new LandedHard { Notes = "canopy late\nrolled down the dyke" } },
        { "dropped", new Dropped(3.Feet()) },
        { "heated", new Heated(63.Celsius(), 2.Hours()) },
        { "repaired", new Repaired("new o-ring \"20 × 2\"") },
        { "retired", new Retired("doubt 😕") },
    };

    public void Dispose() => sample.Dispose();

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void An_event_comes_back_as_it_was_written(string name, ServiceEvent happened)
    {
        sample.Clock.Now = SampleRecord.Time("2026-05-01");
        var receipt = sample.File.Append(happened);
        Assert.Empty(receipt.Findings);
        var record = sample.Read();
        Assert.True(record.IsIntact, name + string.Join(' ', record.Findings));
        var read = Assert.Single(record.Entries);
        Assert.Equal(happened.ToString(), read.Event.ToString());
        Assert.Equal((happened.By, happened.Notes, happened.GetType()), (read.Event.By, read.Event.Notes, read.Event.GetType()));
        Assert.Equal(happened.At ?? sample.Clock.Now, read.At);
        Assert.Equal(record.HeadFingerprint, receipt.Entry.Fingerprint);
        Assert.Equal(("Curlew", "C-1"), (record.Vessel, record.Serial));
    }

    [Fact]
    public void The_mark_for_the_label_is_the_start_of_the_last_lines_fingerprint_and_moves_with_each_line()
    {
        var first = sample.Read().EndMark;
        var receipt = sample.File.Append(new Flown("8"));
        var record = sample.Read();
        Assert.Matches("^[0-9a-f]{4}-[0-9a-f]{4}$", record.EndMark);
        Assert.StartsWith(record.EndMark.Replace("-", "", StringComparison.Ordinal), record.HeadFingerprint, StringComparison.Ordinal);
        Assert.Equal(record.EndMark, receipt.Entry.EndMark);
        Assert.NotEqual(first, record.EndMark);
    }

    [Fact]
    public void A_fill_has_its_units_in_the_file() =>
        Assert.Contains("""{"pressure":"36 bar gauge","temperature":"18 °C","hold":"120 s","medium":"gas"}""", Encoding.UTF8.GetString(sample.With(SampleRecord.Filled("2026-05-01")).Lines()[1]), StringComparison.Ordinal);

    [Fact]
    public void A_complete_line_is_never_rewritten()
    {
        sample.Used();
        var before = File.ReadAllBytes(sample.Path);
        sample.With(new Flown("8"));
        Assert.Equal(before, File.ReadAllBytes(sample.Path)[..before.Length]);
    }

    [Fact]
    public void A_record_is_never_begun_over_another()
    {
        sample.Used();
        var refusal = Assert.Throws<ServiceFileException>(() => ServiceFile.Create(sample.Path, "Godwit", "G-2"));
        Assert.Contains("is there already", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(7, sample.Read().Entries.Count);
        Assert.Single(Directory.EnumerateFiles(Path.GetDirectoryName(sample.Path)!));
    }

    [Fact]
    public void A_file_that_is_not_there_or_is_no_record_is_refused()
    {
        Assert.Contains("There is no", Assert.Throws<ServiceFileException>(() => ServiceFile.Read(sample.Beside("none"))).Message,
            StringComparison.Ordinal);
        Assert.Contains("can't be written", Assert.Throws<ServiceFileException>(() => ServiceFile.Create(sample.Beside("no/folder"), "a",
            "b")).Message, StringComparison.Ordinal);
        File.WriteAllText(sample.Beside("other"), "{\"a\":1}\n");
        Assert.Contains("doesn't begin as a service record does",
            Assert.Throws<ServiceFileException>(() => ServiceFile.Open(sample.Beside("other"))).Message, StringComparison.Ordinal);
        Assert.False(ServiceFile.Read(sample.Beside("other")).IsIntact);
        File.WriteAllText(sample.Beside("empty"), "");
        Assert.Contains("no whole first line", Assert.Single(ServiceFile.Read(sample.Beside("empty")).Findings).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void An_event_before_the_last_events_day_is_refused()
    {
        sample.With(SampleRecord.Filled("2026-05-02"));
        var refusal = Assert.Throws<ServiceFileException>(() => sample.File.Append(SampleRecord.Filled("2026-05-01")));
        Assert.Contains("2026-05-01, lies before that of the last event, 2026-05-02", refusal.Message, StringComparison.Ordinal);
        sample.Clock.Now = SampleRecord.Time("2026-04-01");
        Assert.Throws<ServiceFileException>(() => sample.File.Append(new Flown("7")));
        Assert.Single(sample.Read().Entries);
    }

    [Fact]
    public void An_event_in_the_future_is_refused() =>
        Assert.Contains("lies in the future", Assert.Throws<ServiceFileException>(() =>
            sample.File.Append(SampleRecord.Filled("2062-05-01"))).Message, StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_written_after_a_last_line_that_was_changed()
    {
        sample.Used();
        var text = File.ReadAllText(sample.Path);
        File.WriteAllText(sample.Path, text.Replace("30 bar gauge", "31 bar gauge", StringComparison.Ordinal));
        Assert.Contains("Line 8", Assert.Throws<ServiceFileException>(() => sample.File.Append(new Flown("8"))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_last_line_is_dropped_and_said_wherever_it_was_cut()
    {
        sample.Used();
        var whole = File.ReadAllBytes(sample.Path);
        var lines = sample.Lines();
        var start = whole.Length - 1 - lines[^1].Length;
        for (var cut = start + 1; cut < whole.Length; cut++)
        {
            File.WriteAllBytes(sample.Path, whole[..cut]);
            var record = sample.Read();
            Assert.True(record.IsIntact);
            // All but the line feed: the check sum shows that nothing else is missing.
            var isWhole = cut == whole.Length - 1;
            Assert.Equal(isWhole ? 7 : 6, record.Entries.Count);
            Assert.Contains(isWhole ? "the line was kept" : "is cut off and was dropped", Assert.Single(record.Findings).Message,
                StringComparison.Ordinal);
            if (cut % 16 != 0 && !isWhole) continue;

            var receipt = sample.File.Append(new Flown("8"));
            Assert.Equal(isWhole ? 8 : 7, receipt.Entry.Sequence);
            Assert.Equal(isWhole ? 0 : 1, receipt.Findings.Count);
            var after = sample.Read();
            Assert.True(after.IsIntact);
            Assert.Equal(receipt.Entry.Sequence, after.Entries.Count);
            Assert.Equal(isWhole ? [] : [$"note: Before line 8 was written, a line that was cut off ({cut - start} bytes) was "
                + "removed: that event was never complete."], after.Findings.Select(f => f.ToString()));
            Assert.Equal(whole[..start], File.ReadAllBytes(sample.Path)[..start]);
        }
    }

    [Fact]
    public void Events_that_make_no_sense_are_refused_with_their_range()
    {
        var refusal = Assert.Throws<InvalidDesignException>(() => sample.File.Append(new Filled(0.BarGauge(), 200.Celsius(), 0.Seconds())));
        Assert.Equal(3, refusal.Findings.Count);
        Assert.Contains("fill pressure is 0 bar gauge; it must be 0.1 bar gauge to 300 bar gauge.", refusal.Message,
            StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => sample.File.Append(new Proved(SampleRecord.Day("2026-05-03"), 54.BarGauge(), 1.5,
            "Club rule", "9f") { At = SampleRecord.Time("2026-05-02") }));
        Assert.Throws<InvalidDesignException>(() => sample.File.Append(new Proved(SampleRecord.Day("2026-05-02"), 54.BarGauge(),
            double.NaN, "", "")));
        Assert.Throws<InvalidDesignException>(() => sample.File.Append(new Made(SampleRecord.Day("2026-02-20"), "b", 412.Grams(),
            310.Grams())));
        Assert.Throws<InvalidDesignException>(() => sample.File.Append(new Flown("") { Notes = new string('x', 2001) }));
        Assert.Throws<InvalidDesignException>(() => sample.File.Append(new Flown("7\ud83d")));
        Assert.Throws<InvalidDesignException>(() => ServiceFile.Create(sample.Beside("new"), " ", "C-1"));
        Assert.Empty(sample.Read().Entries);
    }

    [Theory]
    [InlineData("pressure \"36 bar\" doesn't say that a gauge read it", "filled", "pressure=36 bar", "hold=2 min")]
    [InlineData("has no unit", "filled", "pressure=36 gauge", "hold=2 min")]
    [InlineData("\"filled\" needs its hold; write \"2 min\"", "filled", "pressure=36 bar gauge")]
    [InlineData("isn't a unit taken here; write one of s, min, h", "filled", "pressure=36 bar gauge", "hold=2 mins")]
    [InlineData("medium can't be \"air\"; write water or gas", "filled", "pressure=36 bar gauge", "hold=2 min", "medium=air")]
    [InlineData("\"flown\" has no height; it takes flight", "flown", "flight=7", "height=3 m")]
    [InlineData("it takes no values", "landed-hard", "height=3 m")]
    [InlineData("\"exploded\" isn't a kind of event known here", "exploded")]
    [InlineData("isn't a day", "made", "day=1.5.2026", "batch=b")]
    [InlineData("it must be 1 to 3", "proved", "day=2026-05-01", "held=54 bar gauge", "factor=0.5", "rules=r", "record=f")]
    public void A_text_that_cannot_be_read_is_refused_with_a_sentence(string sentence, string kind, params string[] values)
    {
        var refusal = Assert.Throws<InvalidDesignException>(() => ServiceEvent.Read(kind,
            values.ToDictionary(v => v.Split('=')[0], v => v.Split('=')[1])));
        Assert.Contains(sentence, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_of_the_bench_are_read()
    {
        var fill = (Filled)ServiceEvent.Read("filled", new Dictionary<string,
            string> { ["pressure"] = "522 psi gauge", ["temperature"] = "64.4 °F", ["hold"] = "2 min" });
        Tolerance.Relative(522 * 0.45359237 * 9.80665 / (0.0254 * 0.0254), fill.Pressure.Pascals, 1e-12);
        Tolerance.Absolute(18, fill.Temperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(120, fill.Hold.Seconds);
    }
}
