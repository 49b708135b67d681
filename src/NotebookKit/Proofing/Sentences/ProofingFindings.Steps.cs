using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Proofing;

internal static partial class ProofingFindings
{
    // Proofing/StepJudgement
    internal static Finding StepIsNotReached(GaugePressure step, GaugePressure gauge) =>
        Finding.Note($"The gauge reads {gauge}; this step is {step}. Pump on slowly, from behind cover, and read the water at the step.");

    internal static Finding GaugeIsAboveStep(GaugePressure step, GaugePressure gauge) =>
        Finding.Warning($"The gauge reads {gauge}; this step is {step}. Let the pressure down to {step} from afar, then begin the hold.");

    internal static Finding HoldGoesOn(GaugePressure step, string left) =>
        Finding.Note($"Hold at {step} for another {left}: pump no further, watch the gauge, listen.");

    internal static Finding StepIsHeld(GaugePressure step, string held, GaugePressure? next) =>
        Finding.Note($"{step} was held for the planned {held}. "
            + (next is { } to ? $"Go on to {to}." : "Depressurise fully and read the water that stays in."));

    internal static Finding GaugeIsFarAboveProof(GaugePressure gauge, GaugePressure proof) =>
        Finding.Error($"The gauge reads {gauge}, more than 5 % above the proof pressure of {proof}: stop pumping and vent from afar.");

    internal static Finding GaugeFallsInHold(double fallBar, GaugePressure step, double lostMillilitres) =>
        Finding.Error($"The gauge fell by {Digits.Round(fallBar)} bar in the hold at {step}, more than a kelvin of cooling explains, as "
            + $"for {Digits.Round(lostMillilitres)} mL of water lost: something leaks or yields. Vent from afar and look for it at no "
            + "pressure.");

    internal static Finding ProofHoldIsBelowProof(GaugePressure gauge, GaugePressure proof) =>
        Finding.Warning($"The gauge reads {gauge} in the proof hold and proof pressure is {proof}: the lowest reading of the hold counts, "
            + $"so this hold shows a lower working pressure. Pump past {proof} by no more than 2 % and begin the hold again.");

    internal static Finding WaterIsNotRead() =>
        Finding.Warning("The water pumped in isn't read: a wall that yields, a leak and trapped air can't be seen until the gauge shows "
            + "them.");

    internal static Finding TooMuchWaterWentIn(double pumpedMillilitres, double expectedMillilitres, double mostMillilitres,
        GaugePressure gauge) =>
        Finding.Error($"{Digits.Round(pumpedMillilitres)} mL went in up to {gauge}; {Digits.Round(expectedMillilitres)} mL are expected "
            + $"and {Digits.Round(mostMillilitres)} mL are the most that a sound wall and the allowed air explain. Vent from afar; then "
            + "look for a leak, for air, and for a wall that yields.");

    internal static Finding TooLittleWaterWentIn(double pumpedMillilitres, double expectedMillilitres, GaugePressure gauge) =>
        Finding.Warning($"{Digits.Round(pumpedMillilitres)} mL went in up to {gauge}; {Digits.Round(expectedMillilitres)} mL are expected. "
            + "Check that the gauge is on the vessel's side of every valve and that the measure was zeroed before pumping on.");

    internal static Finding DropsAreSeenNow(string place, GaugePressure at, string action) =>
        Finding.Error($"Drops were seen at {at}, at the {place}: {action}. Don't go near while there is pressure.");

    internal static Finding CrackStopsProof(GaugePressure at) =>
        Finding.Error($"A loud crack was heard at {at}: stop and vent from afar; inspect the vessel at no pressure.");
}
