using NotebookKit.Quantities;
using NotebookKit.Record;

namespace NotebookKit.Tests.Record;

public class RecordEvidenceTests
{
    private const string Proof = "proof of Curlew C-1";
    private static readonly string One = new('1', 64);
    private static readonly string Two = new('2', 64);

    private static DesignRecord Record(string? fingerprint, bool resting = true)
    {
        var builder = new DesignRecordBuilder("Curlew", GivenOverrides.None);
        if (fingerprint is not null) builder.Evidence(Proof, fingerprint, "proved at 60 bar gauge, invented");
        string[]? on = fingerprint is not null && resting ? [Proof] : null;
        var rated = builder.Require("fill within the proof", 30.BarGauge(), Limit.AtMost, 40.BarGauge(), "Proved to that.", on);
        builder.Require("static margin", 1.4, Limit.AtLeast, 1.0, "A gust turns it.");
        builder.Decide("sleeve", "one", [], "Light.", rated);
        builder.Decide("fins", "three", [], "Few.", DesignRecordBuilder.Condition("margin", 1.4, Limit.AtLeast, 1.0, ""));
        return builder.Build();
    }

    [Fact]
    public void Evidence_is_shown_and_kept()
    {
        var record = Record(One);
        Assert.Contains(record.Lines, l => l.Name == $"Evidence: {Proof}" && l.Value == "1111111111111111...");
        Assert.Contains(record.Lines, l => l.Name == "Required: fill within the proof"
            && l.Note.EndsWith($"Rests on {Proof}.", StringComparison.Ordinal));
        Assert.Contains(record.Lines, l => l.Name == "Decided: sleeve" && l.Note.EndsWith($"Rests on {Proof}.", StringComparison.Ordinal));
        var read = DesignRecord.FromJson(record.ToJson());
        Assert.Equal(record.Evidence, read.Evidence);
        Assert.Equal(record.Requirements, read.Requirements);
        Assert.Equal([Proof], read.Decisions[0].StaysRightWhile.RestsOn);
        Assert.True(read.ComparedWith(record).IsQuiet);
    }

    [Fact]
    public void A_record_kept_before_evidence_was_noted_still_reads()
    {
        const string Old = """
            {"title": "Curlew", "givens": [], "requirements": [{"name": "a", "liveValue": "1", "condition": "at most 2", "holds": true, "why": ""}],
             "decisions": [{"name": "d", "chosen": "c", "beat": [], "why": "", "staysRightWhile": {"name": "a", "liveValue": "1", "condition": "at most 2", "holds": true, "why": ""}}]}
            """;
        var record = DesignRecord.FromJson(Old);
        Assert.Empty(record.Evidence);
        Assert.Empty(record.Requirements[0].RestsOn);
        Assert.Empty(record.Decisions[0].RestsOn);
        Assert.True(record.ComparedWith(record).IsQuiet);
    }

    [Fact]
    public void Another_fingerprint_names_everything_that_rests_on_it()
    {
        var change = Record(Two).ComparedWith(Record(One));
        Assert.Equal([$"{Proof}: changed (proved at 60 bar gauge, invented), fingerprint {Two}, was {One}"], change.ChangedEvidence);
        Assert.Equal(
            [$"requirement fill within the proof: rests on changed evidence, {Proof}",
                $"decision sleeve: rests on changed evidence, {Proof}"], change.RestsOnChanged);
        Assert.False(change.IsQuiet);
        Assert.Empty(change.Broken);
    }

    [Fact]
    public void Evidence_that_was_dropped_still_tells_on_what_rested_on_it()
    {
        var change = Record(null).ComparedWith(Record(One));
        Assert.Equal([$"{Proof}: dropped (proved at 60 bar gauge, invented)"], change.ChangedEvidence);
        Assert.Equal(2, change.RestsOnChanged.Count);
    }

    [Fact]
    public void Evidence_that_was_added_is_told()
    {
        var change = Record(One).ComparedWith(Record(null));
        Assert.Equal([$"{Proof}: added (proved at 60 bar gauge, invented)"], change.ChangedEvidence);
        Assert.Equal(2, change.RestsOnChanged.Count);
    }

    [Fact]
    public void A_requirement_that_no_longer_rests_on_its_evidence_is_told()
    {
        var change = Record(One, resting: false).ComparedWith(Record(One));
        Assert.Empty(change.ChangedEvidence);
        Assert.Equal([$"requirement fill within the proof: no longer rests on {Proof}", $"decision sleeve: no longer rests on {Proof}"],
            change.RestsOnChanged);
        Assert.False(change.IsQuiet);
    }

    [Fact]
    public void Capitals_of_a_fingerprint_are_no_change()
    {
        var builder = new DesignRecordBuilder("x", GivenOverrides.None);
        Assert.Equal(new string('a', 64), builder.Evidence("proof", new string('A', 64), "").Fingerprint);
    }

    [Fact]
    public void Evidence_that_was_never_stated_is_refused_by_whatever_rests_on_it()
    {
        var builder = new DesignRecordBuilder("x", GivenOverrides.None);
        builder.Evidence("log", One, "");
        var condition = DesignRecordBuilder.Condition("a", 1.0, Limit.AtMost, 2.0, "", ["proof"]);
        Action[] refused =
        [
            () => builder.Require("a", 1.0, Limit.AtMost, 2.0, "", ["proof"]),
            () => builder.Decide("d", "c", [], "", condition),
            () => builder.Decide("d", "c", [], "", DesignRecordBuilder.Condition("a", 1.0, Limit.AtMost, 2.0, ""), ["proof"]),
        ];
        Assert.All(refused, r => Assert.Contains("rests on \"proof\", but the record has no evidence of that name; it has \"log\"",
            Assert.Throws<FormatException>(r).Message, StringComparison.Ordinal));
        Assert.Empty(builder.Build().Requirements);
        Assert.Empty(builder.Build().Decisions);
    }

    [Theory]
    [InlineData("", 64, "")]
    [InlineData("proof", 63, "")]
    [InlineData("proof", 0, "")]
    [InlineData("proof", 64, "two\nlines")]
    public void Evidence_without_name_fingerprint_or_one_line_is_refused(string name, int digits, string what) =>
        Assert.Throws<FormatException>(() => new DesignRecordBuilder("x", GivenOverrides.None).Evidence(name, new string('a', digits),
            what));

    [Fact]
    public void A_fingerprint_has_hexadecimal_digits_alone() =>
        Assert.Throws<FormatException>(() => new DesignRecordBuilder("x", GivenOverrides.None).Evidence("proof", new string('g', 64), ""));

    [Fact]
    public void A_record_with_a_name_twice_is_not_compared()
    {
        var good = Record(One);
        DesignRecord[] twice =
        [
            good with { Givens = [new("bore", "1", "", ""), new("bore", "2", "", "")] },
            good with { Requirements = [good.Requirements[0], good.Requirements[0]] },
            good with { Decisions = [good.Decisions[0], good.Decisions[0]] },
            good with { Evidence = [good.Evidence[0], good.Evidence[0]] },
        ];
        foreach (var bad in twice)
        {
            Assert.Contains("The later record can't be compared", Assert.Throws<FormatException>(() => bad.ComparedWith(good)).Message,
                StringComparison.Ordinal);
            Assert.Contains("2 times", Assert.Throws<FormatException>(() => good.ComparedWith(bad)).Message, StringComparison.Ordinal);
            Assert.Throws<FormatException>(() => DesignRecord.FromJson(bad.ToJson()));
        }
    }

    [Theory]
    [InlineData("{\"title\": \"x\", \"givens\": [null], \"requirements\": [], \"decisions\": []}")]
    [InlineData("{\"title\": \"x\", \"givens\": [{}], \"requirements\": [], \"decisions\": []}")]
    [InlineData("{\"title\": \"x\", \"givens\": [], \"requirements\": [], \"decisions\": [{\"name\": \"d\"}]}")]
    [InlineData("{\"title\": \"x\", \"givens\": [], \"requirements\": [{\"name\": \"r\", \"restsOn\": [\"proof\"]}], \"decisions\": []}")]
    public void A_record_with_holes_is_refused(string json) => Assert.Throws<FormatException>(() => DesignRecord.FromJson(json));
}
