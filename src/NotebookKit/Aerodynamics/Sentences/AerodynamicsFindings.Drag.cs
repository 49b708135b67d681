using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Aerodynamics;

internal static partial class AerodynamicsFindings
{
    // Aerodynamics/Drag/BodyDrag
    internal static Finding PublishedFormsLeaveDragBand(double low, double high) =>
        Finding.Note(
            $"the published forms leave the drag coefficient between {Digits.Round(low)} and {Digits.Round(high)}; use both "
            + "ends for the height, or fit the drag to a flight.");

    internal static Finding RailButtonsAreNotCounted() =>
        Finding.Note("the drag of rail buttons, joints and screws isn't counted; set Protuberance where they protrude.");

    // Aerodynamics/Drag/DragAssumptions
    internal static Finding LateTransitionBelowEarly(double lateTransition, double earlyTransition) =>
        Finding.Error(
            $"late transition Reynolds number is {Digits.Round(lateTransition)}, below the early one of "
            + $"{Digits.Round(earlyTransition)}; swap the two.");
}
