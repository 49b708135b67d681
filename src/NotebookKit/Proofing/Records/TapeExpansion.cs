using NotebookKit.Numerics.Functions;
using NotebookKit.Proofing.Plans;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>What girth tape and length rule say of a proof: how far the vessel grew, what stayed, how much air was in it, each with its
/// uncertainty (twice the standard one).</summary>
/// <param name="Around">Strain around at proof pressure.</param>
/// <param name="Along">Strain along at proof pressure.</param>
/// <param name="Total">Growth of the vessel at proof pressure.</param>
/// <param name="Permanent">Growth that stays; none where it wasn't read after the proof.</param>
/// <param name="PermanentShare">Permanent over total growth; none where it wasn't read after the proof, or nothing grew.</param>
/// <param name="TrappedAir">Air by the water pumped in, at ambient pressure; none where the water wasn't measured.</param>
/// <remarks>Source: geometry of a closed cylinder, ΔV/V = (1 + ε around)² (1 + ε along) − 1; uncertainty to first order, JCGM 100:2008
/// (GUM), eq. 10, readings independent and within ± of their instrument (4.3.7).</remarks>
public sealed record TapeExpansion(
    Estimate<Ratio> Around, Estimate<Ratio> Along, Estimate<Volume> Total, Estimate<Volume>? Permanent, Estimate<Ratio>? PermanentShare,
    Estimate<Volume>? TrappedAir)
{
    internal static TapeExpansion? From(ProofReadings readings, ProofPlan plan, IReadOnlyList<HoldReading?> holds)
    {
        if (readings.Tape is not { } tape || holds[plan.Proof.Steps.Count - 1] is not { } hold) return null;
        List<double> values = [];
        List<double?> standard = [];
        int Add(double value, double? u)
        {
            values.Add(value);
            standard.Add(u);
            return values.Count - 1;
        }

        List<(int Before, int At, int After)> Take(IReadOnlyList<StretchReading> of, Length within)
        {
            var u = within.Meters / Math.Sqrt(3);
            return [.. of.Select(r => (Add(r.Before.Meters, u), Add(r.AtProof.Meters, u),
                r.After is { } after ? Add(after.Meters, u) : -1))];
        }

        var (girths, lengths) = (Take(tape.Girths, tape.GirthWithin), Take(tape.Lengths, tape.LengthWithin));
        var water = tape.WaterPumped is { } pumped
            ? Add(pumped.Value.CubicMeters, pumped.Within?.CubicMeters / Math.Sqrt(3)) : -1;
        var volume = plan.Proof.Volume.CubicMeters;

        // Held a little above or below proof, the growth is given at proof, in proportion.
        var heldAt = Enumerable.Range(0, readings.Time.Count).Where(i => readings.Time[i] >= hold.From.Seconds
            && readings.Time[i] <= (hold.From + hold.Held).Seconds).Average(i => readings.Pressure[i]).BarGauge();
        var toProof = plan.ProofPressure / heldAt;

        static double Strain(double[] x, List<(int Before, int At, int After)> of, bool after) =>
            of.Average(r => x[after ? r.After : r.At] / x[r.Before] - 1);
        double Growth(double[] x, bool after) =>
            volume * (Math.Pow(1 + Strain(x, girths, after), 2) * (1 + Strain(x, lengths, after)) - 1);
        (double Value, double? Standard) Of(Func<double[], double> f) => FirstOrder.Of(f, [.. values], [.. standard]);

        var total = Of(x => toProof * Growth(x, false));
        var hasAfter = girths.Concat(lengths).All(r => r.After >= 0);
        var filled = plan.Proof.Filled;
        var left = plan.Proof.Ambient / heldAt.ToAbsolute(plan.Proof.Ambient);
        return new(
            Ratios(Of(x => Strain(x, girths, false))), Ratios(Of(x => Strain(x, lengths, false))), Volumes(total),
            hasAfter ? Volumes(Of(x => Growth(x, true))) : null,
            hasAfter && total.Value > 0 ? Ratios(Of(x => Growth(x, true) / (toProof * Growth(x, false)))) : null,
            water < 0 ? null : Volumes(Of(x =>
                (x[water] - filled.WaterCompressed(heldAt).CubicMeters - Growth(x, false)) / (1 - left))));
    }

    private static Estimate<Ratio> Ratios((double Value, double? Standard) number) =>
        new(Ratio.FromPercent(100 * number.Value), number.Standard is { } u ? Ratio.FromPercent(200 * u) : null);

    private static Estimate<Volume> Volumes((double Value, double? Standard) number) =>
        new(Volume.FromMilliliters(1e6 * number.Value), number.Standard is { } u ? Volume.FromMilliliters(2e6 * u) : null);
}
