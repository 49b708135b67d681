using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Flight;
using UnitsNet;
using static NotebookKit.Tests.Clearance.CardFixture;

namespace NotebookKit.Tests.Clearance.Cards;

/// <summary>Ways to get a yes without evidence. Each is refused with a sentence of its own.</summary>
public class CheatTests
{
    private static readonly Dictionary<string, (Func<FlightCard> Card, string Says)> OnTheCard = new()
    {
        // Nothing, or a piece, isn't there.
        ["nothing but a vehicle and a site"] = (() => CardOf(new()), "not shown: proved vessel"),
        ["no proved vessel"] = (() => CardOf(Whole with { Vessel = null }), "not shown: proved vessel"),
        ["no service record"] = (() => CardOf(Whole with { Service = null }), "not shown: service record"),
        ["no temperature"] = (() => CardOf(Whole with { VesselTemperature = null }), "not shown: temperature of the vessel"),
        ["no stand-off"] = (() => CardOf(Whole with { StandOff = null }), "not shown: stand-off"),
        ["no fill"] = (() => CardOf(Whole with { Fill = null }), "not shown: fill or its plan"),
        ["no fins judged"] = (() => CardOf(Whole with { Fins = null }), "not shown: fins judged"),
        ["an empty list of fins"] = (() => CardOf(Whole with { Fins = [] }), "not shown: fins judged"),
        ["no recovery gear"] = (() => CardOf(Whole with { Recovery = null }), "not shown: recovery gear"),
        ["no stability"] = (() => CardOf(Whole with { Stability = null }), "not shown: stability"),
        ["no scatter"] = (() => CardOf(Whole with { Scatter = null }), "not shown: scatter of landings"),
        ["no day"] = (() => CardOf(Whole with { Day = null }), "not shown: day of the flight"),
        ["no wind"] = (() => TestVehicle.Card(Ground with { Wind = WindProfile.NotGiven }, Whole), "not shown: wind"),
        ["no field"] = (() => TestVehicle.Card(Ground with { Field = null }, Whole), "not shown: field"),
        ["no ceiling"] = (() => TestVehicle.Card(Ground with { Ceiling = null }, Whole), "not shown: ceiling"),

        // The vessel isn't the one, or the pressure isn't.
        ["a hand-made chamber of 300 bar"] = (() => Stated(300, 60).Card(Ground, Whole), "stated by hand"),
        ["a hand-made chamber at the proved pressure"] = (() => Stated(TheProved.Allowed.Bar, 33).Card(Ground, Whole), "stated by hand"),
        ["a proved chamber with another pressure written in"] = (
            () => (TestVehicle with { Charge = TestVehicle.Charge
                with { Chamber = TheProved.Chamber with { RatedPressure = 60.BarGauge() }, Pressure = 55.BarGauge() } }).Card(Ground,
                Whole), "stated by hand"),
        ["a proved chamber with another volume written in"] = (
            () => (TestVehicle with { Charge = TestVehicle.Charge
                with { Chamber = TheProved.Chamber with { Volume = 4.Litres() } } }).Card(Ground, Whole), "stated by hand"),
        ["the prediction in place of the proof"] = (
            () => (TestVehicle with { Charge = TestVehicle.Charge with { Chamber = Built.ToChamber(Rated) } }).Card(Ground, Whole),
                "not proved"),
        ["the proof of a twin"] = (() => CardOf(Whole with { Vessel = Recorded(Rated, "T-2").ToProvedVessel(Rated) }),
            "Hand over the proof of the vessel that flies"),
        ["another record of the same vessel than the one in service"] = (
            () => On(Recorded(Rated, "T-1", new DateOnly(2026, 4, 12)).ToProvedVessel(Rated), Whole),
                "Hand over the last proof of the vessel"),
        ["a proof dated after the flight"] = (
            () => On(Recorded(Rated, "T-1", new DateOnly(2026, 6, 1)).ToProvedVessel(Rated), Whole), "after the day of the flight"),
        ["a fill above the proof"] = (() => On(LowProof, Whole with { Vessel = LowProof, Service = InService(LowProof) }),
            "which the proof with the resin at 15 °C sets"),
        // Heat, water and the resin.
        ["a black vessel at 70 °C in the sun"] = (() => CardOf(Whole with { VesselTemperature = InTheSun }),
            "the resin may be used up to 50 °C"),
        ["a wall warm enough to halve the fill"] = (() => CardOf(Whole with { VesselTemperature = 48.Celsius() }),
            "with the resin at 48 °C sets"),
        ["a resin without a glass temperature"] = (
            () => On(Of(CuredWarm with { GlassTemperature = null }),
                Whole with { Service = InService(Of(CuredWarm with { GlassTemperature = null })) }),
            "the resin's glass temperature isn't given: heat can't be judged"),
        ["a resin of the shelf above its wet glass temperature"] = (
            () => On(Of(OfTheShelf), Whole with { VesselTemperature = 47.Celsius(), ResinMoisture = null }),
                "above which the resin is rubber"),
        ["a water content that nobody measured"] = (
            () => CardOf(Whole with { ResinMoisture = Property.Typical(0.Percent(), 0, "dry") }),
                "the rating with the resin at 15 °C sets"),

        // The service record says no, or is another's.
        ["a service record of another serial"] = (
            () => CardOf(Whole with { Service = ServiceOf("Trainer vessel", "T-9", [.. Usual(TheProved), Sound(FlightDay)]) }),
                "Hand over both of one vessel"),
        ["a service record of another vessel"] = (
            () => CardOf(Whole with { Service = ServiceOf("Another vessel", "T-1", [.. Usual(TheProved), Sound(FlightDay)]) }),
                "Hand over both of one vessel"),
        ["a service record without a proof"] = (
            () => CardOf(Whole with { Service = ServiceOf("Trainer vessel", "T-1", Usual(TheProved)[0], Sound(FlightDay)) }),
                "the service record holds no proof"),
        ["a proof older than its interval"] = (() => CardOf(Whole with { Day = FlightDay.AddYears(2) }), "proof"),
        ["no inspection on the day"] = (() => CardOf(Whole with { Day = FlightDay.AddDays(1) }), "inspect"),
        ["a vessel that landed hard"] = (() => CardOf(Whole with {
            Service = InService(TheProved, new LandedHard { At = At(ProofDay.AddDays(3)) }) }), "landed hard"),
        ["a vessel that fell"] = (() => CardOf(Whole with { Service = InService(TheProved,
            new Dropped(1.Metres()) { At = At(ProofDay.AddDays(3)) }) }), "fell"),
        ["a vessel that was retired"] = (() => CardOf(Whole with {
            Service = InService(TheProved, new Retired("crack") { At = At(ProofDay.AddDays(3)) }) }), "retired"),
        ["a vessel that was hot"] = (
            () => CardOf(Whole with { Service = InService(TheProved,
                new Heated(65.Celsius(), 1.Hours()) { At = At(ProofDay.AddDays(3)) }) }), "65 °C"),
        ["limits of life that limit nothing"] = (
            () => CardOf(Whole with { Day = FlightDay.AddYears(2), Life = new LifeLimits("none", "everything") }), "proof"),

        // Results of something else.
        ["a stand-off of another fill"] = (() => CardOf(Whole
            with { StandOff = Charged(SampleVehicles.Trainer, TheProved, 20).StandOff(Ground) }), "Compute the stand-off for this fill"),
        ["a stand-off of another vehicle"] = (() => CardOf(Whole
            with { StandOff = (TestVehicle with { Name = "Another" }).StandOff(Ground) }), "computed for Another"),
        ["a fill to another pressure"] = (() => CardOf(Whole with { Fill = FillOf(Charged(SampleVehicles.Trainer, TheProved, 20)) }),
            "Plan the fill that is flown"),
        ["a fill of another chamber"] = (() => CardOf(Whole with { Fill = FillOf(Stated(40, 33)) }), "Plan the fill of this vessel"),
        ["fins of another vehicle"] = (() => CardOf(Whole with { Fins = [Judged(SampleVehicles.Booster)] }), "Judge the fins that fly"),
        ["fins whose factors were written in"] = (
            () => CardOf(Whole with { Fins = [SoftFins with { BondFactor = 99, SheetFactor = 99, IsSweptForward = false,
                Flutter = Whole.Fins![0].Flutter }] }), "the fins don't hold"),
        ["fins judged without a gust"] = (
            () => CardOf(Whole with { Fins = [TestVehicle.Body.FinStructure(Whole.Fins![0].Sheet, Whole.Fins[0].Bond, 80.MetresPerSecond(),
                1.MetresPerSecond())] }), "with at least that gust"),
        ["gear under another canopy"] = (
            () => CardOf(Whole with { Recovery = Gear(TestVehicle
                with { Canopy = TestVehicle.Canopy! with { NominalDiameter = 2.Metres() } }, 140) }), "Judge the gear that flies"),
        ["gear too weak for the opening"] = (() => CardOf(Whole with { Recovery = Gear(TestVehicle, 5) }), "Use stronger gear"),
        ["a margin with its number written in"] = (
            () => CardOf(Whole with { Stability = Whole.Stability!
                with { Margin = Whole.Stability.Margin with { Values = [.. Whole.Stability.Margin.Values.Select(m => m + 1)] } } }),
                "it is of another vehicle or fill"),
        ["a margin held to half a calibre"] = (() => CardOf(Whole with { Stability = TestVehicle.Stability(new(0.5)) }),
            "at least 1 calibre"),
        ["a scatter of another vehicle"] = (
            () => CardOf(Whole with { Scatter = (TestVehicle with { Name = "Another" }).Disperse(Ground with { Rail = new(2.Metres()) },
                new(), 40, 1) }), "Disperse this one"),
        ["a scatter of a heavier twin under the same name"] = (
            () => CardOf(Whole with { Scatter = Charged(SampleVehicles.Trainer, TheProved, 25).Disperse(Ground, new(), 40, 1) }),
                "another Trainer or another wind"),
        ["a scatter in a calm"] = (() => CardOf(Whole with {
            Scatter = TestVehicle.Disperse(Ground with { Wind = WindProfile.Calm }, new(), 40, 1) }), "another Trainer or another wind"),
        ["a scatter with a wider field"] = (
            () => CardOf(Whole with { Scatter = TestVehicle.Disperse(Ground with { Field = FlyingField.Circle(5000.Metres()) }, new(), 40,
                1) }), "another field"),
        ["a scatter with a higher ceiling"] = (() => CardOf(Whole
            with { Scatter = TestVehicle.Disperse(Ground with { Ceiling = 5000.Metres() }, new(), 40, 1) }), "judged by a ceiling"),
        ["a part of a scatter"] = (
            () => CardOf(Whole with { Scatter = DispersionShardOf(TestVehicle.DisperseShard(Ground, new(), 60, 1, 1, 2)) }),
                "shard 1/2 only"),

        ["a scatter of two flights"] = (() => CardOf(Whole with { Scatter = TestVehicle.Disperse(Ground, new(), 2, 1) }),
            "at least 300 are needed"),
        ["a scatter in which nothing varies"] = (() => CardOf(Whole with { Scatter = TestVehicle.Disperse(Ground, Spread.None, 300, 1) }),
            "nothing varies in fill pressure, thrust, drag, wind speed"),
        ["a scatter in one and the same wind"] = (
            () => CardOf(Whole with { Scatter = TestVehicle.Disperse(Ground, new() { WindSpeed = Ratio.Zero, WindDirection = Angle.Zero },
                300, 1) }), "nothing varies in wind speed, wind direction"),
        ["a fill with another gas"] = (() => CardOf(Whole with { Fill = (Whole.Fill!.Fill with { Gas = Gas.Nitrogen }).Run() }),
            "is planned with nitrogen"),
        ["a fill that passes on its way what a warm vessel may have"] = (() => WarmCard(FillGoal.AfterCooling),
            "on its way; the vessel's maximum fill pressure is"),
        ["gear that doesn't carry the weight, at a top without wind"] = (
            () => TestVehicle.Card(Ground with { Wind = WindProfile.Calm }, Whole with { Recovery = Gear(TestVehicle, 1) }),
                "Use stronger gear"),
        ["a canopy as small as a hand"] = (() => SmallCanopy.Card(Ground, Whole with { Recovery = Gear(SmallCanopy, 900) }),
            "under its canopy; at most 12 m/s"),
        ["a heavy drag written in by hand"] = (
            () => (TestVehicle with { MeasuredDrag = DragCurve.Constant(3, TestVehicle.Body.ReferenceArea) }).Card(Ground, Whole),
                "no flight is shown that it was fitted to"),
        ["a factor on drag that nobody measured"] = (
            () => (TestVehicle with { DragCalibration = new(3, 10.Percent(), Source.CommonPractice("felt like it")) }).Card(Ground, Whole),
                "the factor on drag of 3 wasn't measured"),
        ["an old proof entered under a younger day"] = (
            () => CardOf(Whole with { Service = ServiceOf("Trainer vessel", "T-1", Usual(TheProved)[0],
                OnDay(ProofDay.AddDays(10), TheProved.Fingerprint), Sound(FlightDay)) }), "a proof is no younger than its readings"),
        ["an older proof written down after the last one"] = (
            () => CardOf(Whole with
            {
                Service = ServiceOf(
                    "Trainer vessel", "T-1", Usual(TheProved)[0], OnDay(ProofDay.AddDays(5), "another"),
                        Usual(TheProved)[1] with { At = At(ProofDay.AddDays(6)) }, Sound(FlightDay)),
            }), "Hand over the last proof of the vessel"),
        ["a proof entered again after a hard landing of the same day"] = (
            () => CardOf(Whole with { Service = InService(TheProved, new LandedHard { At = At(ProofDay) }, Usual(TheProved)[1]) }),
                "landed hard"),

        // The day isn't one to fly on.
        ["more wind than the limit"] = (() => TestVehicle.Card(Ground with { Wind = WindProfile.Uniform(12.MetresPerSecond()) }, Whole),
            "above the limit"),
        ["a ceiling below the flight"] = (() => TestVehicle.Card(Ground with { Ceiling = 50.Metres() }, Whole), "above the ceiling"),
    };

    // Ways to make evidence that isn't one.
    private static readonly Dictionary<string, (Action Try, string Says)> BeforeTheCard = new()
    {
        ["prove by a proof that was never held"] = (() => Recorded(Rated, "T-1", past: -10).ToProvedVessel(Rated),
            "only an accepted record"),
        ["prove by a proof that took a set"] = (() => Recorded(Rated, "T-1", permanentMl: 5).ToProvedVessel(Rated),
            "only an accepted record"),
        ["prove by a proof that leaked"] = (() => Recorded(Rated, "T-1", leakMlPerMinute: 1).ToProvedVessel(Rated),
            "only an accepted record"),
        ["prove a vessel without a serial"] = (() => Recorded(Rated, null).ToProvedVessel(Rated), "gives no serial"),
        ["prove a vessel on no day"] = (() => (Logged(NotebookKit.Proofing.Plans.Proof.For(Rated), "T-1", null).Judge())
            .ToProvedVessel(Rated),
            "gives no day"),
        ["prove by the rating of another vessel"] = (() => Accepted.ToProvedVessel(Pair.BoosterRating),
            "Take the rating of the vessel that was proved"),
        ["prove with a shortened hold"] = (() => Recorded(Rated, "T-1",
            plan: p => p with { ProofHold = 15.Seconds() }).ToProvedVessel(Rated), "at least 60 s is required"),
        ["prove without looking for leaks"] = (() => Recorded(Rated, "T-1",
            plan: p => p with { LeakHold = 30.Seconds() }).ToProvedVessel(Rated), "leaks were looked for"),
        ["prove with a log that looked away during the hold"] = (() => Thinned(Logged(NotebookKit.Proofing.Plans.Proof.For(Rated), "T-1",
            ProofDay)).Judge().ToProvedVessel(Rated), "pass between two readings"),
        ["prove with a generous limit of leaks"] = (
            () => (Logged(NotebookKit.Proofing.Plans.Proof.For(Rated), "T-1", ProofDay)
                with { LeakLimit = 9.Percent() }).Judge().ToProvedVessel(Rated), "limit of the leak was set to"),
        ["prove with a generous limit of permanent expansion"] = (
            () => Recorded(Rated, "T-1", plan: p => p with { Rule = p.Rule with { PermanentLimit = 15.Percent() } }).ToProvedVessel(Rated),
                "limit of permanent expansion was set to"),
        ["prove by a rule set of one's own that asks for nothing"] = (
            () => Accepted.ToProvedVessel(Built.Rate(RuleSets.Club with { Proof = 1.1, Burst = 1.8 }, 34.BarGauge(),
                Vessels.Samples.Twins(Built))),
                "asks for less than each of the published ones"),
        ["prove by the rating of a thicker twin"] = (() => Accepted.ToProvedVessel(Thicker.Rate(RuleSets.Club, 34.BarGauge(),
            Vessels.Samples.Twins(Thicker))),
            "Take the rating of the layup that was proved"),
        ["use the rating of another design for a chamber"] = (() => Built.ToChamber(Pair.BoosterRating), "of another design"),
        ["keep a stand-off below the computed one"] = (() => Whole.StandOff!.Keeping(5.Metres(), 100.Metres()),
            "The distance can't be below the computed stand-off"),
        ["keep the spectators nearer than computed"] = (() => Whole.StandOff!.Keeping(30.Metres(), 30.Metres()),
            "The distance can't be below the computed stand-off"),
        ["read a proof record with a reading edited"] = (() => ProofRecord.FromJson(Edited("\"pressureBarGauge\": [",
            s => s.Insert(s.IndexOf("53.", StringComparison.Ordinal) + 3, "9"))), "was edited"),
        ["read a proof record with its verdict edited"] = (
            () => ProofRecord.FromJson(Recorded(Rated, "T-1", permanentMl: 5).ToJson().Replace("\"verdict\": \"reject\"",
                "\"verdict\": \"accept\"", StringComparison.Ordinal)), "its own readings say \"reject\""),
        ["read a proof record with its serial edited"] = (() => ProofRecord.FromJson(Accepted.ToJson().Replace("\"T-1\"", "\"T-2\"",
            StringComparison.Ordinal)), "was edited"),
        ["read half a proof record"] = (() => ProofRecord.FromJson(Accepted.ToJson()[..4000]), "isn't a whole proof record"),
        ["read something else as a proof record"] = (() => ProofRecord.FromJson("{\"format\": \"letter\"}"), "wanted is"),
    };

    public static TheoryData<string> Cards => [.. OnTheCard.Keys];

    public static TheoryData<string> Makings => [.. BeforeTheCard.Keys];

    private static ProvedVessel LowProof => Recorded(Rated, "T-1",
        plan: p => p with { WorkingPressure = 25.BarGauge() }).ToProvedVessel(Rated);

    private static PressureVessel Thicker => Built with { Plies = [.. Built.Plies, Built.Plies[^1], Built.Plies[^1]] };

    private static Vehicle SmallCanopy => TestVehicle with { Canopy = TestVehicle.Canopy! with { NominalDiameter = 0.1.Metres() } };

    private static Proved OnDay(DateOnly day, string record)
        => new(day, TheProved.Held, Rated.ProofPressure / Rated.WorkingPressure, TheProved.RuleSet, record) { At = At(day) };

    // A vessel just cool enough for 30 bar, filled to what settles at 30 bar.
    private static FlightCard WarmCard(FillGoal goal)
    {
        var vehicle = Charged(SampleVehicles.Trainer, TheProved, 30);
        var status = Whole.Service!.StatusOn(FlightDay, LifeLimits.Club);
        var wall = Enumerable.Range(15, 35).Select(c => c.Celsius()).Last(c => FillAllowance.Of(TheProved, status, c,
            NearlyDry).Pressure >= 30.BarGauge());
        return vehicle.Card(Ground, Whole with
        {
            VesselTemperature = wall,
            Fill = (FillOf(vehicle).Fill with { Goal = goal, Restrictor = new Orifice(1.5.Millimetres(), 0.8) }).Run(),
        });
    }

    // A black wall under the noon sun of a hot still day.
    private static Temperature InTheSun =>
        new SunHeating(30.Celsius(), Irradiance.FromWattsPerSquareMeter(950), 0.95, 0.9,
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(15)).Surface();

    private static Resin OfTheShelf => MaterialLibrary.Typical.Resin("laminating epoxy");

    private static FinStructureResult SoftFins => TestVehicle.Body.FinStructure(
        new("paper", 0.15.Gigapascals(), 20.Megapascals(), Source.CommonPractice("invented")), Whole.Fins![0].Bond, 80.MetresPerSecond(),
            8.MetresPerSecond());

    [Theory]
    [MemberData(nameof(Cards))]
    public void The_card_says_no_go_and_why(string way)
    {
        var (make, says) = OnTheCard[way];
        var card = make();
        Assert.False(card.IsGo, way);
        Assert.Equal("NO-GO", card.Lines[0].Value);
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Makings))]
    public void It_is_refused_in_a_sentence(string way)
    {
        var (make, says) = BeforeTheCard[way];
        var refused = Assert.ThrowsAny<Exception>(make);
        Assert.True(refused is InvalidDesignException or OutOfRangeException or FormatException, $"{way}: {refused.GetType()}");
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_more_than_forty_ways_and_each_has_its_sentence() => Assert.True(OnTheCard.Count + BeforeTheCard.Count > 60);

    /// <summary>Property: what is left out forbids, and what is left out besides never allows again.</summary>
    [Fact]
    public void Taking_any_piece_away_never_turns_no_go_into_go()
    {
        Func<FlightEvidence, FlightEvidence>[] takeAway =
        [
            e => e with { Day = null }, e => e with { Vessel = null }, e => e with { Service = null },
                e => e with { VesselTemperature = null }, e => e with { Fill = null }, e => e with { Fins = null },
            e => e with { Recovery = null }, e => e with { Stability = null }, e => e with { StandOff = null },
                e => e with { Scatter = null },
        ];
        for (var set = 1; set < 1 << takeAway.Length; set += set < 32 ? 1 : 37)
        {
            var evidence = Whole;
            for (var i = 0; i < takeAway.Length; i++)
                if ((set & (1 << i)) != 0)
                    evidence = takeAway[i](evidence);
            Assert.False(CardOf(evidence).IsGo, $"pieces taken away: {set:b}");
        }
    }

    [Fact]
    public void Taking_any_piece_of_two_stages_away_forbids_the_flight()
    {
        Func<TwoStageEvidence, TwoStageEvidence>[] takeAway =
        [
            e => e with { Day = null }, e => e with { StandOff = null }, e => e with { Scatter = null },
                e => e with { StackStability = null }, e => e with { FillOrder = FillOrder.NotGiven },
            e => e with { Booster = e.Booster with { Vessel = null } }, e => e with { Booster = e.Booster with { Service = null } },
                e => e with { Booster = e.Booster with { VesselTemperature = null } },
                e => e with { Booster = e.Booster with { Fill = null } },
            e => e with { Booster = e.Booster with { Fins = null } }, e => e with { Booster = e.Booster with { Recovery = null } },
            e => e with { Sustainer = e.Sustainer with { Vessel = null } },
                e => e with { Sustainer = e.Sustainer with { Service = null } },
                e => e with { Sustainer = e.Sustainer with { Fill = null } },
            e => e with { Sustainer = e.Sustainer with { Fins = null } }, e => e with { Sustainer = e.Sustainer with { Recovery = null } },
                e => e with { Sustainer = e.Sustainer with { Stability = null } },
            e => e with { Sustainer = e.Booster, Booster = e.Sustainer },
        ];
        Assert.All(takeAway, take => Assert.False(Pair.Vehicle.Card(Pair.Site, take(Pair.Evidence)).IsGo));
    }

    [Fact]
    public void One_vessel_proved_twice_is_not_two()
    {
        var again = Recorded(Rated, "T-1", ProofDay.AddDays(1)).ToProvedVessel(Rated);
        var card = Pair.Vehicle.Card(Pair.Site, Pair.Evidence with { Booster = Pair.Evidence.Booster with { Vessel = again } });
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("one vessel can't be in two places", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stand_off_of_two_stages_that_was_computed_for_a_lower_flight_is_refused()
    {
        var leaning = Pair.Site with { Rail = new(3.Metres()) { Elevation = 65.Degrees() } };
        var card = Pair.Vehicle.Card(Pair.Site, Pair.Evidence with { StandOff = Pair.Vehicle.StandOff(leaning) });
        Assert.Contains(card.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("was computed for an apogee of", StringComparison.Ordinal));
        Assert.True(card.MaximumApogee > card.Flight!.Apogee);
    }

    // Whoever chooses the heavy end of the band flies slower on paper alone.
    [Fact]
    public void Fins_are_judged_at_the_fastest_speed_of_the_drag_band()
    {
        string Says(DragEnd end) => (TestVehicle with { DragEnd = end }).Card(Ground,
            Whole with { Fins = [SoftFins] }).Findings.Single(f
            => f.Message.Contains("the fins don't hold at", StringComparison.Ordinal)).Message;
        Assert.Equal(Says(DragEnd.Low), Says(DragEnd.High));
    }

    // Shown as a whole, as the runner shows the flights of one task.
    private static DispersionResult DispersionShardOf(DispersionShard shard) => new(shard);

    private static ProvedVessel Of(Resin resin)
    {
        var vessel = Built with { Resin = resin };
        var rating = vessel.Rate(RuleSets.Club, 34.BarGauge(), Vessels.Samples.Twins(vessel));
        return Recorded(rating, "T-1").ToProvedVessel(rating);
    }

    // A reading every twelve seconds only.
    private static ProofReadings Thinned(ProofReadings readings)
    {
        Series Every(Series s) => s with { Values = [.. s.Values.Where((_, i) => i % 12 == 0)] };
        return readings with
        {
            Time = Every(readings.Time), Pressure = Every(readings.Pressure), Temperature = Every(readings.Temperature!),
                Expansion = Every(readings.Expansion!),
        };
    }

    private static Vehicle Stated(double rated, double fill) => SampleVehicles.Trainer with
    {
        Charge = SampleVehicles.Trainer.Charge with { Chamber = new(TheProved.Chamber.Volume, TheProved.Chamber.Bore, rated.BarGauge()),
            Pressure = fill.BarGauge() },
    };

    private static FlightCard On(ProvedVessel vessel, FlightEvidence evidence)
        => Charged(SampleVehicles.Trainer, vessel, 33).Card(Ground, evidence with { Vessel = vessel });

    private static string Edited(string after, Func<string, string> edit)
    {
        var text = Accepted.ToJson();
        var at = text.IndexOf(after, StringComparison.Ordinal);
        return text[..at] + edit(text[at..]);
    }
}
