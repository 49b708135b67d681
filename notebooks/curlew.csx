// Curlew, the invented single-stage trainer of the invented Saltmarsh Model Rocketry Circle.
// Every notebook starts from these givens. Change one here, or for one run: --given "fill pressure=25 bar gauge".
var stock = MaterialLibrary.Typical;
var design = new DesignRecordBuilder("Curlew", session.Givens);

var bore = design.Given("bore", 66.Millimetres(), 50.Millimetres(), 68.Millimetres(), "The liner tube at hand; it has to fit the 70 mm body.");
var straight = design.Given("vessel length", 730.Millimetres(), 300.Millimetres(), 800.Millimetres(), "As long as the transport box allows.");
var working = design.Given("working pressure", 38.BarGauge(), 5.BarGauge(), 60.BarGauge(), "What the club asks of the vessel; the regulator is set to it.");
var fill = design.Given("fill pressure", 36.BarGauge(), 5.BarGauge(), 60.BarGauge(), "Two bar below the regulator, so that the valve can be shut in time.");
var water = design.Given("water fraction", 32.Percent(), 0.Percent(), 90.Percent(), "Near a third; the thrust lesson looks for the best.");
var throat = design.Given("nozzle throat", 13.Millimetres(), 5.Millimetres(), 25.Millimetres(), "The release valve at hand.");
var finThickness = design.Given("fin thickness", 2.Millimetres(), 1.Millimetres(), 5.Millimetres(), "Sheet in stock.");
var ceiling = design.Given("ceiling", 600.Metres(), 50.Metres(), 3000.Metres(), "Agreed for the field.");

// The vessel, from inside out.
var sleeve = new BraidedSleeve(stock.Braid("carbon sleeve 65 mm light"));
var heavy = new BraidedSleeve(stock.Braid("carbon sleeve 65 mm heavy"));
// Cured warm, and its glass temperature measured on a strip of the batch (invented): what the resin bears on a warm day depends on it.
var resin = stock.Resin("laminating epoxy") with { GlassTemperature = Property.Measured(88.Celsius(), 0, "invented: a strip of the batch, warmed under a weight") };
var aluminium = stock.Solid("aluminium 6061-T6");
var nozzleEnd = new VesselEnd(new FlatClosure(aluminium, 12.Millimetres()) { Opening = throat }, new CarriedSleeve());
var forwardEnd = new VesselEnd(new FlatClosure(aluminium, 9.Millimetres()), new CarriedSleeve());
var vessel = new PressureVessel("Curlew", new Liner(stock.Solid("PET"), bore, 0.5.Millimetres()), straight, resin,
    [sleeve, heavy, new HoopWrap(stock.Cloth("carbon tape 150 g")), new VeilWrap(stock.Veil("glass veil 30 g"))],
    nozzleEnd, forwardEnd);

// Twins that were taken to burst with water (all invented): each gave way at its wall, every end held at least as much.
var twins = VesselEvidence.Of(
    new BurstTest(vessel, "K-1", 244.BarGauge(), BurstTest.Wall), new BurstTest(vessel, "K-2", 225.BarGauge(), BurstTest.Wall),
    new BurstTest(vessel, "K-3", 258.BarGauge(), BurstTest.Wall), new BurstTest(vessel, "K-4", 234.BarGauge(), BurstTest.Wall));

// What it may be filled to: the club's rule, on what the twins have shown of every part, for the working pressure wanted.
var rating = vessel.Rate(RuleSets.Club, working, twins);
var chamber = vessel.ToChamber(rating);

// The outside, from the nose tip aft.
var body = new FinnedBody(
    [Nose.TangentOgive(220.Millimetres(), 70.Millimetres()), new BodyTube(1130.Millimetres(), 70.Millimetres())],
    [FinSet.Trapezoidal(3, 130.Millimetres(), 70.Millimetres(), 85.Millimetres(), 60.Millimetres(), finThickness, 1215.Millimetres())]) { Name = "Curlew" };

// What it weighs: readings of the kitchen scale (invented), the vessel as computed.
var nozzleAt = 1330.Millimetres();
var layup = vessel.Layup();
var parts = new MassBudget(
[
    new MassPart("nose", 62.Grams(), 140.Millimetres()).Weighed(62.Grams()),
    new MassPart("altimeter and timer", 48.Grams(), 260.Millimetres()).Weighed(48.Grams()),
    new MassPart("canopy and cord", 85.Grams(), 350.Millimetres()).Weighed(85.Grams()),
    new MassPart("upper body", 96.Grams(), 410.Millimetres()) { Extent = 340.Millimetres(), Diameter = 70.Millimetres() },
    new MassPart("vessel", layup.Mass, nozzleAt - layup.CentreOfMass) { Extent = straight, Diameter = layup.OuterDiameter },
    new MassPart("fins and fillets", 74.Grams(), 1285.Millimetres()) { Extent = 130.Millimetres() },
]);

// Where it flies.
var site = new LaunchSite("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard)
{
    Rail = new Rail(1.5.Metres()), Wind = WindProfile.PowerLaw(3.MetresPerSecond(), 10.Metres()), Ceiling = ceiling, Field = FlyingField.Circle(250.Metres()),
};

// The vehicle, ready to fly.
var charge = new Charge(chamber, water, fill, site.Temperature);
var curlew = new Vehicle("Curlew", body, parts, charge, Nozzle.Rounded(throat), nozzleAt)
{
    Canopy = new Canopy(CanopyType.FlatCircular, 0.9.Metres()), Deployment = Deployment.ByApogeeSensor(0.5.Seconds()),
};
