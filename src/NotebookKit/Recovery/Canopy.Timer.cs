using MathNet.Numerics.Distributions;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Recovery;

public sealed partial record Canopy
{
    /// <summary>
    /// Load when a timer brings it out and the time of apogee is uncertain. The best setting is the expected time of apogee itself.
    /// Source: free flight about the top; T. W. Knacke, NWC TP 6575, 1991; E. Pflanz, 1942.
    /// </summary>
    /// <param name="mass">Mass that hangs from the canopy; 10 g to 500 kg.</param>
    /// <param name="timer">Setting of the timer, from release; 0.1 to 120 s.</param>
    /// <param name="apogee">Expected time of apogee, from release; 0.1 to 120 s, within 5 s of the timer.</param>
    /// <param name="spread">Standard deviation of opening against apogee, flight and timer together; 0.01 to 5 s.</param>
    /// <param name="sideways">Sideways speed at apogee; 0 to 100 m/s.</param>
    /// <param name="allowed">Load the cord, pins and bulkheads take; above 0, left out where not known.</param>
    /// <param name="density">Air density; 0.3 to 1.6 kg/m³, 1.225 kg/m³ where none is given.</param>
    /// <exception cref="InvalidDesignException">The canopy can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public TimedOpeningResult OpenByTimer(
        Mass mass, Duration timer, Duration apogee, Duration spread, Speed sideways, Force? allowed = null, Density? density = null)
    {
        var times = new ValidRange<Duration>(0.1.Seconds(), 120.Seconds());
        times.Check(timer, "timer", "Set it to the expected time of apogee.");
        times.Check(apogee, "time of apogee", "Take it from the flight.");
        new ValidRange<Duration>((-5).Seconds(), 5.Seconds()).Check(timer - apogee, "timer less time of apogee",
            "Further off, the vehicle isn't flying free any more.");
        new ValidRange<Duration>(0.01.Seconds(), 5.Seconds()).Check(spread, "spread of the opening",
            "Some 0.2 to 1 s for a timer started by the release.");
        new ValidRange<Speed>(Speed.Zero, 100.MetresPerSecond()).Check(sideways, "sideways speed at apogee", "Take it from the flight.");
        if (allowed is { } limit) new ValidRange<Force>(1.Newtons(), 100_000.Newtons()).Check(limit, "load that the gear bears",
            "The weakest of cord, pins and bulkhead.");
        var (mean, deviation) = ((timer - apogee).Seconds, spread.Seconds);
        var reach = Math.Abs(mean) + (3 * deviation);
        const int Rows = 121;
        var (offsets, speeds, loads) = (new double[Rows], new double[Rows], new double[Rows]);
        for (var i = 0; i < Rows; i++)
        {
            offsets[i] = reach * ((2.0 * i / (Rows - 1)) - 1);
            speeds[i] = SpeedAt(offsets[i]);
            loads[i] = LoadAt(offsets[i]);
        }

        var most = FoldedQuantile(mean, deviation, 0.95);
        Ratio? chance = allowed is { } allowable ? Ratio.FromPercent(100 * ChanceBeyond(allowable.Newtons)) : null;
        var hard = Open(mass, Speed.FromMetersPerSecond(Math.Min(150, SpeedAt(most))), density);
        var findings = hard.Findings.Where(f => f.Severity == FindingSeverity.Note).ToList();
        if (allowed is { } gear && hard.FiniteMass <= gear && hard.InfiniteMass > gear)
            findings.Add(RecoveryFindings.UpperBoundOfOfOpeningsMore(hard.InfiniteMass, gear));
        if (chance > 1.Percent())
            findings.Add(RecoveryFindings.OpeningLoadMayExceedGear(chance.Value, allowed!.Value, apogee));
        if (Math.Abs(mean) > deviation)
            findings.Add(RecoveryFindings.TimerIsOff(Math.Abs(mean).Seconds(), mean, apogee));
        return new TimedOpeningResult
        {
            Title = $"Timed opening of {Describe()}",
            Timer = timer,
            Apogee = apogee,
            Spread = spread,
            Offset = new Series("Opening after apogee", "s", offsets),
            Speed = new Series("Speed at opening", "m/s", speeds),
            Load = new Series("Opening load", "N", loads),
            ExpectedLoad = Force.FromNewtons(LoadAt(mean)),
            LoadAt95Percent = hard.FiniteMass,
            UpperBoundAt95Percent = hard.InfiniteMass,
            Allowed = allowed,
            ChanceOfExceeding = chance,
            Findings = findings,
            Working = new Working("Timed opening",
            [
                new("Speed at opening, 95 % stay below", @"v = \sqrt{v_x^2 + (g\,\delta)^2}",
                    $"√(({sideways.Show()})² + (9.807 m/s² × {Digits.Round(most)} s)²)", $"{Digits.Round(SpeedAt(most))} m/s",
                    RecoveryLiterature.Goldstein),
                .. hard.Working.Steps,
            ]),
        };

        // A canopy that opens at the very top meets some air nevertheless: walking pace is the least it is asked for.
        double SpeedAt(double offset) =>
            Math.Max(1, Math.Sqrt((sideways.MetersPerSecond * sideways.MetersPerSecond)
                + (StandardConstants.Gravity * offset * StandardConstants.Gravity * offset)));

        double LoadAt(double offset) => Open(mass, Speed.FromMetersPerSecond(Math.Min(150, SpeedAt(offset))), density).FiniteMass.Newtons;

        // The load goes with the square of the speed: one opening gives the offset at which the limit is reached.
        double ChanceBeyond(double newtons)
        {
            var square = newtons / LoadAt(0) * SpeedAt(0) * SpeedAt(0);
            var rest = square - (sideways.MetersPerSecond * sideways.MetersPerSecond);
            if (rest <= 0) return 1;
            var offset = Math.Sqrt(rest) / StandardConstants.Gravity;
            return Normal.CDF(mean, deviation, -offset) + 1 - Normal.CDF(mean, deviation, offset);
        }
    }

    /// <summary>Size of a normal number that a share of them stays within.</summary>
    private static double FoldedQuantile(double mean, double deviation, double share)
    {
        var most = Math.Abs(mean) + (6 * deviation);
        double Left(double size) => Normal.CDF(mean, deviation, size) - Normal.CDF(mean, deviation, -size) - share;
        return BracketedRoot.TrySolve(Left, 0, most, 0, out var found) ? found.Root : most;
    }
}
