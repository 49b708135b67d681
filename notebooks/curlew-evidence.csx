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

// What comes of computations: fill, fins, recovery gear, margin, stand-off, scatter. Sheet, bond, gear and scatter stand in curlew.json.
var stage = club.Stage;
var fillPlan = (stage.PadFill! with { Chamber = proved.Chamber, Wall = FillWall.Of(proved.Chamber, water) }).Run();
var finsJudged = body.FinStructure(stage.FinSheet!, stage.FinBond!, flown.Fly(site).Figures.MaximumSpeed, stage.FinGust!.Value);
var scatter = club.Scatter!;
var flightEvidence = new FlightEvidence
{
    Day = flightDay, Vessel = proved, Service = service, VesselTemperature = site.Temperature,
    ResinMoisture = Property.Measured(0.5.Percent(), 0, "invented: a strip kept with the vessel, weighed on the day"), Fill = fillPlan, Pad = stage.Pad, Fins = [finsJudged],
    Recovery = stage.RecoveryGear!.Check(), Stability = flown.Stability(), StandOff = flown.StandOff(site),
    Scatter = flown.Disperse(site, scatter.Spread, scatter.Flights, scatter.Seed, batch: session.Batch), Flight = "first flight of the season",
};
