using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics;

/// <summary>The sentences of aerodynamics's findings, in one place.</summary>
internal static partial class AerodynamicsFindings
{
    // Aerodynamics/Bodies/FinnedBody
    internal static Finding BodyHasNoParts() =>
        Finding.Error("the body has no parts; it needs at least a nose. List the parts from the tip aft.");

    internal static Finding FirstBodyPartIsNotNose(string partsName) =>
        Finding.Error($"the first body part is {partsName}; it must be a nose. List the parts from the tip aft.");

    internal static Finding NoseIsNotFirstBodyPart(int number) =>
        Finding.Error($"body part {number} is a nose; only the first part may be one. Use a transition between diameters.");

    internal static Finding BodyPartsDoNotMeetInDiameter(string partsName, Length aft, string partsName2, Length fore) =>
        Finding.Error(
            $"{partsName} starts at {aft.Show(LengthUnit.Millimeter)} diameter but {partsName2} ends at "
            + $"{fore.Show(LengthUnit.Millimeter)}; the two must match within 0.5 mm. Put a transition between them.");

    internal static Finding FinRootLiesOffBody(string finsName, Length lead, Length trail, Length length) =>
        Finding.Error(
            $"{finsName}: the root runs from {lead.Show()} to {trail.Show()} aft of the tip; it must lie on the body, 0 to "
            + $"{length.Show()}. Give the station of the root leading edge, measured from the nose tip.");

    internal static Finding BodyChangesDiameterUnderFinRoot(string finsName) =>
        Finding.Warning(
            $"{finsName}: the body changes diameter under the fin root; the interference factor takes the diameter at mid root.");

    // Aerodynamics/Bodies/Nose
    internal static Finding TangentOgiveTooShort(string name, Length length, Length halfBaseDiameter) =>
        Finding.Error(
            $"{name} length is {length.Show()}; a tangent ogive must be at least half its diameter long ({halfBaseDiameter.Show()}). "
            + "Use an ellipsoid for a blunter nose.");
}
