using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Aerodynamics;

internal static partial class AerodynamicsFindings
{
    // Aerodynamics/NormalForces/BodyAtAngles
    internal static Finding MarginIsNegativeAtZeroAngle(double atZero) =>
        Finding.Warning(
            $"the margin is {Digits.Round(atZero)} calibres at 0°: unstable. Move the centre of gravity forward or enlarge the fins.");

    internal static Finding MarginIsGoneAtAngleOfAttack(Angle angle) =>
        Finding.Warning(
            $"the margin is gone at {angle.Show()} angle of attack; keep the angle off the rail well below that angle: use "
            + "a faster exit, less wind, or a centre of gravity further forward.");

    // Aerodynamics/NormalForces/BodyNormalForce
    internal static Finding BodyWithoutFinsIsUnstable() =>
        Finding.Warning(
            "the body has no fins; its centre of pressure lies in the nose and the vehicle is almost certainly unstable. "
            + "Add fins.");

    internal static Finding FiveFinsAreNotInSource(string finsName) =>
        Finding.Note($"{finsName}: five fins are not in the source; the interference factor of six fins is used, which gives a low value.");

    internal static Finding MoreThanOneSetOfFins() =>
        Finding.Note(
            "more than one set of fins: the wake of the fore set on the aft set is not computed, which puts the centre of "
            + "pressure too far aft when the sets are in line.");

    internal static Finding MachBeyondPrandtlGlauert(double mach) =>
        Finding.Warning(
            $"Mach {Digits.Round(mach, 2)} is in the range where the Prandtl-Glauert correction grows too fast; compute the "
            + "margin at Mach 0.8 as well and use the lower value.");
}
