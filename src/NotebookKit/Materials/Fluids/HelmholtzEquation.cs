namespace NotebookKit.Materials.Fluids;

/// <summary>
/// An equation of state written as the reduced Helmholtz energy of density and temperature, α = α⁰(δ, τ) + αʳ(δ, τ), δ = ρ/ρr, τ = Tr/T.
/// </summary>
/// <remarks>Source: R. Span, Multiparameter Equations of State, 2000, ch. 3: relations between α and every other property.</remarks>
internal sealed class HelmholtzEquation
{
    private readonly PowerTerms _powers = new([]);

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
    public required (double N, double T, int D, int L)[] Powers { init => _powers = new(value); }

    /// <summary>Residual part: terms n δᵈ τᵗ exp(−η(δ − ε)² − β(τ − γ)²).</summary>
    public (double N, double T, int D, double Eta, double Epsilon, double Beta, double Gamma)[] Bells { get; init; } = [];

    /// <summary>All properties at a temperature and density.</summary>
    public GasPoint At(double kelvins, double density)
    {
        double tau = ReducingKelvins / kelvins, delta = density / ReducingDensity, lnTau = Math.Log(tau), lnDelta = Math.Log(delta);
        var vibrations = IdealPowers.Length;
        Span<double> exponentials = stackalloc double[(vibrations + IdealVibrations.Length + 3) & ~3];
        for (var i = 0; i < IdealPowers.Length; i++) exponentials[i] = IdealPowers[i].T * lnTau;
        for (var i = 0; i < IdealVibrations.Length; i++) exponentials[vibrations + i] = -IdealVibrations[i].T * tau;
        PowerTerms.Exponentiate(exponentials);

        // Ideal part and its derivatives times τ and τ².
        double i0 = lnDelta + IdealLogarithm * lnTau, i1 = IdealLogarithm, i2 = -IdealLogarithm;
        for (var i = 0; i < IdealPowers.Length; i++)
        {
            var (n, t) = IdealPowers[i];
            var term = n * exponentials[i];
            i0 += term;
            i1 += t * term;
            i2 += t * (t - 1) * term;
        }

        for (var i = 0; i < IdealVibrations.Length; i++)
        {
            var (n, t) = IdealVibrations[i];
            var e = exponentials[vibrations + i];
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
        var (r, rd, rdd, rt, rtt, rdt) = _powers.Sums(lnTau, lnDelta, delta);
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
