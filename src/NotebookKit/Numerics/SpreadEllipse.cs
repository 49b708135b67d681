namespace NotebookKit.Numerics;

/// <summary>An ellipse about the mean of points in a plane.</summary>
/// <param name="CentreX">Centre along x [unit of the points]; any finite value.</param>
/// <param name="CentreY">Centre along y [unit of the points]; any finite value.</param>
/// <param name="SemiMajor">Longer semi-axis [unit of the points]; 0 or above.</param>
/// <param name="SemiMinor">Shorter semi-axis [unit of the points]; 0 or above.</param>
/// <param name="Angle">Direction of the longer axis, from x towards y [rad]; −π/2 to π/2.</param>
public readonly record struct SpreadEllipse(double CentreX, double CentreY, double SemiMajor, double SemiMinor, double Angle)
{
    /// <summary>Whether a point lies inside or on it.</summary>
    /// <param name="x">Point along x [unit of the points]; any finite value.</param>
    /// <param name="y">Point along y [unit of the points]; any finite value.</param>
    public bool Contains(double x, double y)
    {
        var (sine, cosine) = Math.SinCos(Angle);
        var (dx, dy) = (x - CentreX, y - CentreY);
        var (along, across) = (((dx * cosine) + (dy * sine)) / SemiMajor, ((dy * cosine) - (dx * sine)) / SemiMinor);
        return (along * along) + (across * across) <= 1;
    }
}
