using System.Runtime.Intrinsics;

namespace NotebookKit.Materials.Fluids;

/// <summary>Terms n δᵈ τᵗ exp(−δˡ), without the exponential where l is 0, that equations of state and of transport are sums of; computed
/// four at a time.</summary>
internal sealed class PowerTerms
{
    private const int HighestPower = 8;

    private readonly double[] _n, _t, _d, _l;
    private readonly int[] _power;

    public PowerTerms((double N, double T, int D, int L)[] terms)
    {
        // A term of factor 0 fills up the last four.
        var room = (terms.Length + 3) & ~3;
        (_n, _t, _d, _l, _power) = (new double[room], new double[room], new double[room], new double[room], new int[room]);
        for (var i = 0; i < terms.Length; i++) (_n[i], _t[i], _d[i], _l[i], _power[i]) = (terms[i].N, terms[i].T, terms[i].D, terms[i].L,
            terms[i].L);
    }

    /// <summary>Exponentials in place, four at a time; of a length that four divides.</summary>
    public static void Exponentiate(Span<double> exponents)
    {
        for (var i = 0; i < exponents.Length; i += 4) Vector256.Exp(Vector256.Create<double>(exponents[i..])).CopyTo(exponents[i..]);
    }

    /// <summary>The sum of the terms.</summary>
    public double Sum(double lnTau, double lnDelta, double delta)
    {
        if (_n.Length == 0) return 0;
        Span<double> powers = stackalloc double[_n.Length];
        Powers(delta, powers);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < _n.Length; i += 4) sum += At(i, lnTau, lnDelta, powers);
        return Vector256.Sum(sum);
    }

    /// <summary>The sum of the terms and its derivatives times powers of δ and τ.</summary>
    public PowerSums Sums(double lnTau, double lnDelta, double delta)
    {
        Span<double> powers = stackalloc double[_n.Length];
        Powers(delta, powers);
        Vector256<double> r = default, rd = default, rdd = default, rt = default, rtt = default, rdt = default;
        for (var i = 0; i < _n.Length; i += 4)
        {
            Vector256<double> power = Vector256.Create<double>(powers[i..]), l = Four(_l, i), t = Four(_t, i), term = At(i, lnTau, lnDelta,
                powers), a = Four(_d, i) - l * power, byTau = term * t;
            r += term;
            rd += term * a;
            rdd += term * (a * (a - Vector256<double>.One) - l * l * power);
            rt += byTau;
            rtt += byTau * (t - Vector256<double>.One);
            rdt += byTau * a;
        }

        return new(Vector256.Sum(r), Vector256.Sum(rd), Vector256.Sum(rdd), Vector256.Sum(rt), Vector256.Sum(rtt), Vector256.Sum(rdt));
    }

    private static Vector256<double> Four(double[] values, int at) => Vector256.Create(values, at);

    private Vector256<double> At(int i, double lnTau, double lnDelta, ReadOnlySpan<double> powers) => Four(_n, i) * Vector256.Exp(
        Four(_d, i) * lnDelta + Four(_t, i) * lnTau - Vector256.Create(powers[i..]));

    // δˡ of every term; none where l is 0.
    private void Powers(double delta, Span<double> powers)
    {
        Span<double> all = stackalloc double[HighestPower + 1];
        all[0] = 0;
        all[1] = delta;
        for (var l = 2; l <= HighestPower; l++) all[l] = all[l - 1] * delta;
        for (var i = 0; i < powers.Length; i++) powers[i] = all[_power[i]];
    }
}

/// <summary>A sum over δ and τ, r, and its derivatives times powers of them: δ r_δ, δ² r_δδ, τ r_τ, τ² r_ττ, δ τ r_δτ.</summary>
internal readonly record struct PowerSums(double R, double D, double Dd, double T, double Tt, double Dt);
