using NotebookKit.DesignFiles;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Tests.House;
using UnitsNet;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>The designs of the notebooks, as files and, figure by figure, as their scripts state them.</summary>
internal static class DesignFixture
{
    private static readonly MaterialLibrary Stock = MaterialLibrary.Typical;

    public static string CurlewText { get; } = File.ReadAllText(PathOf("curlew.json"));

    public static string GodwitText { get; } = File.ReadAllText(PathOf("godwit.json"));

    public static Design Curlew { get; } = Design.Parse(CurlewText, "curlew.json");

    public static Design Godwit { get; } = Design.Parse(GodwitText, "godwit.json");

    public static LaunchSite Site(Length rail) => new("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard)
    {
        Rail = new Rail(rail), Wind = WindProfile.PowerLaw(3.MetresPerSecond(), 10.Metres()), Ceiling = 600.Metres(),
        Field = FlyingField.Circle(500.Metres()),
    };

    public static string PathOf(string file) => Path.Combine(Repository.Root, "notebooks", file);

    /// <summary>Curlew as curlew.csx states it, with its rating.</summary>
    public static (Vehicle Vehicle, Rating Rating) CurlewByCode()
    {
        var throat = 13.Millimetres();
        var heavy = new BraidedSleeve(Stock.Braid("carbon sleeve 65 mm heavy")) { FibreFraction = 45.Percent() };
        var tape = new HoopWrap(Stock.Cloth("carbon tape 150 g")) { FibreFraction = 45.Percent() };
        var resin = Stock.Resin("laminating epoxy") with
        {
            GlassTemperature = Property.Measured(88.Celsius(), 0, "invented: a strip of the batch, warmed under a weight"),
        };
        var aluminium = Stock.Solid("aluminium 6061-T6");
        var ring = new Seal(SealKind.ORing) { HoldsTo = 350.BarGauge() };
        var tiedOff = new CarriedSleeve { Neck = 52.Millimetres(), Tail = 40.Millimetres(), IsTiedOff = true, Delivers = 95.Percent() };
        VesselEnd Dome(CarriedSleeve over) => new(new DomedClosure(aluminium, 3.Millimetres(), 24.Millimetres()), over)
        {
            Seal = ring, Fittings = 15.Grams(),
        };
        VesselEnd NozzleDome(CarriedSleeve over) => new(
            new DomedClosure(aluminium, 3.Millimetres(), 24.Millimetres()) { Opening = throat + 3.Millimetres() }, over)
        {
            Seal = ring, Fittings = 15.Grams(),
            Fitting = new ThreadedFitting(aluminium, throat + 5.Millimetres(), 1.5.Millimetres(), 12.Millimetres())
            {
                Boss = throat + 13.Millimetres(), Seal = ring, Mass = 15.Grams(),
            },
        };
        var vessel = new PressureVessel("Curlew", new Liner(Stock.Solid("PET"), 66.Millimetres(), 0.4.Millimetres()), 1300.Millimetres(),
            resin, [heavy, heavy, tape, new VeilWrap(Stock.Veil("glass veil 30 g"))], NozzleDome(tiedOff), Dome(tiedOff));
        var loose = tiedOff with { Tail = 15.Millimetres(), IsTiedOff = false };
        var firstEnds = vessel with { Name = "Curlew, first ends", Length = 350.Millimetres(), NozzleEnd = NozzleDome(loose),
            ForwardEnd = Dome(loose) };
        var shortTwin = vessel with { Name = "Curlew, short", Length = 350.Millimetres() };
        var rating = vessel.Rate(RuleSets.Club, 60.BarGauge(), VesselEvidence.Of(
            new BurstTest(firstEnds, "K-1", 121.BarGauge(), "nozzle end, sleeve's tail"),
            new BurstTest(vessel, "K-2", 344.BarGauge(), BurstTest.Wall), new BurstTest(shortTwin, "K-3", 368.BarGauge(), BurstTest.Wall),
            new BurstTest(shortTwin, "K-4", 354.BarGauge(), BurstTest.Wall),
            new BurstTest(shortTwin, "K-5", 377.BarGauge(), BurstTest.Wall)));
        var layup = vessel.Layup();
        var body = new FinnedBody(
            [Nose.TangentOgive(230.Millimetres(), 71.Millimetres()), new BodyTube(1720.Millimetres(), 71.Millimetres())],
            [FinSet.Trapezoidal(3, 130.Millimetres(), 70.Millimetres(), 80.Millimetres(), 60.Millimetres(), 2.Millimetres(),
                1815.Millimetres())]);
        var parts = new MassBudget(
        [
            new MassPart("nose", 64.Grams(), 150.Millimetres()).Weighed(64.Grams()),
            new MassPart("altimeter and timer", 48.Grams(), 270.Millimetres()).Weighed(48.Grams()),
            new MassPart("canopy and cord", 100.Grams(), 380.Millimetres()).Weighed(100.Grams()),
            new MassPart("upper body", 86.Grams(), 420.Millimetres()) { Extent = 360.Millimetres(), Diameter = 71.Millimetres() },
            new MassPart("vessel", layup.Mass, 1925.Millimetres() - layup.CentreOfMass) { Extent = 1300.Millimetres(),
                Diameter = layup.OuterDiameter },
            new MassPart("fins and fillets", 70.Grams(), 1880.Millimetres()) { Extent = 130.Millimetres() },
        ]);
        var charge = new Charge(vessel.ToChamber(rating), 32.Percent(), 58.BarGauge(), Site(2.Metres()).Temperature);
        return (new Vehicle("Curlew", body, parts, charge, Nozzle.Rounded(throat), 1925.Millimetres())
        {
            Canopy = new Canopy(CanopyType.FlatCircular, 0.9.Metres()),
            Deployment = Deployment.ByApogeeSensor(0.5.Seconds()),
        }, rating);
    }

    /// <summary>Godwit as godwit.csx states it, with the ratings of booster and sustainer.</summary>
    public static (TwoStageVehicle Vehicle, Rating Booster, Rating Sustainer) GodwitByCode()
    {
        var upper = Wrapped("Godwit sustainer", "carbon sleeve 50 mm light", 50, 42, 560, 9, 2);
        var lower = Wrapped("Godwit booster", "carbon sleeve 76 mm", 80, 66, 600, 15, 3);
        var upperRating = upper.Rate(RuleSets.Club, evidence: Twins(upper, 300, 284, 315, 296));
        var lowerRating = lower.Rate(RuleSets.Club, evidence: Twins(lower, 190, 204, 182, 197));
        var (upperLayup, lowerLayup) = (upper.Layup(), lower.Layup());
        var sustainer = Stage("Godwit sustainer", [Nose.TangentOgive(180.Millimetres(), 56.Millimetres()),
            new BodyTube(900.Millimetres(), 56.Millimetres())],
            FinSet.Trapezoidal(3, 110.Millimetres(), 60.Millimetres(), 75.Millimetres(), 55.Millimetres(), 2.Millimetres(),
                965.Millimetres()),
            [
                new MassPart("nose", 38.Grams(), 110.Millimetres()).Weighed(38.Grams()),
                new MassPart("altimeter and timer", 46.Grams(), 215.Millimetres()).Weighed(46.Grams()),
                new MassPart("canopy and cord", 55.Grams(), 300.Millimetres()).Weighed(55.Grams()),
                new MassPart("upper body", 58.Grams(), 330.Millimetres()) { Extent = 300.Millimetres(), Diameter = 56.Millimetres() },
                new MassPart("vessel", upperLayup.Mass, 1065.Millimetres() - upperLayup.CentreOfMass) { Extent = 560.Millimetres(),
                    Diameter = upperLayup.OuterDiameter },
                new MassPart("fins and fillets", 44.Grams(), 1025.Millimetres()) { Extent = 110.Millimetres(),
                    Diameter = 120.Millimetres() },
            ], upper.ToChamber(upperRating), 46.BarGauge(), 9.Millimetres(), 1065.Millimetres(), 0.7.Metres());
        var booster = Stage("Godwit booster", [Nose.Cone(100.Millimetres(), 88.Millimetres()),
            new BodyTube(760.Millimetres(), 88.Millimetres())],
            FinSet.Trapezoidal(4, 150.Millimetres(), 90.Millimetres(), 110.Millimetres(), 70.Millimetres(), 3.Millimetres(),
                705.Millimetres()),
            [
                new MassPart("shoulder and latch", 90.Grams(), 60.Millimetres()).Weighed(90.Grams()),
                new MassPart("canopy and cord", 62.Grams(), 140.Millimetres()).Weighed(62.Grams()),
                new MassPart("tube", 118.Grams(), 300.Millimetres()) { Extent = 400.Millimetres(), Diameter = 88.Millimetres() },
                new MassPart("vessel", lowerLayup.Mass, 845.Millimetres() - lowerLayup.CentreOfMass) { Extent = 600.Millimetres(),
                    Diameter = lowerLayup.OuterDiameter },
                new MassPart("fins and fillets", 165.Grams(), 785.Millimetres()) { Extent = 150.Millimetres(),
                    Diameter = 190.Millimetres() },
            ], lower.ToChamber(lowerRating), 33.BarGauge(), 15.Millimetres(), 845.Millimetres(), 0.9.Metres());
        return (new TwoStageVehicle("Godwit", booster, sustainer) { Separation = Separation.ByPressureLatch(0.Seconds()) }, lowerRating,
            upperRating);
    }

    private static Vehicle Stage(string name, IReadOnlyList<BodyPart> parts, FinSet fins, IReadOnlyList<MassPart> masses, Chamber chamber,
        GaugePressure fill, Length throat, Length station, Length canopy) =>
        new(name, new FinnedBody(parts, [fins]), new MassBudget(masses), new Charge(chamber, 33.Percent(), fill,
            Site(3.Metres()).Temperature), Nozzle.Rounded(throat), station)
        {
            Canopy = new Canopy(CanopyType.FlatCircular, canopy),
            Deployment = Deployment.ByApogeeSensor(0.5.Seconds()),
        };

    private static PressureVessel Wrapped(string name, string sleeve, double bore, double neck, double length, double throat, double wall)
    {
        var aluminium = Stock.Solid("aluminium 6061-T6");
        var braid = new BraidedSleeve(Stock.Braid(sleeve));
        var ring = new Seal(SealKind.ORing) { HoldsTo = 350.BarGauge() };
        var over = new CarriedSleeve { Neck = neck.Millimetres(), Tail = 40.Millimetres(), IsTiedOff = true, Delivers = 95.Percent() };
        var dome = new DomedClosure(aluminium, wall.Millimetres(), bore.Millimetres() * 0.37);
        return new(name, new Liner(Stock.Solid("PET"), bore.Millimetres(), 0.4.Millimetres()), length.Millimetres(),
            Stock.Resin("laminating epoxy"), [braid, braid, new HoopWrap(Stock.Cloth("carbon tape 150 g")),
                new VeilWrap(Stock.Veil("glass veil 30 g"))],
            new VesselEnd(dome with { Opening = (throat + 3).Millimetres() }, over)
            {
                Seal = ring, Fittings = 10.Grams(),
                Fitting = new ThreadedFitting(aluminium, (throat + 5).Millimetres(), 1.5.Millimetres(), 12.Millimetres())
                {
                    Boss = (throat + 13).Millimetres(), Seal = ring, Mass = 12.Grams(),
                },
            },
            new VesselEnd(dome, over) { Seal = ring, Fittings = 10.Grams() });
    }

    private static VesselEvidence Twins(PressureVessel of, params double[] bars) =>
        new([.. bars.Select((bar, i) => new BurstTest(of, $"{of.Name} twin {i + 1}", bar.BarGauge(), BurstTest.Wall))]);
}
