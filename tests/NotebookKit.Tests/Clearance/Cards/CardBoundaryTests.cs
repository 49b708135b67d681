using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Flight;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Cards;

/// <summary>Where a card turns from flying to not flying, tried on either side.</summary>
public class CardBoundaryTests
{
    // A warm wall allows less than rating and proof; a hundredth past that is refused, of the plan and of the fill's own peak.
    [Theory]
    [InlineData(0.99, false)]
    [InlineData(1.01, true)]
    public void A_fill_a_hundredth_above_what_the_vessel_may_hold_is_refused(double share, bool isRefused)
    {
        var status = InService(TheProved).StatusOn(FlightDay, LifeLimits.Club);
        var allowed = FillAllowance.Of(TheProved, status, 35.Celsius(), NearlyDry).Pressure;
        Assert.InRange(allowed.Bar, 10, 33);
        var vehicle = Charged(SampleVehicles.Trainer, TheProved, allowed.Bar * share);
        var card = vehicle.Card(Ground, Whole with { VesselTemperature = 35.Celsius(), Fill = FillOf(vehicle) });
        Assert.Equal(isRefused, Says(card.Findings, "the fill pressure is"));
        Assert.Equal(isRefused, Says(card.Findings, "the fill reaches"));
    }

    // A valve that isn't shut lets the vessel have the regulator's pressure: 5 % over what it may be filled to, and no more.
    [Theory]
    [InlineData(1.049, false)]
    [InlineData(1.051, true)]
    public void A_regulator_over_a_twentieth_above_the_vessel_is_refused(double share, bool isRefused)
    {
        var fill = (Whole.Fill!.Fill with { Supply = TheProved.Allowed * share }).Run();
        Assert.Equal(isRefused, Says(CardOf(Whole with { Fill = fill, Pad = new() }).Findings, "the regulator is set to"));
    }

    // A mass at the tail takes the worst row's margin to the wanted one, by moments. Below one calibre nothing is flown.
    [Theory]
    [InlineData(0.7, true)]
    [InlineData(1.6, false)]
    public void Less_than_a_calibre_of_margin_is_refused(double calibres, bool isRefused)
    {
        var (bare, trainer) = (TestVehicle.Stability(), TestVehicle);
        var row = bare.MinimumRow;
        var target = bare.CentreOfPressure[row] - 70 * calibres;
        var kilograms = bare.Mass[row] * (target - bare.CentreOfGravity[row]) / (1590 - target);
        var heavy = trainer with { Parts = trainer.Parts.With(new MassPart("tail", kilograms.Kilograms(), 1590.Millimetres())) };
        Assert.InRange(heavy.Stability().MinimumMargin, calibres - 0.5, calibres + 1e-9);
        CardJudgement card = new(new Dictionary<string, string>());
        StageJudge.Margin(card, heavy, heavy.Stability(), "");
        Assert.Equal(isRefused, Says(card.Findings, "the minimum static margin is"));
    }

    // 3 L with 33 % of water at 40 bar: 4.101325 MPa × 2.01 L / 0.4 × (1 − (1.01325/41.01325)^(2/7)) = 13450.1 J of air, and
    // (4 MPa)² × 0.99 L × 4.589e-10/Pa / 2 = 3.634 J of water (Kell 1975). The floor of 30 m is the crew's; spectators stand at twice that,
    // or at a quarter of the apogee.
    [Fact]
    public void The_stand_off_counts_air_and_water_and_keeps_spectators_at_twice_the_crew_s()
    {
        var standOff = SampleVehicles.Trainer.StandOff(SampleVehicles.Calm);
        Tolerance.Relative(13453.7, standOff.Blast.Energy.Joules, 1e-4);
        Tolerance.Absolute(30, standOff.MinimumCrew.Meters, 1e-9);
        Tolerance.Relative(Math.Max(60, standOff.Apogee.Meters / 4), standOff.MinimumSpectators.Meters, 1e-9);
        var weak = SampleVehicles.Trainer with { Charge = SampleVehicles.Trainer.Charge with { Pressure = 12.BarGauge() } };
        var low = weak.StandOff(SampleVehicles.Calm);
        Assert.True(low.Apogee.Meters < 240);
        Tolerance.Absolute(60, low.MinimumSpectators.Meters, 1e-9);
        Assert.Throws<OutOfRangeException>(() => low.Keeping(29.9.Metres(), 60.Metres()));
        Assert.Throws<OutOfRangeException>(() => low.Keeping(30.Metres(), 59.9.Metres()));
        var both = SampleVehicles.TwoStages.StandOff(SampleVehicles.Calm).Blast.Energy;
        Tolerance.Relative(13453.7 + SampleVehicles.Booster.StandOff(SampleVehicles.Calm).Blast.Energy.Joules, both.Joules, 1e-4);
    }

    // The gear is as strong as its anchor here: a fiftieth below the opening's load is refused, a fiftieth above it isn't.
    [Theory]
    [InlineData(0.98, true)]
    [InlineData(1.02, false)]
    public void Gear_below_the_opening_load_is_refused(double share, bool isRefused)
    {
        const string Words = "the canopy opens with ";
        var weak = Gear(TestVehicle, 1);
        var said = CardOf(Whole with { Recovery = weak }).Findings.Single(f => f.Message.StartsWith(Words, StringComparison.Ordinal));
        var load = double.Parse(said.Message[Words.Length..].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        var gear = Gear(TestVehicle, share * load / weak.AllowedLoad.Newtons);
        Tolerance.Relative(share * load, gear.AllowedLoad.Newtons, 1e-9);
        Assert.Equal(isRefused, Says(CardOf(Whole with { Recovery = gear }).Findings, Words));
    }

    private static bool Says(IEnumerable<Finding> findings, string sentence) => findings.Any(f => f.Severity == FindingSeverity.Error
        && f.Message.Contains(sentence, StringComparison.Ordinal));
}
