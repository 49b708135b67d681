using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Sheets;

/// <summary>What is done when something goes wrong at the pad or in a proof. Source: common practice, no source.</summary>
public static class SheetRules
{
    /// <summary>How long everybody stays behind cover after a misfire, once the gauge reads zero; common practice, no source.</summary>
    public static Duration MisfireWait { get; } = 60.Seconds();

    /// <summary>Where <see cref="MisfireWait"/> comes from.</summary>
    public static Source MisfireSource { get; } = Source.CommonPractice("a minute behind cover after a misfire");

    /// <summary>What ends a proof at once.</summary>
    /// <param name="standOff">Distance that everybody keeps; above 0.</param>
    public static IReadOnlyList<string> AbortProof(Length standOff) =>
    [
        $"Stop and depressurise from afar as soon as anybody comes nearer than {standOff.Show()} or leaves cover.",
        "Stop when the gauge falls during a hold by more than cooling explains, when drops show, or when the water pumped in is well over "
            + "the number of its step.",
        "Stop at any crack, white spot, moved closure or new sound. Never tighten anything under pressure.",
        "Nobody goes near before the gauge reads zero and the vent is open. If the gauge can't be read, the vessel counts as pressurised.",
    ];

    /// <summary>What is done when the vehicle doesn't leave or the fill has to be given up.</summary>
    /// <param name="slowestVent">Longest time that venting takes, above 0; none where it isn't computed.</param>
    public static IReadOnlyList<string> Misfire(Duration? slowestVent) =>
    [
        "Misfire or doubt: nobody moves. Shut the fill valve, open the dump valve from afar, and keep watching the gauge.",
        slowestVent is { } slowest ? $"Venting takes up to {slowest.Show()}; then wait until the gauge reads zero."
            : "How long venting takes is not computed here: wait until the gauge reads zero.",
        $"After the gauge reads zero wait {MisfireWait.Show()} more behind cover (common practice, no source); then one person approaches "
            + "from the side, out of line of the nozzle, and leaves the dump valve open.",
        "If the dump valve doesn't open or the gauge can't be read, nobody approaches: the range safety officer decides.",
    ];
}
