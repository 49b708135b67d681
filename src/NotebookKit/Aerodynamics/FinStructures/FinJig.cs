using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>
/// The jig that holds the fins while their adhesive cures, and how crooked it may leave them. A plate in a wider slot lies anywhere between
/// both diagonals: its angle is taken evenly spread over ± gap / length. Source: geometry of a plate in a slot; spread of the mean of
/// independent fins.
/// </summary>
/// <param name="Gap">Slot width less fin thickness; 0 to 5 mm.</param>
/// <param name="Length">Length along the root over which the slot guides the fin; 5 mm to 2 m.</param>
public sealed record FinJig(Length Gap, Length Length)
{
    private const int Samples = 20_000;

    /// <summary>Standard deviation of the slots' own angles, each by itself; 0 to 3°.</summary>
    public Angle Skew { get; init; } = Angle.Zero;

    /// <summary>Twist that all slots share: a jig that is wound along its length; −3 to 3°.</summary>
    public Angle Twist { get; init; } = Angle.Zero;

    /// <summary>Largest angle that the gap alone allows a fin.</summary>
    public Angle GapAngle => Angle.FromRadians(Math.Atan(Gap.Meters / Length.Meters)).ToUnit(AngleUnit.Degree);

    /// <summary>Everything that is wrong with the jig.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        var findings = new List<Finding>();
        findings.AddIf(new ValidRange<Length>(UnitsNet.Length.Zero, 5.Millimetres()).Find(Gap, "gap of the jig's slot",
            "Slot width less fin thickness."));
        findings.AddIf(new ValidRange<Length>(5.Millimetres(), 2.Metres()).Find(Length, "guided length of the jig",
            "Measure along the fin root."));
        findings.AddIf(new ValidRange<Angle>(Angle.Zero, 3.Degrees()).Find(Skew, "skew of the slots",
            "It is a standard deviation; measure each slot against the axis."));
        findings.AddIf(new ValidRange<Angle>((-3).Degrees(), 3.Degrees()).Find(Twist, "twist of the jig",
            "Measure all slots against the axis; it is their mean."));
        return findings;
    }

    /// <summary>Mean cant of a number of fins glued in this jig, as a distribution over jigs-full. Source: mean of independent fins,
    /// sampled.</summary>
    /// <param name="fins">Number of fins; 3 to 6.</param>
    /// <param name="seed">Seed of the samples; any number.</param>
    /// <exception cref="InvalidDesignException">The jig can't be computed; carries all findings.</exception>
    /// <exception cref="OutOfRangeException">The number of fins is outside 3 to 6.</exception>
    public CantResult Cant(int fins, ulong seed = 1)
    {
        InvalidDesignException.ThrowIfAny("Fin jig", Validate());
        new ValidRange<double>(3, 6).Check(fins, "number of fins", "The component method is for three to six.");
        var (samples, gap, skew, twist) = (new SeededSamples(seed), GapAngle.Degrees, Skew.Degrees, Twist.Degrees);
        var means = new double[Samples];
        var run = WorkRun.Current;
        for (var i = 0; i < Samples; i++)
        {
            run.ThrowIfStopped();
            var sum = 0.0;
            for (var fin = 0; fin < fins; fin++)
                sum += (gap * ((2 * samples.Uniform(i, fin)) - 1)) + (skew > 0 ? skew * samples.Normal(i, fin, 1) : 0);
            means[i] = twist + (sum / fins);
        }

        Array.Sort(means);
        var deviation = Math.Sqrt(((gap * gap / 3) + (skew * skew)) / fins);
        return new CantResult
        {
            Title = $"Mean cant of {fins} fins from the jig",
            Fins = fins,
            Seed = seed,
            Mean = Twist.ToUnit(AngleUnit.Degree),
            Deviation = deviation.Degrees(),
            Worst = (Math.Abs(twist) + gap + (3 * skew)).Degrees(),
            Samples = new Series("Mean cant", "°", means),
            Findings = deviation + Math.Abs(twist) > 0.25
                ? [AerodynamicsFindings.JigLeavesLargeMeanCant(Math.Abs(twist), deviation)]
                : [],
            Working = new Working("Cant from the jig",
            [
                new("Angle the gap allows", @"\theta = \arctan\frac{g}{L}", $"atan({Gap.Show()} / {Length.Show()})", GapAngle.Show(),
                    Source.CommonPractice("a plate in a slot, evenly spread")),
                new("Spread of the mean", @"s = \sqrt{\frac{\theta^2/3 + \sigma^2}{n}}",
                    $"√((({Digits.Round(gap)}°)² / 3 + ({Digits.Round(skew)}°)²) / {fins})", $"{Digits.Round(deviation)}°",
                    Source.CommonPractice("independent fins")),
            ]),
        };
    }
}
