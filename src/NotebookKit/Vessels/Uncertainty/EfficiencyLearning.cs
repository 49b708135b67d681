using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using NotebookKit.Vessels.Testing;
using NotebookKit.Numerics;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>Updates the belief in the fabrication efficiency by tests.</summary>
internal static class EfficiencyLearning
{
    public static EfficiencyUpdate Learn(PressureVessel vessel, VesselEvidence evidence, EfficiencyBelief prior)
    {
        var models = new Dictionary<PressureVessel, WallModel>();
        var used = Independent(evidence.Tests);
        var posterior = Update(prior, used, models, Name(used));
        var own = Model(models, vessel);
        // One burst of a twin just where the prediction puts it, on top of what is known now.
        var imagined = new BurstTest(vessel, "a twin",
            Quantities.GaugePressure.FromPascals(Math.Exp(own.LogMedian(Math.Log(posterior.At(0.5))))), BurstTest.Wall);
        var after = Update(posterior, [imagined], models, "after one burst more");
        return new EfficiencyUpdate(vessel, used, prior, posterior, Surprise(prior, used, models),
            EffectiveBursts(prior, posterior, own.Sigma), own.Sigma, imagined.Pressure, after);
    }

    /// <summary>One test a vessel: its burst, or the highest proof it held.</summary>
    private static List<VesselTest> Independent(IReadOnlyList<VesselTest> tests) =>
    [
        .. tests.GroupBy(t => t.Id, StringComparer.OrdinalIgnoreCase)
            .Select(g => g.OfType<BurstTest>().FirstOrDefault() ?? g.MaxBy(t => t.Pressure.Pascals)!),
    ];

    private static EfficiencyBelief Update(EfficiencyBelief prior, List<VesselTest> tests, Dictionary<PressureVessel, WallModel> models,
        string name)
    {
        if (tests.Count == 0) return prior;
        var logs = new double[EfficiencyBelief.Grid.Count];
        var run = WorkRun.Current;
        for (var i = 0; i < logs.Length; i++)
        {
            run.ThrowIfStopped();
            logs[i] = Math.Log(Math.Max(prior.Weights[i], 1e-300)) + LogLikelihood(Math.Log(EfficiencyBelief.Grid[i]), tests, models);
        }

        var largest = logs.Max();
        return new EfficiencyBelief([.. logs.Select(l => Math.Exp(l - largest))], name);
    }

    /// <summary>Log of the chance of all tests at an efficiency.</summary>
    internal static double LogLikelihood(double logEfficiency, List<VesselTest> tests, Dictionary<PressureVessel, WallModel> models)
    {
        var sum = 0.0;
        foreach (var test in tests)
        {
            var model = Model(models, test.Vessel);
            var z = (Math.Log(test.Pressure.Pascals) - model.LogMedian(logEfficiency)) / model.Sigma;
            if (test is BurstTest { IsOfWall: true }) sum += -0.5 * z * z - Math.Log(model.Sigma);
            else sum += Math.Log(Math.Max(Normal.CDF(0, 1, -z), 1e-300));
        }

        return sum;
    }

    /// <summary>Smaller tail of the burst least expected before any test [-]; 1 without a burst.</summary>
    private static double Surprise(EfficiencyBelief prior, List<VesselTest> tests, Dictionary<PressureVessel, WallModel> models)
    {
        var least = 1.0;
        foreach (var test in tests.OfType<BurstTest>().Where(t => t.IsOfWall))
        {
            var model = Model(models, test.Vessel);
            var below = 0.0;
            for (var i = 0; i < EfficiencyBelief.Grid.Count; i++)
                below += prior.Weights[i] * Normal.CDF(0, 1,
                    (Math.Log(test.Pressure.Pascals) - model.LogMedian(Math.Log(EfficiencyBelief.Grid[i]))) / model.Sigma);
            least = Math.Min(least, 2 * Math.Min(below, 1 - below));
        }

        return least;
    }

    /// <summary>How many bursts would have narrowed the belief as much, by the rule of normal beliefs: precision adds up.</summary>
    private static double EffectiveBursts(EfficiencyBelief prior, EfficiencyBelief posterior, double sigma) =>
        Math.Max(sigma * sigma * (1 / (posterior.Spread * posterior.Spread) - 1 / (prior.Spread * prior.Spread)), 0);

    private static string Name(List<VesselTest> tests)
    {
        var bursts = tests.Count(t => t is BurstTest { IsOfWall: true });
        var held = tests.Count - bursts;
        return tests.Count == 0 ? "before any test" : $"after {bursts} {(bursts == 1 ? "burst" : "bursts")} and {held} "
            + $"{(held == 1 ? "vessel" : "vessels")} that held";
    }

    private static WallModel Model(Dictionary<PressureVessel, WallModel> models, PressureVessel vessel)
    {
        if (!models.TryGetValue(vessel, out var model)) models[vessel] = model = new WallModel(vessel);
        return model;
    }

    /// <summary>A wall's burst against the efficiency, and its scatter at a given one.</summary>
    internal sealed class WallModel
    {
        private const int Points = 28;
        private readonly double[] _logBurst = new double[Points];
        private readonly double _first;
        private readonly double _step;

        public WallModel(PressureVessel vessel)
        {
            var layup = vessel.Layup();
            var wall = new VesselWall(layup);
            var engine = wall.NewEngine();
            _first = Math.Log(EfficiencyBelief.Grid[0]);
            _step = (Math.Log(EfficiencyBelief.Grid[^1]) - _first) / (Points - 1);
            var run = WorkRun.Current;
            for (var i = 0; i < Points; i++)
            {
                run.ThrowIfStopped();
                var (low, high) = BurstModel.Band(wall, engine, new LayerFactors(Math.Exp(_first + i * _step)));
                // The middle between the fibres as laid and the laminate answer.
                _logBurst[i] = 0.5 * (Math.Log(high) + Math.Log(low));
            }

            var middle = vessel.Fabrication.Efficiency.DecimalFractions;
            var (bursts, _) = new BurstSampler(vessel, layup, 1).Run(2000, _ => middle, lowEnd: false, wallOnly: true);
            var logs = Array.ConvertAll(bursts, b => Math.Log(b));
            // No club's burst is read and made better than to three per cent.
            Sigma = Math.Max(logs.StandardDeviation(), 0.03);
        }

        /// <summary>Scatter of the logarithm of the burst at a given efficiency [-].</summary>
        public double Sigma { get; }

        /// <summary>Logarithm of the median burst in pascals at the logarithm of an efficiency.</summary>
        public double LogMedian(double logEfficiency)
        {
            var place = Math.Clamp((logEfficiency - _first) / _step, 0, Points - 1.000001);
            var i = (int)place;
            return _logBurst[i] + (place - i) * (_logBurst[i + 1] - _logBurst[i]);
        }
    }
}
