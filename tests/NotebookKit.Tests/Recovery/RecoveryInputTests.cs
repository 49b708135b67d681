using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Tests.Recovery;

public class RecoveryInputTests
{
    [Fact]
    public void A_sellers_drag_coefficient_is_refused_with_the_reason()
    {
        var error = Assert.Throws<InvalidDesignException>(() =>
            new Canopy(CanopyType.FlatCircular, 1.Metres()) { DragCoefficient = 2.2 }.Descend(1.Kilograms()));
        Assert.Contains("nominal (constructed) area", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_is_wrong_is_said_at_once() =>
        Assert.Equal(3, new Canopy(CanopyType.Cross, 0.Metres()) { Count = 9, DragCoefficient = 5 }.Validate().Count);

    [Fact]
    public void A_fast_opening_is_refused_beyond_the_published_range() =>
        Assert.Throws<OutOfRangeException>(() => new Canopy(CanopyType.Cross, 1.Metres()).Open(1.Kilograms(), 200.MetresPerSecond()));

    [Fact]
    public void A_hard_landing_is_warned_of() =>
        Assert.Contains(new Canopy(CanopyType.Cross, 0.3.Metres()).Descend(1.5.Kilograms()).Findings,
            f => f.Severity == FindingSeverity.Warning);

    [Fact]
    public void Every_result_carries_the_cautions_of_a_flight() =>
        Assert.Equal(Cautions.ForFlight, new Canopy(CanopyType.Cross, 1.Metres()).Descend(1.5.Kilograms()).Cautions);

    [Fact]
    public void The_size_for_a_speed_comes_down_at_that_speed() =>
        Gen.Select(Gen.Enum<CanopyType>(), Gen.Double[0.2, 20], Gen.Double[3, 12]).Sample((type, mass, speed) =>
        {
            var canopy = Canopy.ForSpeed(type, mass.Kilograms(), speed.MetresPerSecond());
            return Math.Abs(canopy.Descend(mass.Kilograms()).Fastest.MetersPerSecond - speed) < 1e-9 * speed;
        });

    [Fact]
    public void Finite_mass_never_exceeds_infinite_mass_and_grows_with_mass() =>
        Gen.Select(Gen.Double[0.01, 100], Gen.Double[0.5, 3]).Sample((a, j) =>
            OpeningForce.FiniteMassFactor(a, j) is > 0 and < 1
                && OpeningForce.FiniteMassFactor(a * 1.1, j) > OpeningForce.FiniteMassFactor(a, j));

    [Fact]
    public void Pins_that_drag_would_shear_and_a_weak_charge_are_warned_of()
    {
        var pins = new ShearPins(2, 1.5.Millimetres(), Pressure.FromMegapascals(60));
        var result = pins.Check(56.Millimetres(), 250.Newtons(), 180.Newtons(), GaugePressure.FromBar(0.1));
        Assert.Equal(2, result.Findings.Count(f => f.Severity == FindingSeverity.Warning));
    }

    [Theory]
    [InlineData(0, 2, 60)]
    [InlineData(3, 0.1, 60)]
    [InlineData(3, 2, 1)]
    public void Pins_out_of_range_are_refused(int count, double millimetres, double megapascals) =>
        Assert.Throws<InvalidDesignException>(() => new ShearPins(count, millimetres.Millimetres(),
            Pressure.FromMegapascals(megapascals)).Check(56.Millimetres(), 500.Newtons()));
}
