using MathNet.Numerics.Distributions;
using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Uncertainty;

/// <summary>An invented club whose truth is known: how strong its parts really are, what its tests show, and what it then
/// believes.</summary>
internal sealed class SyntheticClub
{
    private const double FullVolume = 730;
    private const double TwinVolume = 150;

    private readonly World _world;
    private readonly SeededSamples _numbers;
    private readonly long _club;
    private readonly double[] _logBurst;
    private readonly double[] _logRatio;
    private readonly double[] _logShift;
    private readonly double[] _scatter;
    private int _drawn;

    public SyntheticClub(World world, ulong seed, long club)
    {
        _world = world;
        _numbers = new SeededSamples(seed);
        _club = club;
        _logBurst = new double[world.Parts];
        _logRatio = new double[world.Parts];
        _logShift = new double[world.Parts];
        _scatter = new double[world.Parts];
        for (var k = 0; k < world.Parts; k++)
        {
            _logBurst[k] = Math.Log(100e5) + (k == 0 ? 0 : Math.Log(1 + world.Headroom * Uniform()));
            _logRatio[k] = Math.Log(world.Ratio(Uniform, Gauss));
            _scatter[k] = world.Scatter(Uniform);
        }
    }

    /// <summary>What is so of the clubs of one world.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Ratio">Draws a part's true ratio from uniform and normal numbers.</param>
    /// <param name="Scatter">Draws a part's true scatter.</param>
    /// <param name="IsWeibull">Whether strengths are Weibull; lognormal otherwise.</param>
    /// <param name="HasSizeEffect">Whether the wall has the whole Weibull size effect.</param>
    /// <param name="Parts">Number of parts; the first is the wall.</param>
    /// <param name="Headroom">The ends are predicted up to so much above the wall.</param>
    /// <param name="BatchShift">How far the mean of a batch lies off that of all; above 0 where tests are of another batch than the vessel
    /// in hand.</param>
    internal sealed record World(string Name, Func<Func<double>, Func<double>, double> Ratio, Func<Func<double>, double> Scatter,
        bool IsWeibull, bool HasSizeEffect, int Parts = 1, double Headroom = 0, double BatchShift = 0);

    /// <summary>What a club does.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Bursts">Bursts of full vessels.</param>
    /// <param name="Twins">Bursts of short twins.</param>
    /// <param name="Proofs">Proofs; what doesn't hold one has burst.</param>
    /// <param name="ProofShare">Proof pressure over the predicted burst of the wall.</param>
    internal sealed record Plan(string Name, int Bursts, int Twins, int Proofs, double ProofShare = 0.5);

    /// <summary>What came of it: bounds and truth, logarithms of pascals.</summary>
    internal readonly record struct Outcome(double BBasis, double ABasis, double TrueTenth, double TrueHundredth);

    public Outcome Run(Plan plan, int draws)
    {
        var tests = new List<PartTest>();
        if (_world.BatchShift > 0)
            for (var k = 0; k < _logShift.Length; k++) _logShift[k] = _world.BatchShift * Math.Sqrt(2) * Gauss();
        for (var i = 0; i < plan.Bursts + plan.Twins + plan.Proofs; i++)
        {
            var isTwin = i >= plan.Bursts && i < plan.Bursts + plan.Twins;
            var parts = Predicted(isTwin);
            var (weakest, failed) = (double.PositiveInfinity, 0);
            for (var k = 0; k < _logBurst.Length; k++)
            {
                var strength = Strength(k, isTwin);
                if (strength < weakest) (weakest, failed) = (strength, k);
            }

            var proof = Math.Log(100e5 * plan.ProofShare);
            tests.Add(i >= plan.Bursts + plan.Twins && weakest > proof
                ? new PartHeld($"{i}", GaugePressure.FromPascals(Math.Exp(proof)), parts)
                : new PartBurst($"{i}", GaugePressure.FromPascals(Math.Exp(weakest)), parts[failed].Name, parts));
        }

        var study = new PartStudy(Predicted(false), tests, _world.BatchShift > 0 ? "new" : "");
        return new Outcome(study.LowLogPascals(0.10, draws), study.LowLogPascals(0.01, draws), TrueQuantile(0.10), TrueQuantile(0.01));
    }

    private PredictedPart[] Predicted(bool isTwin) =>
    [
        .. _logBurst.Select((b, k) => new PredictedPart(k == 0 ? "wall" : $"end {k}", GaugePressure.FromPascals(Math.Exp(b)))
        {
            Stressed = k == 0 ? Volume.FromCubicCentimeters(isTwin ? TwinVolume : FullVolume) : null,
        }),
    ];

    private double Strength(int k, bool isTwin)
    {
        var unit = _scatter[k] * Math.Sqrt(6) / Math.PI;
        var size = isTwin && k == 0 && _world.HasSizeEffect ? unit * Math.Log(FullVolume / TwinVolume) : 0;
        return _logBurst[k] + _logRatio[k] + _logShift[k] + size
            + (_world.IsWeibull ? unit * (Math.Log(-Math.Log(Uniform())) - Math.Log(Math.Log(2))) : _scatter[k] * Gauss());
    }

    private double TrueQuantile(double share)
    {
        double low = Math.Log(1e5), high = Math.Log(1000e5);
        while (high - low > 1e-9)
        {
            var middle = 0.5 * (low + high);
            if (Surviving(middle) > 1 - share) low = middle;
            else high = middle;
        }

        return low;
    }

    private double Surviving(double logPascals)
    {
        var all = 1.0;
        for (var k = 0; k < _logBurst.Length; k++)
        {
            var z = (logPascals - _logBurst[k] - _logRatio[k]) / _scatter[k];
            all *= _world.IsWeibull ? Math.Exp(-Math.Log(2) * Math.Exp(z * Math.PI / Math.Sqrt(6))) : Normal.CDF(0, 1, -z);
        }

        return all;
    }

    private double Uniform() => _numbers.Uniform(_club, _drawn++);

    private double Gauss() => _numbers.Normal(_club, _drawn++);
}
