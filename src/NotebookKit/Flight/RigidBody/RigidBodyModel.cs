using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.RigidBody;

/// <summary>What the six-degree-of-freedom equations assume and where they come from, said once.</summary>
internal static class RigidBodyModel
{
    public static readonly Source Stevens = new("B. L. Stevens, F. L. Lewis", "Aircraft Control and Simulation", 2003, "1.5",
        SourceKind.Unverified);

    public static readonly Source Goldstein = new("H. Goldstein", "Classical Mechanics", 1980, "5.5 and 5.6", SourceKind.Unverified);

    public static readonly Source CheckCases = new("D. G. Murri, E. B. Jackson, R. O. Shelton",
        "Check-cases for verification of 6-degree-of-freedom flight vehicle simulations, NASA/TM-2015-218675", 2015, "vol. II");

    public static readonly Source Kuipers = new("J. B. Kuipers", "Quaternions and Rotation Sequences", 1999, "ch. 11",
        SourceKind.Unverified);

    public static ModelCard Card(Earth earth, Atmosphere? atmosphere) => new(
        "Rigid body in six degrees of freedom",
        [
            $"{earth}; {(atmosphere is null ? "no air" : $"air: {atmosphere.Name}, turning with the ground")}.",
            "One rigid body; attitude as a quaternion, turning rates in the inertial frame about principal axes.",
            "Damping acts on the rates relative to the air, which turns with the ground.",
        ],
        "Near the ground, up to 20 km; held against NASA/TM-2015-218675 check cases 1 to 10.",
        [Stevens, Kuipers, CheckCases, earth.Source, .. atmosphere is null ? Array.Empty<Source>() : [atmosphere.Source]]);

    public static Working Working(FreeBody body)
    {
        var (roll, pitch, yaw) = (body.RollInertia.KilogramSquareMeters, body.PitchInertia.KilogramSquareMeters,
            body.YawInertia.KilogramSquareMeters);
        return new("Equations of motion",
        [
            new("Velocity", @"\dot{v} = g + \frac{1}{m}\,R\,F",
                $"m = {body.Mass.Show(4)}, C_D A = {Digits.Round(body.Drag * body.ReferenceArea.SquareMeters, 4)} m²", "integrated",
                Stevens),
            new("Attitude", @"\dot{q} = \frac{1}{2}\,q\,\omega", "quaternion from body to inertial axes", "integrated", Kuipers),
            new("Turning", @"I_x\,\dot{p} = M_x + (I_y - I_z)\,q\,r",
                $"I = {Digits.Round(roll, 4)}, {Digits.Round(pitch, 4)}, {Digits.Round(yaw, 4)} kg m²",
                    "integrated, the other axes likewise", Goldstein),
        ]);
    }
}
