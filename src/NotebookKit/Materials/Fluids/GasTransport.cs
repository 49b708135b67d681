namespace NotebookKit.Materials.Fluids;

/// <summary>Viscosity and thermal conductivity of a gas: dilute gas by a collision integral, dense gas by a residual where one is
/// given.</summary>
/// <remarks>
/// Source: E. W. Lemmon, R. T. Jacobsen, Viscosity and thermal conductivity equations for nitrogen, oxygen, argon, and air, Int. J.
/// Thermophys.
/// 25 (2004) 21 (air, nitrogen; critical enhancement left out); C. D. Muzny et al., J. Chem. Eng. Data 58 (2013) 969 and M. J. Assael et
/// al., J. Phys. Chem. Ref. Data 40 (2011) 033101 (hydrogen, dilute part only).
/// </remarks>
internal sealed class GasTransport
{
    private readonly PowerTerms _viscosity = new([]), _conductivity = new([]);

    /// <summary>Factor, molar mass g/mol, diameter nm, energy over k K, and powers of ln T* of the collision integral.</summary>
    public required (double Factor, double GramsPerMole, double Nanometres, double Kelvins, double[] Logs) Dilute { get; init; }

    /// <summary>Residual viscosity, µPa·s: terms n τᵗ δᵈ exp(−δˡ), without the exponential where l is 0.</summary>
    public (double N, double T, int D, int L)[] ViscosityTerms { init => _viscosity = new(value); }

    /// <summary>Dilute conductivity, W/(m·K), from viscosity in µPa·s and τ.</summary>
    public required Func<double, double, double> DiluteConductivity { get; init; }

    /// <summary>Residual conductivity, mW/(m·K): terms as for viscosity.</summary>
    public (double N, double T, int D, int L)[] ConductivityTerms { init => _conductivity = new(value); }

    public static GasTransport Air { get; } = new()
    {
        Dilute = (0.0266958, 28.9586, 0.360, 103.3, [0.431, -0.4623, 0.08406, 0.005341, -0.00331]),
        ViscosityTerms = [(10.72, 0.2, 1, 0), (1.122, 0.05, 4, 0), (0.002019, 2.4, 9, 0), (-8.876, 0.6, 1, 1), (-0.02916, 3.6, 8, 1)],
        DiluteConductivity = (eta, tau) => 1e-3 * (1.308 * eta + 1.405 * Math.Pow(tau, -1.1) - 1.036 * Math.Pow(tau, -0.3)),
        ConductivityTerms = [(8.743, 0.1, 1, 0), (14.76, 0, 2, 0), (-16.62, 0.5, 3, 2), (3.793, 2.7, 7, 2), (-6.142, 0.3, 7, 2),
            (-0.3778, 1.3, 11, 2)],
    };

    public static GasTransport Nitrogen { get; } = new()
    {
        Dilute = (0.0266958, 28.01348, 0.3656, 98.94, [0.431, -0.4623, 0.08406, 0.005341, -0.00331]),
        ViscosityTerms = [(10.72, 0.1, 2, 0), (0.03989, 0.25, 10, 1), (0.001208, 3.2, 12, 1), (-7.402, 0.9, 2, 2), (4.620, 0.3, 1, 3)],
        DiluteConductivity = (eta, tau) => 1e-3 * (1.511 * eta + 2.117 / tau - 3.332 * Math.Pow(tau, -0.7)),
        ConductivityTerms = [(8.862, 0, 1, 0), (31.11, 0.03, 2, 0), (-73.13, 0.2, 3, 1), (20.03, 0.8, 4, 2), (-0.7096, 0.6, 8, 2),
            (0.2672, 1.9, 10, 2)],
    };

    public static GasTransport Hydrogen { get; } = new()
    {
        Dilute = (0.021357, 2.01588, 0.297, 30.41, [0.20963, -0.455274, 0.143602, -0.0335325, 0.00276981]),
        DiluteConductivity = (_, tau) =>
        {
            var t = 1 / tau;
            var over = -0.340976 + t * (4.5882 + t * (-1.4508 + t * (0.326394 + t * (0.00316939 + t * (0.000190592 - t * 1.139e-6)))));
            return over / (138.497 + t * (-22.1878 + t * (4.57151 + t)));
        },
    };

    /// <summary>
    /// 19.9 µPa·s at 300 K, rising with the power 0.7 of the temperature: within 1 % from 200 to 500 K, recalled, unverified; put into the
    /// form of the collision integral. Conductivity 15/4·R·η of a gas of single atoms (kinetic theory). The dense part is left out.
    /// </summary>
    public static GasTransport Helium { get; } = new()
    {
        Dilute = (19.9 / Math.Sqrt(4.002602 * 300), 4.002602, 1, 300, [0, -0.2]),
        DiluteConductivity = (eta, _) => 3.75 * 8.3144598 / 0.004002602 * 1e-6 * eta,
    };

    /// <summary>Viscosity, Pa·s, and thermal conductivity, W/(m·K).</summary>
    public (double Viscosity, double Conductivity) At(double kelvins, double tau, double delta)
    {
        double dilute = DiluteViscosity(kelvins), conductivity = DiluteConductivity(dilute, tau);
        if (!(delta > 0)) return (1e-6 * dilute, conductivity);
        double lnTau = Math.Log(tau), lnDelta = Math.Log(delta);
        return (1e-6 * (dilute + _viscosity.Sum(lnTau, lnDelta, delta)), conductivity + 1e-3 * _conductivity.Sum(lnTau, lnDelta, delta));
    }

    private double DiluteViscosity(double kelvins)
    {
        var (factor, mass, diameter, energy, logs) = Dilute;
        double log = Math.Log(kelvins / energy), sum = 0, power = 1;
        foreach (var coefficient in logs)
        {
            sum += coefficient * power;
            power *= log;
        }

        return factor * Math.Sqrt(mass * kelvins) / (diameter * diameter * Math.Exp(sum));
    }
}
