using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing;

internal static partial class ProofingFindings
{
    private const string Finer = "Read a finer tape at more stations, or proof-test the vessel again with a burette.";

    // Proofing/TapeReadings
    internal static Finding NoGirthOrLength(string what) =>
        Finding.Error($"No {what} was read, so the growth in volume isn't known; read at least one {what} before, at and after the proof.");

    // Proofing/DropsSeen, SoundHeard
    internal static Finding PlaceOfLeakUnknown(string place, IEnumerable<string> names) =>
        Finding.Error($"place of the drops is {place}; it must be one of {string.Join(", ", names)}.");

    internal static Finding SoundUnknown(string kind, IEnumerable<string> names) =>
        Finding.Error($"sound is {kind}; it must be one of {string.Join(", ", names)}.");

    // Proofing/TapeJudgement
    internal static Finding TapeWasNotReadAfter(bool didNotGrow) =>
        Finding.Error(didNotGrow
            ? $"By tape and rule the vessel didn't grow at proof pressure, so permanent expansion is not shown. {Finer}"
            : "Girth and length weren't all read after the vessel was depressurised, so permanent expansion is not shown. Proof-test the "
                + "vessel again and read them before, at and after the proof.");

    internal static Finding TapeShowsSet(double sharePercent, double errorPercent, Ratio limit, string rule) =>
        Finding.Error(
            $"By tape and rule {Digits.Round(sharePercent)} % of the growth stay, known within ± {Digits.Round(errorPercent, 2)} %; "
            + $"{limit.Show()} is the limit of {rule}: the laminate has cracked or crept.");

    internal static Finding TapeCannotTellSet(double sharePercent, double errorPercent, Ratio limit) =>
        Finding.Error(
            $"By tape and rule {Digits.Round(sharePercent)} % of the growth stay, known within ± {Digits.Round(errorPercent, 2)} "
                + "% only: that "
            + $"can't tell {limit.Show()}, so permanent expansion is not shown. {Finer}");

    internal static Finding TapeShrank(double sharePercent, double errorPercent) =>
        Finding.Error(
            $"By tape and rule the vessel is smaller after the proof than before, {Digits.Round(sharePercent)} % of its growth, "
                + "known within "
            + $"± {Digits.Round(errorPercent, 2)} %: the readings don't agree. {Finer}");

    internal static Finding TapeShowsNoSet(double sharePercent, double errorPercent, Ratio limit) =>
        Finding.Note(
            $"Permanent expansion is shown by tape and rule: {Digits.Round(sharePercent)} % of the growth, known within ± "
            + $"{Digits.Round(errorPercent, 2)} %; {limit.Show()} is the limit.");

    internal static Finding TapeGrowthTooMuchOrUnknown(string grew, double ratio, double spread, string expected, double most) =>
        Finding.Error(
            $"By tape and rule the vessel grew by {grew}, {Digits.Round(ratio, 2)} ± {Digits.Round(spread, 2)} times the expected "
                + $"{expected}; "
            + $"less than {Digits.Round(most)} times (common practice, no source) is not shown. Check the layup against the "
                + $"prediction. {Finer}");

    internal static Finding TapeGrewLittle(string grew, double ratio, string expected) =>
        Finding.Warning(
            $"By tape and rule the vessel grew by {grew}, {Digits.Round(ratio, 2)} times the expected {expected}: the layup isn't what the "
            + "prediction took, or the tape was misread.");

    internal static Finding TrappedAirIsNotShown() =>
        Finding.Error("Trapped air is not shown: neither a burette nor the water pumped in was read with its error, and air hides "
            + "a leak from "
            + "the gauge. Proof-test the vessel again and weigh the water that is pumped in.");

    internal static Finding TapeAirIsTrapped(string air, string within, string limit) =>
        Finding.Error($"The water pumped in points to {air} ± {within} of trapped air; {limit} is the limit. Bleed again: air "
            + "makes a burst "
            + "dangerous and a leak invisible.");

    internal static Finding TapeCannotTellAir(string air, string within, string limit) =>
        Finding.Error($"The water pumped in points to {air} ± {within} of trapped air, which can't tell the limit of {limit}, so it is not "
            + $"shown that the vessel was bled. {Finer}");

    internal static Finding TapeAndBuretteDiffer(double sharePercent, double errorPercent, Ratio limit) =>
        Finding.Error(
            $"By tape and rule {Digits.Round(sharePercent)} % ± {Digits.Round(errorPercent, 2)} % of the growth stay, above the limit of "
            + $"{limit.Show()}, and the burette shows less: one of them was misread. Check both and proof-test the vessel again.");

    internal static Finding DropsWereSeen(string place, GaugePressure at, double dropsPerMinute, double millilitersPerMinute,
        IEnumerable<string> reasons, string remedy, bool isOffTheVessel)
    {
        var sentence = $"Drops came {place} at {at}, {Digits.Round(dropsPerMinute, 2)} a minute, some "
            + $"{Digits.Round(millilitersPerMinute, 2)} mL/min: {string.Join(" ", reasons)} {remedy}";
        return isOffTheVessel ? Finding.Warning(sentence) : Finding.Error(sentence);
    }

    internal static Finding CrackAtOrBelowWorkingPressure(GaugePressure at, GaugePressure working) =>
        Finding.Error(
            $"A loud crack was heard at {at}, at or below the working pressure of {working}: what let go isn't known (common practice, no "
            + "source). Inspect ends and wall, and proof-test the vessel again.");

    internal static Finding CrackWasHeard(GaugePressure at) =>
        Finding.Warning($"A loud crack was heard at {at}: inspect ends and wall, and listen on the next proof.");

    internal static Finding TickingWasHeard(GaugePressure at) =>
        Finding.Note($"Ticking was heard from {at} on: resin that cracks, usual when a wall is loaded for the first time; on a "
            + "second proof the "
            + "vessel should be quiet up to the pressure it has seen before.");
}
