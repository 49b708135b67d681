using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Laying/LayupModel
    internal static Finding OddLayersLeaveTwist(string plyName, int layers) =>
        Finding.Warning($"{plyName} has {layers} layers: an odd number leaves a small twist that isn't counted. Wind back once more.");

    internal static Finding LapLetsGoBeforeCloth(string sentence) =>
        Finding.Warning($"{sentence}: as it is the lap lets go before the cloth does, and the predicted burst is too high.");

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
