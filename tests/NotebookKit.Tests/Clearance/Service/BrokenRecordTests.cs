using System.Security.Cryptography;
using System.Text;
using CsCheck;
using NotebookKit.Clearance.Service;

namespace NotebookKit.Tests.Clearance.Service;

/// <summary>Whatever is done to a file is named, with its line.</summary>
public sealed class BrokenRecordTests : IDisposable
{
    private readonly SampleRecord sample = new SampleRecord().Used();
    private readonly List<byte[]> lines;
    private readonly byte[] whole;

    public BrokenRecordTests() => (lines, whole) = (sample.Lines(), File.ReadAllBytes(sample.Path));

    public void Dispose() => sample.Dispose();

    [Fact, Trait("Length", "long")]
    public void Any_byte_that_is_edited_is_found() =>
        Gen.Select(Gen.Int[0, whole.Length - 2], Gen.Byte).Where(g => whole[g.Item1] != g.Item2).Sample(
            g => !sample.Rewritten([.. whole[..g.Item1], g.Item2, .. whole[(g.Item1 + 1)..]]).IsIntact, iter: 20_000);

    [Fact]
    public void Any_line_that_is_dropped_is_found()
    {
        for (var i = 0; i < lines.Count - 1; i++) Assert.False(sample.Rewritten(lines.Where((_, j) => j != i)).IsIntact);
    }

    [Fact]
    public void Lines_dropped_at_the_end_are_found_by_a_fingerprint_kept_elsewhere()
    {
        var head = sample.Read().HeadFingerprint;
        Assert.True(sample.Read(head).IsIntact);
        Assert.True(sample.Rewritten(lines[..^1]).IsIntact);
        for (var left = 1; left < lines.Count; left++)
            Assert.Contains("were taken away", Assert.Single(sample.Rewritten(lines[..left], head).Findings).Message,
                StringComparison.Ordinal);
        // A head of an earlier day is still in it.
        Assert.True(sample.With(new Flown("8")).Read(head).IsIntact);
    }

    [Fact]
    public void Any_two_lines_that_are_swapped_are_found()
    {
        for (var i = 0; i < lines.Count; i++)
            for (var j = i + 1; j < lines.Count; j++)
            {
                var swapped = lines.ToList();
                (swapped[i], swapped[j]) = (swapped[j], swapped[i]);
                Assert.False(sample.Rewritten(swapped).IsIntact);
            }
    }

    [Fact]
    public void Any_line_that_is_there_twice_is_found()
    {
        for (var i = 0; i < lines.Count; i++)
            for (var at = 0; at <= lines.Count; at++)
                Assert.False(sample.Rewritten([.. lines[..at], lines[i], .. lines[at..]]).IsIntact);
    }

    [Fact]
    public void A_line_that_is_edited_with_its_check_sum_is_found_by_the_line_after_it()
    {
        for (var i = 0; i < lines.Count - 1; i++)
        {
            var edited = lines.ToList();
            edited[i] = Changed(lines[i], "Curlew", "Curlew ");
            Assert.False(sample.Rewritten(edited).IsIntact);
        }

        var fill = lines.ToList();
        fill[4] = Changed(lines[4], "36 bar gauge", "26 bar gauge");
        Assert.Equal("Line 6 doesn't follow from line 5: that line was changed, or another was put in its place, and the record isn't to "
            + "be trusted from there on.", Assert.Single(sample.Rewritten(fill).Findings).Message);
    }

    [Fact]
    public void Each_fault_is_named_once_with_its_line()
    {
        Says("Line 5 was changed after it was written", With(4,
            Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(lines[4]).Replace("36 bar", "26 bar", StringComparison.Ordinal))));
        Says("Before line 5, a line is missing: it has number 5 where 4 is due", [.. lines[..4], .. lines[5..]]);
        Says("Before line 5, 2 lines are missing", [.. lines[..4], .. lines[6..]]);
        Says("Line 6 has number 4 where 5 is due", [.. lines[..5], lines[4]]);
        Says("Line 4 isn't one JSON object", With(3, "spoiled"u8.ToArray()));
        Says("Line 4 isn't one JSON object", With(3, [0xff, 0, 7]));
        Says("Line 1 isn't the first line of a service record", lines[1..]);
        Says("Line 9 is a second first line, of Godwit G-2", [.. lines, ServiceLine.Header("Godwit", "G-2")]);
        Says("Line 1 says version 2; this program reads version 1", [Changed(lines[0], "\"version\":1", "\"version\":2"), .. lines[1..]]);
    }

    [Fact]
    public void A_line_whose_chain_is_right_and_whose_words_are_not_is_named()
    {
        Says("Line 9 is of Godwit G-2, but this is the record of Curlew C-1", [.. lines, Next("Godwit", "G-2")]);
        Says("Line 9 can't be taken: \"soaked\" isn't a kind of event known here", [.. lines, Changed(Next(), "\"flown\"", "\"soaked\"")]);
        Says("Line 9 can't be taken: \"flown\" has no fight; it takes flight",
            [.. lines, Changed(Next(), "\"flight\":", "\"flight\":\"1\",\"fight\":")]);
        Says("Line 9 has flight twice", [.. lines, Changed(Next(), "\"flight\":", "\"flight\":\"1\",\"flight\":")]);
        Says("Line 9 has \"by\" twice", [.. lines, Changed(Next(), "\"by\":", "\"by\":\"x\",\"by\":")]);
        Says("Line 9 is dated 2026-04-01, before an earlier line's 2026-05-09", [.. lines, Changed(Next(), "2026-05-20", "2026-04-01")]);
        Says("which isn't a day and time in UTC", [.. lines, Changed(Next(), "2026-05-20T", "2026-05-32T")]);
        Says("Line 9 has no whole number \"sequence\"", [.. lines, Changed(Next(), "\"sequence\":8,", "\"sequence\":\"8\",")]);
        Says("Line 9 has no text \"notes\"", [.. lines, Changed(Next(), "\"notes\":\"\",", "")]);
    }

    private static byte[] Changed(byte[] line, string from, string to)
    {
        var text = Encoding.UTF8.GetString(line);
        Assert.Contains(from, text, StringComparison.Ordinal);
        var body = text[..text.LastIndexOf(",\"check\"", StringComparison.Ordinal)].Replace(from, to, StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes($"{body},\"check\":\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(body)))}\"}}");
    }

    private byte[] Next(string vessel = "Curlew", string serial = "C-1") =>
        ServiceLine.Event(vessel, serial, 8, SampleRecord.Time("2026-05-20"), new Flown("8"), 0, ServiceLine.Fingerprint(lines[^1]));

    private IEnumerable<byte[]> With(int at, byte[] line) => lines.Select((l, i) => i == at ? line : l);

    private void Says(string sentence, IEnumerable<byte[]> changed)
    {
        var record = sample.Rewritten(changed);
        Assert.False(record.IsIntact);
        Assert.Contains(sentence, Assert.Single(record.Findings).Message, StringComparison.Ordinal);
        Assert.Equal(ServiceStanding.Grounded, record.StatusOn(SampleRecord.Day("2026-06-01"), LifeLimits.Club).Standing);
    }
}
