using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance;

/// <summary>What a flight card says of the flight as a whole.</summary>
internal static partial class ClearanceFindings
{
    private const string Accepted = "(common practice, no source)";

    // Clearance/CardJudgement
    internal static Finding FlightAtBandEndHasNoAnswer(string end) =>
        Finding.Error(
            $"at the {end} end of the drag band the flight has no answer. Fly the vehicle at that end and do what the findings of "
            + "that flight name.");

    internal static Finding StandOffIsOfAnotherFill(string unlike) => Finding.Error($"{unlike}. Compute the stand-off for this fill.");

    internal static Finding SpectatorsDistanceIsOfLowerApogee(Length spectators, Length computedFor, Length highest) =>
        Finding.Error(
            $"the spectators' distance of {spectators.Show()} was computed for an apogee of {computedFor.Show()}; this flight may reach "
            + $"{highest.Show()}. Compute the distance for this vehicle on this site.");

    internal static Finding ScatterIsOfAnotherVehicle(string scatterVehicle, string scatterSite, string vehicle, string site) =>
        Finding.Error(
            $"the scatter on the card is of {scatterVehicle} from {scatterSite}, not of {vehicle} from {site}. Disperse this one.");

    internal static Finding ScatterIsOfAnotherFlight(string vehicle) =>
        Finding.Error(
            $"the scatter on the card is of another {vehicle} or another wind: its expected flight isn't the one on this card. "
            + "Disperse this one.");

    internal static Finding ScatterIsPart(string part) =>
        Finding.Error($"the scatter on the card is shard {part} only. Merge all of them.");

    internal static Finding ScatterHasTooFewFlights(int flights, int fewest) =>
        Finding.Error(
            $"the scatter on the card has {flights} flights; at least {fewest} are needed to tell what happens in 1 % of them. Disperse "
            + "with more flights.");

    internal static Finding ScatterVariesTooLittle(IEnumerable<string> still) =>
        Finding.Error(
            $"in the scatter on the card nothing varies in {string.Join(", ", still)}, so all its flights are too much alike. Disperse "
            + "with a spread of each.");

    internal static Finding ScatterHasAnotherCeiling(Length? ceiling) =>
        Finding.Error(
            $"the scatter on the card was judged by {(ceiling is { } other ? $"a ceiling of {other.Show()}" : "no ceiling")}, not by this "
            + "site's. Disperse again.");

    internal static Finding ScatterHasAnotherField() =>
        Finding.Error("the scatter on the card was judged by another field than this site's. Disperse again.");

    internal static Finding ScatterHasTooManyFailures(string failed, Ratio accepted) =>
        Finding.Error(
            $"in {failed} of the flights there is no landing by the model; at most {accepted.Show()} is accepted {Accepted}. Find out why "
            + "before you fly.");

    internal static Finding ScatterIsAboveCeiling(string above, Ratio accepted) =>
        Finding.Error(
            $"the ceiling is exceeded in {above} of the flights; at most {accepted.Show()} is accepted {Accepted}. Use less pressure, or "
            + "ask for a higher ceiling.");

    internal static Finding ScatterIsOffField(string lander, string off, Ratio accepted) =>
        Finding.Error(
            $"{lander} lands off the field in {off} of the flights; at most {accepted.Show()} is accepted {Accepted}. Lean the rail into "
            + "the wind, deploy lower, or wait.");

    internal static Finding BoosterScatterIsOffField(string off, Ratio accepted) =>
        Finding.Error(
            $"the booster lands off the field in {off} of the flights; at most {accepted.Show()} is accepted {Accepted}. Lean the rail "
            + "into the wind, or wait.");

    internal static Finding WindPlannedIsAboveLimit(Speed planned, Speed limit, string setBy) =>
        Finding.Error(
            $"the wind planned for at the rail, {planned.Show()}, is above the limit of {limit.Show()}, which {setBy} sets. Wait for less "
            + "wind, or change what sets the limit.");

    // Clearance/FlightCard, Clearance/TwoStageFlightCard
    internal static Finding MarginInFlightIsLow(double margin, double minimum) =>
        Finding.Error(
            $"the minimum static margin in flight is {Digits.Round(margin)} calibres; at least {Digits.Round(minimum)} is required "
            + "throughout. Add ballast in the nose or enlarge the fins.");

    internal static Finding ApogeeAboveCeiling(Length apogee, Length ceiling) =>
        Finding.Error(
            $"the expected apogee is {apogee.Show()}, above the ceiling of {ceiling.Show()}. Use less pressure, or ask for a higher "
            + "ceiling.");

    internal static Finding LightFlightHasNoAnswer() =>
        Finding.Error("at the light end of the drag band the flight has no answer. Do what the findings of that flight name.");

    internal static Finding OneLineForTwoPressures(GaugePressure booster, GaugePressure sustainer) =>
        Finding.Error(
            $"both vessels are filled through one line, but to {booster} and {sustainer}; one line gives one pressure. Fill them one after "
            + "the other, or to one pressure.");

    internal static Finding OneVesselInBothStages(string vessel) =>
        Finding.Error(
            $"booster and sustainer are both said to fly on {vessel}; one vessel can't be in two places. Hand over the proof of each.");
}
