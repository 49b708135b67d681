using System.Buffers;

namespace NotebookKit.Numerics.Ode;

/// <summary>
/// Integrates a stiff system forward by the Radau IIA method of order 5 with error control, and ends at an event; it allocates nothing
/// while it runs.
/// </summary>
/// <remarks>
/// Every stage solves the equations themselves, so a stiff part sets no limit on the step. The derivatives are formed by differences, over
/// the coupled unknowns alone. Source: E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, IV.8; K. Gustafsson,
/// ACM Trans. Math. Softw. 20 (1994) 496 (step control).
/// </remarks>
internal static class RadauDriver
{
    private const int Passes = 6;

    /// <summary>Integrates to the end of the interval or to the first event.</summary>
    /// <typeparam name="TSystem">The equations.</typeparam>
    /// <typeparam name="TEvents">What ends it: every event here does.</typeparam>
    /// <typeparam name="TObserver">Who sees the steps.</typeparam>
    /// <param name="system">The equations.</param>
    /// <param name="events">Event functions.</param>
    /// <param name="observer">Sees every accepted step.</param>
    /// <param name="from">Start of the interval [unit of t]; finite.</param>
    /// <param name="to">End of the interval [unit of t]; after the start.</param>
    /// <param name="state">State at the start; holds the state at the end afterwards.</param>
    /// <param name="settings">Error control and limits.</param>
    /// <param name="absolute">Error allowed per step whatever the size of each unknown, above 0 [unit of each unknown].</param>
    public static OdeResult Integrate<TSystem, TEvents, TObserver>(
        ref TSystem system, ref TEvents events, ref TObserver observer, double from, double to, Span<double> state, OdeSettings settings,
        ReadOnlySpan<double> absolute)
        where TSystem : struct, IStiffSystem
        where TEvents : struct, IOdeEvents
        where TObserver : struct, IOdeObserver
    {
        if (from >= to) return new(OdeStatus.Completed, from, -1, 0, 0, 0, 0);
        int n = system.Dimension, m = system.Coupled.Length;
        var work = ArrayPool<double>.Shared.Rent(RadauStep.WorkOf(n) + RadauMatrices.WorkOf(n, m));
        var whole = ArrayPool<int>.Shared.Rent(n + 2 * m);
        try
        {
            var step = new RadauStep(n, work, new(n, system.Coupled, work.AsSpan(RadauStep.WorkOf(n)), whole), settings, absolute);
            return Run(ref system, ref events, ref observer, from, to, state, settings, ref step);
        }
        finally
        {
            ArrayPool<double>.Shared.Return(work);
            ArrayPool<int>.Shared.Return(whole);
        }
    }

    private static OdeResult Run<TSystem, TEvents, TObserver>(
        ref TSystem system, ref TEvents events, ref TObserver observer, double from, double to, Span<double> y, OdeSettings settings,
        ref RadauStep step)
        where TSystem : struct, IStiffSystem
        where TEvents : struct, IOdeEvents
        where TObserver : struct, IOdeObserver
    {
        Span<double> before = stackalloc double[events.Count], after = stackalloc double[events.Count];
        double t = from, longest = Math.Min(settings.MaximumStep, to - from);
        int accepted = 0, rejected = 0;
        if (!step.Begin(ref system, t, y)) return new(OdeStatus.NonFinite, t, -1, 0, 0, 1, 0);
        for (var e = 0; e < events.Count; e++) before[e] = events.Value(e, t, y, step.Slope);
        var h = settings.InitialStep > 0 ? Math.Min(settings.InitialStep, longest) : step.First(ref system, t, y, longest);
        double lastH = 0, lastError = 0;
        var again = false;
        var run = WorkRun.Current;
        while (true)
        {
            run.ThrowIfStopped();
            if (accepted + rejected >= settings.MaximumSteps)
                return new(OdeStatus.TooManySteps, t, -1, accepted, rejected, step.Evaluations, h);
            if (h <= Math.Max(settings.MinimumStep, 16 * double.Epsilon + 4e-16 * Math.Abs(t)))
                return new(OdeStatus.StepTooSmall, t, -1, accepted, rejected, step.Evaluations, h);
            var isLast = h >= (to - t) * (1 - 1e-12);
            if (isLast) h = to - t;
            if (!step.Solve(ref system, t, h, y))
            {
                (h, again) = (0.5 * h, true);
                rejected++;
                continue;
            }

            var error = step.ErrorNorm(ref system, t, h, y, again || accepted == 0);
            var safety = 0.9 * (2 * Passes + 1) / (2 * Passes + step.Iterations);
            if (!(error < 1))
            {
                h *= double.IsFinite(error) ? Math.Max(0.2, safety * Math.Pow(error, -0.25)) : 0.2;
                again = true;
                rejected++;
                continue;
            }

            accepted++;
            error = Math.Max(error, 1e-8);
            var factor = Math.Pow(error, -0.25);
            if (lastH > 0) factor *= Math.Min(1, h / lastH * Math.Pow(lastError / error, 0.25));
            factor = Math.Clamp(safety * factor, 0.2, 8);
            if (again) factor = Math.Min(1, factor);
            again = false;
            var end = isLast ? to : t + h;
            if (!step.End(ref system, end)) return new(OdeStatus.NonFinite, t, -1, accepted, rejected, step.Evaluations, h);
            var dense = step.Dense(t, h, end, y);
            var first = -1;
            for (var e = 0; e < events.Count; e++)
            {
                after[e] = events.Value(e, isLast ? to : t + h, step.State, step.EndSlope);
                if (!EventLocator.Crosses(before[e], after[e], events.Rule(e).Direction)) continue;
                var at = step.Locate(ref events, e, dense, before[e], after[e]);
                if (first < 0 || at < end) (first, end) = (e, at);
            }

            if (first >= 0)
            {
                end = Cut(ref system, ref events, first, t, end, y, ref step);
                if (observer.IsActive) observer.Accepted(step.Again(t, end));
                step.State.CopyTo(y);
                return new(OdeStatus.EndedByEvent, end, first, accepted, rejected, step.Evaluations, h);
            }

            if (observer.IsActive) observer.Accepted(dense);
            t = end;
            (lastH, lastError) = (h, error);
            h = Math.Min(longest, step.Advance(ref system, t, h, factor, y));
            if (isLast) return new(OdeStatus.Completed, t, -1, accepted, rejected, step.Evaluations, h);
            after[..events.Count].CopyTo(before);
        }
    }

    // Inside a step the collocation polynomial is less exact than at its end: the step is taken again so that it ends where the event is,
    // and again from where that one puts the event.
    private static double Cut<TSystem, TEvents>(scoped ref TSystem system, scoped ref TEvents events, int index, double t, double end,
        scoped Span<double> y, scoped ref RadauStep step)
        where TSystem : struct, IStiffSystem
        where TEvents : struct, IOdeEvents
    {
        step.TakeFrom(step.Again(t, end), end);
        for (var i = 0; i < 4; i++)
        {
            var h = end - t;
            if (!step.Solve(ref system, t, h, y))
            {
                step.TakeFrom(step.Again(t, end), end);
                break;
            }

            step.Take(y);
            var dense = step.Dense(t, h, end, y);
            if (i == 3 || !step.End(ref system, end)) break;
            double value = events.Value(index, end, step.State, step.EndSlope), near = 1e-3 * h;
            var by = value * near / (value - step.ValueAt(ref events, index, dense, end - near));
            if (!(Math.Abs(by) > 1e-13 * end && Math.Abs(by) < 0.1 * h)) break;
            end -= by;
        }

        return end;
    }
}
