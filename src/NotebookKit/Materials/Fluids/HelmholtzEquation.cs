namespace NotebookKit.Materials.Fluids;

/// <summary>
/// An equation of state written as the reduced Helmholtz energy of density and temperature, α = α⁰(δ, τ) + αʳ(δ, τ), δ = ρ/ρr, τ = Tr/T.
/// </summary>
/// <remarks>Source: R. Span, Multiparameter Equations of State, 2000, ch. 3: relations between α and every other property.</remarks>
internal sealed class HelmholtzEquation
{
    /// <summary>Gas constant over molar mass, J/(kg·K).</summary>
    public required double GasConstant { get; init; }

    /// <summary>Reducing temperature, K.</summary>
    public required double ReducingKelvins { get; init; }

    /// <summary>Reducing density, kg/m³.</summary>
    public required double ReducingDensity { get; init; }

    /// <summary>Ideal part: the factor of ln τ.</summary>
    public required double IdealLogarithm { get; init; }

    /// <summary>Ideal part: terms n τᵗ.</summary>
    public required (double N, double T)[] IdealPowers { get; init; }

    /// <summary>Ideal part: terms n ln(1 − exp(−t τ)).</summary>
    public required (double N, double T)[] IdealVibrations { get; init; }

    /// <summary>Ideal part: terms n ln(c + exp(t τ)).</summary>
    public (double N, double T, double C)[] IdealExponentials { get; init; } = [];

    /// <summary>Residual part: terms n δᵈ τᵗ exp(−δˡ), without the exponential where l is 0.</summary>
    public required (double N, double T, int D, int L)[] Powers { get; init; }

    /// <summary>Residual part: terms n δᵈ τᵗ exp(−η(δ − ε)² − β(τ − γ)²).</summary>
    public (double N, double T, int D, double Eta, double Epsilon, double Beta, double Gamma)[] Bells { get; init; } = [];

    /// <summary>All properties at a temperature and density.</summary>
    public GasPoint At(double kelvins, double density)
    {
        double tau = ReducingKelvins / kelvins, delta = density / ReducingDensity, lnTau = Math.Log(tau);

        // Ideal part and its derivatives times τ and τ².
        double i0 = Math.Log(delta) + IdealLogarithm * lnTau, i1 = IdealLogarithm, i2 = -IdealLogarithm;
        foreach (var (n, t) in IdealPowers)
        {
            var term = n * Math.Exp(t * lnTau);
            i0 += term;
            i1 += t * term;
            i2 += t * (t - 1) * term;
        }

        foreach (var (n, t) in IdealVibrations)
        {
            var e = Math.Exp(-t * tau);
            i0 += n * Math.Log(1 - e);
            i1 += n * t * tau * e / (1 - e);
            i2 -= n * t * t * tau * tau * e / ((1 - e) * (1 - e));
        }

        foreach (var (n, t, c) in IdealExponentials)
        {
            // exp(tτ) may be large: divide through by it.
            var e = c * Math.Exp(-t * tau);
            i0 += n * (t * tau + Math.Log(1 + e));
            i1 += n * t * tau / (1 + e);
            i2 += n * t * t * tau * tau * e / ((1 + e) * (1 + e));
        }

        // Residual part and its derivatives times powers of δ and τ.
        double r = 0, rd = 0, rdd = 0, rt = 0, rtt = 0, rdt = 0;
        var lnDelta = Math.Log(delta);
        foreach (var (n, t, d, l) in Powers)
        {
            var power = l == 0 ? 0 : delta;
            for (var k = 1; k < l; k++) power *= delta;
            var term = n * Math.Exp(d * lnDelta + t * lnTau - power);
            var a = d - l * power;
            r += term;
            rd += term * a;
            rdd += term * (a * (a - 1) - l * l * power);
            rt += term * t;
            rtt += term * t * (t - 1);
            rdt += term * t * a;
        }

        foreach (var (n, t, d, eta, epsilon, beta, gamma) in Bells)
        {
            double x = delta - epsilon, y = tau - gamma;
            var term = n * Math.Exp(d * lnDelta + t * lnTau - eta * x * x - beta * y * y);
            var a = d - 2 * eta * delta * x;
            var b = t - 2 * beta * tau * y;
            r += term;
            rd += term * a;
            rdd += term * (a * a - d - 2 * eta * delta * delta);
            rt += term * b;
            rtt += term * (b * b - t - 2 * beta * tau * tau);
            rdt += term * a * b;
        }

        var constant = GasConstant;
        var cv = -constant * (i2 + rtt);
        var byDensity = constant * kelvins * (1 + 2 * rd + rdd);
        var byTemperature = constant * density * (1 + rd - rdt);
        var cross = 1 + rd - rdt;
        var cp = cv + constant * cross * cross / (1 + 2 * rd + rdd);
        return new(
            kelvins, density, density * constant * kelvins * (1 + rd), constant * kelvins * (i1 + rt), constant * (i1 + rt - i0 - r),
            cv, cp, Math.Sqrt(cp / cv * byDensity), byTemperature, byDensity);
    }
}
