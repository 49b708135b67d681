using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Restrictors;

public class PortPlaceTests
{
    private static readonly Vent Abort = new()
    {
        Chamber = new Chamber(2.5.Litres(), 66.Millimetres(), 45.BarGauge()), Restrictor = new Orifice(1.Millimetres(), 0.8),
        From = 40.BarGauge(), WaterFraction = 32.Percent(), Gas = Gas.Air with { Real = null },
    };

    private static PortPlace Nozzle => new(0.Percent(), VesselStance.Standing);

    [Fact]
    public void A_standing_vessel_gives_up_the_water_above_the_port()
    {
        Assert.Equal(32, Nozzle.WaterAbove(32.Percent()).Percent, 9);
        Assert.Equal(12, new PortPlace(20.Percent(), VesselStance.Standing).WaterAbove(32.Percent()).Percent, 9);
        Assert.Equal(PortPosition.AboveWater, new PortPlace(100.Percent(), VesselStance.Standing).Position(32.Percent()));
    }

    // Area of a circular segment up to a quarter of the diameter: (acos(1/2) − (1/2) sin(acos(1/2)))/π = 1/3 − √3/(4π) = 0.195501.
    [Theory]
    [InlineData(50, 32, 0)]
    [InlineData(50, 60, 10)]
    [InlineData(0, 32, 32)]
    [InlineData(25, 32, 12.4498891)]
    public void A_lying_vessel_gives_up_the_water_above_the_port_by_the_area_of_a_segment(double across, double water, double leaves) =>
        Assert.Equal(leaves, new PortPlace(0.Percent(), VesselStance.Lying) { AcrossBore = across.Percent() }
            .WaterAbove(water.Percent()).Percent, 6);

    [Fact]
    public void A_vent_at_the_nozzle_by_its_place_is_one_under_water_and_above_it_when_the_vessel_lies()
    {
        var standing = (Abort with { Place = Nozzle }).Run();
        Tolerance.Relative((Abort with { Port = PortPosition.UnderWater }).Run().Slowest.Seconds, standing.Slowest.Seconds, 1e-12);
        var lying = (Abort with { Place = Nozzle with { Stance = VesselStance.Lying } }).Run();
        Assert.Null(lying.WaterFirst);
        Tolerance.Relative((Abort with { Port = PortPosition.AboveWater }).Run().Slowest.Seconds, lying.Slowest.Seconds, 1e-12);
    }

    [Fact]
    public void Water_below_the_port_stays_and_leaves_the_gas_less_room()
    {
        var part = (Abort with { Place = new(20.Percent(), VesselStance.Standing) }).Run();
        Tolerance.Relative(0.12 * 2.5, part.WaterFirst!.Drain.WaterOut.Liters, 1e-9);
        Assert.InRange(part.Slowest.Seconds, (Abort with { Port = PortPosition.AboveWater }).Run().Slowest.Seconds,
            (Abort with { Port = PortPosition.UnderWater }).Run().Slowest.Seconds);
    }

    // A vent in the forward end is quick while the vehicle stands; after a fall the water may lie at it.
    [Fact]
    public void The_worst_state_has_all_the_water_at_the_vent_wherever_the_vent_lies()
    {
        var above = (Abort with { Port = PortPosition.AboveWater }).Run();
        var under = (Abort with { Port = PortPosition.UnderWater }).Run();
        Tolerance.Relative(under.Slowest.Seconds, above.WorstState.Seconds, 1e-12);
        Tolerance.Relative(under.Slowest.Seconds, under.WorstState.Seconds, 1e-12);
        Assert.True(above.Slowest < above.WorstState);
        Assert.Contains(above.Lines, l => l.Name == "Longest in any state");
        Tolerance.Relative(2 * under.Slowest.Seconds, double.Parse(above.Lines.First(l => l.Name == "Minimum wait").Value.Split(' ')[0],
            System.Globalization.CultureInfo.InvariantCulture), 5e-3);
        var dry = (Abort with { WaterFraction = Ratio.Zero }).Run();
        Assert.Equal(dry.Slowest, dry.WorstState);
    }

    // The two-and-a-half litres that the club vented by hand through 1 mm: some 86 s, where gas alone takes 46 to 51 s.
    [Fact]
    public void The_old_vessel_of_the_club_vents_in_some_86_seconds()
    {
        var result = (Abort with { Place = Nozzle, Gas = Gas.Air }).Run();
        Assert.InRange(86, result.Fastest.Seconds, result.Slowest.Seconds);
        Assert.InRange(result.Curves.Min(c => c.Time[^1]), 46, 51);
    }

    [Fact]
    public void A_place_that_says_otherwise_than_the_port_is_refused()
    {
        var refused = Assert.Throws<InvalidDesignException>(() => (Abort with { Place = Nozzle, Port = PortPosition.AboveWater }).Run());
        Assert.Contains("measure where the vent lies", refused.Message, StringComparison.Ordinal);
        Assert.Contains("height of the port", Assert.Throws<InvalidDesignException>(() => (Abort
            with { Place = new(120.Percent(), VesselStance.Standing) }).Run()).Message, StringComparison.Ordinal);
        Assert.Contains("stance of the vessel", Assert.Throws<InvalidDesignException>(() => (Abort
            with { Place = Nozzle with { Stance = (VesselStance)4 } }).Run()).Message, StringComparison.Ordinal);
    }
}
