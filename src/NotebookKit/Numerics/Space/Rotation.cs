namespace NotebookKit.Numerics.Space;

/// <summary>
/// Attitude of one set of axes in another, as a quaternion: turns a vector's components along the turned axes into components along the
/// fixed ones. Its length doesn't matter, so that an integration need not hold it at 1.
/// Source: J. B. Kuipers, Quaternions and Rotation Sequences, 1999, ch. 5 and 11 (unverified).
/// </summary>
internal readonly record struct Rotation(double W, double X, double Y, double Z)
{
    public static Rotation None { get; } = new(1, 0, 0, 0);

    private double Square => (W * W) + (X * X) + (Y * Y) + (Z * Z);

    public static Rotation From(ReadOnlySpan<double> values) => new(values[0], values[1], values[2], values[3]);

    /// <summary>Turns by yaw about z, then pitch about the new y, then roll about the new x [rad].</summary>
    public static Rotation FromYawPitchRoll(double yaw, double pitch, double roll)
    {
        var (sy, cy) = Math.SinCos(yaw / 2);
        var (sp, cp) = Math.SinCos(pitch / 2);
        var (sr, cr) = Math.SinCos(roll / 2);
        return new(
            (cr * cp * cy) + (sr * sp * sy),
            (sr * cp * cy) - (cr * sp * sy),
            (cr * sp * cy) + (sr * cp * sy),
            (cr * cp * sy) - (sr * sp * cy));
    }

    /// <summary>Axes given by where they point along the fixed ones; at right angles, of length 1.</summary>
    public static Rotation FromAxes(in Vector x, in Vector y, in Vector z)
    {
        // Of the four equal forms the one with the largest divisor keeps the digits.
        var trace = x.X + y.Y + z.Z;
        if (trace >= x.X && trace >= y.Y && trace >= z.Z) return new(1 + trace, y.Z - z.Y, z.X - x.Z, x.Y - y.X);
        if (x.X >= y.Y && x.X >= z.Z) return new(y.Z - z.Y, 1 + x.X - y.Y - z.Z, x.Y + y.X, z.X + x.Z);
        return y.Y >= z.Z
            ? new(z.X - x.Z, x.Y + y.X, 1 + y.Y - x.X - z.Z, y.Z + z.Y)
            : new(x.Y - y.X, z.X + x.Z, y.Z + z.Y, 1 + z.Z - x.X - y.Y);
    }

    public Rotation Inverse => new(W, -X, -Y, -Z);

    public void CopyTo(Span<double> values)
    {
        var scale = 1 / Math.Sqrt(Square);
        values[0] = W * scale;
        values[1] = X * scale;
        values[2] = Y * scale;
        values[3] = Z * scale;
    }

    /// <summary>Components along the fixed axes of a vector given along the turned ones.</summary>
    public Vector Out(in Vector v)
    {
        var axis = new Vector(X, Y, Z);
        var twice = 2 / Square * Vector.Cross(axis, v);
        return v + (W * twice) + Vector.Cross(axis, twice);
    }

    /// <summary>Components along the turned axes of a vector given along the fixed ones.</summary>
    public Vector In(in Vector v) => Inverse.Out(v);

    /// <summary>Rate of change while the turned axes spin, rate given along them [1/s].</summary>
    public void Rate(in Vector spin, Span<double> rate)
    {
        rate[0] = -0.5 * ((X * spin.X) + (Y * spin.Y) + (Z * spin.Z));
        rate[1] = 0.5 * ((W * spin.X) + (Y * spin.Z) - (Z * spin.Y));
        rate[2] = 0.5 * ((W * spin.Y) + (Z * spin.X) - (X * spin.Z));
        rate[3] = 0.5 * ((W * spin.Z) + (X * spin.Y) - (Y * spin.X));
    }

    /// <summary>Yaw, pitch and roll that lead to this attitude [rad].</summary>
    public (double Yaw, double Pitch, double Roll) YawPitchRoll()
    {
        var scale = 2 / Square;
        var sine = Math.Clamp(scale * ((W * Y) - (X * Z)), -1, 1);
        return (
            Math.Atan2(scale * ((X * Y) + (W * Z)), 1 - (scale * ((Y * Y) + (Z * Z)))),
            Math.Asin(sine),
            Math.Atan2(scale * ((Y * Z) + (W * X)), 1 - (scale * ((X * X) + (Y * Y)))));
    }

    /// <summary>First b, then a.</summary>
    public static Rotation operator *(in Rotation a, in Rotation b) => new(
        (a.W * b.W) - (a.X * b.X) - (a.Y * b.Y) - (a.Z * b.Z),
        (a.W * b.X) + (a.X * b.W) + (a.Y * b.Z) - (a.Z * b.Y),
        (a.W * b.Y) - (a.X * b.Z) + (a.Y * b.W) + (a.Z * b.X),
        (a.W * b.Z) + (a.X * b.Y) - (a.Y * b.X) + (a.Z * b.W));
}
