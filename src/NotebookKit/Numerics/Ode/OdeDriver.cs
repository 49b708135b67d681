using System.Buffers;

namespace NotebookKit.Numerics.Ode;

/// <summary>
/// Integrates a system of ordinary differential equations with error control by an embedded Runge-Kutta pair of order 5(4), locates
/// events on its dense output, and allocates nothing while it runs.
/// </summary>
/// <remarks>
/// For non-stiff problems. Source: J. R. Dormand, P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19-26; E. Hairer, S. P. Nørsett, G. Wanner,
/// Solving Ordinary Differential Equations I, 2nd ed. 1993, II.4-II.6.
/// </remarks>
public static class OdeDriver
{
    private const int RowsOfWork = DormandPrinceTableau.Stages + 5 + 4;
    private const int LargestOnStack = 24;

    /// <summary>Integrates to the end of the interval or to a terminal event, with nothing watched on the way.</summary>
    /// <inheritdoc cref="Integrate{TSystem, TEvents, TObserver}"/>
    public static OdeResult Integrate<TSystem>(
        ref TSystem system, double from, double to, Span<double> state, OdeSettings settings, ReadOnlySpan<double> absoluteTolerance)
        where TSystem : struct, IOdeSystem
    {
        var events = new NoEvents();
        var observer = new NoObserver();
        return Integrate(ref system, ref events, ref observer, from, to, state, settings, absoluteTolerance);
    }

    /// <summary>Integrates to the end of the interval or to a terminal event.</summary>
    /// <typeparam name="TSystem">The equations.</typeparam>
    /// <typeparam name="TEvents">What is watched.</typeparam>
    /// <typeparam name="TObserver">Who sees the steps.</typeparam>
    /// <param name="system">The equations.</param>
    /// <param name="events">Event functions.</param>
    /// <param name="observer">Sees every accepted step.</param>
    /// <param name="from">Start of the interval [unit of t]; finite.</param>
    /// <param name="to">End of the interval [unit of t]; finite, before or after the start.</param>
    /// <param name="state">State at the start; holds the state at the end afterwards, or the last good one where the integration
    /// failed.</param>
    /// <param name="settings">Error control and limits.</param>
    /// <param name="absoluteTolerance">Error allowed per step whatever the size of each unknown, above 0 [unit of each unknown].</param>
    /// <exception cref="ArgumentException">A length does not match, a bound is not finite, or a tolerance is not above 0.</exception>
    public static OdeResult Integrate<TSystem, TEvents, TObserver>(
        ref TSystem system, ref TEvents events, ref TObserver observer, double from, double to, Span<double> state, OdeSettings settings,
        ReadOnlySpan<double> absoluteTolerance)
        where TSystem : struct, IOdeSystem
        where TEvents : struct, IOdeEvents
        where TObserver : struct, IOdeObserver
    {
        ArgumentNullException.ThrowIfNull(settings);
        CheckArguments(system.Dimension, events.Count, from, to, state, absoluteTolerance);
        var length = RowsOfWork * state.Length;
        if (state.Length <= LargestOnStack)
        {
            Span<double> work = stackalloc double[RowsOfWork * LargestOnStack];
            return Run(ref system, ref events, ref observer, from, to, state, settings, absoluteTolerance, work[..length]);
        }

        var rented = ArrayPool<double>.Shared.Rent(length);
        try
        {
            return Run(ref system, ref events, ref observer, from, to, state, settings, absoluteTolerance, rented.AsSpan(0, length));
        }
        finally
        {
            ArrayPool<double>.Shared.Return(rented);
        }
    }

    private static OdeResult Run<TSystem, TEvents, TObserver>(
        ref TSystem system, ref TEvents events, ref TObserver observer, double from, double to, Span<double> state, OdeSettings settings,
        ReadOnlySpan<double> absolute, Span<double> work)
        where TSystem : struct, IOdeSystem
        where TEvents : struct, IOdeEvents
        where TObserver : struct, IOdeObserver
    {
        var n = state.Length;
        var stages = work[..(7 * n)];
        var coefficients = work.Slice(7 * n, 5 * n);
        var newState = work.Slice(12 * n, n);
        var trial = work.Slice(13 * n, n);
        var eventState = work.Slice(14 * n, n);
        var eventSlope = work.Slice(15 * n, n);
        Span<double> before = stackalloc double[EventLocator.MaximumEvents];
        Span<double> after = stackalloc double[EventLocator.MaximumEvents];

        if (!AllFinite(state)) return new(OdeStatus.NonFinite, from, -1, 0, 0, 0, 0);
        if (from == to) return new(OdeStatus.Completed, from, -1, 0, 0, 0, 0);

        var direction = to > from ? 1.0 : -1.0;
        var watched = events.Count;
        var relative = settings.RelativeTolerance;
        var longest = Math.Min(settings.MaximumStep, Math.Abs(to - from));
        var t = from;
        int accepted = 0, rejected = 0, evaluations = 1;

        system.Derivatives(t, state, stages[..n]);
        if (!AllFinite(stages[..n])) return new(OdeStatus.NonFinite, t, -1, 0, 0, evaluations, 0);
        for (var e = 0; e < watched; e++) before[e] = events.Value(e, t, state, stages[..n]);

        double step;
        if (settings.InitialStep > 0)
        {
            step = Math.Min(settings.InitialStep, longest);
        }
        else
        {
            step = StepControl.FirstStep(ref system, t, direction, state, stages[..n], relative, absolute, longest, trial,
                stages.Slice(n, n));
            evaluations++;
        }

        var previousLogError = StepControl.LeastLogError;
        var lastWasRejected = false;
        var run = WorkRun.Current;
        while (true)
        {
            run.ThrowIfStopped();
            if (accepted + rejected >= settings.MaximumSteps) return new(OdeStatus.TooManySteps, t, -1, accepted, rejected, evaluations,
                step);
            var remaining = Math.Abs(to - t);
            var isLast = step >= remaining * (1 - 1e-12);
            var h = direction * (isLast ? remaining : step);

            DormandPrinceStep.Attempt(ref system, t, h, state, stages, trial, newState);
            evaluations += 6;
            var error = DormandPrinceStep.ErrorNorm(h, state, newState, stages, relative, absolute);
            if (!(error <= 1))
            {
                rejected++;
                step = StepControl.Rounded(Math.Abs(h) * StepControl.AfterRejected(error));
                lastWasRejected = true;
                if (step <= Math.Max(settings.MinimumStep, 16 * double.Epsilon + 4e-16 * Math.Max(Math.Abs(t), Math.Abs(h))))
                    return new(double.IsFinite(error) ? OdeStatus.StepTooSmall : OdeStatus.NonFinite, t, -1, accepted, rejected,
                        evaluations, step);
                continue;
            }

            accepted++;
            var logError = Math.Log(error);
            step = Math.Min(longest, StepControl.Rounded(Math.Abs(h) * StepControl.AfterAccepted(logError, previousLogError,
                lastWasRejected)));
            previousLogError = Math.Max(logError, StepControl.LeastLogError);
            lastWasRejected = false;

            var end = isLast ? to : t + h;
            var slope = stages.Slice(6 * n, n);
            var crossed = 0;
            for (var e = 0; e < watched; e++)
            {
                after[e] = events.Value(e, end, newState, slope);
                if (EventLocator.Crosses(before[e], after[e], events.Rule(e).Direction)) crossed |= 1 << e;
            }

            var terminal = -1;
            if (crossed != 0 || observer.IsActive)
            {
                DormandPrinceStep.Interpolant(h, state, newState, stages, coefficients);
                var dense = new DenseStep(t, h, end, coefficients);
                if (crossed != 0)
                {
                    terminal = Report(ref events, crossed, dense, direction, before, after, eventState, eventSlope, out var cut);
                    if (terminal >= 0)
                    {
                        end = cut;
                        dense = new DenseStep(t, h, end, coefficients);
                        dense.State(end, newState);
                    }
                }

                if (observer.IsActive) observer.Accepted(dense);
            }

            newState.CopyTo(state);
            t = end;
            if (terminal >= 0) return new(OdeStatus.EndedByEvent, t, terminal, accepted, rejected, evaluations, step);
            if (isLast) return new(OdeStatus.Completed, t, -1, accepted, rejected, evaluations, step);
            slope.CopyTo(stages);
            after[..watched].CopyTo(before);
        }
    }

    /// <summary>Locates every crossing of a step and reports them in order, up to and including the first terminal one.</summary>
    private static int Report<TEvents>(
        ref TEvents events, int crossed, in DenseStep step, double direction, ReadOnlySpan<double> before, ReadOnlySpan<double> after,
        Span<double> state, Span<double> slope, out double cut)
        where TEvents : struct, IOdeEvents
    {
        Span<double> where = stackalloc double[EventLocator.MaximumEvents];
        for (var e = 0; e < events.Count; e++)
        {
            if ((crossed & (1 << e)) != 0) where[e] = EventLocator.Locate(ref events, e, step, before[e], after[e], state, slope);
        }

        while (crossed != 0)
        {
            var first = -1;
            for (var e = 0; e < events.Count; e++)
            {
                if ((crossed & (1 << e)) != 0 && (first < 0 || direction * (where[e] - where[first]) < 0)) first = e;
            }

            step.State(where[first], state);
            events.Located(first, where[first], state);
            if (events.Rule(first).IsTerminal)
            {
                cut = where[first];
                return first;
            }

            crossed &= ~(1 << first);
        }

        cut = step.End;
        return -1;
    }

    private static bool AllFinite(ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            if (!double.IsFinite(value)) return false;
        }

        return true;
    }

    private static void CheckArguments(
        int dimension, int events, double from, double to, ReadOnlySpan<double> state, ReadOnlySpan<double> absoluteTolerance)
    {
        if (dimension < 1 || state.Length != dimension)
            throw new ArgumentException($"the state has {state.Length} elements; it must have the system's {dimension}.", nameof(state));
        if (absoluteTolerance.Length != dimension)
            throw new ArgumentException($"there are {absoluteTolerance.Length} absolute tolerances; there must be {dimension}.",
                nameof(absoluteTolerance));
        if (!double.IsFinite(from) || !double.IsFinite(to))
            throw new ArgumentException($"the interval is {from} to {to}; both ends must be finite.", nameof(to));
        if (events > EventLocator.MaximumEvents)
            throw new ArgumentException($"there are {events} events; at most {EventLocator.MaximumEvents} can be watched at once.",
                nameof(events));
        foreach (var tolerance in absoluteTolerance)
        {
            if (!(tolerance > 0) || !double.IsFinite(tolerance))
                throw new ArgumentException($"an absolute tolerance is {tolerance}; it must be finite and above 0.",
                    nameof(absoluteTolerance));
        }
    }
}
