using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Records;

/// <summary>Logs made here by formulae of their own, with what is in them known: the reading has to find it again.</summary>
public partial class ProofRecordTests
{
    private const double VesselMillilitres = 2500, WallGrowth = 30, Ambient = 1.01325, BulkBar = 21_790;

    private static readonly Proof Planned = new()
    {
        Vessel = "Curlew",
        Volume = 2.5.Litres(),
        WorkingPressure = 40.BarGauge(),
        Wall = new WallExpansion(1.2.Percent(), 60.BarGauge(),
            Source.CommonPractice("test")) { ThermalExpansion = CoefficientOfThermalExpansion.FromPerKelvin(5e-6) },
        TrappedAir = 4.Millilitres(),
    };

    private sealed record Truth
    {
        public double LeakPerMinute { get; init; }

        public double Permanent { get; init; }

        public double TrappedAir { get; init; } = 4;

        public double Cooling { get; init; }

        public (double At, double Millilitres)? Drop { get; init; }

        public double Highest { get; init; } = 60.3;

        public double Growth { get; init; } = WallGrowth;

        public double? BurstsAt { get; init; }

        public int LeakHold { get; init; } = 600;

        public double NoiseBar { get; init; } = 0.03;
    }

    private static ProofReadings Log(Truth truth)
    {
        var noise = new SeededSamples(7);
        List<double> time = [], pressure = [], temperature = [], expansion = [];
        double bar = 0, lost = 0, top = 0, warmth = 0, second = 0;
        (double Bar, int Hold)[] steps = [(15, 60), (30, 60), (45, 60), (54, 60), (truth.Highest, 120), (40, truth.LeakHold), (0, 30)];
        var burst = false;
        void Row()
        {
            top = Math.Max(top, bar);
            var pumped = VesselMillilitres * bar / BulkBar + truth.Growth * bar / 60 + truth.TrappedAir * (1 - Ambient / (Ambient + bar))
                + truth.Permanent * Math.Max(0, (top - 30) / (truth.Highest - 30)) + lost;
            var i = time.Count;
            time.Add(second++);
            pressure.Add(bar + truth.NoiseBar * noise.Normal(i, 0));
            temperature.Add(18 + warmth + 0.01 * noise.Normal(i, 1));
            expansion.Add(pumped + 0.03 * noise.Normal(i, 2));
        }

        for (var i = 0; i < 15; i++) Row();
        foreach (var (target, hold) in steps)
        {
            while (Math.Abs(target - bar) > 1e-9)
            {
                bar = target > bar ? Math.Min(target, bar + 0.8) : Math.Max(target, bar - 1.5);
                if (truth.BurstsAt is { } limit && bar >= limit) burst = true;
                if (burst) bar = 0;
                Row();
                if (burst) break;
            }

            if (burst) break;
            for (var i = 0; i < hold; i++)
            {
                if (bar > 1)
                {
                    var loss = truth.LeakPerMinute / 60;
                    if (truth.Drop is { } drop && Math.Abs(second - drop.At) < 0.5) loss += drop.Millilitres;
                    lost += loss;
                    var compliance = VesselMillilitres / BulkBar + WallGrowth / 60
                        + truth.TrappedAir * Ambient / ((Ambient + bar) * (Ambient + bar));
                    bar -= loss / compliance;
                    if (Math.Abs(target - 40) < 1e-9 && second > 500)
                    {
                        // (β − 3 α) V over the compliance, as a cooling bottle has it.
                        bar -= truth.Cooling / truth.LeakHold * (2.07e-4 - 15e-6) * VesselMillilitres / compliance;
                        warmth -= truth.Cooling / truth.LeakHold;
                    }
                }

                Row();
            }
        }

        if (burst)
            for (var i = 0; i < 20; i++)
                Row();
        return new()
        {
            Proof = Planned,
            Time = new("Time", "s", time),
            Pressure = new("Pressure", "bar gauge", pressure),
            Temperature = new("Temperature", "°C", temperature),
            Expansion = new("Water pumped in", "mL", expansion),
        };
    }

    [Fact]
    public void Accepts_a_sound_vessel_and_says_what_it_held()
    {
        var record = Log(new() { Permanent = 0.3 }).Judge();
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        Tolerance.Absolute(60.1, record.HeldAtLeast!.Value.Bar, 0.1);
        Assert.Equal(40.BarGauge(), record.WorkingPressureShown);
        Tolerance.Absolute(30.3, record.Expansion!.Total.Milliliters, 0.3);
        Tolerance.Absolute(0.3, record.Expansion.Permanent.Milliliters, 0.05);
        Tolerance.Absolute(4, record.Expansion.TrappedAir.Milliliters, 1.0);
        Assert.All(record.Holds, h => Assert.True(h!.LongEnough));
        Assert.Contains("one survived proof", record.Findings[0].Message, StringComparison.Ordinal);
        Assert.Equal("Proof record, Curlew: accept", record.Title);
        Assert.True(record.Working.Steps.Count >= 3);
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(0.02)]
    public void Finds_the_leak_again_and_lets_a_small_one_pass(double millilitresPerMinute)
    {
        var record = Log(new() { LeakPerMinute = millilitresPerMinute }).Judge();
        Tolerance.Absolute(millilitresPerMinute, record.LeakRate!.Value.MillilitersPerMinute,
            record.LeakRateVisible!.Value.MillilitersPerMinute);
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        Tolerance.Absolute(0, record.Expansion!.Permanent.Milliliters, 0.05);
    }

    [Fact]
    public void Sends_a_leak_past_the_limit_back_to_its_fittings()
    {
        var record = Log(new() { LeakPerMinute = 0.06 }).Judge();
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Assert.Contains(record.Findings, f => f.Message.Contains("Seal the fittings", StringComparison.Ordinal));
    }

    [Fact]
    public void Says_a_hold_that_is_missing_once()
    {
        var record = Log(new() { BurstsAt = 20 }).Judge();
        Assert.Equal([1], record.Lines.Where(l => l.Name.StartsWith("Step ", StringComparison.Ordinal)).Select(l => l.Name[5] - '0'));
        Assert.Single(record.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message == "The log doesn't show the planned holds at 60 bar gauge (2 min) and 40 bar gauge (10 min).");
        Assert.Single(record.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message == "The log doesn't show the planned holds at 30 bar gauge (60 s), 45 bar gauge (60 s) and 54 bar gauge (60 s).");
    }

    // 0.3 K of cooling is 0.3 × 0.78 bar: by the bare gauge nearly 0.6 % in ten minutes.
    [Fact]
    public void A_cooling_bottle_is_no_leak_when_its_temperature_is_logged()
    {
        var log = Log(new() { Cooling = 0.6 });
        var record = log.Judge();
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        Tolerance.Absolute(0, record.FallInTenMinutes!.Value.Percent, 0.1);
        var blind = (log with { Temperature = null }).Judge();
        Assert.True(blind.FallInTenMinutes!.Value.Percent > 1);
        Assert.Equal(ProofVerdict.Retest, blind.Verdict);
        Assert.Contains(blind.Findings, f => f.Message.Contains("No temperature was logged", StringComparison.Ordinal));
    }

    [Fact]
    public void Notes_a_sudden_drop_and_counts_it_as_growth()
    {
        var record = Log(new() { Drop = (430, 0.25) }).Judge();
        var drop = Assert.Single(record.Holds.OfType<HoldReading>().SelectMany(h => h.Drops));
        Tolerance.Absolute(430, drop.At.Seconds, 1);
        Tolerance.Absolute(0.25, drop.Volume.Milliliters, 0.05);
        Tolerance.Absolute(0.25, record.Expansion!.Permanent.Milliliters, 0.05);
        Assert.Contains(record.Findings, f => f.Message.Contains("fell suddenly", StringComparison.Ordinal));
    }

    [Fact]
    public void Rejects_a_permanent_expansion_past_the_limit()
    {
        var record = Log(new() { Permanent = 1.9 }).Judge();
        Assert.Equal(ProofVerdict.Reject, record.Verdict);
        Tolerance.Absolute(100 * 1.9 / 31.9, record.Expansion!.PermanentShare.Percent, 0.3);
        Assert.Contains(record.Findings, f => f.Message.Contains("cut up", StringComparison.Ordinal));
    }

    // 40 mL let out through a fitting in the last hold: more than the vessel grew.
    [Fact]
    public void Rejects_where_more_stays_than_the_vessel_grew()
    {
        var log = Log(new());
        var shifted = log.Expansion!.Values.Select((v, i) => log.Time[i] > 900 ? v + 40 : v).ToArray();
        var record = (log with { Expansion = log.Expansion with { Values = shifted } }).Judge();
        Assert.True(record.Expansion!.Permanent > record.Expansion.Total);
        Assert.Equal(ProofVerdict.Reject, record.Verdict);
    }

    // A burette that gives back 3 mL too much may hide 3 mL that stayed.
    [Theory]
    [InlineData(3, ProofVerdict.Retest)]
    [InlineData(40, ProofVerdict.Retest)]
    [InlineData(0.6, ProofVerdict.Accept)]
    public void Repeats_where_the_burette_gives_back_more_than_went_in(double millilitres, ProofVerdict verdict)
    {
        var log = Log(new());
        var shifted = log.Expansion!.Values.Select((v, i) => log.Time[i] > 900 ? v - millilitres : v).ToArray();
        var record = (log with { Expansion = log.Expansion with { Values = shifted } }).Judge();
        Assert.Equal(verdict, record.Verdict);
        Assert.Contains(record.Findings, f => f.Message.Contains("came out than went in", StringComparison.Ordinal));
    }

    [Fact]
    public void Rejects_a_vessel_that_burst_and_says_at_what_pressure()
    {
        var record = Log(new() { BurstsAt = 51 }).Judge();
        Assert.Equal(ProofVerdict.Reject, record.Verdict);
        Assert.Contains(record.Findings, f => f.Message.Contains("let go at that pressure", StringComparison.Ordinal));
        Assert.Null(record.HeldAtLeast);
    }

    [Fact]
    public void Repeats_a_proof_that_stopped_short_or_was_held_too_briefly()
    {
        var low = Log(new() { Highest = 57 }).Judge();
        Assert.Equal(ProofVerdict.Retest, low.Verdict);
        Assert.Contains(low.Findings, f => f.Message.Contains("A lower proof proves a lower working pressure", StringComparison.Ordinal));
        var brief = Log(new() { LeakHold = 200 }).Judge();
        Assert.Equal(ProofVerdict.Retest, brief.Verdict);
        Assert.Contains(brief.Findings, f => f.Message.Contains("10 min were planned", StringComparison.Ordinal));
    }

    // Held a bar past proof, the water is squeezed by half a millilitre more: none of it is growth of the wall.
    [Fact]
    public void Growth_is_given_at_proof_whatever_was_held() =>
        Tolerance.Absolute(30, Log(new() { Highest = 61.2 }).Judge().Expansion!.Total.Milliliters, 0.25);

    // 58.5 bar lies inside the band of a hold at 60 and within 2.5 % of it: it proves 38.9, not 40.
    [Fact]
    public void A_hold_short_of_proof_proves_only_what_it_held()
    {
        var record = Log(new() { Highest = 58.8 }).Judge();
        Assert.True(record.ProofHold!.LongEnough);
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Tolerance.Absolute(58.6 / 1.5, record.WorkingPressureShown!.Value.Bar, 0.1);
        Assert.Contains(record.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("it shows 39.1 bar gauge", StringComparison.Ordinal));
    }

    // One stroke to 60.3, then a hold at 59.2: the highest reading says nothing of what was held.
    [Fact]
    public void The_lowest_reading_of_the_hold_counts_not_the_highest()
    {
        var log = Log(new() { Highest = 59.2 });
        var bar = log.Pressure.Values.ToArray();
        bar[Array.FindIndex(bar, b => b > 58.9) + 5] = 60.3;
        var record = (log with { Pressure = log.Pressure with { Values = bar } }).Judge();
        Assert.Equal(60.3, record.MaximumPressure.Bar, 6);
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Tolerance.Absolute(59.0 / 1.5, record.WorkingPressureShown!.Value.Bar, 0.1);
    }

    [Fact]
    public void A_hold_within_the_gauge_error_is_accepted_for_what_it_proves()
    {
        var record = (Log(new() { Highest = 60, NoiseBar = 0.005 }) with { GaugeError = 0.3.Bar() }).Judge();
        Assert.Equal(ProofVerdict.Accept, record.Verdict);
        Tolerance.Absolute(59.7 / 1.5, record.WorkingPressureShown!.Value.Bar, 0.02);
        Assert.Contains("has shown a working pressure of 39.8 bar gauge", record.Findings[0].Message, StringComparison.Ordinal);
        Assert.Contains(record.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("not 40 bar gauge", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1.25, ProofVerdict.Accept)]
    [InlineData(1.35, ProofVerdict.Retest)]
    [InlineData(2, ProofVerdict.Retest)]
    public void Repeats_where_the_wall_grew_a_third_more_than_it_should(double times, ProofVerdict verdict)
    {
        var record = Log(new() { Growth = times * WallGrowth }).Judge();
        Assert.Equal(verdict, record.Verdict);
        Assert.Equal(verdict == ProofVerdict.Retest, record.Findings.Any(f => f.Message.Contains("softer than the layup",
            StringComparison.Ordinal)));
    }

    [Fact]
    public void Repeats_with_too_much_trapped_air()
    {
        var record = Log(new() { TrappedAir = 25 }).Judge();
        Assert.Equal(ProofVerdict.Retest, record.Verdict);
        Tolerance.Relative(25, record.Expansion!.TrappedAir.Milliliters, 0.15);
    }

    [Fact]
    public void Repeats_when_the_gauge_is_too_coarse_to_see_the_limit() =>
        Assert.Contains((Log(new() { NoiseBar = 2 }) with { GaugeError = 2.Bar() }).Judge().Findings,
            f => f.Message.Contains("can't tell", StringComparison.Ordinal));

    [Fact]
    public void Repeats_when_expansion_was_not_logged() =>
        Assert.Contains((Log(new()) with { Expansion = null }).Judge().Findings,
            f => f.Message.Contains("half of what a proof", StringComparison.Ordinal));

    [Fact]
    public void Refuses_columns_in_the_wrong_unit_of_the_wrong_length_or_with_holes()
    {
        var log = Log(new());
        var bad = log with
        {
            Pressure = log.Pressure with { Unit = "psi" },
            Temperature = log.Temperature! with { Values = [1, 2] },
            Expansion = log.Expansion! with { Values = [double.NaN, .. log.Expansion.Values.Skip(1)] },
            Time = log.Time with { Values = [5, .. log.Time.Values.Skip(1)] },
        };
        var error = Assert.Throws<InvalidDesignException>(() => bad.Judge());
        string[] wanted = ["must be in bar gauge", "one to one", "aren't numbers", "don't rise"];
        Assert.All(wanted, w => Assert.Contains(w, error.Message, StringComparison.Ordinal));
    }
}
