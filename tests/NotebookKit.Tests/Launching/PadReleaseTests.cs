using NotebookKit.Launching;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Launching;

public class PadReleaseTests
{
    private static readonly PadRelease Release = new()
    {
        Pressure = 60.BarGauge(), SealDiameter = 12.Millimetres(), Mass = 3.Kilograms(), Latches = 3, LatchRating = 2000.Newtons(),
        Pull = 400.Newtons(),
    };

    // 60 bar on 12 mm: 6e6 × π/4 × 1.44e-4 = 678.584 N; weight 29.42 N.
    [Fact]
    public void Loads_by_hand()
    {
        var result = Release.Run();
        Tolerance.Relative(678.5840132, result.SealedThrust.Newtons, 1e-9);
        Tolerance.Relative(2 * 678.5840132, result.OpenThrust.Newtons, 1e-9);
        Tolerance.Relative((1357.1680264 - 29.41995) / 2, result.WorstLatch.Newtons, 1e-9);
        Tolerance.Relative(0.3 * (678.5840132 - 29.41995), result.ReleaseForce.Newtons, 1e-9);
        Tolerance.Relative(Math.Sqrt(2 * 0.01 * 0.2 / (400 - 194.749219)), result.ReleaseTime!.Value.Seconds, 1e-6);
        Tolerance.Relative((1357.1680264 - 29.41995) / 3, result.FirstAcceleration.MetersPerSecondSquared, 1e-9);
        Assert.Empty(result.Findings);
    }

    // Friction 0.3 × 6e6 × π × 12 mm × 1 mm = 67.8584 N, a tenth of the thrust.
    [Fact]
    public void A_launch_tube_s_seal_takes_its_friction()
    {
        var result = (Release with { TubeStroke = 500.Millimetres() }).Run();
        Tolerance.Relative(67.85840132, result.TubeFriction.Newtons, 1e-9);
        Tolerance.Relative((678.5840132 - 67.85840132 - 29.41995) / 3, result.FirstAcceleration.MetersPerSecondSquared, 1e-9);
        Tolerance.Relative(Math.Sqrt(2 * 0.5 / result.FirstAcceleration.MetersPerSecondSquared), result.TubeTime!.Value.Seconds, 1e-12);
    }

    [Fact]
    public void What_does_not_hold_or_does_not_open_says_what_would_help()
    {
        Assert.Contains((Release with { LatchRating = 300.Newtons() }).Run().Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("use stronger latches", StringComparison.Ordinal));
        Assert.Contains((Release with { LatchRating = null }).Run().Findings, f => f.Message.Contains("isn't given",
            StringComparison.Ordinal));
        Assert.Contains((Release with { Pull = 100.Newtons() }).Run().Findings, f => f.Message.Contains("pull harder",
            StringComparison.Ordinal));
        Assert.Contains((Release with { Pressure = 0.2.BarGauge(), Mass = 20.Kilograms() }).Run().Findings,
            f => f.Message.Contains("doesn't start", StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(() => (Release with { Latches = 0 }).Run());
    }

    // The seal gone and the jet on: 1357.168 N less the weight, times 0.3.
    [Fact]
    public void A_pull_that_opens_the_latches_only_while_the_seal_holds_is_told()
    {
        var result = (Release with { Pull = 300.Newtons() }).Run();
        Tolerance.Relative(0.3 * (1357.1680264 - 29.41995), result.ReleaseForceOpen.Newtons, 1e-9);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("held with its jet running", StringComparison.Ordinal));
    }

    // Three feet 0.4 m apart: the line between two of them is 0.4/(2√3) = 0.11547 m from the middle, four leave 0.2 m.
    [Fact]
    public void Three_feet_hold_less_than_four_of_the_same_side()
    {
        StandingWind four = new() { Wind = 8.MetresPerSecond(), Diameter = 0.1.Metres(), Height = 1.5.Metres(), Mass = 2.Kilograms(),
            Base = 0.4.Metres(), DragCoefficient = 0.82 };
        var three = (four with { Feet = 3 }).Run();
        Tolerance.Relative(2 * 9.80665 * 0.115470054, three.Holding.NewtonMeters, 1e-8);
        Tolerance.Relative(0.57735027, three.Holding / four.Run().Holding, 1e-8);
        Tolerance.Relative(2, (four with { Feet = 3, HoldDown = three.HoldDownNeeded }).Run().Factor, 1e-9);
        Assert.Throws<InvalidDesignException>(() => (four with { Feet = 2 }).Run());
    }

    // Sustainer of 1.2 kg at 40 bar on 10 mm: 314.159 N. On the pad 302.39 N; at 200 m/s² 62.39 N less 240; coasting at 20 N of drag on
    // 2.5 kg.
    [Fact]
    public void The_stage_latch_on_the_pad_boosted_and_coasting()
    {
        StageJoint joint = new()
        {
            Sustainer = 40.BarGauge(), SealDiameter = 10.Millimetres(), SustainerMass = 1.2.Kilograms(), SpentStackMass = 2.5.Kilograms(),
            Boost = Acceleration.FromMetersPerSecondSquared(200), StackDrag = 20.Newtons(),
        };
        var result = joint.Run();
        Tolerance.Relative(314.1592654 - (1.2 * 9.80665), result.OnThePad.Newtons, 1e-9);
        Tolerance.Relative(314.1592654 - (1.2 * 209.80665), result.Boosted.Newtons, 1e-9);
        Tolerance.Relative(314.1592654 + (1.2 * 8), result.Coasting.Newtons, 1e-9);
        Tolerance.Relative(result.Coasting.Newtons, result.MostLatch.Newtons, 1e-12);
        // A head of 0.3 m of water at 209.8 m/s²: 0.63 bar.
        Tolerance.Relative(40 + 0.6294200, (joint with { WaterHeight = 0.3.Metres() }).Run().MostSeal.Bar, 1e-6);
        Assert.Contains((joint with { Boost = Acceleration.FromMetersPerSecondSquared(400) }).Run().Findings,
            f => f.Message.Contains("Let a spring keep it shut", StringComparison.Ordinal));
        Assert.Throws<InvalidDesignException>(() => (joint with { SpentStackMass = 1.Kilograms() }).Run());
    }

    [Fact]
    public void A_vehicle_that_would_tip_says_how_hard_to_hold_it()
    {
        StandingWind standing = new() { Wind = 8.MetresPerSecond(), Diameter = 70.Millimetres(), Height = 1.6.Metres(),
            Mass = 1.Kilograms(), Base = 0.3.Metres(), Fins = [] };
        var result = standing.Run();
        Assert.Contains(result.Findings, f => f.Message.Contains("widen the base", StringComparison.Ordinal));
        Tolerance.Relative(1, (standing with { Wind = result.TipsAt }).Run().Factor, 1e-9);
        Assert.Empty((standing with { HoldDown = result.HoldDownNeeded * 1.001 }).Run().Findings);
        Assert.Throws<InvalidDesignException>(() => (standing with { Base = Length.Zero }).Run());
        Assert.Contains((standing with { Fins = null }).Run().Findings,
            f => f.Message.Contains("wind on the fins isn't counted", StringComparison.Ordinal));
    }

    // Two plates of 100 cm² across 10 m/s of air of 1.225 kg/m³: 61.25 Pa × 1.17 × 0.02 m² = 1.43325 N, at 0.15 m.
    [Fact]
    public void Fins_add_the_drag_of_plates_at_their_height()
    {
        StandingWind bare = new() { Wind = 10.MetresPerSecond(), Diameter = 66.Millimetres(), Height = 1.6.Metres(), Mass = 3.Kilograms(),
            Base = 0.6.Metres(), HoldDown = 20.Newtons(), Fins = [] };
        var finned = bare with { Fins = [new(3, Area.FromSquareCentimeters(100), 0.15.Metres())] };
        var (without, with) = (bare.Run(), finned.Run());
        Tolerance.Relative(1.43325, with.Force.Newtons - without.Force.Newtons, 1e-9);
        Tolerance.Relative(1.43325, with.ForceOnFins.Newtons, 1e-9);
        Tolerance.Relative(1.43325 * 0.15, with.Tipping.NewtonMeters - without.Tipping.NewtonMeters, 1e-9);
        Assert.True(with.TipsAt < without.TipsAt);
        Tolerance.Relative(1, (finned with { Wind = with.TipsAt }).Run().Factor, 1e-9);
        Tolerance.Relative(2, (finned with { HoldDown = with.HoldDownNeeded }).Run().Factor, 1e-9);
        Assert.Throws<InvalidDesignException>(() => (finned with { Fins = [new(0, Area.Zero, 0.15.Metres())] }).Run());
    }

    // The largest sum of |sin| over the fins, by turning the wind through half a turn in ten thousand steps.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(8)]
    public void The_wind_sees_the_most_of_the_fins_that_any_direction_shows(int count)
    {
        var most = Enumerable.Range(0, 10_000).Max(i => Enumerable.Range(0, count).Sum(n =>
            Math.Abs(Math.Sin((Math.PI * i / 10_000) - (2 * Math.PI * n / count)))));
        Tolerance.Relative(most, new StandingFins(count, Area.FromSquareCentimeters(1), Length.Zero).Seen.SquareCentimeters, 1e-6);
    }
}
