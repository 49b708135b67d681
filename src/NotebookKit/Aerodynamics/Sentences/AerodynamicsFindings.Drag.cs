using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Aerodynamics;

internal static partial class AerodynamicsFindings
{
    // Aerodynamics/Drag/BodyDrag
    internal static Finding PublishedFormsLeaveDragBand(double low, double high) =>
        Finding.Note(
            $"the published forms leave the drag coefficient between {Digits.Round(low)} and {Digits.Round(high)}; carry both ends "
            + "into the height, or fit one flight.");

    internal static Finding RailButtonsAreNotCounted() =>
        Finding.Note("nothing is counted for rail buttons, joints and screws; set Protuberance where they stick out.");

    // Aerodynamics/Drag/DragAssumptions
    internal static Finding LateTransitionBelowEarly(double lateTransition, double earlyTransition) =>
        Finding.Error(
            $"late transition Reynolds number is {Digits.Round(lateTransition)}, below the early one of "
            + $"{Digits.Round(earlyTransition)}; swap the two.");
}
