using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Shear of the adhesive in a round bond.</summary>
/// <param name="Bond">The bond.</param>
/// <param name="How">How it is loaded, a few words.</param>
/// <param name="Load">The load as given.</param>
/// <param name="Omega">Rate at which the shear falls off from the ends, ω.</param>
/// <param name="Mean">Mean shear.</param>
/// <param name="AtFirst">Shear at the end where the first part comes in and the second stops.</param>
/// <param name="Middle">Shear in the middle of the overlap.</param>
/// <param name="AtSecond">Shear at the end where the first part stops.</param>
/// <remarks>Source: Volkersen, Luftfahrtforschung 15, 1938, as reviewed by da Silva et al., Int. J. Adhes. Adhes. 29, 2009.</remarks>
public sealed record BondShear(
    BondedTube Bond, string How, string Load, ReciprocalLength Omega, Pressure Mean, Pressure AtFirst, Pressure Middle, Pressure AtSecond)
        : EndModeResult
{
    /// <summary>Largest shear.</summary>
    public Pressure Peak => UnitMath.Max(AtFirst, AtSecond);

    /// <inheritdoc/>
    public override string Title => $"Shear of a round bond, {How}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Shear lag of a round bond",
        ["Elastic adhesive in shear alone.", "Parts stretch or twist evenly through their walls.",
            "No peel, no fillet, no voids: a fillet is never counted."],
        "Walls thin against the bond's radius, or a solid plug much stiffer than the adhesive.",
        [VesselSources.ShearLag]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("largest shear", Mpa(Peak), $"{Digits.Round(Mean.Pascals > 0 ? Peak / Mean : 1)} times the mean"),
        new("mean shear", Mpa(Mean)),
        new("shear at the first part's end", Mpa(AtFirst), "where the second part stops"),
        new("shear at the second part's end", Mpa(AtSecond), "where the first part stops"),
    ];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Mean shear", How == "twisted" ? @"\bar\tau = \frac{T}{2\pi a^2 l}" : @"\bar\tau = \frac{F}{2\pi a\,l}",
            $"{Load}, a {Bond.BondRadius.Show()}, l {Bond.Overlap.Show()}", Mpa(Mean), ModeSources.Equilibrium),
        new("Fall-off", @"\omega^2 = \frac{G}{h}\left(\frac{1}{k_1}+\frac{1}{k_2}\right)",
            $"G {Bond.AdhesiveShearModulus.Show()}, h {Bond.BondLine.Show()}", $"{Digits.Round(Omega.InverseMillimeters, 4)} 1/mm",
            VesselSources.ShearLag),
        new("Maximum shear",
            @"\frac{\tau_{max}}{\bar\tau} = \frac{\omega l}{2}\left(\coth\frac{\omega l}{2}" +
            @"+\left|\frac{k_1-k_2}{k_1+k_2}\right|\tanh\frac{\omega l}{2}\right)",
            $"ω·l {Digits.Round(Omega.InverseMeters * Bond.Overlap.Meters)}", Mpa(Peak), VesselSources.ShearLag),
    ]);

    private static string Mpa(Pressure stress) => stress.ToUnit(PressureUnit.Megapascal).Show();
}
