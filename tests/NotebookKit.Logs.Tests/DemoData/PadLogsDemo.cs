using NotebookKit.Numerics;

namespace NotebookKit.Logs.Tests.DemoData;

/// <summary>
/// Three invented evenings with Curlew at the pad, 4.56 L with 1.46 L of water: a fill whose line stood full of water, a fill in four
/// openings of a valve on a vessel with a small leak, and an abort through a port under water. Mass and energy balance in small steps,
/// formulae of its own.
/// </summary>
internal static class PadLogsDemo
{
    public const ulong WetSeed = 20260410, PulsedSeed = 20260411, AbortSeed = 20260412;
    public const double ConductanceLitresPerSecondBar = 0.04, LeakLitresPerSecondBar = 0.0004, FilmWattsPerKelvin = 9,
        WaterInLineMillilitres = 60;
    public const double HeldBar = 58, DumpedAt = 25, WaterAreaMm2 = 0.6 * 0.785398, GasAreaMm2 = 0.8 * 0.785398;

    public static readonly (double From, double To)[] Openings = [(5, 35), (55, 80), (100, 115), (140, 148)];

    private const double Ambient = 1.009e5, Kelvin = 287.15, Source = 60e5 + Ambient, GasConstant = 287.05, Gamma = 1.4, Step = 0.005;

    public static string WetText() => Log(WetSeed, 160, 2, new()
    {
        LineWater = WaterInLineMillilitres * 1e-6, Film = 2 * FilmWattsPerKelvin, Open = t => t >= 3, ShutsAt = HeldBar,
    }, "fill of Curlew at the pad with the port under water: 60 mL of water stood in the line, a check valve keeps it from running back",
        "regulator 60 bar gauge, valve opened at 3 s and shut at 58 bar gauge; the gas bubbles up through 1.46 L of water");

    public static string PulsedText() => Log(PulsedSeed, 260, 0.5, new()
    {
        Film = FilmWattsPerKelvin, Open = t => Openings.Any(o => t >= o.From && t < o.To), Leak = LeakLitresPerSecondBar,
    }, "fill of Curlew by hand: regulator 60 bar gauge, valve open from 5 to 35, 55 to 80, 100 to 115 and 140 to 148 s",
        "the fitting at the forward end leaks a little; port above the water for this evening");

    public static string AbortText() => Log(AbortSeed, 240, 1, new()
    {
        Film = FilmWattsPerKelvin, Start = HeldBar, VesselWater = 1.46e-3, DumpedAt = DumpedAt,
    }, "abort of Curlew: full at 58 bar gauge, dump valve of 1 mm opened at 25 s, port under water: the water goes first",
        "nobody went near before the gauge had read zero for a minute");

    private static string Log(ulong seed, int seconds, double perSecond, Evening evening, params string[] comments)
    {
        var noise = new SeededSamples(seed);
        var csv = new DemoCsv(seed, comments);
        csv.Line("time [s]", "pressure [bar gauge]", "temperature [°C]");
        var every = (int)Math.Round(1 / Step / perSecond);
        for (var tick = 0; tick <= seconds / Step; tick++)
        {
            if (tick % every == 0)
            {
                var row = tick / every;
                csv.Line(
                    DemoCsv.Number(tick * Step, 1),
                    DemoCsv.Number(Math.Round((evening.GaugeBar + 0.04 * noise.Normal(row, 0)) / 0.1) * 0.1, 1),
                    DemoCsv.Number(Kelvin - 273.15 + 0.1 * noise.Normal(row, 1), 1));
            }

            evening.Advance(tick * Step);
        }

        return csv.ToString();
    }

    // One vessel that is filled, leaks and is vented, in small steps.
    private sealed class Evening
    {
        private double _mass, _kelvin = Kelvin, _wall = Kelvin, _volume = 3.1e-3;
        private bool _shut, _begun;

        public double Film { get; init; }

        public double LineWater { get; set; }

        public double VesselWater { get; set; }

        public double Start { get; init; }

        public double Leak { get; init; }

        public double ShutsAt { get; init; } = 1000;

        public double DumpedAt { get; init; } = double.PositiveInfinity;

        public Func<double, bool> Open { get; init; } = _ => false;

        public double GaugeBar => (Pascals - Ambient) / 1e5;

        private double Pascals => _begun ? _mass * GasConstant * _kelvin / _volume : Start * 1e5 + Ambient;

        public void Advance(double t)
        {
            if (!_begun)
            {
                _mass = Pascals * _volume / (GasConstant * _kelvin);
                _begun = true;
            }

            double p = Pascals, inflow = 0, outflow = Leak * 1e-8 * p * 1.185, grows = 0;
            _shut = _shut || GaugeBar >= ShutsAt;
            if (Open(t) && !_shut)
            {
                if (LineWater > 0)
                {
                    // Through half of the gas's area: 0.04 dm³/(s·bar) is 0.198 mm².
                    var pushed = Math.Min(LineWater, Step * 0.099e-6 * Math.Sqrt(2 * (Source - p) / 1000));
                    (LineWater, grows) = (LineWater - pushed, -pushed);
                }
                else
                {
                    var past = Math.Max(0, (p / Source - 0.5) / 0.5);
                    inflow = ConductanceLitresPerSecondBar * 1e-8 * Source * 1.185 * Math.Sqrt(293.15 / Kelvin) * Math.Sqrt(Math.Max(0, 1
                        - past * past));
                }
            }

            if (t >= DumpedAt && p > Ambient)
            {
                if (VesselWater > 0)
                {
                    var left = Math.Min(VesselWater, Step * WaterAreaMm2 * 1e-6 * Math.Sqrt(2 * (p - Ambient) / 1000));
                    (VesselWater, grows) = (VesselWater - left, left);
                }
                else
                {
                    var ratio = Math.Max(Ambient / p, 0.528282);
                    outflow += GasAreaMm2 * 1e-6 * p / Math.Sqrt(GasConstant * _kelvin) * Math.Pow(ratio, 1 / Gamma)
                        * Math.Sqrt(2 * Gamma / (Gamma - 1) * (1 - Math.Pow(ratio, (Gamma - 1) / Gamma)));
                }
            }

            var heat = Film * (_wall - _kelvin);
            _wall -= Step * (heat + 1.95 * (_wall - Kelvin)) / 390;
            const double cv = GasConstant / (Gamma - 1);
            var energy = _mass * cv * _kelvin + Step * (inflow * Gamma * cv * Kelvin - outflow * Gamma * cv * _kelvin + heat) - p * grows;
            _mass += Step * (inflow - outflow);
            _volume += grows;
            _kelvin = energy / (_mass * cv);
        }
    }
}
