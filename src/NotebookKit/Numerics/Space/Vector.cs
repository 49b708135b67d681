using System.Runtime.CompilerServices;

namespace NotebookKit.Numerics.Space;

/// <summary>Three numbers along three axes at right angles.</summary>
internal readonly record struct Vector(double X, double Y, double Z)
{
    public double Square
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => (X * X) + (Y * Y) + (Z * Z);
    }

    public double Length => Math.Sqrt(Square);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector From(ReadOnlySpan<double> values) => new(values[0], values[1], values[2]);

    public void CopyTo(Span<double> values)
    {
        values[0] = X;
        values[1] = Y;
        values[2] = Z;
    }

    public static double Dot(in Vector a, in Vector b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Vector Cross(in Vector a, in Vector b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector operator +(in Vector a, in Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector operator -(in Vector a, in Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector operator *(double factor, in Vector a) => new(factor * a.X, factor * a.Y, factor * a.Z);
}
