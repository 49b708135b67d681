using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Ratings/RatingModel
    internal static Finding BurstAloneWouldAllowMore(GaugePressure byBurst, string rulesName, GaugePressure highest) =>
        Finding.Note(
            $"The burst alone would allow a maximum expected pressure of {byBurst}; {rulesName} was written for no more than "
            + $"{highest}, and is held there.");

    internal static Finding RatingEndsAt(GaugePressure allowed, GaugePressure highest) =>
        Finding.Note($"The rule alone would allow a working pressure of {allowed}; no vessel is rated above {highest}, and is held there.");

    internal static Finding ProofMustStayBelowYield(string name, GaugePressure yield, double share, GaugePressure byYield) =>
        Finding.Note(
            $"The {name} first yields at {yield}; a proof must stay at or below {Digits.Round(100 * share)} % of that (common practice, no "
            + $"source), so the maximum expected pressure is held to {byYield}. Thicken the closure for more.");

    internal static Finding WorkingPressureNotAllowed(
        GaugePressure asked, string rulesName, GaugePressure highestOverOvershoot, GaugePressure designBurst, bool capped,
        GaugePressure highest, double burst, double overshoot, string limitingPart) =>
        Finding.Error(
            $"Working pressure wanted is {asked}; {rulesName} allows up to {highestOverOvershoot} on a design burst of {designBurst} "
            + "("
            + (capped
                ? $"it was written for no more than {highest}"
                : $"{Digits.Round(burst)} times")
            + $", and {Digits.Round(overshoot)} for overshoot). Ask for less, or strengthen the {limitingPart}.");

    internal static Finding LeaksBelowProof(string name, GaugePressure leak, string cause, GaugePressure proof, GaugePressure working) =>
        Finding.Warning(
            $"The {name} is known to leak from {leak} on ({cause}), below the proof at {proof}"
            + (leak < working ? $" and below the working pressure of {working}" : "")
            + ": a leak is no burst and lowers no rating, but it ends the proof. Change the part, or ask for less.");

    internal static Finding FactorsAreUnverified(string rulesName) =>
        Finding.Warning(
            $"The factors of {rulesName} are unverified, since their source is not at hand: confirm them before relying on them.");

    internal static Finding ProofAboveWallBurst(GaugePressure proof, GaugePressure wallBurst) =>
        Finding.Error($"The proof at {proof} is above the wall's own burst at {wallBurst}. Take a lower rating.");

    internal static Finding ProofStrainsFibres(
        GaugePressure proof, string ply, double fibreUsePercent, Ratio maximumProofUse, double proofOverLimit) =>
        Finding.Error(
            $"The proof at {proof} would take the fibres of {ply} to {Digits.Round(fibreUsePercent, 2)} % of what fabrication "
            + $"delivers; {maximumProofUse.Show()} is the limit, past which a proof itself does damage. Use a rule with a burst factor "
            + $"of at least {Digits.Round(proofOverLimit)}.");

    internal static Finding ProofStrainsPart(
        GaugePressure proof, string limitingPart, double proofOverDesignBurstPercent, Ratio maximumProofUse, double proofOverLimit) =>
        Finding.Error(
            $"The proof at {proof} would take the {limitingPart} to {Digits.Round(proofOverDesignBurstPercent, 2)} % of its strength; "
            + $"{maximumProofUse.Show()} is the limit, past which a proof itself does damage. Use a rule with a burst factor of at "
            + $"least {Digits.Round(proofOverLimit)}.");

    internal static Finding ProofCracksResin(GaugePressure proof, GaugePressure pressure, string? ply) =>
        Finding.Warning(
            $"The proof at {proof} goes past {pressure}, where "
            + (ply is not null
                ? $"the resin of {ply} first cracks"
                : "the liner yields")
            + ": expect sounds and some permanent growth the first time; from then on the liner alone keeps the water in.");

    internal static Finding RiskSetsPressure(string target, GaugePressure byRisk) =>
        Finding.Note($"A chance of {target} is reached at {byRisk}: the risk sets the maximum expected pressure, not the factor.");

    internal static Finding FactorCapsRisk(string target, GaugePressure byRisk, double burst, GaugePressure highest) =>
        Finding.Note(
            $"A chance of {target} would be reached at {byRisk}; the rating is held at {highest}, the design burst over "
            + $"{Digits.Round(burst)} or the most that the rules go to.");

    internal static Finding RiskRestsOnModel(string chance, int tests, string? showable) =>
        Finding.Warning(
            $"The chance of {chance} rests on the tail of the model: "
            + (tests == 0 ? "no vessel was tested"
                : showable is null ? $"of {tests} vessels tested at least one failed below that pressure"
                : $"{tests} {(tests == 1 ? "vessel" : "vessels")} without a failure at that pressure can't show a chance below {showable}")
            + ". Keep people behind cover as if the vessel were to burst.");

    internal static Finding FillsToShowRisk(string target, double fills) =>
        Finding.Note(
            $"To show a chance of {target} a fill with 95 % confidence by tests alone takes some {Digits.Round(fills, 2)} fills without a "
            + "failure.");

    // Vessels/Ratings/RatingVerbs
    internal static Finding RatingIsOfAnotherDesign(string ratingVesselName, Volume volume, string vesselName) =>
        Finding.Error(
            $"The rating is that of another design ({ratingVesselName}, {volume.Show()}), not of {vesselName} as it is here. Rate "
            + "this one.");

    // Vessels/Ratings/RuleSet
    internal static Finding BurstFactorBelowProofFactor(string name, double burst, double proof) =>
        Finding.Error(
            $"{name}: burst factor {Digits.Round(burst)} isn't above the proof factor {Digits.Round(proof)}; the proof itself would "
            + "burst the vessel.");
}
