using NotebookKit.Aerodynamics.Fins;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>Flutter and divergence formulas in SI numbers.</summary>
internal static class FinAeroelasticity
{
    /// <summary>24 ε κ / π with ε = 1/4 and κ = 1.4: the 39.3 of NACA TN 4197 over 14.7 psi.</summary>
    public const double MartinConstant = 24 * 0.25 * 1.4 / Math.PI;

    private const int Elements = 200;

    /// <summary>Flutter speed [m/s], NACA TN 4197 eq. 18 with pressure in the modulus' unit.</summary>
    public static double FlutterMps(double shearPa, double thicknessRatio, double aspect, double taper, double pressurePa,
        double soundMps) =>
        soundMps * Math.Sqrt(shearPa * Math.Pow(thicknessRatio, 3) * (aspect + 2)
            / (MartinConstant * Math.Pow(aspect, 3) * pressurePa * (taper + 1) / 2));

    /// <summary>
    /// Dynamic pressure of torsional divergence [Pa]: lowest eigenvalue of (G J θ')' + q e c² a θ = 0 with J = c t³ / 3, clamped root, free
    /// tip, lift a quarter chord ahead of the mid-chord axis. Linear elements and inverse iteration.
    /// </summary>
    public static double DivergencePa(IReadOnlyList<FinStrip> strips, double thicknessM, double shearPa, double liftSlope)
    {
        var span = strips[^1].OuterM;
        var h = span / Elements;
        Span<double> diagonal = stackalloc double[Elements], side = stackalloc double[Elements],
            loadDiagonal = stackalloc double[Elements], loadSide = stackalloc double[Elements];
        var cube = thicknessM * thicknessM * thicknessM / 3;
        for (var i = 0; i < Elements; i++)
        {
            var chord = ChordAt(strips, (i + 0.5) * h);
            var stiffness = shearPa * chord * cube / h;
            var load = 0.25 * chord * chord * liftSlope * h / 6;
            // Element i joins node i (root node dropped) and node i + 1, stored at i - 1 and i.
            diagonal[i] += stiffness;
            loadDiagonal[i] += 2 * load;
            if (i == 0) continue;
            diagonal[i - 1] += stiffness;
            loadDiagonal[i - 1] += 2 * load;
            side[i - 1] = -stiffness;
            loadSide[i - 1] = load;
        }

        return LowestEigenvalue(diagonal, side, loadDiagonal, loadSide);
    }

    private static double LowestEigenvalue(Span<double> diagonal, Span<double> side, Span<double> loadDiagonal, Span<double> loadSide)
    {
        Span<double> shape = stackalloc double[Elements], right = stackalloc double[Elements], image = stackalloc double[Elements],
            pivots = stackalloc double[Elements];
        for (var i = 0; i < Elements; i++) shape[i] = (i + 1.0) / Elements;
        pivots[0] = diagonal[0];
        for (var i = 1; i < Elements; i++) pivots[i] = diagonal[i] - (side[i - 1] * side[i - 1] / pivots[i - 1]);
        var value = 0.0;
        for (var iteration = 0; iteration < 100; iteration++)
        {
            Multiply(loadDiagonal, loadSide, shape, right);
            var before = Dot(shape, right);
            for (var i = 1; i < Elements; i++) right[i] -= side[i - 1] / pivots[i - 1] * right[i - 1];
            right[^1] /= pivots[^1];
            for (var i = Elements - 2; i >= 0; i--) right[i] = (right[i] - (side[i] * right[i + 1])) / pivots[i];
            // Rayleigh quotient with shape and its image: value = xᵀMx / xᵀM K⁻¹ M x.
            Multiply(loadDiagonal, loadSide, shape, image);
            var next = before / Dot(right, image);
            var norm = 1 / right[^1];
            for (var i = 0; i < Elements; i++) shape[i] = right[i] * norm;
            if (Math.Abs(next - value) <= 1e-13 * next) return next;
            value = next;
        }

        return value;
    }

    private static void Multiply(Span<double> diagonal, Span<double> side, Span<double> x, Span<double> result)
    {
        for (var i = 0; i < Elements; i++)
            result[i] = (diagonal[i] * x[i]) + (i > 0 ? side[i - 1] * x[i - 1] : 0) + (i + 1 < Elements ? side[i] * x[i + 1] : 0);
    }

    private static double Dot(Span<double> a, Span<double> b)
    {
        var sum = 0.0;
        for (var i = 0; i < Elements; i++) sum += a[i] * b[i];
        return sum;
    }

    private static double ChordAt(IReadOnlyList<FinStrip> strips, double y)
    {
        foreach (var strip in strips)
            if (y <= strip.OuterM)
                return strip.ChordInnerM + ((strip.ChordOuterM - strip.ChordInnerM) * (y - strip.InnerM) / strip.WidthM);
        return strips[^1].ChordOuterM;
    }
}
