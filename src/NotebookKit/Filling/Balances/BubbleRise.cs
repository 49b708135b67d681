using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Filling.Balances;

/// <summary>A bubble on its way up through the water: its size, its speed, and how far it comes to the water's temperature.</summary>
/// <remarks>
/// V = 1.378 Q^(6/5)/g^(3/5) at the port; v² = 2.14 σ/(ρ d) + 0.505 g d; heat by conduction alone in a sphere whose gas is at rest:
/// 1 − 6/π² Σ exp(−n² π² Fo)/n², Fo = 4 α t/d²; gas that circulates in it counts as 2.25 times as conductive. Walls and bubbles that
/// break up are left out, which exchange more, and so are bubbles that merge, which exchange less. Source: J. F. Davidson, B. O. G.
/// Schüler 1960; R. Clift, J. R. Grace, M. E. Weber 1978; A. B. Newman 1931; P. H. Calderbank, I. J. O. Korchinski 1956 (all unverified:
/// sources not at hand; confirm before relying on it).
/// </remarks>
public sealed record BubbleRise
{
    // Surface tension of water at 20 °C, N/m.
    private const double TensionNPerM = 0.0728, WaterDensity = 1000, Circulating = 2.25;

    private readonly double _volumeM3, _diameterM, _speed, _seconds, _fourier;

    internal BubbleRise(double flowKgPerS, double depthM, double pascals, double kelvins, Gas gas)
    {
        double constant = gas.GasConstant.JoulesPerKilogramKelvin, density = pascals / (constant * kelvins),
            cp = constant * gas.HeatCapacityRatio / (gas.HeatCapacityRatio - 1), g = StandardConstants.Gravity;
        var (_, conductivity) = gas.Real!.Transport(kelvins, density);
        _volumeM3 = 1.378 * Math.Pow(flowKgPerS / density, 1.2) / Math.Pow(g, 0.6);
        _diameterM = Math.Cbrt(6 / Math.PI * _volumeM3);
        _speed = Math.Sqrt(2.14 * TensionNPerM / (WaterDensity * _diameterM) + 0.505 * g * _diameterM);
        _seconds = depthM / _speed;
        _fourier = 4 * conductivity / (density * cp) * _seconds / (_diameterM * _diameterM);
    }

    /// <summary>Diameter of a sphere of the bubble's volume, at the pressure in the vessel.</summary>
    public Length Diameter => Length.FromMillimeters(1000 * _diameterM);

    /// <summary>Its speed.</summary>
    public Speed Speed => Speed.FromMetersPerSecond(_speed);

    /// <summary>How long it takes to the surface.</summary>
    public Duration Time => Duration.FromSeconds(_seconds);

    /// <summary>Share of the way from no contact to full contact, with the bubble's gas at rest, by conduction alone.</summary>
    public Ratio StillShare => Ratio.FromDecimalFractions(SphereShare(_fourier)).ToUnit(UnitsNet.Units.RatioUnit.Percent);

    /// <summary>The same with the bubble's gas circulating.</summary>
    public Ratio CirculatingShare =>
        Ratio.FromDecimalFractions(SphereShare(Circulating * _fourier)).ToUnit(UnitsNet.Units.RatioUnit.Percent);

    /// <summary>Number of transfer units of that share [-]: −ln(1 − share).</summary>
    public double TransferUnits => -Math.Log(1 - Math.Min(StillShare.DecimalFractions, 1 - 1e-12));

    internal static Source Size { get; } = new("J. F. Davidson, B. O. G. Schüler",
        "Bubble formation at an orifice in an inviscid liquid, Trans. Inst. Chem. Eng. 38, 335", 1960, "", SourceKind.Unverified);

    internal static Source Rising { get; } = new("R. Clift, J. R. Grace, M. E. Weber", "Bubbles, Drops, and Particles", 1978,
        "terminal velocity of large bubbles in pure water", SourceKind.Unverified);

    internal static Source Conduction { get; } = new("A. B. Newman; P. H. Calderbank, I. J. O. Korchinski",
        "The drying of porous solids, Trans. AIChE 27, 203; Circulation in liquid drops, Chem. Eng. Sci. 6, 65", 1956,
        "conduction in a sphere; 2.25 for one that circulates", SourceKind.Unverified);

    /// <summary>Share of its heat that a sphere at rest has exchanged with its surface after a Fourier number on its radius.</summary>
    internal static double SphereShare(double fourier)
    {
        // The first reflection from the middle is below 1e-9 of it there.
        if (fourier < 0.02) return 6 * Math.Sqrt(fourier / Math.PI) - 3 * fourier;
        var sum = 0.0;
        for (var n = 1; n <= 12; n++) sum += Math.Exp(-n * n * Math.PI * Math.PI * fourier) / (n * n);
        return 1 - 6 / (Math.PI * Math.PI) * sum;
    }
}
