using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Tests.Published.Recovery;

public class CanopyTests
{
    private const string Knacke = "T. W. Knacke, Parachute Recovery Systems Design Manual, NWC TP 6575, 1991, tables 5-1 and 5-6; worked "
        + "independently";

    private static Canopy OneMetre { get; } = new(CanopyType.FlatCircular, 1.Metres()) { DragCoefficient = 0.75 };

    [Theory]
    [PublishedCase("F50", Knacke)]
    [InlineData(CanopyType.FlatCircular, 0.75, 0.80)]
    [InlineData(CanopyType.Conical, 0.75, 0.90)]
    [InlineData(CanopyType.Hemispherical, 0.62, 0.77)]
    [InlineData(CanopyType.Cross, 0.60, 0.85)]
    [InlineData(CanopyType.ExtendedSkirt, 0.78, 0.87)]
    [InlineData(CanopyType.Annular, 0.85, 0.95)]
    [InlineData(CanopyType.FlatRibbon, 0.45, 0.50)]
    [InlineData(CanopyType.ConicalRibbon, 0.50, 0.55)]
    [InlineData(CanopyType.RingSlot, 0.56, 0.65)]
    [InlineData(CanopyType.Ringsail, 0.75, 0.90)]
    [InlineData(CanopyType.DiscGapBand, 0.52, 0.58)]
    public void Drag_coefficients_of_the_handbook(CanopyType type, double low, double high)
    {
        Assert.Equal(low, CanopyData.For(type).DragLow);
        Assert.Equal(high, CanopyData.For(type).DragHigh);
    }

    [Fact]
    [PublishedCase("F53", "Weight equals drag; worked independently")]
    public void Descent_speed()
    {
        Tolerance.Relative(6.385242, OneMetre.Descend(1.5.Kilograms()).Fastest.MetersPerSecond, 1e-6);
        var hemisphere = new Canopy(CanopyType.Hemispherical, 0.9.Metres()).Descend(1.2.Kilograms());
        Tolerance.Relative(6.979344, hemisphere.Fastest.MetersPerSecond, 1e-6);
        Tolerance.Relative(6.262750, hemisphere.Slowest.MetersPerSecond, 1e-6);
    }

    [Theory]
    [PublishedCase("F54", "E. Pflanz, 1942, closed form; checked against a numerical maximum")]
    [InlineData(0.02, 0.126189, 0.064952, 0.042911)]
    [InlineData(0.05, 0.171265, 0.102698, 0.079042)]
    [InlineData(0.1, 0.215780, 0.145237, 0.125471)]
    [InlineData(0.2, 0.271866, 0.205396, 0.199174)]
    [InlineData(0.5, 0.368979, 0.324760, 0.366881)]
    [InlineData(1, 0.464884, 0.459279, 0.562500)]
    [InlineData(2, 0.585717, 0.640000, 0.734694)]
    [InlineData(5, 0.778547, 0.826446, 0.878906)]
    [InlineData(10, 0.878906, 0.907029, 0.936524)]
    [InlineData(100, 0.986799, 0.990075, 0.993367)]
    public void Finite_mass_factor(double parameter, double half, double one, double two)
    {
        Tolerance.Absolute(half, OpeningForce.FiniteMassFactor(parameter, 0.5), 6e-7);
        Tolerance.Absolute(one, OpeningForce.FiniteMassFactor(parameter, 1), 6e-7);
        Tolerance.Absolute(two, OpeningForce.FiniteMassFactor(parameter, 2), 6e-7);
    }

    [Theory]
    [PublishedCase("F51", Knacke)]
    [InlineData(CanopyType.FlatCircular, 1.7)]
    [InlineData(CanopyType.Conical, 1.8)]
    [InlineData(CanopyType.Hemispherical, 1.6)]
    [InlineData(CanopyType.ExtendedSkirt, 1.4)]
    [InlineData(CanopyType.Annular, 1.4)]
    [InlineData(CanopyType.Cross, 1.2)]
    [InlineData(CanopyType.FlatRibbon, 1.05)]
    [InlineData(CanopyType.RingSlot, 1.05)]
    [InlineData(CanopyType.Ringsail, 1.1)]
    [InlineData(CanopyType.DiscGapBand, 1.3)]
    public void Opening_factors_of_the_handbook_at_infinite_mass(CanopyType type, double factor)
    {
        var opening = new Canopy(type, 1.Metres()).Open(1.5.Kilograms(), 25.MetresPerSecond());
        Tolerance.Relative(factor, opening.InfiniteMass / opening.SteadyDrag, 1e-12);
    }

    [Theory]
    [PublishedCase("F52", Knacke)]
    [InlineData(CanopyType.FlatCircular, 8)]
    [InlineData(CanopyType.Cross, 11.7)]
    [InlineData(CanopyType.ExtendedSkirt, 10)]
    [InlineData(CanopyType.FlatRibbon, 14)]
    [InlineData(CanopyType.RingSlot, 14)]
    [InlineData(CanopyType.Ringsail, 7)]
    public void Fill_times_of_the_handbook(CanopyType type, double diameters) =>
        Tolerance.Relative(diameters * 1.2 / 60, new Canopy(type, 1.2.Metres()).Open(1.5.Kilograms(),
            60.MetresPerSecond()).FillTime.Seconds, 1e-12);

    [Fact]
    [PublishedCase("F51", Knacke)]
    [PublishedCase("F52", Knacke)]
    [PublishedCase("F54", "E. Pflanz, 1942, closed form; worked independently")]
    public void Opening_load()
    {
        var opening = OneMetre.Open(1.5.Kilograms(), 25.MetresPerSecond());
        Tolerance.Relative(0.32, opening.FillTime.Seconds, 1e-9);
        Tolerance.Relative(0.519690, opening.BallisticParameter, 2e-6);
        Tolerance.Relative(225.495, opening.SteadyDrag.Newtons, 3e-6);
        Tolerance.Relative(383.342, opening.InfiniteMass.Newtons, 2e-6);
        Tolerance.Relative(144.309, opening.FiniteMass.Newtons, 5e-6);
        Tolerance.Relative(9.81, opening.FiniteMass / opening.Weight, 1e-3);
        Tolerance.Relative(126.921, OneMetre.Open(1.5.Kilograms(), 25.MetresPerSecond(), growthExponent: 1).FiniteMass.Newtons, 5e-6);
        Assert.Contains(opening.Findings, f => f.Message.Contains("extrapolation", StringComparison.Ordinal));
    }

    // Fill time goes with 1/v, so A and X₁ don't depend on speed and the load goes with its square.
    [Fact]
    [PublishedCase("F54", "E. Pflanz, 1942")]
    public void Twice_the_speed_makes_four_times_the_load()
    {
        var (slow, fast) = (OneMetre.Open(1.5.Kilograms(), 15.MetresPerSecond()), OneMetre.Open(1.5.Kilograms(), 30.MetresPerSecond()));
        Tolerance.Relative(slow.BallisticParameter, fast.BallisticParameter, 1e-12);
        Tolerance.Relative(4 * slow.FiniteMass.Newtons, fast.FiniteMass.Newtons, 1e-12);
    }

    [Theory]
    [PublishedCase("F55", "Two free masses on a linear spring; worked independently")]
    [InlineData(1500, 189.7367)]
    [InlineData(30000, 848.528)]
    public void Shock_cord(double stiffness, double peak)
    {
        var cord = new ShockCord(ForcePerLength.FromNewtonsPerMeter(stiffness), 1000.Newtons());
        var result = cord.Snatch(0.3.Kilograms(), 1.2.Kilograms(), 10.MetresPerSecond());
        Tolerance.Relative(0.24, result.ReducedMass.Kilograms, 1e-9);
        Tolerance.Relative(12, result.Energy.Joules, 1e-9);
        Tolerance.Relative(peak, result.Peak.Newtons, 1e-6);
        if (stiffness > 1500) return;
        Tolerance.Relative(0.126491, result.Stretch.Meters, 5e-6);
        Tolerance.Relative(0.019869, result.TimeToPeak.Seconds, 3e-5);
    }

    [Fact]
    [PublishedCase("F56", "Direct shear; worked independently")]
    public void Shear_pins()
    {
        var pins = new ShearPins(3, 2.Millimetres(), Pressure.FromMegapascals(60));
        Tolerance.Relative(188.496, pins.Each.Newtons, 3e-6);
        Tolerance.Relative(565.487, pins.All.Newtons, 1e-6);
        var result = pins.Check(56.Millimetres(), 900.Newtons());
        Tolerance.Relative(229.592, result.PressureToShear.Pascals / 1000, 3e-6);
    }

    // 360 lb at 22 ft/s under 35 ft nominal: drag coefficient 0.65 (derived), speed fair within 15 %. Its skirt is extended.
    [Fact]
    [PublishedCase("N50", "Personnel canopy of 35 ft nominal diameter, 22 ft/s at 360 lb")]
    public void A_personnel_canopy_comes_down_as_measured()
    {
        var canopy = new Canopy(CanopyType.ExtendedSkirt, 35.Feet());
        var descent = canopy.Descend(360.Pounds());
        Tolerance.Relative(22 * 0.3048, descent.Fastest.MetersPerSecond, 0.15);
    }

    // The canopy that replaced it is a cross with 28 % more cloth (35 ft nominal, so 39.6 ft): 19 ft/s at 385 lb, 10 % on speed. The
    // handbook's band of drag for a cross must hold it, with nothing fitted.
    [Fact]
    [PublishedCase("N51", "Personnel canopy with 28 % more surface than the one of 35 ft, programme statement: about 19 ft/s at 385 lb")]
    public void The_canopy_that_replaced_it_comes_down_as_stated()
    {
        var canopy = new Canopy(CanopyType.Cross, 35.Feet() * Math.Sqrt(1.28));
        var descent = canopy.Descend(385.Pounds());
        var middle = (descent.Slowest.MetersPerSecond + descent.Fastest.MetersPerSecond) / 2;
        Tolerance.Relative(19 * 0.3048, middle, 0.10);
        Assert.InRange(19 * 0.3048, descent.Slowest.MetersPerSecond, descent.Fastest.MetersPerSecond);
        // 83 m² of drag area, derived from weight and speed.
        var area = Canopy.ForSpeed(CanopyType.Cross, 385.Pounds(), Speed.FromFeetPerSecond(19));
        Tolerance.Relative(83, area.NominalArea.SquareMeters * CanopyData.For(CanopyType.Cross).DragLow, 0.01);
    }

    // 1.6 on the area that its maker states, in drop and tunnel tests of a canopy of 3.5 ft: an annular canopy's coefficient on its mouth's
    // area, a single source. On the nominal area that the library asks for it is refused, and the handbook's annular canopy of the stated
    // size comes down faster than the measured one: the size comes out too large, not too small.
    [Fact]
    [PublishedCase("N54", "Student team's drop and wind-tunnel tests of a 3.5 ft canopy, drag coefficient about 1.6 on its stated area; "
        + "annular canopies only")]
    public void A_makers_coefficient_is_on_another_area_and_the_handbook_errs_on_the_fast_side()
    {
        var stated = 3.5.Feet();
        var refused = Assert.Throws<InvalidDesignException>(() => new Canopy(CanopyType.Annular,
            stated) { DragCoefficient = 1.6 }.Descend(1.Kilograms()));
        Assert.Contains("another area", refused.Message, StringComparison.Ordinal);
        var measured = Math.Sqrt(2 * 9.80665 / (1.225 * 1.6 * Math.PI / 4 * stated.Meters * stated.Meters));
        var handbook = new Canopy(CanopyType.Annular, stated).Descend(1.Kilograms());
        Assert.True(handbook.Slowest.MetersPerSecond > measured);
        Assert.InRange(handbook.Fastest.MetersPerSecond / measured, 1.2, 1.45);
        // Its drag area is that of a handbook canopy with 1.3 times its stated diameter in cloth.
        Tolerance.Relative(measured, new Canopy(CanopyType.Annular,
            stated * Math.Sqrt(1.6 / 0.9)).Descend(1.Kilograms()).Fastest.MetersPerSecond, 0.05);
    }

    // Three ringsails 22 mph, two 25 mph under the same capsule: drag ratio 1.29, with mph rounded to whole numbers 1.19 to 1.41.
    [Fact]
    [PublishedCase("N52", "Crew capsule under three and two ringsails, Smithsonian National Air and Space Museum; 22 and 25 mph")]
    public void A_cluster_loses_drag()
    {
        var capsule = 5500.Kilograms() / 20;
        var three = new Canopy(CanopyType.Ringsail, 5.Metres()) { Count = 3 };
        var two = three with { Count = 2 };
        var ratio = Math.Pow(two.Descend(capsule).Fastest / three.Descend(capsule).Fastest, 2);
        Assert.InRange(ratio, 1.19, 1.41);
    }

    // Small flat circular and 10 % extended-skirt models in a tunnel: near 0.85 above 6 m/s, fair within 10 %.
    [Theory]
    [PublishedCase("N53", "Vu et al., JST 31 (2021) 67, small canopies in a tunnel, drag coefficient near 0.85")]
    [InlineData(CanopyType.FlatCircular)]
    [InlineData(CanopyType.ExtendedSkirt)]
    public void Small_canopies_drag_as_measured(CanopyType type) => Tolerance.Relative(0.85, CanopyData.For(type).DragHigh, 0.10);
}
