using UnitsNet;

namespace NotebookKit.Vessels.Laminates;

/// <summary>How a bare tube wall fails: where its resin first cracks and where it ends are two answers, never one.</summary>
/// <param name="FirstPlyFailure">Mean stress at the first resin crack: a leak, where nothing lines the wall.</param>
/// <param name="Last">Mean stress at which the last load-carrying fibres break.</param>
/// <param name="Netting">Mean stress by netting analysis: every fibre at its strength, resin nothing.</param>
/// <param name="Mode">What ends it.</param>
/// <param name="Ply">Which ply ends it.</param>
/// <param name="ResinStrain">Largest strain across or in shear that resin would have to follow at the end.</param>
/// <param name="IsMatrixDominated">
/// Whether that is more than resin can follow, or netting analysis finds over 15 % less: then <paramref name="Last"/> is an upper bound and
/// not a prediction.
/// </param>
/// <param name="Strain">Strain of the wall at the end.</param>
/// <param name="Steps">All that gives way, in order.</param>
/// <remarks>Stresses are load over thickness around the tube, or along where nothing pulls around. Source: as
/// <see cref="TubeWall"/>.</remarks>
public sealed record WallFailure(
    Pressure FirstPlyFailure, Pressure Last, Pressure Netting, FailureMode Mode, string Ply, Ratio ResinStrain, bool IsMatrixDominated,
        TubeStrain Strain, IReadOnlyList<DamageStep> Steps)
{
    /// <summary>
    /// Strain past which resin no longer follows as a solid: the end of the measured shear curve of an epoxy ply.
    /// Source: Soden, Hinton and Kaddour, Compos. Sci. Technol. 58, 1998, shear curve of E-glass/MY750.
    /// </summary>
    internal const double FollowableResinStrain = 0.04;

    /// <summary>Part of its end that a wall may owe to resin and turning fibres before it is called matrix-dominated. Common practice, no
    /// source.</summary>
    internal const double LeaningShare = 0.15;

    // σ1 = σy(cos φ + sin φ/√3), σ2 = σy(cos φ − sin φ/√3) lies on the ellipse for every φ.
    private static readonly (double First, double Second)[] Ellipse = [.. Enumerable.Range(-30, 61).Select(i =>
    {
        var (s, c) = Math.SinCos(i * Math.PI / 60);
        return (c + s / Math.Sqrt(3), c - s / Math.Sqrt(3));
    })];

    /// <summary>Whether a wall leans on more than its fibres as laid and its liner.</summary>
    internal static bool IsLeaning(in WallOutcome outcome, double nettingLoad) =>
        outcome.Mode == FailureMode.Mechanism || outcome.ResinStrain > FollowableResinStrain
        || nettingLoad < (1 - LeaningShare - outcome.LinerShare) * outcome.BurstLineLoad;

    internal static WallFailure Of(TubeWall wall, WallLoad load, in WallOutcome outcome, List<WallEvent> trace)
    {
        var scale = (load.Hoop > 0 ? load.Hoop : load.Axial) / wall.Thickness.Meters;
        return new WallFailure(
            Mean(double.IsNaN(outcome.FirstPlyFailureLineLoad) ? outcome.BurstLineLoad : outcome.FirstPlyFailureLineLoad),
            Mean(outcome.BurstLineLoad),
            Mean(NettingLoad([.. wall.Plies.Select((p, i) => p.ToLayer(i))], load)),
            outcome.Mode,
            Name(outcome.Ply),
            Ratio.FromPercent(100 * outcome.ResinStrain),
            IsLeaning(outcome, NettingLoad([.. wall.Plies.Select((p, i) => p.ToLayer(i))], load)),
            TubeStrain.Of(outcome.State.Hoop, outcome.State.Axial),
            [.. trace.Select(e => new DamageStep(Mean(e.LineLoad), e.Mode, Name(e.Ply)))]);

        Pressure Mean(double lineLoad) => Pressure.FromPascals(lineLoad * scale);
        string Name(int ply) => ply >= 0 ? wall.Plies[ply].Name : "wall";
    }

    /// <summary>
    /// Netting analysis of any wall: every fibre at its strength, load the smaller of what they carry around and along. A liner at its
    /// yield takes whatever state on the von Mises ellipse helps most, which by the lower-bound theorem it can hold.
    /// </summary>
    internal static double NettingLoad(ReadOnlySpan<WallLayer> layers, in WallLoad load, double linerForce = 0)
    {
        double around = 0, along = 0;
        foreach (ref readonly var layer in layers)
        {
            var (s, c) = Math.SinCos(layer.Angle);
            around += layer.NettingStrength * layer.Thickness * s * s;
            along += layer.NettingStrength * layer.Thickness * c * c;
        }

        if (linerForce <= 0) return Least(around, along, load);
        var best = 0.0;
        foreach (var (atHoop, atAxial) in Ellipse)
            best = Math.Max(best, Least(around + linerForce * atHoop, along + linerForce * atAxial, load));
        return best;

        static double Least(double around, double along, in WallLoad load) => Math.Min(
            load.Hoop > 0 ? around / load.Hoop : double.PositiveInfinity, load.Axial > 0 ? along / load.Axial : double.PositiveInfinity);
    }
}

/// <summary>One thing that gives way on the way to burst.</summary>
/// <param name="MeanStress">Load over thickness of the laminate, around the tube (along where nothing pulls around).</param>
/// <param name="Mode">What gives way.</param>
/// <param name="Ply">Name of the ply; "wall" or "liner" otherwise.</param>
public sealed record DamageStep(Pressure MeanStress, FailureMode Mode, string Ply);
