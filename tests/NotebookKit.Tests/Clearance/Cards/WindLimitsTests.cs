using NotebookKit.Clearance;
using NotebookKit.Quantities;
using UnitsNet;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Cards;

public class WindLimitsTests
{
    private static readonly LaunchSite Small = Ground with { Field = FlyingField.Circle(250.Metres()),
        Wind = WindProfile.PowerLaw(3.MetresPerSecond(), 10.Metres()) };

    private static readonly Vehicle Light = TestVehicle with { DragEnd = DragEnd.Low };

    // The limit's own flight lands on the field; a little more wind carries it off.
    [Fact]
    public void The_drift_sets_the_limit_where_its_own_flights_leave_the_field()
    {
        var limits = TestVehicle.WindLimits(Small);
        Assert.Equal("drift against the field", limits.SetBy);
        Assert.True(limits.Limit < limits.RailExit);
        Assert.True(LandsInside(limits.Limit, Small));
        Assert.False(LandsInside(limits.Limit * 1.03, Small));
    }

    [Fact]
    public void On_a_wide_field_the_rail_sets_it()
    {
        var limits = TestVehicle.WindLimits(Small with { Field = FlyingField.Circle(5000.Metres()) });
        Assert.Equal("speed off the rail", limits.SetBy);
        Assert.Null(limits.Drift);
    }

    [Fact]
    public void Weak_gear_sets_it_or_allows_none()
    {
        var wide = Small with { Field = FlyingField.Circle(5000.Metres()) };
        Assert.Equal("opening load against the recovery gear", TestVehicle.WindLimits(wide, Gear(TestVehicle, 45)).SetBy);
        Assert.Equal(0, TestVehicle.WindLimits(wide, Gear(TestVehicle, 2)).Limit.MetersPerSecond);
    }

    [Fact]
    public void A_smaller_field_never_allows_more_wind()
    {
        var limits = new[] { 100.0, 150, 200, 300, 500, 1000 }.Select(r => TestVehicle.WindLimits(Small
            with { Field = FlyingField.Circle(r.Metres()) }).Limit.MetersPerSecond).ToList();
        Assert.Equal(limits.Order(), limits);
    }

    // A field that reaches far in the planned direction only: the wind may come from elsewhere.
    [Fact]
    public void A_field_of_corners_is_tried_from_eight_sides()
    {
        var strip = FlyingField.Outline(new(-60.Metres(), -60.Metres()), new(2000.Metres(), -60.Metres()), new(2000.Metres(), 60.Metres()),
            new(-60.Metres(), 60.Metres()));
        var limits = TestVehicle.WindLimits(Small with { Field = strip });
        Assert.True(limits.Limit < TestVehicle.WindLimits(Small with { Field = FlyingField.Circle(60.Metres()) }).Limit * 1.5);
    }

    private static bool LandsInside(Speed atRail, LaunchSite site)
    {
        var unit = Light.Fly(site).Figures.RailWind;
        var figures = Light.Fly(site with { Wind = WindProfile.PowerLaw(3.MetresPerSecond() * (atRail / unit), 10.Metres()) }).Figures;
        return site.Field!.Contains(figures.LandingEast, figures.LandingNorth);
    }
}
