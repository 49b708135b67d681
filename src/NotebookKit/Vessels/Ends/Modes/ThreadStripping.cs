using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Force and pressure at which a screwed cap's thread strips.</summary>
/// <param name="Cap">The cap.</param>
/// <param name="ExternalArea">Area of the external thread that would strip.</param>
/// <param name="InternalArea">Area of the internal thread that would strip.</param>
/// <param name="PullOut">Force at which the weaker thread strips.</param>
/// <param name="ExternalGoes">Whether the external thread is the weaker; else the internal one.</param>
/// <param name="Pressure">Pressure at which it strips.</param>
/// <remarks>Source: FED-STD-H28/2B, as tabulated in Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed.</remarks>
public sealed record ThreadStripping(ScrewedCap Cap, Area ExternalArea, Area InternalArea, Force PullOut, bool ExternalGoes,
    GaugePressure Pressure) : EndModeResult
{
    /// <summary>Shear in the external thread under a pressure. Source: thrust over area.</summary>
    /// <param name="pressure">Pressure; 0 to 2000 bar.</param>
    /// <exception cref="OutOfRangeException">The pressure is out of range.</exception>
    public Pressure ExternalShearAt(GaugePressure pressure) => Cap.Thrust(pressure) / ExternalArea;

    /// <summary>Shear in the internal thread under a pressure. Source: thrust over area.</summary>
    /// <param name="pressure">Pressure; 0 to 2000 bar.</param>
    /// <exception cref="OutOfRangeException">The pressure is out of range.</exception>
    public Pressure InternalShearAt(GaugePressure pressure) => Cap.Thrust(pressure) / InternalArea;

    /// <inheritdoc/>
    public override string Title => $"Thread {Cap.Thread.Name} stripped";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Strip areas of a 60° thread at the limits of its tolerances",
        ["Every counted turn carries alike.", "The nut's wall neither stretches nor opens; a thin or plastic one does, and strips sooner."],
        "60° threads, engagement up to one diameter counted.",
        [ModeSources.StripAreas, ModeSources.ThreadTolerances]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("strips at", Pressure.ToString(), ExternalGoes ? "the external thread goes" : "the internal thread goes"),
        new("pull-out force", PullOut.ToUnit(ForceUnit.Kilonewton).Show()),
        new("area of the external thread", Mm2(ExternalArea)),
        new("area of the internal thread", Mm2(InternalArea)),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Area of the external thread", @"A_s = \frac{\pi\,l}{P}\,D_1\left(\frac{P}{2}+\frac{d_2-D_1}{\sqrt{3}}\right)",
            $"l {Cap.Counted.Show()}, P {Cap.Thread.Pitch.Show()}, D1 {Cap.Thread.InternalMinor.Show(5)}, d2 " +
                $"{Cap.Thread.ExternalPitch.Show(5)}", Mm2(ExternalArea), ModeSources.StripAreas),
        new("Area of the internal thread", @"A_n = \frac{\pi\,l}{P}\,d\left(\frac{P}{2}+\frac{d-D_2}{\sqrt{3}}\right)",
            $"d {Cap.Thread.ExternalMajor.Show(5)}, D2 {Cap.Thread.InternalPitch.Show(5)}", Mm2(InternalArea), ModeSources.StripAreas),
        new("Pressure at which it strips", @"p = \frac{\min(A_s\,\tau_s,\ A_n\,\tau_n)}{\pi d_s^2/4}",
            $"{PullOut.ToUnit(ForceUnit.Kilonewton).Show()} over a seal of {Cap.SealDiameter.Show()}", Pressure.ToString(),
            ModeSources.Equilibrium),
    ]);

    private static string Mm2(Area area) => area.ToUnit(AreaUnit.SquareMillimeter).Show(4);
}
