using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Records;

/// <summary>Readings are made here from strains that are known; the judgement has to find them again, and to say what it can't
/// tell.</summary>
public class ProofWithoutBuretteTests
{
    private const double Girth = 250, Along = 700, StrainAround = 0.005, StrainAlong = 0.001958;

    private static readonly Proof Planned = new()
    {
        Vessel = "Test vessel",
        Volume = 2.5.Litres(),
        WorkingPressure = 40.BarGauge(),
        Wall = new WallExpansion(1.2.Percent(), 60.BarGauge(), Source.CommonPractice("test")),
        TrappedAir = 4.Millilitres(),
    };

    /// <summary>A log once a second: steps, holds, a slow steady fall where one is asked for.</summary>
    private static ProofReadings Log(double fallBarPerMinute = 0)
    {
        List<double> time = [], pressure = [], temperature = [];
        double bar = 0;
        void Row()
        {
            time.Add(time.Count);
            pressure.Add(bar);
            temperature.Add(18);
        }

        for (var i = 0; i < 10; i++) Row();
        foreach (var (target, hold) in new[] { (15.0, 60), (30, 60), (45, 60), (54, 60), (60.3, 122), (40, 602), (0, 30) })
        {
            while (Math.Abs(target - bar) > 1e-9)
            {
                bar = target > bar ? Math.Min(target, bar + 0.8) : Math.Max(target, bar - 1.5);
                Row();
            }

            for (var i = 0; i < hold; i++)
            {
                if (target == 40) bar -= fallBarPerMinute / 60;
                Row();
            }
        }

        return new()
        {
            Proof = Planned, Serial = "T-1", Day = new DateOnly(2026, 3, 14), Time = new("Time", "s", time),
            Pressure = new("Pressure", "bar gauge", pressure), Temperature = new("Temperature", "°C", temperature),
        };
    }

    // What the pump brings to 60.3 bar: growth, squeezed water (bulk modulus of the library's water) and squeezed air.
    private static double Pumped(double airMillilitres) =>
        2500 * (Math.Pow(1 + StrainAround, 2) * (1 + StrainAlong) - 1) + 2500 * 60.3e5 / Planned.Water.BulkModulus.Pascals
        + airMillilitres * (1 - 1.01325 / (60.3 + 1.01325));

    /// <summary>Tape and rule of a vessel that kept a share of its strains, held at 60.3 bar; readings without any error of their
    /// own.</summary>
    private static TapeReadings Tape(double kept, double withinMillimetres = 0.03, int stations = 4, double air = 4)
    {
        StretchReading Stretch(string station, double before, double strain) => new(station, before.Millimetres(),
            (before * (1 + strain)).Millimetres(), (before * (1 + kept * strain)).Millimetres());
        return new()
        {
            Girths = [.. Enumerable.Range(1, stations).Select(i => Stretch($"station {i}", Girth, StrainAround))],
            Lengths = [Stretch("along", Along, StrainAlong)],
            GirthWithin = withinMillimetres.Millimetres(),
            LengthWithin = withinMillimetres.Millimetres(),
            WaterPumped = Pumped(air).Millilitres().ReadWithin(0.5.Millilitres()),
        };
    }

    private static string Say(ProofRecord record) => string.Join("\n", record.Findings.Select(f => f.Message));

    [Fact]
    public void Strains_give_growth_what_stays_and_trapped_air()
    {
        var record = (Log() with { Tape = Tape(0.01) }).Judge();
        var tape = record.TapeExpansion!;
        Tolerance.Relative(StrainAround, tape.Around.Value.DecimalFractions, 1e-9);
        // 2.5 L × (1.005² × 1.001958 − 1) = 30.00 mL at 60.3 bar, in proportion at 60 bar.
        Tolerance.Relative(30.00 * 60 / 60.3, tape.Total.Value.Milliliters, 1e-3);
        Tolerance.Absolute(1, tape.PermanentShare!.Value.Percent, 0.02);
        Tolerance.Absolute(4, tape.TrappedAir!.Value.Milliliters, 0.05);
    }

    // By hand: both girths of a difference err by 0.03/√3 mm, four stations halve it; 2 × √2 × 0.0173 / 2 / 250 = 9.80e-5 around (twice),
    // √2 × 0.0173 / 700 = 3.50e-5 along; together 1.04e-4 of 0.012; doubled 1.73 %.
    [Fact]
    public void The_uncertainty_is_that_of_a_hand_reckoning()
    {
        var tape = (Log() with { Tape = Tape(0) }).Judge().TapeExpansion!;
        Tolerance.Relative(1.73, tape.PermanentShare!.Expanded!.Value.Percent, 0.02);
        Tolerance.Relative(2500 * 2 * 1.04e-4 * 60 / 60.3, tape.Total.Expanded!.Value.Milliliters, 0.02);
    }

    [Fact]
    public void A_fine_tape_shows_that_nothing_stays_and_the_proof_is_accepted()
    {
        var record = (Log() with { Tape = Tape(0.01) }).Judge();
        Assert.True(record.Verdict == ProofVerdict.Accept, Say(record));
        Assert.Contains(record.Findings, f => f.Message.StartsWith("Permanent expansion is shown by tape and rule",
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_common_tape_can_not_tell_five_per_cent_and_asks_for_a_retest_that_says_so()
    {
        var record = (Log() with { Tape = Tape(0.01, withinMillimetres: 0.5) }).Judge();
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Assert.Contains("can't tell 5 %, so permanent expansion is not shown", Say(record), StringComparison.Ordinal);
        Assert.Contains("with a burette", Say(record), StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_beyond_doubt_is_rejected()
    {
        var record = (Log() with { Tape = Tape(0.12) }).Judge();
        Assert.Equal(ProofVerdict.Reject, record.Verdict);
        Assert.Contains("the laminate has cracked or crept", Say(record), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_read_after_the_proof_is_not_shown()
    {
        var tape = Tape(0.01);
        var record = (Log() with { Tape = tape with { Lengths = [tape.Lengths[0] with { After = null }] } }).Judge();
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Assert.Contains("weren't all read after the vessel was depressurised", Say(record), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, 4, "Trapped air is not shown")]
    [InlineData(true, 30, "of trapped air; 12.5 mL is the limit")]
    [InlineData(true, 12.4, "so it is not shown that the vessel was bled")]
    public void Trapped_air_has_to_be_shown(bool measured, double air, string says)
    {
        var tape = Tape(0, air: air);
        var record = (Log() with { Tape = measured ? tape : tape with { WaterPumped = null } }).Judge();
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Assert.Contains(says, Say(record), StringComparison.Ordinal);
    }

    [Fact]
    public void Neither_tape_nor_burette_is_judged_as_before()
    {
        var record = Log().Judge();
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Assert.Contains("Permanent expansion can't be told: the log has no water in and out", Say(record), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(LeakPlace.FittingSeal, ProofVerdict.Retest, LeakAction.Reseal)]
    [InlineData(LeakPlace.Bond, ProofVerdict.Retest, LeakAction.Rebond)]
    [InlineData(LeakPlace.Wall, ProofVerdict.Reject, LeakAction.Retire)]
    [InlineData(LeakPlace.PumpLine, ProofVerdict.Accept, LeakAction.MendPumpLine)]
    public void The_place_of_a_leak_decides(LeakPlace place, ProofVerdict verdict, LeakAction action)
    {
        var drops = new DropsSeen(place, Frequency.FromCyclesPerMinute(6), 40.BarGauge());
        var record = (Log() with { Tape = Tape(0.01), Drops = [drops] }).Judge();
        Assert.Equal(verdict, record.Verdict);
        var leak = Assert.Single(record.Leaks);
        Assert.Equal(action, leak.Action);
        Assert.NotEmpty(leak.Reasons);
        Tolerance.Relative(0.3, leak.Seen.Flow.MillilitersPerMinute, 1e-9);
        Assert.Contains("0.3 mL/min", Say(record), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_stayed_dry_leads_to_nothing()
    {
        var record = (Log() with { Tape = Tape(0.01), Drops = [new(LeakPlace.Wall, Frequency.Zero, 40.BarGauge())] }).Judge();
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        Assert.Empty(record.Leaks);
    }

    [Fact]
    public void A_crack_at_working_pressure_is_looked_into_and_one_above_is_noted()
    {
        var low = (Log() with { Tape = Tape(0.01), Sounds = [new(SoundKind.Crack, 38.BarGauge())] }).Judge();
        Assert.Equal(ProofVerdict.Retest, low.Verdict);
        var high = (Log() with { Tape = Tape(0.01), Sounds = [new(SoundKind.Crack, 58.BarGauge()), new(SoundKind.Ticking, 30.BarGauge())] })
            .Judge();
        Assert.Equal(ProofVerdict.Accept, high.Verdict);
        Assert.Contains("A loud crack was heard at 58 bar gauge", Say(high), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_keeps_what_was_read_and_one_changed_reading_makes_another()
    {
        var readings = Log() with
        {
            Tape = Tape(0.01), Drops = [new(LeakPlace.PumpLine, Frequency.FromCyclesPerMinute(2), 40.BarGauge())],
            Sounds = [new(SoundKind.Ticking, 30.BarGauge())],
        };
        var record = readings.Judge();
        var again = ProofRecord.FromJson(record.ToJson());
        Assert.Equal(record.Fingerprint, again.Fingerprint);
        Assert.Equal(record.Verdict, again.Verdict);
        Assert.Equal(record.Findings, again.Findings);
        Assert.NotEqual(record.Fingerprint, (readings with { Sounds = [] }).Judge().Fingerprint);
        Assert.NotEqual(record.Fingerprint, (readings with { Tape = Tape(0.011) }).Judge().Fingerprint);
        var text = record.ToJson();
        Assert.Throws<FormatException>(() => ProofRecord.FromJson(text.Replace("\"Ticking\"", "\"Crack\"", StringComparison.Ordinal)));
        Assert.Throws<FormatException>(() => ProofRecord.FromJson(text.Replace("\"Ticking\"", "\"Song\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void Readings_out_of_range_are_refused_with_what_to_do()
    {
        var tape = Tape(0.01);
        var error = Assert.Throws<InvalidDesignException>(() => (Log() with
        {
            Tape = tape with { GirthWithin = 20.Millimetres(), Girths = [tape.Girths[0] with { AtProof = 300.Millimetres() }],
                Lengths = [] },
            Drops = [new((LeakPlace)9, Frequency.FromCyclesPerMinute(6), 40.BarGauge())],
        }).Judge());
        Assert.Contains("error of the girth tape is 20 mm", error.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("girth at station 1 at proof is 300 mm", error.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("No length was read", error.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("place of the drops is 9", error.Message, StringComparison.OrdinalIgnoreCase);
    }
}
