using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Fills/PadEquipment
    internal static Finding PadPartTwice(string part) =>
        Finding.Error($"The pad's equipment names the {part} twice; name each part once, with its lowest rating.");

    // Filling/Fills/PadPlumbing
    internal static Finding PadPartBelowPressure(string part, GaugePressure rated, GaugePressure sees) =>
        Finding.Error($"The {part} is rated to {rated}, but {sees} may stand in the {part}. Use a {part} that is rated higher, or a lower "
            + "pressure.");

    internal static Finding PadPartsUnrated(IReadOnlyList<string> parts) =>
        Finding.Warning($"Rating not given: {string.Join(", ", parts)}. Read the ratings off the parts or their data sheets before the "
            + "line is used.");

    internal static Finding PadPartMissing(string part) =>
        Finding.Warning($"No {part} is given for the fill line. Never fill without a {part} on the vessel's side of the fill valve.");
}
