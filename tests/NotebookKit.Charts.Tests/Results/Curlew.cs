using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;

namespace NotebookKit.Charts.Tests.Results;

/// <summary>The invented trainer, with a result of each kind.</summary>
public static class Curlew
{
    private static MaterialLibrary Stock => MaterialLibrary.Typical;

    public static PressureVessel Vessel { get; } = Build();

    public static BurstPrediction Burst { get; } = Vessel.Burst();

    public static LayupTradeOff Layups { get; } = new LayupSearch(Vessel, [.. Stock.AllOf<Braid>()],
        [new HoopWrap(Stock.Cloth("carbon tape 150 g"))]).Run();

    // Twins taken to burst at their walls (invented).
    public static VesselEvidence Twins { get; } = new([.. new[] { 1.02, 0.94, 1.08, 0.98, 1.05 }.Select((share, i) =>
        new BurstTest(Vessel, $"twin {i + 1}", Burst.WallLow * share, BurstTest.Wall))]);

    public static Rating Rating { get; } = Burst.Rate(evidence: Twins);

    public static FinnedBody Body { get; } = new(
        [Nose.TangentOgive(220.Millimetres(), 70.Millimetres()), new BodyTube(1130.Millimetres(), 70.Millimetres())],
        [FinSet.Trapezoidal(3, 130.Millimetres(), 70.Millimetres(), 85.Millimetres(), 60.Millimetres(), 2.Millimetres(),
            1215.Millimetres())]) { Name = "Curlew" };

    public static Airframe Airframe { get; } = new(
        Body,
        new MassBudget([new MassPart("nose and altimeter", 260.Grams(), 160.Millimetres()),
            new MassPart("canopy", 110.Grams(), 380.Millimetres()),
            new MassPart("vessel", 420.Grams(), 1000.Millimetres()) { Extent = 700.Millimetres(), Diameter = 68.Millimetres() },
            new MassPart("fins", 90.Grams(), 1280.Millimetres()) { Extent = 130.Millimetres(), Diameter = 140.Millimetres() }]),
        new WaterChamber(Vessel.Volume, Vessel.Liner.Bore, 1345.Millimetres()));

    public static Charge Charge { get; } = new(Vessel.ToChamber(Rating), 32.Percent(), Rating.WorkingPressure / 1.05, 20.Celsius());

    public static VerticalFlightResult Flight { get; } = new VerticalFlight(
        Charge, Nozzle.Rounded(13.Millimetres()), 900.Grams(), DragCurve.Constant(0.5, 70.Millimetres()),
            new LaunchSite("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard)) { Name = "Curlew" }.Fly();

    public static Vehicle Vehicle { get; } = new("Curlew", Body, Airframe.MassBudget, Charge, Nozzle.Rounded(13.Millimetres()),
        1345.Millimetres())
    {
        Canopy = new Canopy(CanopyType.FlatCircular, 0.9.Metres()), Deployment = Deployment.ByApogeeSensor(0.5.Seconds()),
    };

    public static LaunchSite Windy { get; } = new("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard)
    {
        Wind = WindProfile.PowerLaw(4.MetresPerSecond(), 10.Metres(), from: 240.Degrees()),
        Field = FlyingField.Circle(200.Metres()),
    };

    public static FlightResult FullFlight { get; } = Vehicle.Fly(Windy);

    public static FlightResult SixDegreesFlight { get; } = Vehicle.FlySixDegrees(Windy);

    public static StaticFiringResult Firing { get; } = new StaticFiring(Charge, Nozzle.Rounded(13.Millimetres()),
        AbsolutePressure.StandardSeaLevel).Fire();

    public static StabilityResult Stability { get; } = Airframe.Stability(32.Percent(), 60.Grams());

    public static FillResult Fill { get; } = new PadFill
    {
        Chamber = Charge.Chamber, Supply = Rating.WorkingPressure * 2, Restrictor = new Orifice(0.6.Millimetres(), 0.8),
            Target = Rating.WorkingPressure / 1.05, WaterFraction = 32.Percent(),
    }.Run();

    public static VentResult Vent { get; } = new Vent { Chamber = Charge.Chamber, Restrictor = new Orifice(0.6.Millimetres(), 0.8),
        From = Rating.WorkingPressure / 1.05, WaterFraction = 32.Percent() }.Run();

    public static ProofPlan Proof { get; } = new Proof
    {
        Vessel = "Curlew", Volume = Vessel.Volume, WorkingPressure = Rating.WorkingPressure,
            Wall = new WallExpansion(1.2.Percent(), 60.BarGauge(), Source.CommonPractice("invented")),
    }.Plan();

    public static FlightResult WholeFlight { get; } = Vehicle.Fly(Site);

    public static FlightResult SixDegrees { get; } = Vehicle.FlySixDegrees(Site);

    public static LaunchSite Site => new("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard)
    {
        Wind = WindProfile.PowerLaw(3.MetresPerSecond(), 10.Metres()), Field = FlyingField.Circle(250.Metres()),
    };

    public static AlignmentResult Alignment { get; } = Airframe.Alignment(new FinJig(0.3.Millimetres(), 60.Millimetres()),
        50.MetresPerSecond());

    public static TimedOpeningResult Opening { get; } = new Canopy(CanopyType.FlatCircular, 0.9.Metres())
        .OpenByTimer(900.Grams(), 5.8.Seconds(), 5.4.Seconds(), 0.3.Seconds(), 3.MetresPerSecond(), 300.Newtons());

    public static NestResult Nest { get; } = new SheetNest(600.Millimetres(), 300.Millimetres(),
        [new("fin", [.. Body.Fins[0].Planform.Corners.Select(c => new SheetPoint(c.Aft, c.Out))], 3)]).Place();

    public static BuildCalendarResult Calendar { get; } = new BuildCalendar(
        [new("wrap", 2.Hours(), 12.Hours()), new("fins", 1.Hours(), 12.Hours()), new("fillets", 1.Hours(), 12.Hours(), "wrap", "fins")],
        new DateTime(2026, 3, 2, 18, 30, 0, DateTimeKind.Unspecified), BenchHours.Evenings).Plan();

    public static FlightFit LoggedFlight { get; } = Log().Fit();

    // The flight itself as a log, five readings a second after two seconds on the pad.
    private static FlightLog Log()
    {
        var flight = Vehicle.Fly(Windy);
        double[] times = [.. Enumerable.Range(0, 60).Select(i => i / 5.0)];
        double Height(double t) => flight.Time.Values.TakeWhile(v => v <= t).Count() is var n and > 0
            ? flight.Height[Math.Min(n, flight.Height.Count) - 1] : 0;
        return new()
        {
            Vehicle = Vehicle, Site = Windy, Time = new("Time", "s", times),
            Pressure = new("Static pressure", "bar absolute",
                [.. times.Select(t => Windy.Pressure.Bar * Math.Pow(1 - 0.0065 * Height(t - 2) / Windy.Temperature.Kelvins, 5.2559))]),
        };
    }

    private static PressureVessel Build()
    {
        var sleeve = new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm light"));
        var aluminium = Stock.Solid("aluminium 6061-T6");
        var bond = new BondedPlug(Stock.Adhesive("structural epoxy"), 60.Millimetres(), BondSurface.AbradedLaminate,
            BondSurface.TreatedMetal);
        return new PressureVessel("Curlew", new Liner(Stock.Solid("PET"), 66.Millimetres(), 0.5.Millimetres()), 700.Millimetres(),
            Stock.Resin("laminating epoxy"),
            [sleeve, sleeve, new VeilWrap(Stock.Veil("glass veil 30 g"))],
            new VesselEnd(new FlatClosure(aluminium, 12.Millimetres()) { Opening = 13.Millimetres() }, bond),
                new VesselEnd(new FlatClosure(aluminium, 12.Millimetres()), bond));
    }
}
