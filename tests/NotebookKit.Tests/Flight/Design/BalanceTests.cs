using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Tests.Flight.Design;

public class BalanceTests
{
    // Two equal points 1 m apart: centre in the middle, I = 2 m (L/2)². By hand.
    [Fact]
    public void Two_points()
    {
        var balance = new MassBudget([new MassPart("a", 1.Kilograms(), 1.Metres()),
            new MassPart("b", 1.Kilograms(), 2.Metres())]).MassProperties();
        Tolerance.Relative(1.5, balance.CentreOfGravity.Meters, 1e-12);
        Tolerance.Relative(0.5, balance.PitchInertia.KilogramSquareMeters, 1e-12);
        Assert.Equal(0, balance.RollInertia.KilogramSquareMeters);
    }

    // A rod cut into n equal pieces weighs in as the whole rod: m L²/12 + m r²/2 for a thin tube.
    [Fact]
    public void A_tube_in_pieces_is_the_tube() => Gen.Int[1, 20].Sample(pieces =>
    {
        var parts = Enumerable.Range(0, pieces).Select(i => new MassPart($"piece {i}", (2.0 / pieces).Kilograms(),
            (1 + ((i + 0.5) / pieces)).Metres())
        {
            Extent = (1.0 / pieces).Metres(),
            Diameter = 0.1.Metres(),
        }).ToArray();
        var balance = new MassBudget(parts).MassProperties();
        Tolerance.Relative(2.0 / 12 + (2 * 0.0025 / 2), balance.PitchInertia.KilogramSquareMeters, 1e-9);
        Tolerance.Relative(2 * 0.0025, balance.RollInertia.KilogramSquareMeters, 1e-9);
    });

    [Fact]
    public void Weighing_a_part_replaces_its_estimate_and_narrows_the_spread()
    {
        var before = SampleAirframes.ThreeFins.MassBudget.MassProperties();
        var after = SampleAirframes.ThreeFins.MassBudget.Weighed("Nose and recovery", 371.Grams()).MassProperties();
        Tolerance.Relative(before.Mass.Grams + 21, after.Mass.Grams, 1e-12);
        Assert.True(after.MassSpread < before.MassSpread);
        Assert.True(after.WeighedShare > before.WeighedShare);
    }

    [Fact]
    public void Weighing_an_unknown_part_lists_the_parts()
    {
        var error = Assert.Throws<ArgumentException>(() => SampleAirframes.ThreeFins.MassBudget.Weighed("Wings", 1.Grams()));
        Assert.Contains("Nose and recovery, Vessel, Fins", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ledger_with_three_faults_says_all_three()
    {
        var error = Assert.Throws<InvalidDesignException>(() => new MassBudget(
            [new MassPart("a", 0.Grams(), 1.Metres()), new MassPart("b", 1.Grams(),
                90.Metres()) { Extent = (-1).Metres() }]).MassProperties());
        Assert.Equal(3, error.Findings.Count(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void An_empty_ledger_is_refused() => Assert.Throws<InvalidDesignException>(() => new MassBudget([]).MassProperties());

    // By hand: 56 mm bore, 1 l of water stands 406.7 mm high, its centre 203.4 mm above the nozzle end.
    [Fact]
    public void Water_stands_at_the_nozzle_end()
    {
        var tank = new WaterChamber(2.5.Litres(), 56.Millimetres(), 1.75.Metres());
        var water = tank.Contents(0.9982, 0);
        Tolerance.Relative(1.75 - (0.4060 / 2), water.CentreM, 1e-4);
        Tolerance.Relative(0.9982, tank.Water(40.Percent()).Kilograms, 1e-12);
        Tolerance.Relative(0.9982 * ((0.028 * 0.028 / 4) + (0.4060 * 0.4060 / 12)), water.PitchKgM2, 1e-4);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void A_water_fraction_outside_is_refused(double percent)
    {
        var error = Assert.Throws<OutOfRangeException>(() => new WaterChamber(2.5.Litres(), 56.Millimetres(),
            1.75.Metres()).Water(percent.Percent()));
        Assert.Contains("0 % to 100 %", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Mass_and_centre_add_up_with_the_load() => Gen.Select(Gen.Double[0, 2], Gen.Double[0, 0.2]).Sample((water, gas) =>
    {
        var frame = SampleAirframes.ThreeFins;
        var (dry, inside, all) = (frame.MassBudget.State(), frame.Chamber.Contents(water, gas), frame.StateWith(water, gas));
        Tolerance.Relative(dry.MassKg + inside.MassKg, all.MassKg, 1e-12);
        Tolerance.Relative((dry.MassKg * dry.CentreM) + (inside.MassKg * inside.CentreM), all.MassKg * all.CentreM, 1e-12);
        Assert.True(all.PitchKgM2 >= dry.PitchKgM2);
    });

    [Fact]
    public void Not_a_number_never_becomes_a_mass() =>
        Assert.ThrowsAny<ArgumentException>(() => new MassPart("a", double.NaN.Grams(), 1.Metres()));

    [Fact]
    public void Mass_reads_in_grams() => Assert.Contains(SampleAirframes.ThreeFins.MassBudget.MassProperties().Lines,
        l => l.Value == "1 140 g" || l.Value == "1140 g");
}
