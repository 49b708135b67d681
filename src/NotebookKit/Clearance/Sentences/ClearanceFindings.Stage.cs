using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Clearance;

/// <summary>What a flight card says of one stage; each sentence begins with the stage where there are two.</summary>
internal static partial class ClearanceFindings
{
    internal static Finding RegulatorIsAboveVessel(string own, GaugePressure regulator, GaugePressure most) =>
        Finding.Error($"{own}the regulator is set to {regulator}; were the valve not shut in time, the vessel would see that, and it may "
            + $"see {most} at most. Set the regulator lower.");

    internal static Finding NetworkLacksVessel(string own, Volume volume, string restsOn) =>
        Finding.Error($"{own}no vessel of the pad's network is the one that flies ({volume.Show()}, {restsOn}). Run the network with the "
            + "vessel that flies.");

    internal static Finding NetworkIsNotWithinRatings(string own, string? weakest) =>
        Finding.Error($"{own}the pad's network isn't shown to stay within the ratings of its parts"
            + $"{(weakest is null ? "" : $"; the weakest that is rated is {weakest}")}. Give every part its rating, and use no part that "
            + "may see more pressure than it is rated to.");

    // Clearance/StageJudge: drag
    internal static Finding DragFactorIsNotMeasured(string own, double factor, string origin) =>
        Finding.Error(
            $"{own}the factor on drag of {Digits.Round(factor)} wasn't measured: {origin}. Fit the factor to a "
            + "logged flight, or fly on the drag build-up with its band.");

    internal static Finding DragCurveIsByHand(string own, string curve) =>
        Finding.Error(
            $"{own}the drag curve \"{curve}\" was given by hand; no flight is shown that it was fitted to. Fit the drag to a logged "
            + "flight (DragCalibration), or fly on the drag build-up with its band.");

    // Clearance/StageJudge: vessel
    internal static Finding VehicleFliesOnAnotherVessel(string own, string reference, string proved) =>
        Finding.Error(
            $"{own}the vehicle flies on {reference}; the proof handed over is of {proved}. Hand over the proof of the vessel that flies.");

    internal static Finding VehicleFliesOnUnprovedVessel(string own, string restsOn) =>
        Finding.Error(
            $"{own}the rated pressure that the vehicle flies on is {restsOn}. Let it fly on the proved vessel: vehicle.On(vessel).");

    internal static Finding ProofIsAfterFlight(string own, DateOnly proof, DateOnly flight) =>
        Finding.Error($"{own}the proof is dated {Iso(proof)}, after the day of the flight, {Iso(flight)}. Check both dates.");

    internal static Finding FillIsAboveAllowance(string own, string fill, string allowed, string setBy, bool none) =>
        Finding.Error(
            $"{own}the fill pressure is {fill}; the vessel's maximum fill pressure is "
            + $"{allowed}, which {setBy} sets. {LessThan(none, "Fill the vessel to less, or change")}");

    // Clearance/StageJudge: service
    internal static Finding ServiceRecordIsOfAnotherVessel(string own, string service, string proved) =>
        Finding.Error(
            $"{own}the service record is that of {service}, the proof that of {proved}. "
            + "Hand over both of one vessel.");

    internal static Finding ServiceRecordHoldsNoProof(string own) =>
        Finding.Error($"{own}the service record holds no proof. Enter the proof that was held.");

    internal static Finding ProofIsNotTheLast(string own, string last, string given) =>
        Finding.Error(
            $"{own}the last proof in the service record is record {Short(last)}, the one handed over is {Short(given)}. Hand over the last "
            + "proof of the vessel.");

    internal static Finding ProofDatesDiffer(string own, DateOnly entered, DateOnly recorded) =>
        Finding.Error(
            $"{own}the service record dates the last proof {Iso(entered)}, the proof's own record {Iso(recorded)}; a proof is no younger "
            + "than its readings. Proof-test the vessel again, or enter the proof with its own day.");

    internal static Finding InspectionOfDayIsMissing(string own, string service, DateOnly day) =>
        Finding.Error(
            $"{own}{service} has to be inspected on the day, before the first fill; the service record holds no "
            + $"inspection of {Iso(day)}. Inspect the vessel and enter what you find.");

    // Clearance/StageJudge: fill
    internal static Finding FillIsPublishedTrace(string own, string source) =>
        Finding.Error(
            $"{own}the fill is a published measurement ({source}), not a fill of this vessel. Plan the "
            + "fill of this vessel, without Trace.");

    internal static Finding FillIsOfAnotherChamber(string own, Volume volume, string restsOn) =>
        Finding.Error(
            $"{own}the fill is that of another vessel ({volume.Show()}, {restsOn}), not of the one that flies. Plan the "
            + "fill of this vessel.");

    internal static Finding FillGoesElsewhere(string own, GaugePressure target, GaugePressure flown) =>
        Finding.Error($"{own}the fill goes to {target}, the flight starts from {flown}. Plan the fill that is flown.");

    internal static Finding FillHasOtherWater(string own, Ratio planned, Ratio flown) =>
        Finding.Error(
            $"{own}the fill is planned with {planned.Show()} of water, the flight with {flown.Show()}. Plan the fill that is flown.");

    internal static Finding FillHasOtherGas(string own, string planned, string flown) =>
        Finding.Error(
            $"{own}the fill is planned with {planned}, the flight with {flown}, or with other properties of the gas. Plan the fill that is "
            + "flown.");

    internal static Finding FillPeaksAboveAllowance(string own, string peak, string allowed, string setBy, bool none) =>
        Finding.Error(
            $"{own}the fill reaches {peak} on its way; the vessel's maximum fill pressure is "
            + $"{allowed}, which {setBy} sets. {LessThan(none, "Fill more slowly, or to less, or change")}");

    internal static Finding FillWarmsWall(string own, Temperature inside, string part, Temperature most) =>
        Finding.Error(
            $"{own}the fill may warm the inside of the wall to {inside.Show()}; the {part} sets at most {most.Show()}. Fill through a "
            + "smaller restrictor, so that the wall has time to take the heat, or to less pressure.");

    // Nothing is less than no pressure.
    private static string LessThan(bool none, string remedy) =>
        $"{(none ? "No fill is allowed: change" : remedy)} what sets the limit.";

    // Clearance/StageJudge: fins
    internal static Finding FinsJudgedAreOthers(string own, string fins) =>
        Finding.Error($"{own}the fins that were judged aren't {fins} of this vehicle. Judge the fins that fly.");

    internal static Finding TooFastForFlutter(string own, double mach, double maximum) =>
        Finding.Error(
            $"{own}the vehicle reaches Mach {Digits.Round(mach)}; no flutter pass is given above Mach {maximum}. Fly slower, or have the "
            + "fins tested.");

    internal static Finding FinsJudgedWithLessGust(string own, Speed gust, Speed planned) =>
        Finding.Error(
            $"{own}the fins were judged with a gust of {gust.Show()}; the wind planned for is {planned.Show()}. Judge them with at least "
            + "that gust.");

    internal static Finding FinsDoNotHold(string own, string fins, Speed speed) =>
        Finding.Error($"{own}{fins}: the fins don't hold at {speed.Show()}. Change what their own check names.");

    // Clearance/StageJudge: recovery
    internal static Finding RecoveryIsOfAnotherCanopy(string own, Length judged, Length flown) =>
        Finding.Error(
            $"{own}the recovery gear was judged under {judged.Show()} of canopy, the vehicle has {flown.Show()}, or of another kind. Judge "
            + "the gear that flies.");

    internal static Finding HalvesWeighOtherwise(string own, Mass halves, Mass whole, double tolerance) =>
        Finding.Error(
            $"{own}the halves on the cord weigh {halves.Show()} together, the vehicle {whole.Show()}; they must agree within "
            + $"{Digits.Round(100 * tolerance)} %. Weigh both halves.");

    internal static Finding ComesDownWithoutCanopy(string own, Speed landing) =>
        Finding.Error($"{own}the stage comes down without a canopy, at {landing.Show()}. Fit a canopy, and make sure that it deploys.");

    internal static Finding OpensFasterThanPublished(string own, Speed speed) =>
        Finding.Error(
            $"{own}the canopy comes out at {speed.Show()}, faster than any opening load is published for. Deploy it nearer to the apogee.");

    internal static Finding OpeningLoadIsAboveGear(string own, Force opening, Force allowed) =>
        Finding.Error(
            $"{own}the canopy opens with {opening.Show()}; the gear takes {allowed.Show()} with its factor of "
            + $"{Digits.Round(RecoveryCheck.RequiredFactor)}. Use stronger gear, or deploy nearer to the apogee.");

    internal static Finding DescentIsTooFast(string own, Speed descent, Speed fastest) =>
        Finding.Error(
            $"{own}the stage reaches the ground at {descent.Show()} under its canopy; at most {fastest.Show()} is accepted {Accepted}. Use "
            + "a larger canopy, or deploy it higher.");

    // Clearance/StageJudge: stability
    internal static Finding MarginWasHeldToTooLittle(string own, double minimum) =>
        Finding.Error(
            $"{own}the margin was held to {Digits.Round(minimum)} calibres; at least 1 calibre is required of a flight {Accepted}. "
            + "Judge it by that.");

    internal static Finding StabilityIsOfAnotherVehicle(string own, double given, double computed) =>
        Finding.Error(
            $"{own}the stability handed over has a minimum margin of {Digits.Round(given)} calibres, this vehicle "
            + $"{Digits.Round(computed)}: it is of another vehicle or fill. Compute it for this one.");

    internal static Finding MarginIsLow(string own, double margin, double minimum) =>
        Finding.Error(
            $"{own}the minimum static margin is {Digits.Round(margin)} calibres; at least {Digits.Round(minimum)} is required "
            + "throughout. Add ballast in the nose or enlarge the fins.");

    private static string Short(string fingerprint) => fingerprint.Length > 12 ? fingerprint[..12] : fingerprint;

    private static string Iso(DateOnly on) => on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
