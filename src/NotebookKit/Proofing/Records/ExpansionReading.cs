using MathNet.Numerics.LinearAlgebra;
using NotebookKit.Proofing.Plans;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Proofing.Records;

/// <summary>What the burette said: how far the vessel grew, what stayed, how much air was in it.</summary>
/// <param name="Total">Growth of the bore at proof pressure: water pumped less compression of water and air, and less what was
/// lost.</param>
/// <param name="Permanent">Growth that stays after the vessel is depressurised, the steady leak taken off. Sudden drops count as growth:
/// they may be cracks.</param>
/// <param name="Lost">Water lost by the steady leak while the vessel was above half its working pressure.</param>
/// <param name="TrappedAir">Air that the curve of water against pressure points to, measured at ambient pressure.</param>
/// <remarks>Source: springs side by side; least squares of V = a p + V_air (1 − pa/(p + pa)) through the holds on the way up (ideal gas at
/// constant temperature).</remarks>
public sealed record ExpansionReading(Volume Total, Volume Permanent, Volume Lost, Volume TrappedAir)
{
    /// <summary>Permanent over total growth.</summary>
    public Ratio PermanentShare => Ratio.FromPercent(100 * (Permanent / Total));

    internal static ExpansionReading? From(ProofReadings readings, ProofPlan plan, IReadOnlyList<HoldReading?> holds)
    {
        var top = plan.Proof.Steps.Count - 1;
        if (readings.Expansion is not { } burette || holds[top] is not { } proofHold) return null;
        double Mean(double from, double to)
        {
            var values = Enumerable.Range(0, readings.Time.Count).Where(i => readings.Time[i] >= from
                && readings.Time[i] <= to).Select(i => burette[i]).ToArray();
            return values.Length == 0 ? double.NaN : values.Average();
        }

        var proofEnd = proofHold.From.Seconds + proofHold.Held.Seconds;
        var firstPressure = Enumerable.Range(0, readings.Time.Count).First(i => readings.Pressure[i] > 1 + readings.GaugeError.Bars);
        var zero = firstPressure == 0 ? 0 : Mean(readings.Time[0], readings.Time[firstPressure - 1] - 2);
        if (double.IsNaN(zero)) zero = 0;
        if (!IsDepressurised(readings, proofHold)) return null;
        var off = Depressurised(readings, proofHold).ToArray();

        // Only a steady leak, seen at working pressure beyond its error, is taken off: a fall at proof pressure may be creep of the
        // laminate, and a sudden drop a crack, and both of those belong to what stays.
        var leakHold = holds.Count > top + 1 ? holds[^1] : null;
        var rate = leakHold is { } leak && leak.Fall > 2 * leak.FallUncertainty
            ? plan.Proof.Filled.LossFor(leak.Fall, leak.Planned.Pressure).Milliliters / leak.Held.Seconds
            : 0;
        double Lost(double until)
        {
            var seconds = 0.0;
            for (var i = 1; i < readings.Time.Count && readings.Time[i] <= until; i++)
                if (readings.Pressure[i] > 0.5 * plan.Proof.WorkingPressure.Bar)
                    seconds += readings.Time[i] - readings.Time[i - 1];
            return rate * seconds;
        }

        double lostByProof = Lost(proofEnd), lost = Lost(double.PositiveInfinity);
        var up = holds.Take(top + 1).OfType<HoldReading>().ToArray();
        var air = TrappedAirOf(up.Select(h => (h.Planned.Pressure.Bar, Mean(h.From.Seconds, h.From.Seconds + 5) - zero)).ToArray(),
            plan.Proof.Ambient.Bar);
        var squeezed = plan.Proof.Filled with { TrappedAir = air };
        var atProof = Mean(proofHold.From.Seconds, proofEnd) - zero;
        // Held a little above or below proof, the water was squeezed and the wall grew at that pressure; the growth is given at proof, in
        // proportion.
        var heldAt = Enumerable.Range(0, readings.Time.Count).Where(i => readings.Time[i] >= proofHold.From.Seconds
            && readings.Time[i] <= proofEnd)
            .Average(i => readings.Pressure[i]).BarGauge();
        var growth = plan.ProofPressure / heldAt
            * (atProof - lostByProof - squeezed.WaterCompressed(heldAt).Milliliters - squeezed.AirCompressed(heldAt).Milliliters);
        var stays = off.Select(i => burette[i]).Average() - zero - lost;
        return growth <= 0 ? null : new(growth.Millilitres(), stays.Millilitres(), lost.Millilitres(), air);
    }

    /// <summary>Whether the log goes on until nothing presses on the water, which is when what stays is read.</summary>
    internal static bool IsDepressurised(ProofReadings readings, HoldReading proofHold) => Depressurised(readings, proofHold).Count() > 2;

    private static IEnumerable<int> Depressurised(ProofReadings readings, HoldReading proofHold) =>
        Enumerable.Range(0, readings.Time.Count).Where(i => readings.Time[i] > (proofHold.From + proofHold.Held).Seconds
            && readings.Pressure[i] < 0.5 + readings.GaugeError.Bars);

    private static Volume TrappedAirOf((double Bar, double Millilitres)[] holds, double ambientBar)
    {
        // Below proof nothing has yielded yet: the straight part and the bubble alone bend the curve.
        var used = holds.Where(h => double.IsFinite(h.Millilitres)).Take(Math.Max(3, holds.Length - 2)).ToArray();
        if (used.Length < 3) return Volume.Zero;
        var a = Matrix<double>.Build.Dense(used.Length, 2, (i, j) => j == 0 ? used[i].Bar : 1 - ambientBar / (used[i].Bar + ambientBar));
        var b = Vector<double>.Build.Dense([.. used.Select(h => h.Millilitres)]);
        return Math.Max(0, a.QR().Solve(b)[1]).Millilitres();
    }
}
