using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Fills;

/// <summary>Finds the restrictor that fills in a wanted time.</summary>
internal static class FillTiming
{
    // Logarithm of conductance: a walk of at most a factor of 66 either way from the estimate.
    private const double Step = 0.35;
    private const int MostSteps = 12;

    // A time is met to a thousandth. A valve worked by hand shuts now and then: there the nearest opening counts, to a twentieth.
    private const double Met = 1e-3, Near = 0.05;

    public static PadFill Find(PadFill fill, Duration wanted)
    {
        InvalidDesignException.ThrowIfAny("Fill at the pad", fill.Validate());
        if (fill.IsPlain) return With(fill, With(fill, 1).Run().Duration / wanted);

        InvalidDesignException? refusal = null;
        double Late(double ln)
        {
            try
            {
                return Math.Log(With(fill, Math.Exp(ln)).Run().Duration / wanted);
            }
            catch (InvalidDesignException refused)
            {
                refusal = refused;
                return double.NaN;
            }
        }

        var plain = With(fill, 1) with
        {
            Goal = FillGoal.WhenShut, Heat = FillHeat.Adiabatic, Properties = GasProperties.Ideal, Valve = null, Cylinder = null,
                SupplyRise = null,
        };
        var guess = Math.Log(plain.Run().Duration / wanted * (fill.Valve is { } pulses ? (pulses.Open + pulses.Shut) / pulses.Open : 1));
        var at = guess;
        var late = Late(at);

        // A fill that is refused when it is quick, because it runs hot, may do when it is slow; one that never ends, when it is quick.
        for (var k = 1; double.IsNaN(late) && k <= 2 * MostSteps; k++)
        {
            at = guess + (k % 2 == 0 ? Step : -Step) * ((k + 1) / 2);
            late = Late(at);
        }

        if (double.IsNaN(late)) throw refusal!;
        for (var k = 0; k < MostSteps; k++)
        {
            var next = at + (late > 0 ? Step : -Step);
            var then = Late(next);
            if (double.IsNaN(then)) break;
            if (then > 0 != late > 0) return Between(fill, wanted, Late, at, next);
            (at, late) = (next, then);
        }

        throw None(wanted, $"the nearest found takes {Digits.Round(wanted.Seconds * Math.Exp(late))} s");
    }

    private static PadFill Between(PadFill fill, Duration wanted, Func<double, double> late, double from, double to)
    {
        var root = BracketedRoot.TrySolve(late, from, to, 1e-6, out var found) ? found.Root : from;
        double slow = root - 1e-5, quick = root + 1e-5;
        var nearest = new[] { root, slow, quick }.MinBy(x => Math.Abs(late(x)));
        if (Math.Abs(late(nearest)) <= (fill.Valve is null ? Met : Near)) return With(fill, Math.Exp(nearest));
        double Seconds(double x) => wanted.Seconds * Math.Exp(late(x));
        throw None(wanted, $"the valve is shut then, and the nearest take {Digits.Round(Seconds(quick))} s and "
            + $"{Digits.Round(Seconds(slow))} s");
    }

    private static PadFill With(PadFill fill, double scale) => fill with
    {
        Restrictor = new SonicRestrictor(
            SonicConductance.FromCubicMetresPerSecondPascal(fill.Restrictor.Conductance.CubicMetresPerSecondPascal * scale),
                Math.Clamp(fill.Restrictor.CriticalRatio, 0, 0.7)),
    };

    private static InvalidDesignException None(Duration wanted, string nearest) => new(
        "Restrictor for a fill time",
        [FillingFindings.NoRestrictorFillsInTime(wanted.Seconds, nearest)]);
}
