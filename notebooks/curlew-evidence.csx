// What stands behind Curlew's first flight of the season; all of it invented. Load it after curlew.csx.
// The proof of vessel C-1, as its log says.
var proofRecord = GaugeLog.Read("../data-demo/curlew-proof.csv").ToReadings(proof).Judge();
var proved = proofRecord.ToProvedVessel(rating);
var flown = curlew.On(proved);
var flightDay = new DateOnly(2026, 5, 2);

// Its service record: made, proved, inspected on the day. A club keeps this file for good; the lesson makes it anew each time.
var servicePath = Path.Combine(Path.GetTempPath(), $"curlew-c1-{Guid.NewGuid():N}.service.jsonl");
DateTimeOffset Morning(int month, int day) => new(2026, month, day, 8, 0, 0, TimeSpan.Zero);
var serviceFile = ServiceFile.Create(servicePath, proved.Vessel, proved.Serial);
serviceFile.Append(new Made(new DateOnly(2026, 2, 21), "batch 3") { At = Morning(2, 21) });
serviceFile.Append(new Proved(proved.Day, proved.Held, rating.ProofPressure / rating.WorkingPressure, proved.RuleSet, proved.Fingerprint) { At = Morning(3, 15) });
serviceFile.Append(new Inspected(InspectionResult.Sound) { At = Morning(5, 2), By = "two members" });
var service = ServiceFile.Read(servicePath);
File.Delete(servicePath);

// What comes of computations: fill, fins, recovery gear, margin, stand-off, scatter.
var fillPlan = new PadFill
{
    Chamber = proved.Chamber, Supply = proved.Allowed, Target = fill, WaterFraction = water,
    Restrictor = new Orifice(0.5.Millimetres(), 0.8), Ambient = site.Pressure, Temperature = site.Temperature,
    Heat = FillHeat.Wall, Wall = FillWall.Of(proved.Chamber, water), Port = PortPosition.UnderWater, WaterInLine = 20.Millilitres(), HasCheckValve = true,
}.Run();
var finSheet = new FinSheet("carbon sheet, 0/90", 5.Gigapascals(), 400.Megapascals(), Source.CommonPractice("typical of the material; bend a strip to failure"));
var finBond = new FinBond(10.Millimetres(), 10.Megapascals(), Source.CommonPractice("filled epoxy on sanded laminate; pull a sample"));
var finsJudged = body.FinStructure(finSheet, finBond, flown.Fly(site).Figures.MaximumSpeed, 6.MetresPerSecond());
var dryMass = parts.MassProperties().Mass;
var gear = new RecoveryGear
{
    Canopy = curlew.Canopy!, Cord = new ShockCord(ForcePerLength.FromNewtonsPerMeter(800), 600.Newtons()), Front = 212.Grams(), Rear = dryMass - 212.Grams(),
    Apart = 8.MetresPerSecond(), Anchor = 120.Newtons(),
    Joint = new PinJoint(new ShearPins(2, 2.Millimetres(), 60.Megapascals()), 66.Millimetres(), 684.Newtons()) { DragSeparation = 5.Newtons(), Trapped = 0.018.BarGauge() },
}.Check();
var flightEvidence = new FlightEvidence
{
    Day = flightDay, Vessel = proved, Service = service, VesselTemperature = site.Temperature,
    ResinMoisture = Property.Measured(0.5.Percent(), 0, "invented: a strip kept with the vessel, weighed on the day"), Fill = fillPlan, Fins = [finsJudged], Recovery = gear,
    Stability = flown.Stability(), StandOff = flown.StandOff(site), Scatter = flown.Disperse(site, new Spread(), 500, seed: 11, batch: session.Batch),
    Flight = "first flight of the season",
};
