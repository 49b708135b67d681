using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using NotebookKit.Numerics;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities.Numbers;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;
using V = System.Runtime.Intrinsics.Vector256;

namespace NotebookKit.Benchmarks.Flight;

/// <summary>One descent under an open canopy: where it starts, and what it hangs from.</summary>
internal sealed record CanopyStart(FlightNumbers Numbers, double[] State, double MassKg, double DragM2, double WindCos, double WindSin,
    double LowestM);

/// <summary>
/// A trial, not part of the library: four descents under open canopies in the lanes of a vector, each with steps of its own; whoever has
/// landed makes room for the next. The same method as <see cref="OdeDriver"/> on <see cref="CanopyPath"/>, for the standard atmosphere from
/// sea level and the power law of <see cref="BenchmarkVehicle.Site"/>.
/// </summary>
internal static class CanopiesAbreast
{
    private const int Width = 4, N = 6, Idle = -1;
    private const double Lapse = 0.0065, SeaK = 288.15, SeaPa = 101_325, EarthM = 6_356_766, GasConstant = 8314.32 / 28.9644;
    private const double WindMps = 5, ReferenceM = 10, Shape = 1.0 / 7, Tolerance = 1e-6, LeastLog = -9.210340371976182;
    private const double Exponent = StandardConstants.Gravity / (GasConstant * Lapse);
    private const double B2 = -(Exponent - 1) / 2, B3 = B2 * -(Exponent - 2) / 3, B4 = B3 * -(Exponent - 3) / 4,
        B5 = B4 * -(Exponent - 4) / 5, B6 = B5 * -(Exponent - 5) / 6, B7 = B6 * -(Exponent - 6) / 7, B8 = B7 * -(Exponent - 7) / 8;

    /// <summary>Brings all down; landing times [s].</summary>
    public static void Land(ReadOnlySpan<CanopyStart> starts, Span<double> landedS)
    {
        Span<Lanes> k = stackalloc Lanes[7 * N], y = stackalloc Lanes[N], trial = stackalloc Lanes[N], end = stackalloc Lanes[N];
        Span<int> flight = stackalloc int[Width];
        Span<bool> rejected = stackalloc bool[Width];
        flight.Fill(Idle);
        var hung = default(Hung);
        Lanes time = default, step = default, previous = V.Create(LeastLog);
        for (int next = 0, flying = 0; ;)
        {
            var isNew = false;
            for (var l = 0; l < Width && next < starts.Length; l++)
            {
                if (flight[l] != Idle) continue;
                var start = starts[next];
                for (var i = 0; i < N; i++) y[i] = y[i].WithElement(l, start.State[i]);
                hung.Take(l, start);
                (flight[l], rejected[l], isNew) = (next++, false, true);
                flying++;
                (time, step, previous) = (time.WithElement(l, 0), step.WithElement(l, double.NaN), previous.WithElement(l, LeastLog));
            }

            if (flying == 0) return;
            if (isNew) Begin(hung, y, k, trial, end, ref step);
            Attempt(hung, step, y, k, trial, end);
            var log = V.Log(ErrorNorm(step, y, end, k));
            Lanes factor = V.Exp(V.Create(0.04) * previous - V.Create(0.17) * log), cut = V.Exp(V.Create(-0.17) * log), accepted = default;
            for (var l = 0; l < Width; l++)
            {
                if (flight[l] == Idle) continue;
                if (!(log[l] <= 0))
                {
                    step = step.WithElement(l, Rounded(step[l] * Math.Max(0.2, 0.9 * cut[l])));
                    rejected[l] = true;
                    continue;
                }

                if (end[2][l] >= 0)
                {
                    landedS[flight[l]] = time[l] + Ground(step[l], l, y, end, k);
                    flight[l] = Idle;
                    flying--;
                    continue;
                }

                accepted = accepted.WithElement(l, BitConverter.Int64BitsToDouble(-1));
                time = time.WithElement(l, time[l] + step[l]);
                step = step.WithElement(l, Rounded(step[l] * Math.Clamp(0.9 * factor[l], 0.2, rejected[l] ? 1 : 10)));
                previous = previous.WithElement(l, Math.Max(log[l], LeastLog));
                rejected[l] = false;
            }

            for (var i = 0; i < N; i++)
            {
                y[i] = V.ConditionalSelect(accepted, end[i], y[i]);
                k[i] = V.ConditionalSelect(accepted, k[6 * N + i], k[i]);
            }
        }
    }

    // Slope and first step of whoever is new; the others keep theirs.
    private static void Begin(in Hung hung, Span<Lanes> y, Span<Lanes> k, Span<Lanes> trial, Span<Lanes> slope, ref Lanes step)
    {
        Derivatives(hung, y, slope);
        Lanes state = default, steepness = default, curvature = default;
        for (var i = 0; i < N; i++)
        {
            var scale = V.Create(Tolerance) + V.Create(Tolerance) * V.Abs(y[i]);
            state += y[i] / scale * (y[i] / scale);
            steepness += slope[i] / scale * (slope[i] / scale);
        }

        state = V.Sqrt(state / V.Create((double)N));
        steepness = V.Sqrt(steepness / V.Create((double)N));
        var first = V.Create(0.01) * state / steepness;
        var isNew = ~V.Equals(step, step);
        for (var i = 0; i < N; i++)
        {
            k[i] = V.ConditionalSelect(isNew, slope[i], k[i]);
            trial[i] = y[i] + first * slope[i];
        }

        Derivatives(hung, trial, slope);
        for (var i = 0; i < N; i++)
        {
            var scaled = (slope[i] - k[i]) / (V.Create(Tolerance) + V.Create(Tolerance) * V.Abs(y[i]));
            curvature += scaled * scaled;
        }

        curvature = V.Sqrt(curvature / V.Create((double)N)) / first;
        for (var l = 0; l < Width; l++)
        {
            if (!double.IsNaN(step[l])) continue;
            var second = Math.Pow(0.01 / Math.Max(steepness[l], curvature[l]), 0.2);
            step = step.WithElement(l, Rounded(Math.Min(100 * first[l], second)));
        }
    }

    private static void Attempt(in Hung hung, Lanes h, Span<Lanes> y, Span<Lanes> k, Span<Lanes> trial, Span<Lanes> end)
    {
        Stage(trial, h, y, k, [1.0 / 5]);
        Derivatives(hung, trial, k.Slice(N, N));
        Stage(trial, h, y, k, [3.0 / 40, 9.0 / 40]);
        Derivatives(hung, trial, k.Slice(2 * N, N));
        Stage(trial, h, y, k, [44.0 / 45, -56.0 / 15, 32.0 / 9]);
        Derivatives(hung, trial, k.Slice(3 * N, N));
        Stage(trial, h, y, k, [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729]);
        Derivatives(hung, trial, k.Slice(4 * N, N));
        Stage(trial, h, y, k, [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656]);
        Derivatives(hung, trial, k.Slice(5 * N, N));
        Stage(end, h, y, k, [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84]);
        Derivatives(hung, end, k.Slice(6 * N, N));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Stage(Span<Lanes> to, Lanes h, Span<Lanes> y, Span<Lanes> k, ReadOnlySpan<double> weights)
    {
        for (var i = 0; i < N; i++)
        {
            var sum = V.Create(weights[0]) * k[i];
            for (var s = 1; s < weights.Length; s++) sum += V.Create(weights[s]) * k[s * N + i];
            to[i] = y[i] + h * sum;
        }
    }

    private static Lanes ErrorNorm(Lanes h, Span<Lanes> y, Span<Lanes> end, Span<Lanes> k)
    {
        Lanes sum = default;
        for (var i = 0; i < N; i++)
        {
            var error = h * (V.Create(71.0 / 57600) * k[i] - V.Create(71.0 / 16695) * k[2 * N + i] + V.Create(71.0 / 1920) * k[3 * N + i]
                - V.Create(17253.0 / 339200) * k[4 * N + i] + V.Create(22.0 / 525) * k[5 * N + i] - V.Create(1.0 / 40) * k[6 * N + i]);
            var scaled = error / (V.Create(Tolerance) + V.Create(Tolerance) * V.Max(V.Abs(y[i]), V.Abs(end[i])));
            sum += scaled * scaled;
        }

        return V.Sqrt(sum / V.Create((double)N));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Derivatives(in Hung hung, Span<Lanes> y, Span<Lanes> dydt)
    {
        var altitude = -y[2];
        var h = altitude / (V.Create(1.0) + altitude * V.Create(1 / EarthM));
        var kelvins = V.Create(SeaK) - V.Create(Lapse) * h;
        var x = h * V.Create(Lapse / SeaK);
        var series = V.Create(B2) + x * (V.Create(B3) + x * (V.Create(B4) + x * (V.Create(B5) + x * (V.Create(B6)
            + x * (V.Create(B7) + x * V.Create(B8))))));
        var pascals = V.Create(SeaPa) * (V.Create(1.0) - V.Create(Exponent) * x * (V.Create(1.0) + x * series));
        var density = pascals / (V.Create(GasConstant) * kelvins);
        var height = V.Max(hung.LowestM, altitude);
        var wind = V.Create(WindMps) * V.Exp(V.Create(Shape) * V.Log(height / V.Create(ReferenceM)));
        Lanes north = y[3] + hung.WindSin * wind, east = y[4] - hung.WindCos * wind, down = y[5];
        var felt = V.Create(-0.5) * density * hung.DragM2 * V.Sqrt(north * north + east * east + down * down) / hung.MassKg;
        (dydt[0], dydt[1], dydt[2]) = (y[3], y[4], y[5]);
        (dydt[3], dydt[4], dydt[5]) = (felt * north, felt * east, felt * down + V.Create(StandardConstants.Gravity));
    }

    private static double Ground(double h, int l, Span<Lanes> y, Span<Lanes> end, Span<Lanes> k)
    {
        Span<double> stages = stackalloc double[7], row = stackalloc double[5];
        for (var s = 0; s < 7; s++) stages[s] = k[s * N + 2][l];
        DormandPrinceStep.Interpolant(h, [y[2][l]], [end[2][l]], stages, row);
        var height = new Height(new DenseStep(0, h, h, row));
        return BracketedRoot.Polish(ref height, 0, -y[2][l], h, -end[2][l], 0, 100).Root;
    }

    private static double Rounded(double step) => BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(step) & ~((1L << 48) - 1));

    private readonly ref struct Height(DenseStep step) : IScalarFunction
    {
        private readonly DenseStep _step = step;

        public double Value(double x)
        {
            Span<double> down = stackalloc double[1];
            _step.State(x, down);
            return -down[0];
        }
    }

    /// <summary>What differs from lane to lane.</summary>
    private struct Hung
    {
        public Lanes MassKg, DragM2, WindCos, WindSin, LowestM;

        public void Take(int lane, CanopyStart start)
        {
            MassKg = MassKg.WithElement(lane, start.MassKg);
            DragM2 = DragM2.WithElement(lane, start.DragM2);
            WindCos = WindCos.WithElement(lane, start.WindCos);
            WindSin = WindSin.WithElement(lane, start.WindSin);
            LowestM = LowestM.WithElement(lane, start.LowestM);
        }
    }
}
