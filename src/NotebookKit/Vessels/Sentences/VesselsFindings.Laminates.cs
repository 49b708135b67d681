using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Laminates/Laminate
    internal static Finding LaminateHasNoPly() => Finding.Error("The laminate has no ply; give it at least one.");

    internal static Finding PlyStiffnessRefused(int number, string lamina) =>
        Finding.Error(
            $"stiffness of ply {number} is {lamina}; moduli must be 1 Pa to 10 000 GPa and ν12² below E1/E2, or the ply would "
            + "give back more energy than it took. Look at the moduli and their units.");

    // Vessels/Laminates/LaminateResponse
    internal static Finding LaminateStrainIsLarge(double mostPercent, double largestPercent) =>
        Finding.Warning(
            $"The largest strain in the laminate is {Digits.Round(mostPercent)} %; classical laminate theory holds to some "
            + $"{Digits.Round(largestPercent)} % (common practice, no source). Lower the load, or add plies.");

    // Vessels/Laminates/TubeWall
    internal static Finding PlyStrengthRefused(string plyName, string s) =>
        Finding.Error(
            $"strength of {plyName} is {s}; every strength must be 1 Pa to 10 000 GPa. Look at the strengths and their units.");
}
