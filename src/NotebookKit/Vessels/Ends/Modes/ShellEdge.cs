using System.Buffers;
using System.Numerics;

namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>
/// Elastic bending of a thin hemisphere around a hole in its crown under pressure, the cover's thrust on the hole's edge: four
/// first-order equations along the meridian on a graded mesh. Sphere radius, pressure and modulus are 1; stresses come in units of the
/// pressure.
/// </summary>
/// <remarks>Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, shells of revolution (unverified;
/// derived again by virtual work).</remarks>
internal static class ShellEdge
{
    private const int Unknowns = 4;

    // Rows below and above the diagonal of the box scheme, and the width that row exchanges fill.
    private const int Below = 5;
    private const int Width = 16;

    /// <summary>
    /// Stresses along the meridian: distance from the hole's edge, then along and around at the outer and the inner face.
    /// </summary>
    internal readonly record struct Stress(double Distance, double AlongOuter, double AroundOuter, double AlongInner, double AroundInner)
    {
        public double Maximum => Math.Max(Math.Max(AlongOuter, AroundOuter), Math.Max(AlongInner, AroundInner));

        /// <summary>Twice the largest shear, the pressure of 1 on the inner face included.</summary>
        public double Span => Math.Max(Of(AlongOuter, AroundOuter, 0), Of(AlongInner, AroundInner, -1));

        private static double Of(double x, double y, double z) => Math.Max(x, Math.Max(y, z)) - Math.Min(x, Math.Min(y, z));
    }

    /// <summary>Solves for the stresses; all lengths over the sphere's radius.</summary>
    /// <param name="wall">Wall.</param>
    /// <param name="hole">Radius of the hole, below 1.</param>
    /// <param name="rimWall">Wall around the hole.</param>
    /// <param name="rimReach">How far the wall of the rim reaches along the meridian.</param>
    /// <param name="poisson">Poisson's ratio.</param>
    /// <param name="pressed">Whether the pressure presses on the edge of the hole.</param>
    public static List<Stress> Solve(double wall, double hole, double rimWall, double rimReach, double poisson, bool pressed)
    {
        var start = Math.Asin(hole);
        var (places, walls) = Mesh(wall, hole, rimWall, Math.Min(rimReach, Math.PI / 2 - start), Math.PI / 2 - start);
        var count = Unknowns * places.Count;
        var pool = ArrayPool<double>.Shared;
        var (rows, right) = (pool.Rent(count * Width), pool.Rent(count));
        Array.Clear(rows, 0, count * Width);
        Array.Clear(right, 0, count);

        // The edge of the hole: no moment, and nothing across but the pressure on its face.
        Set(0, 3, 1);
        Set(1, 2, 1);
        right[1] = pressed ? -hole * walls[0] * Math.Cos(start) : 0;
        Span<double> a = stackalloc double[Unknowns * Unknowns], b = stackalloc double[Unknowns];
        for (var i = 0; i + 1 < places.Count; i++)
        {
            var h = places[i + 1] - places[i];
            Equations(start + (places[i] + places[i + 1]) / 2, walls[i], poisson, a, b);
            for (var k = 0; k < Unknowns; k++)
            {
                var row = 2 + Unknowns * i + k;
                for (var j = 0; j < Unknowns; j++)
                {
                    var half = h / 2 * a[k * Unknowns + j];
                    Set(row, Unknowns * i + j, (k == j ? -1 : 0) - half);
                    Set(row, Unknowns * (i + 1) + j, (k == j ? 1 : 0) - half);
                }

                right[row] = h * b[k];
            }
        }

        // The equator, as between two like hemispheres: no turning and nothing across.
        Set(count - 2, count - 3, 1);
        Set(count - 1, count - 2, 1);
        Eliminate(rows.AsSpan(0, count * Width), right.AsSpan(0, count));

        var stresses = new List<Stress>(places.Count + 1);
        for (var i = 0; i < places.Count; i++)
        {
            // At a step of the wall the stresses of both sides count.
            if (i > 0) stresses.Add(At(i, walls[i - 1]));
            if (i == 0 || (i < walls.Count && walls[i] != walls[i - 1])) stresses.Add(At(i, walls[i]));
        }

        pool.Return(rows);
        pool.Return(right);
        return stresses;

        // Column j of row i is kept at j − i + Below.
        void Set(int row, int column, double value) => rows[row * Width + column - row + Below] = value;

        Stress At(int i, double t)
        {
            var phi = start + places[i];
            var (u, chi, h, m) = (right[4 * i], right[4 * i + 1], right[4 * i + 2], right[4 * i + 3]);
            var (s, c) = Math.SinCos(phi);
            var r = s;
            var along = h / r * c + r / 2 * s;
            var around = t * u / r + poisson * along;
            var bendAlong = 6 / (t * t) * m / r;
            var bendAround = 6 / (t * t) * (t * t * t / 12 * chi * c / r + poisson * m / r);
            return new(places[i], along / t - bendAlong, around / t - bendAround, along / t + bendAlong, around / t + bendAround);
        }
    }

    /// <summary>y′ = a·y + b for the displacement outwards, the rotation, radius times force across and radius times moment.</summary>
    private static void Equations(double phi, double t, double nu, Span<double> a, Span<double> b)
    {
        var (s, c) = Math.SinCos(phi);
        var r = s;
        var bending = t * t * t / (12 * (1 - nu * nu));
        var stretch = (1 - nu * nu) / t;
        var membrane = r / 2 * s;
        ReadOnlySpan<double> rows =
        [
            -nu * c / r, s, stretch * c * c / r, 0,
            0, -nu * c / r, 0, 1 / (r * bending),
            t / r, 0, nu * c / r, 0,
            0, t * t * t / 12 * c * c / r, -s, nu * c / r,
        ];
        rows.CopyTo(a);
        ReadOnlySpan<double> right = [stretch * membrane * c, 0, nu * membrane - r * s, r * r / 2 * c];
        right.CopyTo(b);
    }

    /// <summary>
    /// Places from the edge of the hole to the equator, close where the shell bends, and the wall between each and the next.
    /// </summary>
    private static (List<double> Places, List<double> Walls) Mesh(double wall, double hole, double rimWall, double reach, double length)
    {
        List<double> places = [0];
        List<double> walls = [];
        var step = Math.Min(hole, Math.Sqrt(rimWall)) / 200;
        if (reach > 0) Run(reach, rimWall);
        step = Math.Min(step, Math.Sqrt(wall) / 200);
        if (reach < length) Run(length, wall);
        return (places, walls);

        void Run(double end, double t)
        {
            var largest = Math.Sqrt(t) / 40;
            while (places[^1] < end)
            {
                var next = places[^1] + step;
                places.Add(next > end - step / 2 ? end : next);
                walls.Add(t);
                step = Math.Min(step * 1.03, largest);
            }
        }
    }

    /// <summary>Solves a banded system in place, with exchange of rows.</summary>
    private static void Eliminate(Span<double> rows, Span<double> right)
    {
        var n = right.Length;
        // What stands in a row from its diagonal on, at most.
        const int reach = Width - Below;
        for (var k = 0; k < n; k++)
        {
            var last = Math.Min(n - 1, k + Below);
            var length = Math.Min(n - k, reach);
            var pivot = k;
            for (var i = k + 1; i <= last; i++)
                if (Math.Abs(rows[At(i, k)]) > Math.Abs(rows[At(pivot, k)])) pivot = i;
            var own = rows.Slice(At(k, k), length);
            if (pivot != k)
            {
                var other = rows.Slice(At(pivot, k), length);
                for (var j = 0; j < length; j++) (own[j], other[j]) = (other[j], own[j]);
                (right[k], right[pivot]) = (right[pivot], right[k]);
            }

            for (var i = k + 1; i <= last; i++)
            {
                var row = rows.Slice(At(i, k), length);
                if (row[0] == 0) continue;
                var factor = row[0] / own[0];
                Take(row, factor, own);
                right[i] -= factor * right[k];
            }
        }

        for (var k = n - 1; k >= 0; k--)
        {
            var own = rows.Slice(At(k, k), Math.Min(n - k, reach));
            var sum = right[k];
            for (var j = 1; j < own.Length; j++) sum -= own[j] * right[k + j];
            right[k] = sum / own[0];
        }

        static int At(int row, int column) => row * Width + column - row + Below;
    }

    /// <summary>Takes a multiple of one row off another, several places at a time; each place as if alone.</summary>
    private static void Take(Span<double> row, double factor, ReadOnlySpan<double> own)
    {
        var j = 0;
        for (; j + Vector<double>.Count <= row.Length; j += Vector<double>.Count)
            (new Vector<double>(row[j..]) - factor * new Vector<double>(own[j..])).CopyTo(row[j..]);
        for (; j < row.Length; j++) row[j] -= factor * own[j];
    }
}
