namespace NotebookKit.Vessels.Laminates;

/// <summary>How a tube wall is loaded: hoop and axial force a width in a fixed ratio, or pressure in a closed tube that follows its
/// shape.</summary>
/// <param name="Hoop">Share around [-].</param>
/// <param name="Axial">Share along [-].</param>
/// <param name="FollowsShape">Whether the load follows the shape as pressure in a closed tube does, 1 around to 1/2 along.</param>
internal readonly record struct WallLoad(double Hoop, double Axial, bool FollowsShape)
{
    public static WallLoad ClosedTube => new(1, 0.5, true);
}
