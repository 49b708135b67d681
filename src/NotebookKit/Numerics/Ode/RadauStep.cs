using T = NotebookKit.Numerics.Ode.RadauTableau;

namespace NotebookKit.Numerics.Ode;

/// <summary>One step of the Radau IIA method of order 5 and what is carried from step to step: slope, stages, factored matrices.</summary>
internal ref struct RadauStep
{
    private const int Passes = 6, Rows = 24;

    private readonly RadauMatrices _matrices;
    private readonly ReadOnlySpan<double> _absolute;
    private readonly Span<double> _slope, _endSlope, _z, _w, _f, _d, _trial, _trialSlope, _new, _scale, _error, _coefficients;
    private readonly int _n;
    private readonly double _relative, _settled;
    private bool _fresh, _hasPolynomial;
    private double _factoredH, _rate, _start, _length;

    public RadauStep(int n, Span<double> work, RadauMatrices matrices, OdeSettings settings, ReadOnlySpan<double> absolute)
    {
        _n = n;
        _matrices = matrices;
        _absolute = absolute;
        _relative = settings.RelativeTolerance;
        _settled = Math.Max(10 * 2.2e-16 / _relative, Math.Min(0.03, Math.Sqrt(_relative)));
        _slope = work[..n];
        _endSlope = work.Slice(n, n);
        _trial = work.Slice(2 * n, n);
        _trialSlope = work.Slice(3 * n, n);
        _new = work.Slice(4 * n, n);
        _scale = work.Slice(5 * n, n);
        _error = work.Slice(6 * n, n);
        _z = work.Slice(7 * n, 3 * n);
        _w = work.Slice(10 * n, 3 * n);
        _f = work.Slice(13 * n, 3 * n);
        _d = work.Slice(16 * n, 3 * n);
        _coefficients = work.Slice(19 * n, 5 * n);
    }

    /// <summary>Right-hand sides computed.</summary>
    public int Evaluations { get; private set; }

    /// <summary>Newton iterations of the last solution.</summary>
    public int Iterations { get; private set; }

    /// <summary>Slope at the start of the step.</summary>
    public readonly ReadOnlySpan<double> Slope => _slope;

    /// <summary>Slope at its end.</summary>
    public readonly ReadOnlySpan<double> EndSlope => _endSlope;

    /// <summary>State at its end.</summary>
    public readonly ReadOnlySpan<double> State => _new;

    public static int WorkOf(int n) => Rows * n;

    /// <summary>The first slope and the first derivatives; false where a number isn't one.</summary>
    public bool Begin<TSystem>(scoped ref TSystem system, double t, scoped ReadOnlySpan<double> y)
        where TSystem : struct, IStiffSystem
    {
        system.Derivatives(t, y, _slope);
        Evaluations++;
        if (!AllFinite(y) || !AllFinite(_slope)) return false;
        Differentiate(ref system, t, y);
        return true;
    }

    /// <summary>Length of a first step.</summary>
    public readonly double First<TSystem>(scoped ref TSystem system, double t, scoped ReadOnlySpan<double> y, double longest)
        where TSystem : struct, IStiffSystem
        => StepControl.FirstStep(ref system, t, 1, y, _slope, _relative, _absolute, longest, _trial, _trialSlope);

    /// <summary>Solves the three stages of a step from a state; false where that doesn't settle.</summary>
    public bool Solve<TSystem>(scoped ref TSystem system, double t, double h, scoped ReadOnlySpan<double> y)
        where TSystem : struct, IStiffSystem
    {
        for (var i = 0; i < _n; i++) _scale[i] = _absolute[i] + _relative * Math.Abs(y[i]);
        while (true)
        {
            if (_factoredH != h)
            {
                if (!_matrices.Factor(h)) return false;
                _factoredH = h;
            }

            Guess(t, h, y);
            if (Iterate(ref system, t, h, y)) return true;
            if (_fresh) return false;
            Differentiate(ref system, t, y);
        }
    }

    /// <summary>Error of the step over what is allowed, root mean square.</summary>
    public double ErrorNorm<TSystem>(scoped ref TSystem system, double t, double h, scoped ReadOnlySpan<double> y, bool careful)
        where TSystem : struct, IStiffSystem
    {
        int n = _n;
        for (var i = 0; i < n; i++)
        {
            _new[i] = y[i] + _z[2 * n + i];
            _scale[i] = _absolute[i] + _relative * Math.Max(Math.Abs(y[i]), Math.Abs(_new[i]));
            _trial[i] = (T.E1 * _z[i] + T.E2 * _z[n + i] + T.E3 * _z[2 * n + i]) / h;
            _error[i] = _slope[i] + _trial[i];
        }

        _matrices.SolveReal(h, _error);
        var norm = Norm(_error);
        if (!careful || norm < 1) return norm;
        for (var i = 0; i < n; i++) _d[i] = y[i] + _error[i];
        system.Derivatives(t, _d[..n], _trialSlope);
        Evaluations++;
        for (var i = 0; i < n; i++) _error[i] = _trialSlope[i] + _trial[i];
        _matrices.SolveReal(h, _error);
        return Norm(_error);
    }

    /// <summary>State and slope at the end of the step; false where a number isn't one.</summary>
    public bool End<TSystem>(scoped ref TSystem system, double end)
        where TSystem : struct, IStiffSystem
    {
        system.Derivatives(end, _new, _endSlope);
        Evaluations++;
        return AllFinite(_endSlope);
    }

    /// <summary>Goes on from the end of a step: the next one's length after a factor on this one's.</summary>
    public double Advance<TSystem>(scoped ref TSystem system, double end, double h, double factor, scoped Span<double> y)
        where TSystem : struct, IStiffSystem
    {
        _new.CopyTo(y);
        _endSlope.CopyTo(_slope);
        _fresh = false;
        if (Iterations > 2 && _rate > 1e-3) Differentiate(ref system, end, y);
        // A small change isn't worth factoring for while the derivatives are good.
        else if (factor is >= 1 and < 1.2) return h;
        return h * factor;
    }

    /// <summary>The collocation polynomial of the step that was solved last, up to an end.</summary>
    public DenseStep Dense(double t, double h, double end, scoped ReadOnlySpan<double> y)
    {
        (_start, _length, _hasPolynomial) = (t, h, true);
        int n = _n;
        for (var i = 0; i < n; i++)
        {
            double z1 = _z[i], z2 = _z[n + i], z3 = _z[2 * n + i];
            double square = (-23 - 22 * T.Root6) / 3 * z1 + (-23 + 22 * T.Root6) / 3 * z2 - 8.0 / 3 * z3,
                cube = (10.0 / 3 + 5 * T.Root6) * z1 + (10.0 / 3 - 5 * T.Root6) * z2 + 10.0 / 3 * z3;
            _coefficients[i] = y[i];
            _coefficients[n + i] = z3;
            _coefficients[2 * n + i] = -square - cube;
            _coefficients[3 * n + i] = -cube;
            _coefficients[4 * n + i] = 0;
        }

        return new DenseStep(t, h, end, _coefficients);
    }

    /// <summary>Where an event function vanishes on the polynomial of the step.</summary>
    public readonly double Locate<TEvents>(scoped ref TEvents events, int index, in DenseStep dense, double before, double after)
        where TEvents : struct, IOdeEvents
        => EventLocator.Locate(ref events, index, dense, before, after, _trial, _trialSlope);

    /// <summary>An event function on the polynomial of the step.</summary>
    public readonly double ValueAt<TEvents>(scoped ref TEvents events, int index, in DenseStep dense, double t)
        where TEvents : struct, IOdeEvents
    {
        dense.State(t, _trial);
        dense.Derivative(t, _trialSlope);
        return events.Value(index, t, _trial, _trialSlope);
    }

    /// <summary>The polynomial as it stands, up to another end.</summary>
    public readonly DenseStep Again(double t, double end) => new(t, _length, end, _coefficients);

    /// <summary>Takes the state at the end from the stages.</summary>
    public readonly void Take(scoped ReadOnlySpan<double> y)
    {
        for (var i = 0; i < _n; i++) _new[i] = y[i] + _z[2 * _n + i];
    }

    /// <summary>Takes the state at the end from the polynomial instead.</summary>
    public readonly void TakeFrom(in DenseStep dense, double t) => dense.State(t, _new);

    private void Differentiate<TSystem>(scoped ref TSystem system, double t, scoped ReadOnlySpan<double> y)
        where TSystem : struct, IStiffSystem
    {
        _matrices.Differentiate(ref system, t, y, _slope, _absolute, _trial, _trialSlope);
        Evaluations += system.Coupled.Length;
        (_fresh, _factoredH) = (true, double.NaN);
    }

    // The stages by the polynomial of the step before, and those as the real and complex system have them.
    private readonly void Guess(double t, double h, scoped ReadOnlySpan<double> y)
    {
        int n = _n;
        if (!_hasPolynomial)
        {
            _z.Clear();
            _w.Clear();
            return;
        }

        var dense = new DenseStep(_start, _length, _start + _length, _coefficients);
        dense.State(t + T.C1 * h, _z[..n]);
        dense.State(t + T.C2 * h, _z.Slice(n, n));
        dense.State(t + h, _z.Slice(2 * n, n));
        for (var i = 0; i < n; i++)
        {
            double z1 = _z[i] -= y[i], z2 = _z[n + i] -= y[i], z3 = _z[2 * n + i] -= y[i];
            _w[i] = T.S11 * z1 + T.S12 * z2 + T.S13 * z3;
            _w[n + i] = T.S21 * z1 + T.S22 * z2 + T.S23 * z3;
            _w[2 * n + i] = T.S31 * z1 + T.S32 * z2 + T.S33 * z3;
        }
    }

    private bool Iterate<TSystem>(scoped ref TSystem system, double t, double h, scoped ReadOnlySpan<double> y)
        where TSystem : struct, IStiffSystem
    {
        int n = _n;
        double last = 0, re = T.ComplexRe / h, im = T.ComplexIm / h, real = T.Real / h;
        _rate = 0;
        for (var pass = 0; pass < Passes; pass++)
        {
            for (var s = 0; s < 3; s++)
            {
                for (var i = 0; i < n; i++) _trial[i] = y[i] + _z[s * n + i];
                system.Derivatives(t + (s == 0 ? T.C1 : s == 1 ? T.C2 : 1) * h, _trial, _f.Slice(s * n, n));
                Evaluations++;
            }

            if (!AllFinite(_f)) return false;
            for (var i = 0; i < n; i++)
            {
                double f1 = _f[i], f2 = _f[n + i], f3 = _f[2 * n + i];
                _d[i] = T.S11 * f1 + T.S12 * f2 + T.S13 * f3 - real * _w[i];
                _d[n + i] = T.S21 * f1 + T.S22 * f2 + T.S23 * f3 - (re * _w[n + i] - im * _w[2 * n + i]);
                _d[2 * n + i] = T.S31 * f1 + T.S32 * f2 + T.S33 * f3 - (re * _w[2 * n + i] + im * _w[n + i]);
            }

            _matrices.SolveReal(h, _d[..n]);
            _matrices.SolveComplex(h, _d.Slice(n, n), _d.Slice(2 * n, n));
            var norm = Math.Sqrt((Squares(_d[..n]) + Squares(_d.Slice(n, n)) + Squares(_d.Slice(2 * n, n))) / (3 * n));
            Iterations = pass + 1;
            if (pass > 0)
            {
                _rate = norm / last;
                if (!(_rate < 1) || Math.Pow(_rate, Passes - pass) / (1 - _rate) * norm > _settled) return false;
            }

            for (var i = 0; i < n; i++)
            {
                double w1 = _w[i] += _d[i], w2 = _w[n + i] += _d[n + i], w3 = _w[2 * n + i] += _d[2 * n + i];
                _z[i] = T.T11 * w1 + T.T12 * w2 + T.T13 * w3;
                _z[n + i] = T.T21 * w1 + T.T22 * w2 + T.T23 * w3;
                _z[2 * n + i] = w1 + w2;
            }

            if (norm == 0 || (pass > 0 && _rate / (1 - _rate) * norm < _settled)) return true;
            last = norm;
        }

        return false;
    }

    private readonly double Norm(ReadOnlySpan<double> error) => Math.Sqrt(Squares(error) / _n);

    private readonly double Squares(ReadOnlySpan<double> error)
    {
        var sum = 0.0;
        for (var i = 0; i < error.Length; i++) sum += error[i] / _scale[i] * (error[i] / _scale[i]);
        return sum;
    }

    private static bool AllFinite(ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            if (!double.IsFinite(value)) return false;
        }

        return true;
    }
}
