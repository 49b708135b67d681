using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>How a tube grows.</summary>
/// <param name="Hoop">Strain around.</param>
/// <param name="Axial">Strain along; below 0 where the tube shortens.</param>
/// <param name="Volume">Growth of the volume inside over that volume, (1 + hoop)²·(1 + axial) − 1.</param>
public sealed record TubeStrain(Ratio Hoop, Ratio Axial, Ratio Volume)
{
    internal static TubeStrain Of(double hoop, double axial) => new(
        Ratio.FromPercent(100 * hoop), Ratio.FromPercent(100 * axial),
            Ratio.FromPercent(100 * ((1 + hoop) * (1 + hoop) * (1 + axial) - 1)));

    /// <summary>For example "0.27 % around, 0.15 % along, 0.69 % in volume".</summary>
    public override string ToString() => $"{Hoop.Show()} around, {Axial.Show()} along, {Volume.Show()} in volume";
}
