using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling;

internal static partial class FillingFindings
{
    // Filling/Reliefs/ReliefDutyResult
    internal static Finding ReliefSetAboveRating(GaugePressure set, GaugePressure rated) =>
        Finding.Error($"The relief valve is set to {set}, above the vessel's rated pressure of {rated}: set the valve to {rated} at most.");

    internal static Finding ReliefOpensTooLate(GaugePressure relieving, GaugePressure most) =>
        Finding.Error($"The relief valve is open in full only at {relieving}, above the {most} that the vessel's rating allows for: set "
            + $"the "
            + "valve lower, or use a valve with a smaller overpressure.");

    internal static Finding ReliefTooSmall(MassFlow capacity, MassFlow inflow, Area required) =>
        Finding.Error($"The relief valve passes {capacity.Show()}, and {inflow.Show()} may come in when the regulator fails open: use a "
            + $"valve of {required.Show()} or more, or a smaller restrictor.");

    internal static Finding ReliefTooNearToFill(GaugePressure fills, GaugePressure set) =>
        Finding.Warning($"The vessel is filled to {fills}, over nine tenths of the relief valve's set pressure of {set}: the valve may "
            + "simmer (common practice, no source). Fill lower, or rate the vessel higher.");
}
