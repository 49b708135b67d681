// Curlew, the invented single-stage vehicle of the invented Saltmarsh Model Rocketry Circle. Its values stand in curlew.json, with their reasons;
// every notebook starts from them. Change one there, or for one run: --given "fill pressure=45 bar gauge".
var club = Design.Read("curlew.json").With(session.Givens);
var stock = club.Materials;
var design = new DesignRecordBuilder("Curlew", session.Givens);
club.State(design);

// The vessel, what tests have shown of its kind, and what it may be filled to by the club's rule.
var vessel = club.Vessel;
var (heavy, tape, veil) = (vessel.Plies.OfType<BraidedSleeve>().First(), vessel.Plies.OfType<HoopWrap>().First(), vessel.Plies.OfType<VeilWrap>().First());
var layup = vessel.Layup();
var twins = club.Evidence;
var rating = club.Rating;
var working = club.Stage.WorkingPressure ?? rating.WorkingPressure;
var proof = club.Stage.Proof;

// The vehicle, and where it flies.
var curlew = club.Vehicle;
var site = club.Site!;
var (body, parts, charge, nozzleAt) = (curlew.Body, curlew.Parts, curlew.Charge, curlew.NozzleEndAt);
var (chamber, water, fill) = (charge.Chamber, charge.WaterFraction, charge.Pressure);
var (throat, finThickness, ceiling) = (curlew.Nozzle.Throat, body.Fins[0].Thickness, site.Ceiling!.Value);
