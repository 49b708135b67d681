using NotebookKit.Clearance.Learned;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Tests.Vessels;
using UnitsNet;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Learned;

public class TestsToLandingTests
{
    private static readonly VesselEvidence All = Samples.Twins(Built), First = new([.. All.Tests.Take(1)]);

    private static readonly TestsToLanding Chain = TestVehicle.FromTests(Built, Ground, First, All);

    // By hand: rate, fill one bar below, fly. Nothing of the chain's own may come between.
    [Fact]
    public void Each_side_is_what_rating_and_flight_give_by_themselves()
    {
        var below = TestVehicle.Charge.Chamber.RatedPressure - TestVehicle.Charge.Pressure;
        foreach (var (side, tests) in new[] { (Chain.Before!, First), (Chain.After!, All) })
        {
            var rating = Built.Rate(RuleSets.Club, null, tests);
            Assert.Equal(rating.WorkingPressure, side.Rating.WorkingPressure);
            Assert.Equal((rating.WorkingPressure - side.Fill).Pascals, below.Pascals, 1e-3);
            var filled = TestVehicle with
            {
                DragEnd = DragEnd.Low,
                Charge = TestVehicle.Charge with { Chamber = Built.ToChamber(rating), Pressure = side.Fill },
            };
            Assert.Equal(filled.Fly(Ground).Apogee, side.Apogee.High);
        }
    }

    [Fact]
    public void More_bursts_of_twins_raise_every_pressure_and_the_height()
    {
        string[] rise = ["Design burst", "Working pressure", "Proof pressure", "Fill pressure", "Apogee"];
        Assert.All(Chain.Figures.Where(f => rise.Contains(f.Name)), f => Assert.True(f.Change!.Value.Percent > 0, f.Name));
        Assert.True(Chain.After!.Apogee.Low < Chain.After.Apogee.High);
        Assert.True(Chain.After.Timer.Low < Chain.After.Timer.High);
        Assert.True(Chain.After.Drift.Low <= Chain.After.Drift.High);
    }

    [Fact]
    public void The_same_tests_move_nothing()
    {
        var still = TestVehicle.FromTests(Built, Ground, All, All);
        Assert.All(still.Figures, f => Assert.False(f.Moved));
        Assert.All(still.Lines, l => Assert.Equal("as before", l.Note));
    }

    [Fact]
    public void A_test_can_not_be_taken_back()
    {
        var refused = Assert.Throws<InvalidDesignException>(() => TestVehicle.FromTests(Built, Ground, All, First));
        Assert.Contains("add the new tests to the earlier ones", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_burst_without_the_part_that_failed_is_asked_for_it()
    {
        var unsaid = new VesselEvidence([.. All.Tests, new BurstTest(Built, "K-9", 150.BarGauge())]);
        var asked = Assert.Throws<InvalidDesignException>(() => TestVehicle.FromTests(Built, Ground, All, unsaid));
        Assert.Contains("K-9", asked.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fill_that_leaves_nothing_is_refused_with_its_range()
    {
        var far = TestVehicle.FromTests(Built, Ground, First, All, below: Pressure.FromBars(200));
        Assert.Null(far.After);
        Assert.Equal(ResultStatus.Failed, far.Status);
        Assert.Contains(far.Findings, f => f.Message.Contains("below the rating by the later tests", StringComparison.Ordinal));
        Assert.All(far.Figures, f => Assert.Equal("not rated", f.After));
    }

    [Fact]
    public void The_record_names_what_rests_on_tests_that_moved()
    {
        var (before, after) = (RecordOf(TestVehicle.FromTests(Built, Ground, First, First)), RecordOf(Chain));
        Assert.Contains(RecordComparison.Between(before, after).RestsOnChanged,
            r => r.Contains("requirement fill within the rating: rests on changed evidence, tests of twins", StringComparison.Ordinal));
        Assert.Equal(2, after.RestingOn("tests of twins").Count);
        Assert.Empty(after.RestingOn("tests of somebody else"));
    }

    [Fact]
    public void The_fingerprint_tells_every_test_apart()
    {
        var other = All.Tests[0] with { Pressure = All.Tests[0].Pressure + Pressure.FromBars(1) };
        var moved = new VesselEvidence([.. All.Tests.Skip(1), other]);
        Assert.NotEqual(Chain.Fingerprint, TestVehicle.FromTests(Built, Ground, VesselEvidence.Of(), moved).Fingerprint);
        var thicker = Built.ForwardEnd with { Closure = Built.ForwardEnd.Closure with { Wall = Built.ForwardEnd.Closure.Wall * 1.5 } };
        var ends = new VesselEvidence([.. All.Tests.Skip(1), All.Tests[0] with { Vessel = Built with { ForwardEnd = thicker } }]);
        Assert.NotEqual(Chain.Fingerprint, TestVehicle.FromTests(Built, Ground, VesselEvidence.Of(), ends).Fingerprint);
        Assert.Equal(Chain.Fingerprint, TestVehicle.FromTests(Built, Ground, All, All).Fingerprint);
    }

    private static DesignRecord RecordOf(TestsToLanding chain)
    {
        var design = new DesignRecordBuilder("Trainer");
        chain.Into(design, "tests of twins");
        var fits = design.Require("fill within the rating", chain.After!.Fill, Limit.AtMost, chain.After.Rating.WorkingPressure, "Always.",
            restsOn: ["tests of twins"]);
        design.Decide("layup", "as built", ["another"], "It holds.", fits);
        return design.Build();
    }
}
