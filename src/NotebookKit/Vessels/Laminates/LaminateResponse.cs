using MathNet.Numerics.LinearAlgebra;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Laminates;

/// <summary>How a laminate answers forces and moments: strain of its middle, curvatures, stresses in every ply.</summary>
/// <remarks>Source: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, Eq. 4.29 and Ex. 4.3.</remarks>
public sealed record LaminateResponse : Result
{
    // Beyond it straight normals and small strains are no fair model of a laminate with a resin matrix. Common practice, no source.
    private const double LargestStrain = 0.05;

    private LaminateResponse(Laminate laminate, LaminateLoad load, double[] answer)
    {
        Laminate = laminate;
        Load = load;
        Middle = LaminateStrain.Of(answer[0], answer[1], answer[2]);
        CurvatureX = ReciprocalLength.FromInverseMeters(answer[3]);
        CurvatureY = ReciprocalLength.FromInverseMeters(answer[4]);
        Twist = ReciprocalLength.FromInverseMeters(answer[5]);
        Faces = [.. FacesOf(laminate, answer)];
        var most = Faces.Max(f => new[] { f.Strain.X, f.Strain.Y, f.Strain.Shear }.Max(s => Math.Abs(s.DecimalFractions)));
        Findings = most > LargestStrain ? [VesselsFindings.LaminateStrainIsLarge(100 * most, 100 * LargestStrain)] : [];
    }

    /// <summary>The laminate.</summary>
    public Laminate Laminate { get; }

    /// <summary>What it was loaded with.</summary>
    public LaminateLoad Load { get; }

    /// <summary>Strain of the middle of the stack.</summary>
    public LaminateStrain Middle { get; }

    /// <summary>Curvature along x, κx; above 0 where the last face is stretched.</summary>
    public ReciprocalLength CurvatureX { get; }

    /// <summary>Curvature along y, κy; above 0 where the last face is stretched.</summary>
    public ReciprocalLength CurvatureY { get; }

    /// <summary>Twist κxy; any sign.</summary>
    public ReciprocalLength Twist { get; }

    /// <summary>First face, middle and last face of every ply, from the first face of the stack on.</summary>
    public IReadOnlyList<PlyFace> Faces { get; }

    /// <inheritdoc/>
    public override string Title => $"Laminate of {Laminate.Plies.Count} plies under load";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Classical laminate theory",
        ["Plies are bonded, in plane stress and linear; normals stay straight.", "No stress from curing, heat or moisture.",
            "Nothing has cracked yet: stresses are those before first-ply failure."],
        "Strains of up to 5 %.",
        [VesselSources.Kaw, VesselSources.Jones]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Strain of the middle", $"{Strain(Middle.X)} along x, {Strain(Middle.Y)} along y, {Strain(Middle.Shear)} shear"),
        new("Curvature", $"{Curvature(CurvatureX)} along x, {Curvature(CurvatureY)} along y, {Curvature(Twist)} twist"),
        .. Faces.Select(f => new ResultLine($"Ply {f.Ply}, {f.Angle.ToUnit(AngleUnit.Degree).Show()}, {Name(f.Place)}", f.Stress.ToString(),
            $"{f.Height.ToUnit(LengthUnit.Millimeter).Show()} from the middle of the stack")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Strain and curvature", @"(\epsilon,\ \kappa) = (A,\ B;\ B,\ D)^{-1}\,(N,\ M)",
            $"N = ({string.Join(", ", Load.Values.Take(3).Select(v => Digits.Round(v, 4)))}) N/m, "
            + $"M = ({string.Join(", ", Load.Values.Skip(3).Select(v => Digits.Round(v, 4)))}) N·m/m",
            $"({Strain(Middle.X)}, {Strain(Middle.Y)}, {Strain(Middle.Shear)}), ({Curvature(CurvatureX)}, {Curvature(CurvatureY)}, "
            + $"{Curvature(Twist)})", VesselSources.Kaw),
        new("Stress in a ply", @"\sigma = Q\,(\epsilon + z\,\kappa)",
            $"first face of ply 1, z = {Faces[0].Height.ToUnit(LengthUnit.Millimeter).Show()}",
            Faces[0].Stress.ToString(), VesselSources.Kaw),
    ]);

    internal static LaminateResponse Of(Laminate laminate, LaminateLoad load)
    {
        var stiffness = laminate.Stiffness();
        int[] index = [1, 2, 6];
        var whole = Matrix<double>.Build.Dense(6, 6, (i, j) => (i < 3, j < 3) switch
        {
            (true, true) => stiffness.A(index[i], index[j]).NewtonsPerMeter,
            (false, false) => stiffness.D(index[i - 3], index[j - 3]).NewtonMeters,
            _ => stiffness.B(index[i % 3], index[j % 3]).Newtons,
        });
        // A is some 1e6 times D: a length of the stack's thickness brings both to one size before the matrix is turned around.
        var h = laminate.Thickness.Meters;
        var scale = Vector<double>.Build.Dense(6, i => i < 3 ? 1 : 1 / h);
        var even = Matrix<double>.Build.Dense(6, 6, (i, j) => whole[i, j] * scale[i] * scale[j]);
        var answer = even.LU().Solve(Vector<double>.Build.Dense(load.Values).PointwiseMultiply(scale)).PointwiseMultiply(scale);
        return new(laminate, load, answer.ToArray());
    }

    private static IEnumerable<PlyFace> FacesOf(Laminate laminate, double[] answer)
    {
        var z = -laminate.Thickness.Meters / 2;
        for (var i = 0; i < laminate.Plies.Count; i++)
        {
            var ply = laminate.Plies[i];
            var q = PlaneStiffness.Of(ply.Lamina).Rotated(ply.Angle.Radians);
            foreach (var (place, share) in new[] { (PlyPlace.First, 0.0), (PlyPlace.Middle, 0.5), (PlyPlace.Last, 1.0) })
            {
                var at = z + share * ply.Thickness.Meters;
                double x = answer[0] + at * answer[3], y = answer[1] + at * answer[4], xy = answer[2] + at * answer[5];
                Pressure Row(int row) => Pressure.FromMegapascals((q[row, 1] * x + q[row, 2] * y + q[row, 6] * xy) / 1e6);
                var (sx, sy, sxy) = (Row(1), Row(2), Row(6));
                yield return new(i + 1, ply.Angle, place, Length.FromMillimeters(1000 * at), LaminateStrain.Of(x, y, xy), sx, sy, sxy,
                    Lamina.Resolve(ply.Angle, sx, sy, sxy));
            }

            z += ply.Thickness.Meters;
        }
    }

    private static string Name(PlyPlace place) => place switch
    {
        PlyPlace.First => "first face", PlyPlace.Middle => "middle", _ => "last face",
    };

    private static string Strain(Ratio strain) => $"{Digits.Round(1e6 * strain.DecimalFractions)} µm/m";

    private static string Curvature(ReciprocalLength curvature) => $"{Digits.Round(curvature.InverseMeters)} 1/m";
}
