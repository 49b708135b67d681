// Curlew, the invented single-stage trainer of the invented Saltmarsh Model Rocketry Circle.
// Every notebook starts from these givens; change one here, or for one run with --given "fill pressure=25 bar gauge".
var stock = MaterialLibrary.Typical;
var record = new DesignRecordBuilder("Curlew");

var bore = record.Given("bore", 66.Millimetres(), 50.Millimetres(), 100.Millimetres(), "The liner tube the club has.");
var straight = record.Given("vessel length", 700.Millimetres(), 300.Millimetres(), 1200.Millimetres(), "Fits the transport box.");
var fill = record.Given("fill pressure", 30.BarGauge(), 5.BarGauge(), 60.BarGauge(), "A first season on a new vessel.");
var water = record.Given("water fraction", 32.Percent(), 0.Percent(), 90.Percent(), "Near a third, to be looked at in the thrust lesson.");
var throat = record.Given("nozzle throat", 13.Millimetres(), 5.Millimetres(), 25.Millimetres(), "The release valve at hand.");
var ceiling = record.Given("ceiling", 600.Metres(), 50.Metres(), 3000.Metres(), "Agreed for Ferry Flat.");

var site = new LaunchSite("Ferry Flat (invented)", 35.Metres(), Atmosphere.Standard);
var sleeve = new BraidedSleeve(stock.Braid("carbon sleeve 65 mm light"));
var aluminium = stock.Solid("aluminium 6061-T6");
var bond = new BondedPlug(stock.Adhesive("structural epoxy"), 40.Millimetres(), BondSurface.AbradedLaminate, BondSurface.TreatedAluminium);

var vessel = new PressureVessel("Curlew", new Liner(stock.Solid("PET"), bore, 0.5.Millimetres()), straight, stock.Resin("laminating epoxy"),
    [sleeve, sleeve, new VeilWrap(stock.Veil("glass veil 30 g"))],
    new VesselEnd(new FlatClosure(aluminium, 8.Millimetres()) { Opening = throat }, bond),
    new VesselEnd(new FlatClosure(aluminium, 8.Millimetres()), bond));

var body = new FinnedBody(
    [Nose.TangentOgive(220.Millimetres(), 70.Millimetres()), new BodyTube(1130.Millimetres(), 70.Millimetres())],
    [FinSet.Trapezoidal(3, 130.Millimetres(), 70.Millimetres(), 85.Millimetres(), 60.Millimetres(), 2.Millimetres(), 1215.Millimetres())]) { Name = "Curlew" };
