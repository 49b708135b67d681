using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Laying/LayupModel
    internal static Finding OddLayersLeaveTwist(string plyName, int layers) =>
        Finding.Warning($"{plyName} has {layers} layers: an odd number leaves a small twist that isn't counted. Wind back once more.");

    internal static Finding LapIsShort(
        string wrapName, Length overlap, double pullNewtonsPerMetre, Pressure resinShear, Length wanted, double reserve, bool letsGo)
    {
        var shear = overlap.Meters > 0 ? $"at a mean shear of {Pressure.FromMegapascals(pullNewtonsPerMetre / overlap.Meters / 1e6).Show()}"
            : "over no length at all";
        return Finding.Warning(
            $"The overlap of {wrapName}, {overlap.Show(LengthUnit.Millimeter)}, has to transfer "
            + $"{Digits.Round(pullNewtonsPerMetre / 1000)} N/mm of hoop pull when its fibres break, {shear}; the resin has "
            + $"{resinShear.Show()} in shear and the ends take more than the mean. Lap {wanted.Show(LengthUnit.Millimeter)} or more (a "
            + $"reserve of {reserve} is common practice, no source)"
            + (letsGo ? ": as it is the lap lets go before the cloth does, and the predicted burst is too high." : "."));
    }

    internal static Finding BraidIsJammed(
        string braidName, Angle angle, string yarnPitch, string yarnWidth, string smallest, string largest) =>
        Finding.Warning(
            $"{braidName} is jammed at {angle.Show()}: {yarnPitch} of room for yarns {yarnWidth} wide. It lies free on {smallest} to "
            + $"{largest}; past that tows narrow and thicken, and the ply holds more resin.");

    internal static Finding BraidIsJammedAtEveryAngle(string braidName, int carriers, string yarnWidth) =>
        Finding.Warning(
            $"{braidName} is jammed at every angle: its {carriers} yarns of {yarnWidth} have no room side by side. Check the yarn "
            + "width.");

    internal static Finding BraidLeavesGaps(string braidName, Ratio coverage, string diameter) =>
        Finding.Warning(
            $"{braidName} covers {coverage.Show(2)} of the surface on {diameter}: the gaps hold resin without fibre. Take a sleeve "
            + "for this diameter.");
}
