using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics;

internal static partial class AerodynamicsFindings
{
    // Aerodynamics/Fins/FinSet
    internal static Finding FinCountOutOfRange(int count) =>
        Finding.Error(
            $"fin count is {count}; it must be 3 to 6. The interference factors of the component method are published for that range.");

    internal static Finding FinThicknessOutOfRange(Length thickness, Length rootLength) =>
        Finding.Error(
            $"fin thickness is {thickness.Show()} on a root of {rootLength.Show()}; it must be below a quarter of the root. "
            + "The model treats fins as thin plates.");

    // Aerodynamics/Fins/PolygonPlanform
    internal static Finding FinOutlineCornerCountOutOfRange(int outlineCount) =>
        Finding.Error(
            $"fin outline has {outlineCount} corners; it must have 3 to 200. Give root leading edge, tip corners, root trailing edge.");

    internal static Finding FinOutlineStartsOrEndsOffBody(Length firstOut, Length lastOut) =>
        Finding.Error(
            $"fin outline starts {firstOut.Show()} and ends {lastOut.Show()} out from the body; both must be 0. The first and last "
            + "corner lie on the body.");

    internal static Finding FinCornerLiesInsideBody(Length outValue) =>
        Finding.Error(
            $"a fin corner lies {outValue.Show()} out from the body; it must be 0 or more. Leave the tab inside the body out of the "
            + "outline.");

    internal static Finding FinOutlineIsCrossedTooOften(int count, Length stations, Length stations2) =>
        Finding.Error(
            $"fin outline is crossed {count} times between {stations.Show()} and {stations2.Show()} out from the body; it must be "
            + "crossed twice. Slots and notches along the span are beyond the model: draw the outline without them.");

    // Aerodynamics/Fins/TrapezoidPlanform
    internal static Finding FinSweepOutOfRange(Length sweep) =>
        Finding.Error($"fin sweep is {sweep.Show()}; it must be −5 m to 5 m. Measure from root to tip leading edge along the body.");
}
