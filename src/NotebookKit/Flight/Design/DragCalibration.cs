using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>What flights said about the drag of a vehicle: a factor on the build-up, in place of the build-up's own band.</summary>
/// <param name="Factor">Factor on the middle of the build-up [-]; 0.2 to 5.</param>
/// <param name="Uncertainty">How far the factor may be off either way, as a share of it; 0 to 90 %.</param>
/// <param name="Origin">Which log, fitted when.</param>
public sealed record DragCalibration(double Factor, Ratio Uncertainty, Source Origin)
{
    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        new[]
        {
            new ValidRange<double>(0.2, 5).Find(Factor, "factor on drag", "A fitted factor far from 1 says the model or the log is wrong."),
            new ValidRange<Ratio>(0.Percent(), 90.Percent()).Find(Uncertainty, "uncertainty of the factor on drag",
                "It is a share of the factor."),
        }.OfType<Finding>().ToList();

    /// <summary>The build-up's middle with the factor, and with its two ends.</summary>
    internal DragCurves Of(DragCurves band) => new(Of(band.Middle, DragEnd.Low), Of(band.Middle, DragEnd.Middle),
        Of(band.Middle, DragEnd.High));

    /// <summary>The build-up's middle with the factor of one end.</summary>
    internal DragCurve Of(DragCurve middle, DragEnd end) => middle.Times(end switch
    {
        DragEnd.Low => Factor * (1 - Uncertainty.DecimalFractions),
        DragEnd.High => Factor * (1 + Uncertainty.DecimalFractions),
        _ => Factor,
    });
}
