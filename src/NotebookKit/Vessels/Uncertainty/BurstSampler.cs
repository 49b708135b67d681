using NotebookKit.Numerics;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Breaks a vessel many times over with everything that scatters drawn anew; the same seed gives the same bursts on any number of
/// threads.</summary>
internal sealed class BurstSampler
{
    /// <summary>Everything that is drawn, in the order of its random variable.</summary>
    public static IReadOnlyList<string> Variables { get; } =
    [
        "fabrication efficiency, not known", "making, vessel to vessel", "fibre strength", "fibre modulus", "resin strength",
            "fibre fraction", "angle of the sleeves",
        "fibre laid", "liner yield strength", "nozzle bond", "forward bond", "closure strength",
            "place between the fibres as laid and the laminate",
    ];

    private readonly PressureVessel _vessel;
    private readonly VesselWall _wall;
    private readonly SeededSamples _samples;
    private readonly double[] _sigma;
    private readonly double _nozzleClosure;
    private readonly double _forwardClosure;
    private readonly double _fractionSpread;
    private readonly double _angleSpread;

    public BurstSampler(PressureVessel vessel, Layup layup, ulong seed)
    {
        _vessel = vessel;
        _wall = new VesselWall(layup);
        _samples = new SeededSamples(seed);
        var fibres = layup.Plies.Select(p => LayupModel.FibreOf(p.Ply)).OfType<Materials.Solids.Fibre>().ToList();
        var yarns = vessel.Plies.OfType<BraidedSleeve>().Select(s => s.Braid.Yarn.Spread)
            .Concat(vessel.Plies.OfType<ClothWrap>().Select(w => w.Cloth.ArealWeight.Spread))
            .Concat(vessel.Plies.OfType<HoopWrap>().Select(h => h.Tape.ArealWeight.Spread));
        _sigma =
        [
            0,
            Log(vessel.Fabrication.VesselSpread),
            Log(Maximum(fibres.Select(f => f.TensileStrength.Spread))),
            Log(Maximum(fibres.Select(f => f.LongitudinalModulus.Spread))),
            Log(vessel.Resin.TensileStrength.Spread),
            0,
            0,
            Log(Maximum(yarns)),
            Log(vessel.Liner.Material?.YieldStrength.Spread ?? 0),
            Log(Bond(vessel.NozzleEnd)),
            Log(Bond(vessel.ForwardEnd)),
            Log(Math.Max(vessel.NozzleEnd.Closure.Material.YieldStrength.Spread, vessel.ForwardEnd.Closure.Material.YieldStrength.Spread)),
            0,
        ];
        _nozzleClosure = vessel.NozzleEnd.Closure.YieldPressure(vessel.Liner.Bore).Pascals;
        _forwardClosure = vessel.ForwardEnd.Closure.YieldPressure(vessel.Liner.Bore).Pascals;
        _fractionSpread = vessel.Fabrication.FibreFractionSpread.DecimalFractions;
        _angleSpread = vessel.Fabrication.AngleSpread.Radians;
    }

    /// <summary>Standard normal or, for the last one, uniform number of a variable.</summary>
    public double Draw(long sample, int variable) => variable == Variables.Count - 1 ? _samples.Uniform(sample, variable)
        : _samples.Normal(sample, variable);

    /// <summary>Bursts the vessel so many times.</summary>
    /// <param name="count">How many times.</param>
    /// <param name="efficiency">Efficiency for the uniform number of a sample [-].</param>
    /// <param name="lowEnd">Whether a wall is taken at its low end.</param>
    /// <param name="threads">Most threads; −1 for as many as there are.</param>
    /// <param name="wallOnly">Whether the ends are left out.</param>
    /// <returns>Burst [Pa] and the number of the weakest part, 0 the wall.</returns>
    public (double[] Bursts, byte[] Parts) Run(int count, Func<double, double> efficiency, bool lowEnd, int threads = -1,
        bool wallOnly = false)
    {
        var bursts = new double[count];
        var parts = new byte[count];
        const int block = 250;
        var run = WorkRun.Current;
        Parallel.For(0, (count + block - 1) / block, run.Parallel(threads), _wall.NewEngine, (b, _, engine) =>
        {
            for (var i = b * block; i < Math.Min(count, (b + 1) * block); i++)
            {
                run.ThrowIfStopped();
                (bursts[i], parts[i]) = Break(engine, i, efficiency, lowEnd, wallOnly);
            }

            return engine;
        }, _ => { });
        return (bursts, parts);
    }

    private (double Burst, byte Part) Break(WallEngine engine, long i, Func<double, double> efficiency, bool lowEnd, bool wallOnly)
    {
        var factors = new LayerFactors(
            efficiency(_samples.Uniform(i, 0)) * Factor(i, 1), Factor(i, 2), Factor(i, 3), Factor(i, 4),
            _fractionSpread * _samples.Normal(i, 5), _angleSpread * _samples.Normal(i, 6), Factor(i, 7));
        var (low, high) = BurstModel.Band(_wall, engine, factors, Factor(i, 8));
        var burst = low + (lowEnd ? 0 : _samples.Uniform(i, 12)) * (high - low);

        if (wallOnly) return (burst, 0);
        byte part = 0, number = 0;
        var context = _wall.Context(engine.Layers, Factor(i, 9), Factor(i, 11));
        Weaken(_vessel.NozzleEnd, _nozzleClosure, context, ref burst, ref part, ref number);
        Weaken(_vessel.ForwardEnd, _forwardClosure, context with { BondFactor = Factor(i, 10) }, ref burst, ref part, ref number);
        return (burst, part);
    }

    /// <summary>Parts are numbered as the burst prediction lists them.</summary>
    private static void Weaken(VesselEnd end, double closureYield, in EndContext context, ref double burst, ref byte part, ref byte number)
    {
        number++;
        var closure = closureYield * context.MetalFactor;
        if (closure < burst) (burst, part) = (closure, number);
        for (var j = 0; j < end.Joints.Count; j++)
        {
            number++;
            var joint = end.Joints[j].FailurePascals(context);
            if (joint < burst) (burst, part) = (joint, number);
        }
    }

    /// <summary>A factor about 1 that never falls below 0: lognormal with mean 1.</summary>
    private double Factor(long sample, int variable)
    {
        var sigma = _sigma[variable];
        return sigma > 0 ? Math.Exp(sigma * _samples.Normal(sample, variable) - 0.5 * sigma * sigma) : 1;
    }

    private static double Log(double spread) => Math.Sqrt(Math.Log(1 + spread * spread));

    private static double Maximum(IEnumerable<double> spreads) => spreads.DefaultIfEmpty(0).Max();

    private static double Bond(VesselEnd end) => Maximum(end.Joints.OfType<BondedPlug>().Select(p => p.CouponStrength.Spread));
}
