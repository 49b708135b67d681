// Godwit, the invented two-stage vehicle of the invented Saltmarsh Model Rocketry Circle: a booster, and a sustainer that starts in the air.
// Its values stand in godwit.json. Change one there, or for one run: --given "booster fill pressure=25 bar gauge".
var club = Design.Read("godwit.json").With(session.Givens);
var design = new DesignRecordBuilder("Godwit", session.Givens);
club.State(design);

var (lower, upper) = (club.Stages[0], club.Stages[1]);
var (lowerRating, upperRating) = (lower.Rating, upper.Rating);
var (lowerLayup, upperLayup) = (lower.Vessel.Layup(), upper.Vessel.Layup());
var (boosterFill, sustainerFill) = (lower.FillPressure!.Value, upper.FillPressure!.Value);
var site = club.Site!;

// Both together.
var godwit = club.TwoStageVehicle;
var (booster, sustainer, water) = (godwit.Booster, godwit.Sustainer, godwit.Booster.Charge.WaterFraction);
