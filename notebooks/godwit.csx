// Godwit, the invented two-stage vehicle of the invented Saltmarsh Model Rocketry Circle: a booster, and a sustainer that starts in the air.
// Change a given here, or for one run: --given "booster fill=25 bar gauge".
var stock = MaterialLibrary.Typical;
var design = new DesignRecordBuilder("Godwit", session.Givens);

var boosterFill = design.Given("booster fill", 33.BarGauge(), 5.BarGauge(), 60.BarGauge(), "A little below what its vessel is rated to.");
var sustainerFill = design.Given("sustainer fill", 46.BarGauge(), 5.BarGauge(), 60.BarGauge(), "A little below what its vessel is rated to.");
var water = design.Given("water fraction", 33.Percent(), 5.Percent(), 60.Percent(), "Near a third in both.");
var wait = design.Given("delay", 0.Seconds(), 0.Seconds(), 5.Seconds(), "From the end of the booster's jet to separation.");

// A vessel: two sleeves, a hoop tape, a veil; domed ends under sleeves that are tied off on a neck, as Curlew's.
PressureVessel Wrapped(string name, string sleeve, Length bore, Length neck, Length length, Length throat, Length wall)
{
    var aluminium = stock.Solid("aluminium 6061-T6");
    var braid = new BraidedSleeve(stock.Braid(sleeve));
    var ring = new Seal(SealKind.ORing) { HoldsTo = 350.BarGauge() };
    var over = new CarriedSleeve { Neck = neck, Tail = 40.Millimetres(), IsTiedOff = true, Delivers = 95.Percent() };
    var dome = new DomedClosure(aluminium, wall, bore * 0.37);
    return new(name, new Liner(stock.Solid("PET"), bore, 0.4.Millimetres()), length, stock.Resin("laminating epoxy"),
        [braid, braid, new HoopWrap(stock.Cloth("carbon tape 150 g")), new VeilWrap(stock.Veil("glass veil 30 g"))],
        new VesselEnd(dome with { Opening = throat + 3.Millimetres() }, over)
        {
            Seal = ring, Fittings = 10.Grams(),
            Fitting = new ThreadedFitting(aluminium, throat + 5.Millimetres(), 1.5.Millimetres(), 12.Millimetres()) { Boss = throat + 13.Millimetres(), Seal = ring, Mass = 12.Grams() },
        },
        new VesselEnd(dome, over) { Seal = ring, Fittings = 10.Grams() });
}

var (upperThroat, lowerThroat) = (9.Millimetres(), 15.Millimetres());
var upperVessel = Wrapped("Godwit sustainer", "carbon sleeve 50 mm light", 50.Millimetres(), 42.Millimetres(), 560.Millimetres(), upperThroat, 2.Millimetres());
var lowerVessel = Wrapped("Godwit booster", "carbon sleeve 76 mm", 80.Millimetres(), 66.Millimetres(), 600.Millimetres(), lowerThroat, 3.Millimetres());
// Twins that were taken to burst with water, each at its wall (all invented).
VesselEvidence Twins(PressureVessel of, params double[] bars) => new([.. bars.Select((bar, i) => new BurstTest(of, $"{of.Name} twin {i + 1}", bar.BarGauge(), BurstTest.Wall))]);
var upperRating = upperVessel.Rate(RuleSets.Club, evidence: Twins(upperVessel, 300, 284, 315, 296));
var lowerRating = lowerVessel.Rate(RuleSets.Club, evidence: Twins(lowerVessel, 190, 204, 182, 197));
var (upperLayup, lowerLayup) = (upperVessel.Layup(), lowerVessel.Layup());

// Where it flies: a longer rail, since the stack is heavy and leaves it slowly.
var site = new LaunchSite("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard)
{
    Rail = new Rail(3.Metres()), Wind = WindProfile.PowerLaw(3.MetresPerSecond(), 10.Metres()), Ceiling = 600.Metres(), Field = FlyingField.Circle(500.Metres()),
};

// The sustainer: readings of the kitchen scale (invented), the vessel as computed.
var upperNozzle = 1065.Millimetres();
var sustainer = new Vehicle("Godwit sustainer",
    new FinnedBody(
        [Nose.TangentOgive(180.Millimetres(), 56.Millimetres()), new BodyTube(900.Millimetres(), 56.Millimetres())],
        [FinSet.Trapezoidal(3, 110.Millimetres(), 60.Millimetres(), 75.Millimetres(), 55.Millimetres(), 2.Millimetres(), 965.Millimetres())]) { Name = "Godwit sustainer" },
    new MassBudget(
    [
        new MassPart("nose", 38.Grams(), 110.Millimetres()).Weighed(38.Grams()),
        new MassPart("altimeter and timer", 46.Grams(), 215.Millimetres()).Weighed(46.Grams()),
        new MassPart("canopy and cord", 55.Grams(), 300.Millimetres()).Weighed(55.Grams()),
        new MassPart("upper body", 58.Grams(), 330.Millimetres()) { Extent = 300.Millimetres(), Diameter = 56.Millimetres() },
        new MassPart("vessel", upperLayup.Mass, upperNozzle - upperLayup.CentreOfMass) { Extent = 560.Millimetres(), Diameter = upperLayup.OuterDiameter },
        new MassPart("fins and fillets", 44.Grams(), 1025.Millimetres()) { Extent = 110.Millimetres(), Diameter = 120.Millimetres() },
    ]),
    new Charge(upperVessel.ToChamber(upperRating), water, sustainerFill, site.Temperature), Nozzle.Rounded(upperThroat), upperNozzle)
{
    Canopy = new Canopy(CanopyType.FlatCircular, 0.7.Metres()), Deployment = Deployment.ByApogeeSensor(0.5.Seconds()),
};

// The booster, with the shoulder that it falls with as a nose.
var lowerNozzle = 845.Millimetres();
var booster = new Vehicle("Godwit booster",
    new FinnedBody(
        [Nose.Cone(100.Millimetres(), 88.Millimetres()), new BodyTube(760.Millimetres(), 88.Millimetres())],
        [FinSet.Trapezoidal(4, 150.Millimetres(), 90.Millimetres(), 110.Millimetres(), 70.Millimetres(), 3.Millimetres(), 705.Millimetres())]) { Name = "Godwit booster" },
    new MassBudget(
    [
        new MassPart("shoulder and latch", 90.Grams(), 60.Millimetres()).Weighed(90.Grams()),
        new MassPart("canopy and cord", 62.Grams(), 140.Millimetres()).Weighed(62.Grams()),
        new MassPart("tube", 118.Grams(), 300.Millimetres()) { Extent = 400.Millimetres(), Diameter = 88.Millimetres() },
        new MassPart("vessel", lowerLayup.Mass, lowerNozzle - lowerLayup.CentreOfMass) { Extent = 600.Millimetres(), Diameter = lowerLayup.OuterDiameter },
        new MassPart("fins and fillets", 165.Grams(), 785.Millimetres()) { Extent = 150.Millimetres(), Diameter = 190.Millimetres() },
    ]),
    new Charge(lowerVessel.ToChamber(lowerRating), water, boosterFill, site.Temperature), Nozzle.Rounded(lowerThroat), lowerNozzle)
{
    Canopy = new Canopy(CanopyType.FlatCircular, 0.9.Metres()), Deployment = Deployment.ByApogeeSensor(0.5.Seconds()),
};

// Both together.
var godwit = new TwoStageVehicle("Godwit", booster, sustainer) { Separation = Separation.ByPressureLatch(wait) };
