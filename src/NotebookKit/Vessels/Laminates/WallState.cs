namespace NotebookKit.Vessels.Laminates;

/// <summary>Strain of a wall in balance with its load.</summary>
/// <param name="X">Strain along [-]: Green's, so that turning fibres are followed exactly, or the small strain where shape isn't
/// followed.</param>
/// <param name="Y">Strain around [-], of the same kind.</param>
/// <param name="IsSmall">Whether the strains are small strains.</param>
/// <param name="LineLoad">Load in balance with it [N/m].</param>
/// <param name="LinerShare">Share of the load that the liner carries, around or along, whichever is more [-].</param>
internal readonly record struct WallState(double X, double Y, bool IsSmall, double LineLoad, double LinerShare)
{
    /// <summary>Engineering strain along [-].</summary>
    public double Axial => IsSmall ? X : Math.Sqrt(1 + 2 * X) - 1;

    /// <summary>Engineering strain around [-].</summary>
    public double Hoop => IsSmall ? Y : Math.Sqrt(1 + 2 * Y) - 1;

    /// <summary>Angle that fibres laid at the given angle have turned to [rad].</summary>
    public double Turned(double radians) =>
        radians >= Math.PI / 2 ? radians : Math.Atan(Math.Tan(radians) * (1 + Hoop) / (1 + Axial));
}
