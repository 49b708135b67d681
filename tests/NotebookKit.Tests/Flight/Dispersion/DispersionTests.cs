using CsCheck;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Dispersion;

public class DispersionTests
{
    private static readonly Vehicle Trainer = SampleVehicles.Trainer;

    private static readonly LaunchSite Site = SampleVehicles.Breezy
        with { Ceiling = 215.Metres(), Field = FlyingField.Circle(230.Metres()) };

    private static readonly Spread Usual = new();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void One_thread_or_many_give_the_same_answer(bool sixDegrees)
    {
        var one = Trainer.Disperse(Site, Usual, 24, 11, sixDegrees, threads: 1);
        var many = Trainer.Disperse(Site, Usual, 24, 11, sixDegrees, threads: 7);
        AssertSame(one, many);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(16)]
    public void Shards_in_any_order_and_through_JSON_merge_to_the_very_same_result(int of)
    {
        var whole = Trainer.Disperse(Site, Usual, 50, 5);
        var shards = Enumerable.Range(1, of).Select(n => Trainer.DisperseShard(Site, Usual, 50, 5, n, of))
            .Select(s => DispersionShard.FromJson(s.ToJson())).Reverse().ToArray();
        Assert.Equal(50, shards.Sum(s => s.Count));
        AssertSame(whole, DispersionResult.Merge(shards));
    }

    [Fact]
    public void The_first_flights_of_a_longer_dispersion_are_those_of_a_shorter_one()
    {
        var few = Trainer.Disperse(Site, Usual, 10, 3);
        var more = Trainer.Disperse(Site, Usual, 20, 3);
        for (var i = 0; i < 10; i++) Assert.Equal(few.Apogee[i], more.Apogee[i]);
        Assert.NotEqual(few.Apogee[0], Trainer.Disperse(Site, Usual, 10, 4).Apogee[0]);
    }

    [Fact]
    public void Shards_that_are_missing_twice_there_or_of_another_dispersion_are_refused()
    {
        DispersionShard Shard(int number, ulong seed = 5, Spread? spread = null)
            => Trainer.DisperseShard(Site, spread ?? Usual, 12, seed, number, 3);
        Assert.Contains("flights 4 to 7 are missing", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1),
            Shard(3)])).Message, StringComparison.Ordinal);
        Assert.Contains("flights 8 to 11 are missing", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1),
            Shard(2)])).Message, StringComparison.Ordinal);
        Assert.Contains("there twice", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1), Shard(2), Shard(2),
            Shard(3)])).Message, StringComparison.Ordinal);
        Assert.Contains("another dispersion", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1), Shard(2, 6),
            Shard(3)])).Message, StringComparison.Ordinal);
        var other = Usual with { Thrust = 3.Percent() };
        Assert.Contains("another dispersion", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1),
            Shard(2, spread: other), Shard(3)])).Message, StringComparison.Ordinal);
        Assert.Contains("shard 2/3", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1), Shard(3)])).Message,
            StringComparison.Ordinal);
        var half = Trainer.DisperseShard(Site, Usual, 12, 5, 1, 2);
        Assert.Contains("split in 3 and in 2", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1), half])).Message,
            StringComparison.Ordinal);
        var low = Trainer.DisperseShard(Site with { Ceiling = 150.Metres() }, Usual, 12, 5, 2, 3);
        Assert.Contains("another dispersion", Assert.Throws<ArgumentException>(() => DispersionResult.Merge([Shard(1), low,
            Shard(3)])).Message, StringComparison.Ordinal);
        var cut = Shard(1).ToJson();
        Assert.Contains("cut short", Assert.Throws<FormatException>(() => DispersionShard.FromJson(cut[..cut.LastIndexOf(',')]
            + "]}")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => DispersionResult.Merge([]));
        Assert.Throws<FormatException>(() => DispersionShard.FromJson("{\"Rows\":[1,2]}"));
        Assert.Throws<FormatException>(() => DispersionShard.FromJson("not at all"));
    }

    [Fact]
    public void Where_nothing_varies_every_flight_is_the_nominal_one()
    {
        var result = Trainer.Disperse(Site, Spread.None, 5, 1);
        var nominal = Trainer.Fly(Site);
        Assert.All(result.Apogee.Values, h => Tolerance.Relative(nominal.Apogee.Meters, h, 1e-4));
        Assert.All(result.East.Values, x => Tolerance.Relative(nominal.Figures.LandingEast.Meters, x, 1e-3));
        Assert.Empty(result.OnApogee);
        Assert.Equal(0, result.Landings!.Major.Meters, 9);
    }

    [Fact]
    public void It_tells_scatter_chances_and_what_matters()
    {
        var result = Trainer.Disperse(Site, Usual, 400, 2);
        Assert.Equal(ResultStatus.Completed, result.Status);
        Assert.Equal(0, result.Failed);
        var scatter = result.Landings!;
        Assert.True(scatter.Major > scatter.Minor);
        Assert.InRange(scatter.Inside(50.Percent()), 150, 260);
        Assert.InRange(scatter.Inside(99.Percent()), 380, 400);
        Assert.InRange(result.AboveCeiling!.Share.Percent, 1, 60);
        Assert.True(result.AboveCeiling.Low < result.AboveCeiling.Share && result.AboveCeiling.Share < result.AboveCeiling.High);
        // Wind speed carries the landing, drag and thrust the height; cant has no part in three degrees of freedom.
        Assert.Equal("Wind speed", result.OnLanding[0].Input);
        Assert.True(result.OnLanding[0].Correlation > 0.7);
        Assert.Contains(result.OnApogee.Take(3), s => s.Input == "Drag" && s.Correlation < 0);
        Tolerance.Absolute(100, result.OnApogee.Sum(s => s.Share.Percent), 1e-9);
        Assert.NotEmpty(result.Lines);
        Assert.Contains(result.Findings, f => f.Message.Contains("standard deviations are known within", StringComparison.Ordinal));
    }

    [Fact]
    public void Gusts_of_its_own_shake_every_flight()
    {
        var spread = Spread.None with { Gusts = new DrydenTurbulence(6.MetresPerSecond()) };
        var result = Trainer.Disperse(SampleVehicles.Breezy, spread, 6, 9);
        Assert.Equal(6, result.East.Values.Distinct().Count());
    }

    [Fact]
    public void It_can_be_stopped_and_tells_how_far_it_is()
    {
        using var stop = new CancellationTokenSource();
        var told = new Told(stop, 30);
        Assert.ThrowsAny<OperationCanceledException>(() => Trainer.Disperse(Site, Usual, 100_000, 1, progress: told, threads: 1,
            cancellation: stop.Token));
        Assert.InRange(told.Last, 30, 99_999);
    }

    [Fact]
    public void Flights_that_have_no_answer_are_counted_and_said()
    {
        // So short of pressure that the rail holds some of them.
        var vehicle = Trainer with { Charge = Trainer.Charge with { Pressure = 7.5.BarGauge(), WaterFraction = 10.Percent() } };
        var site = SampleVehicles.Calm with { Rail = new(10.Metres()) };
        var spread = Spread.None with { Pressure = 20.Percent() };
        var result = vehicle.Disperse(site, spread, 60, 1);
        Assert.InRange(result.Failed, 1, 59);
        Assert.Contains(result.Findings, f => f.Message.Contains("have no answer", StringComparison.Ordinal));
        Assert.Equal(60 - result.Failed, result.Landings!.Count);
    }

    [Fact]
    public void What_can_not_vary_so_is_refused_all_at_once()
    {
        var spread = new Spread { Pressure = 50.Percent(), Timer = 20.Seconds(), RailTilt = 30.Degrees() };
        var refused = Assert.Throws<InvalidDesignException>(() => Trainer.Disperse(Site, spread, 1, 1, threads: 0));
        Assert.Equal(5, refused.Findings.Count(f => f.Severity == FindingSeverity.Error));
    }

    [Theory]
    [InlineData(10, 3)]
    [InlineData(7, 7)]
    [InlineData(1000, 16)]
    public void Shards_cover_every_flight_once(int flights, int of)
    {
        var next = 0;
        for (var n = 1; n <= of; n++)
        {
            var (first, count) = DispersionShard.Range(flights, n, of);
            Assert.Equal(next, first);
            Assert.True(count > 0);
            next += count;
        }

        Assert.Equal(flights, next);
    }

    [Theory]
    [InlineData("3/16", 3, 16)]
    [InlineData(" 1 / 1 ", 1, 1)]
    public void A_shard_is_read_as_people_write_it(string text, int number, int of)
        => Assert.Equal(new(number, of), ShardNumber.Parse(text));

    [Theory]
    [InlineData("0/3")]
    [InlineData("4/3")]
    [InlineData("3")]
    [InlineData("-1/3")]
    [InlineData("99999999/99999999")]
    [InlineData("")]
    public void What_is_no_shard_is_refused(string text) => Assert.Contains("3/16",
        Assert.Throws<FormatException>(() => ShardNumber.Parse(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_batch_makes_every_dispersion_fly_its_part_and_takes_flown_ones_in_place_of_flying()
    {
        var whole = Trainer.Disperse(Site, Usual, 10, 5);
        var kept = new List<DispersionShard>();
        for (var n = 1; n <= 3; n++)
        {
            var part = Trainer.Disperse(Site, Usual, 10, 5, batch: new Batch(new(n, 3), kept, null));
            Assert.Equal(new(n, 3), part.Part);
            Assert.Contains(part.Findings, f => f.Message.Contains($"this is shard {n}/3", StringComparison.Ordinal));
            Assert.Equal(kept[^1].Count, part.Apogee.Count);
        }

        AssertSame(whole, DispersionResult.Merge(kept));
        var joined = DispersionShard.Join(kept);
        AssertSame(whole, Trainer.Disperse(Site, Usual, 10, 5, batch: new Batch(ShardNumber.Whole, [], joined)));
        Assert.Equal(ShardNumber.Whole, Trainer.Disperse(Site, Usual, 10, 5).Part);
    }

    [Fact]
    public void A_batch_that_hands_over_other_flights_is_refused()
    {
        var part = Trainer.DisperseShard(Site, Usual, 10, 5, 1, 2);
        var other = Trainer.DisperseShard(Site, Usual, 10, 6, 1, 1);
        foreach (var wrong in new[] { part, other })
        {
            var batch = new Careless(wrong);
            Assert.Contains("Merge the shards again", Assert.Throws<InvalidOperationException>(() => Trainer.Disperse(Site, Usual, 10, 5,
                batch: batch)).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Whatever_happens_to_a_file_it_is_read_or_refused_with_a_sentence()
    {
        var json = Trainer.DisperseShard(Site with { Field = FlyingField.Outline(new(0.Metres(), 0.Metres()), new(9.Metres(), 0.Metres()),
            new(0.Metres(), 9.Metres())) }, Usual, 4, 5, 1, 2).ToJson();
        Gen.Select(Gen.Int[0, json.Length - 1], Gen.Int[0, 40], Gen.Char["0-9{}[],:\".ex"]).Sample((at, cut, letter) =>
        {
            var hurt = json[..at] + letter + json[Math.Min(json.Length, at + cut)..];
            try
            {
                Assert.InRange(DispersionShard.FromJson(hurt).Count, 1, 1_000_000);
            }
            catch (FormatException refused)
            {
                Assert.Contains("shard", refused.Message, StringComparison.Ordinal);
            }
        }, iter: 3000);
    }

    [Fact]
    public void The_scatter_of_known_points_has_their_covariance()
    {
        // Four points of a cross, longer to the north-east.
        var scatter = new LandingScatter([3, -3, 1, -1], [3, -3, -1, 1]);
        Tolerance.Relative(20 / 3.0, scatter.Covariance.EastEast.SquareMeters, 1e-12);
        Tolerance.Relative(16 / 3.0, scatter.Covariance.EastNorth.SquareMeters, 1e-12);
        Tolerance.Relative(45, scatter.Bearing.Degrees, 1e-12);
        Tolerance.Relative(Math.Sqrt(12), scatter.Major.Meters, 1e-12);
        Tolerance.Relative(Math.Sqrt(4 / 3.0), scatter.Minor.Meters, 1e-12);
        var (east, north) = scatter.Ellipse(90.Percent());
        Tolerance.Relative(2.145966 * Math.Sqrt(12), Math.Sqrt((east[0] * east[0]) + (north[0] * north[0])), 1e-6);
        Tolerance.Relative(1, east[0] / north[0], 1e-12);
        Assert.Equal(4, scatter.Inside(90.Percent()));
        // All four lie at 1.2247 deviations, where the ellipse holds 1 - exp(-3/4) = 52.8 %.
        Assert.Equal(0, scatter.Inside(52.7.Percent()));
        Assert.Equal(4, scatter.Inside(52.8.Percent()));
    }

    [Fact]
    public void What_never_happened_may_still_happen_three_times_in_as_many()
    {
        // Clopper and Pearson at 95 %: none of n leaves up to 1 - 0.05^(1/n); 5 of 10 leaves 0.187 to 0.813 (their tables, unverified).
        var none = Likelihood.Of(0, 1000);
        Tolerance.Relative(1 - Math.Pow(0.05, 1.0 / 1000), none.High.DecimalFractions, 1e-9);
        Assert.Equal(0, none.Low.Percent);
        Assert.Equal(100, Likelihood.Of(50, 50).High.Percent);
        var half = Likelihood.Of(5, 10);
        Tolerance.Absolute(0.187, half.Low.DecimalFractions, 5e-4);
        Tolerance.Absolute(0.813, half.High.DecimalFractions, 5e-4);
        Assert.Throws<OutOfRangeException>(() => Likelihood.Of(11, 10));
    }

    [Fact]
    public void Ranks_share_ties()
    {
        Assert.Equal([1.5, 0, 1.5, 3], RankCorrelation.Ranks([7, 1, 7, 9]));
        Assert.Equal(1, RankCorrelation.Of([0, 1, 2, 3], [0, 1, 2, 3]), 12);
        Assert.Equal(-1, RankCorrelation.Of([0, 1, 2, 3], [3, 2, 1, 0]), 12);
        Assert.Equal(0, RankCorrelation.Of([0, 1, 2, 3], [1.5, 1.5, 1.5, 1.5]));
    }

    internal static void AssertSame(DispersionResult first, DispersionResult second)
    {
        Assert.Equal(first.Plan.Fingerprint, second.Plan.Fingerprint);
        foreach (var (a, b) in first.Inputs.Concat(first.Outputs).Zip(second.Inputs.Concat(second.Outputs)))
        {
            Assert.Equal(a.Name, b.Name);
            for (var i = 0; i < a.Count; i++) Assert.Equal(BitConverter.DoubleToInt64Bits(a[i]), BitConverter.DoubleToInt64Bits(b[i]));
        }

        Assert.Equal(first.Lines, second.Lines);
        Assert.Equal(first.Findings, second.Findings);
        Assert.Equal(first.OnApogee, second.OnApogee);
        Assert.Equal(first.Landings, second.Landings);
    }

    private sealed class Batch(ShardNumber part, List<DispersionShard> kept, DispersionShard? flown) : IDispersionBatch
    {
        public ShardNumber Part => part;

        public void Keep(DispersionShard shard) => kept.Add(shard);

        public DispersionShard? Find(DispersionPlan plan) => flown is not null && flown.Plan.Fingerprint == plan.Fingerprint ? flown : null;
    }

    private sealed class Careless(DispersionShard wrong) : IDispersionBatch
    {
        public ShardNumber Part => ShardNumber.Whole;

        public void Keep(DispersionShard shard)
        {
        }

        public DispersionShard? Find(DispersionPlan plan) => wrong;
    }

    private sealed class Told(CancellationTokenSource stop, int after) : IProgress<int>
    {
        public int Last { get; private set; }

        public void Report(int value)
        {
            Last = value;
            if (value >= after) stop.Cancel();
        }
    }
}
