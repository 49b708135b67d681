using System.Globalization;
using NotebookKit.Clearance;
using NotebookKit.Clearance.Service;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Tests.Flight;
using UnitsNet;

namespace NotebookKit.Tests.Clearance;

/// <summary>Two invented vehicles with everything that a flight card asks for. All is made once; tests take pieces away or change
/// them.</summary>
internal static class CardFixture
{
    public static readonly DateOnly ProofDay = new(2026, 4, 11), FlightDay = new(2026, 5, 2);

    private static readonly MaterialLibrary Stock = MaterialLibrary.Typical;

    // Both invented, as somebody would measure them who means to fly in the warm.
    public static Resin CuredWarm { get; } = Stock.Resin("laminating epoxy")
        with { GlassTemperature = Property.Measured(90.Celsius(), 0, "invented: bars of the batch") };

    public static Property<Ratio> NearlyDry { get; } = Property.Measured(0.5.Percent(), 0, "invented: weighed coupons");

    public static PressureVessel Built { get; } = Design("Trainer vessel", 66, 850);

    public static Rating Rated { get; } = Built.Rate(RuleSets.Club, 34.BarGauge(), Vessels.Samples.Twins(Built));

    public static ProofRecord Accepted { get; } = Recorded(Rated, "T-1");

    public static ProvedVessel TheProved { get; } = Accepted.ToProvedVessel(Rated);

    public static LaunchSite Ground { get; } = SampleVehicles.Calm with
    {
        Name = "test field",
        Rail = new(3.Metres()),
        Wind = WindProfile.PowerLaw(3.MetresPerSecond(), 10.Metres(), from: 270.Degrees()),
        Ceiling = 500.Metres(),
        Field = FlyingField.Circle(400.Metres()),
    };

    public static Vehicle TestVehicle { get; } = Charged(SampleVehicles.Trainer, TheProved, 33);

    public static FlightEvidence Whole { get; } = new()
    {
        Day = FlightDay,
        Vessel = TheProved,
        Service = InService(TheProved),
        VesselTemperature = 15.Celsius(),
        ResinMoisture = NearlyDry,
        Fill = FillOf(TestVehicle),
        Fins = [Judged(TestVehicle)],
        Recovery = Gear(TestVehicle, 140),
        Stability = TestVehicle.Stability(),
        StandOff = TestVehicle.StandOff(Ground),
        Scatter = TestVehicle.Disperse(Ground, new Spread(), 500, 3),
    };

    public static FlightCard CardOf(FlightEvidence evidence) => TestVehicle.Card(Ground, evidence);

    public static PressureVessel Design(string name, double bore, double length) => new(
        name,
        new Liner(Stock.Solid("PET"), bore.Millimetres(), 0.5.Millimetres()),
        length.Millimetres(),
        CuredWarm,
        [
            new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm light")), new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm heavy")),
            new HoopWrap(Stock.Cloth("carbon tape 150 g")),
        ],
        new VesselEnd(new FlatClosure(Stock.Solid("aluminium 6061-T6"), 12.Millimetres()) { Opening = 13.Millimetres() },
            new CarriedSleeve { Neck = 52.Millimetres(), IsTiedOff = true }),
        new VesselEnd(new FlatClosure(Stock.Solid("aluminium 6061-T6"), 9.Millimetres()),
            new CarriedSleeve { Neck = 52.Millimetres(), IsTiedOff = true }));

    /// <summary>The record of a proof that went as planned, or in some other way.</summary>
    public static ProofRecord Recorded(
        Rating rating, string? serial, DateOnly? day = null, double past = 0.4, double permanentMl = 0.2, double leakMlPerMinute = 0,
            Func<Proof, Proof>? plan = null)
    {
        var proof = NotebookKit.Proofing.Plans.Proof.For(rating);
        return Logged(plan?.Invoke(proof) ?? proof, serial, day ?? ProofDay, past, permanentMl, leakMlPerMinute).Judge();
    }

    /// <summary>Readings of a proof, made by springs of their own; second by second.</summary>
    public static ProofReadings Logged(Proof proof, string? serial, DateOnly? day, double past = 0.4, double permanentMl = 0.2,
        double leakMlPerMinute = 0)
    {
        List<double> time = [], pressure = [], temperature = [], expansion = [];
        double bar = 0, top = 0, lost = 0;
        var (litres, growthMl) = (proof.Volume.Milliliters, proof.Filled.WallExpansion(proof.ProofPressure).Milliliters);
        var proofBar = proof.ProofPressure.Bar;
        double Compliance() => (litres / 21_790) + (growthMl / proofBar);
        void Row()
        {
            top = Math.Max(top, bar);
            time.Add(time.Count);
            pressure.Add(bar);
            temperature.Add(18);
            expansion.Add((Compliance() * bar) + (permanentMl * top / (proofBar + past)) + lost);
        }

        for (var i = 0; i < 15; i++) Row();
        var steps = proof.Steps.Select(s => (Bar: s.DecimalFractions * proofBar, Hold: proof.StepHold.Seconds)).ToList();
        steps[^1] = (proofBar + past, proof.ProofHold.Seconds);
        steps.Add((proof.WorkingPressure.Bar, proof.LeakHold.Seconds));
        steps.Add((0, 30));
        foreach (var (target, hold) in steps)
        {
            while (Math.Abs(target - bar) > 1e-9)
            {
                bar = target > bar ? Math.Min(target, bar + 0.8) : Math.Max(target, bar - 1.5);
                Row();
            }

            for (var i = 0; i < hold; i++)
            {
                if (bar > 1)
                {
                    lost += leakMlPerMinute / 60;
                    bar -= leakMlPerMinute / 60 / Compliance();
                }

                Row();
            }
        }

        return new()
        {
            Proof = proof, Vessel = proof.Vessel, Serial = serial, Day = day, Time = new("Time", "s", time),
                Pressure = new("Pressure", "bar gauge", pressure),
            Temperature = new("Temperature", "°C", temperature), Expansion = new("Water pumped in", "mL", expansion),
        };
    }

    /// <summary>A vehicle on a proved vessel, charged to a pressure.</summary>
    public static Vehicle Charged(Vehicle vehicle, ProvedVessel vessel, double bar) =>
        (vehicle with { Charge = vehicle.Charge with { Pressure = bar.BarGauge() } }).On(vessel);

    /// <summary>The service record of a vessel that was made, proved, and inspected on the day of the flight.</summary>
    public static ServiceRecord InService(ProvedVessel vessel, params ServiceEvent[] more) =>
        ServiceOf(vessel.Vessel, vessel.Serial, [.. Usual(vessel), .. more, Sound(FlightDay)]);

    public static ServiceEvent[] Usual(ProvedVessel vessel) =>
    [
        new Made(new DateOnly(2026, 3, 1), "batch 1") { At = At(new DateOnly(2026, 3, 1)) },
        new Proved(vessel.Day, vessel.Held, vessel.Rating.ProofPressure / vessel.Rating.WorkingPressure, vessel.RuleSet,
            vessel.Fingerprint) { At = At(vessel.Day) },
    ];

    public static Inspected Sound(DateOnly day) => new(InspectionResult.Sound) { At = At(day), By = "a member" };

    public static DateTimeOffset At(DateOnly day) => new(day.ToDateTime(new TimeOnly(9, 0)), TimeSpan.Zero);

    public static ServiceRecord ServiceOf(string vessel, string serial, params IReadOnlyList<ServiceEvent> events)
    {
        var path = Path.Combine(Path.GetTempPath(), Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture) + ".service.jsonl");
        try
        {
            var file = ServiceFile.Create(path, vessel, serial);
            foreach (var happened in events) file.Append(happened);
            return ServiceFile.Read(path);
        }
        finally
        {
            File.Delete(path);
        }
    }

    public static FillResult FillOf(Vehicle vehicle) => new PadFill
    {
        Chamber = vehicle.Charge.Chamber, Supply = vehicle.Charge.Chamber.RatedPressure, Target = vehicle.Charge.Pressure,
            WaterFraction = vehicle.Charge.WaterFraction,
        Restrictor = new Orifice(0.5.Millimetres(), 0.8), Heat = FillHeat.Wall, Temperature = 15.Celsius(),
    }.Run();

    public static FinStructureResult Judged(Vehicle vehicle) => vehicle.Body.FinStructure(
        new("sheet", 5.Gigapascals(), 500.Megapascals(), Source.CommonPractice("invented")),
        new FinBond(6.Millimetres(), 10.Megapascals(), Source.CommonPractice("invented")), 80.MetresPerSecond(), 8.MetresPerSecond());

    public static RecoveryCheck Gear(Vehicle vehicle, double anchor)
    {
        var whole = vehicle.MassProperties().Mass;
        return new RecoveryGear
        {
            Canopy = vehicle.Canopy!, Cord = new(ForcePerLength.FromNewtonsPerMeter(800), 600.Newtons()), Front = whole * 0.25,
                Rear = whole * 0.75,
            Apart = 8.MetresPerSecond(), Anchor = anchor.Newtons(),
            Joint = new(new(2, 2.Millimetres(), 60.Megapascals()), 66.Millimetres(), 700.Newtons()) { DragSeparation = 5.Newtons() },
        }.Check();
    }

    /// <summary>Two stages with everything.</summary>
    public static class Pair
    {
        private static readonly PressureVessel Lifter = Design("Lifter vessel", 66, 1100);

        public static Rating BoosterRating { get; } = Lifter.Rate(RuleSets.Club, 34.BarGauge(), Vessels.Samples.Twins(Lifter));

        public static ProvedVessel BoosterVessel { get; } = Recorded(BoosterRating, "L-1").ToProvedVessel(BoosterRating);

        public static TwoStageVehicle Vehicle { get; } = new(
            "Pair", Charged(SampleVehicles.Booster, BoosterVessel, 33), Charged(SampleVehicles.Trainer, TheProved, 33));

        public static LaunchSite Site { get; } = Ground with { Ceiling = 900.Metres(), Field = FlyingField.Circle(900.Metres()) };

        public static TwoStageEvidence Evidence { get; } = new()
        {
            Day = FlightDay,
            Booster = new()
            {
                Vessel = BoosterVessel, Service = InService(BoosterVessel), VesselTemperature = 15.Celsius(), ResinMoisture = NearlyDry,
                Fill = FillOf(Vehicle.Booster), Fins = [Judged(Vehicle.Booster)], Recovery = Gear(Vehicle.Booster, 900),
            },
            Sustainer = new()
            {
                Vessel = TheProved, Service = InService(TheProved), VesselTemperature = 15.Celsius(), ResinMoisture = NearlyDry,
                Fill = FillOf(Vehicle.Sustainer), Fins = [Judged(Vehicle.Sustainer)], Recovery = Gear(Vehicle.Sustainer, 900),
                Stability = Vehicle.Sustainer.Stability(),
            },
            StackStability = Vehicle.Stack(Site).Stability(),
            StandOff = Vehicle.StandOff(Site),
            Scatter = Vehicle.Disperse(Site, new TwoStageSpread(), 500, 3),
            FillOrder = FillOrder.BoosterFirst,
        };
    }
}
