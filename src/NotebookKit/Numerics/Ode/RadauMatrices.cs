namespace NotebookKit.Numerics.Ode;

/// <summary>The two linear systems of a Radau step, factored: (μ/h − J) x = b for the real and the complex μ, over the coupled unknowns;
/// the others follow from them.</summary>
internal readonly ref struct RadauMatrices
{
    private readonly ReadOnlySpan<int> _coupled;
    private readonly Span<double> _jacobian, _real, _re, _im, _b, _c;
    private readonly Span<int> _place, _realPivots, _pivots;
    private readonly int _n, _m;

    public RadauMatrices(int n, ReadOnlySpan<int> coupled, Span<double> work, Span<int> whole)
    {
        (_n, _m) = (n, coupled.Length);
        _coupled = coupled;
        var square = _m * _m;
        _jacobian = work[..(n * _m)];
        work = work[(n * _m)..];
        _real = work[..square];
        _re = work.Slice(square, square);
        _im = work.Slice(2 * square, square);
        _b = work.Slice(3 * square, _m);
        _c = work.Slice(3 * square + _m, _m);
        _place = whole[..n];
        _realPivots = whole.Slice(n, _m);
        _pivots = whole.Slice(n + _m, _m);
        _place.Fill(-1);
        for (var k = 0; k < _m; k++) _place[coupled[k]] = k;
    }

    /// <summary>Length of its work for n unknowns of which m are coupled.</summary>
    public static int WorkOf(int n, int m) => n * m + 3 * m * m + 2 * m;

    /// <summary>Derivatives of all rates to the coupled unknowns, by differences.</summary>
    public void Differentiate<TSystem>(scoped ref TSystem system, double t, scoped ReadOnlySpan<double> y,
        scoped ReadOnlySpan<double> slope,
        scoped ReadOnlySpan<double> absolute, scoped Span<double> trial, scoped Span<double> trialSlope)
        where TSystem : struct, IStiffSystem
    {
        y.CopyTo(trial);
        for (var k = 0; k < _m; k++)
        {
            var i = _coupled[k];
            // A difference of half the digits, never of less than a thousand times what an unknown is computed to.
            trial[i] = y[i] + 1.5e-8 * Math.Max(Math.Abs(y[i]), 1e3 * absolute[i]);
            system.Derivatives(t, trial, trialSlope);
            var step = trial[i] - y[i];
            for (var row = 0; row < _n; row++) _jacobian[row * _m + k] = (trialSlope[row] - slope[row]) / step;
            trial[i] = y[i];
        }
    }

    /// <summary>Factors both for a step; false where one can't be solved.</summary>
    public bool Factor(double h)
    {
        double real = RadauTableau.Real / h, re = RadauTableau.ComplexRe / h, im = RadauTableau.ComplexIm / h;
        for (var r = 0; r < _m; r++)
        {
            for (var c = 0; c < _m; c++)
            {
                var at = r * _m + c;
                _real[at] = _re[at] = -_jacobian[_coupled[r] * _m + c];
                _im[at] = 0;
            }

            _real[r * _m + r] += real;
            _re[r * _m + r] += re;
            _im[r * _m + r] = im;
        }

        return FactorReal() && FactorComplex();
    }

    /// <summary>Solves the real one in place.</summary>
    public void SolveReal(double h, scoped Span<double> x)
    {
        for (var k = 0; k < _m; k++) _b[k] = x[_coupled[k]];
        for (var k = 0; k < _m; k++) (_b[k], _b[_realPivots[k]]) = (_b[_realPivots[k]], _b[k]);
        for (var r = 1; r < _m; r++)
        {
            for (var c = 0; c < r; c++) _b[r] -= _real[r * _m + c] * _b[c];
        }

        for (var r = _m - 1; r >= 0; r--)
        {
            for (var c = r + 1; c < _m; c++) _b[r] -= _real[r * _m + c] * _b[c];
            _b[r] /= _real[r * _m + r];
        }

        for (var i = 0; i < _n; i++) x[i] = _place[i] is >= 0 and var k ? _b[k] : (x[i] + Along(i, _b)) * h / RadauTableau.Real;
    }

    /// <summary>Solves the complex one in place.</summary>
    public void SolveComplex(double h, scoped Span<double> re, scoped Span<double> im)
    {
        for (var k = 0; k < _m; k++) (_b[k], _c[k]) = (re[_coupled[k]], im[_coupled[k]]);
        for (var k = 0; k < _m; k++)
        {
            var pivot = _pivots[k];
            (_b[k], _b[pivot], _c[k], _c[pivot]) = (_b[pivot], _b[k], _c[pivot], _c[k]);
        }

        for (var r = 1; r < _m; r++)
        {
            for (var c = 0; c < r; c++) Less(r, c, r * _m + c);
        }

        for (var r = _m - 1; r >= 0; r--)
        {
            for (var c = r + 1; c < _m; c++) Less(r, c, r * _m + c);
            (_b[r], _c[r]) = Over(_b[r], _c[r], _re[r * _m + r], _im[r * _m + r]);
        }

        for (var i = 0; i < _n; i++)
        {
            (re[i], im[i]) = _place[i] is >= 0 and var k ? (_b[k], _c[k])
                : Over((re[i] + Along(i, _b)) * h, (im[i] + Along(i, _c)) * h, RadauTableau.ComplexRe, RadauTableau.ComplexIm);
        }
    }

    private double Along(int row, scoped ReadOnlySpan<double> x)
    {
        var sum = 0.0;
        for (var k = 0; k < _m; k++) sum += _jacobian[row * _m + k] * x[k];
        return sum;
    }

    private void Less(int r, int c, int at)
    {
        _b[r] -= _re[at] * _b[c] - _im[at] * _c[c];
        _c[r] -= _re[at] * _c[c] + _im[at] * _b[c];
    }

    private static (double Re, double Im) Over(double re, double im, double byRe, double byIm)
    {
        var size = byRe * byRe + byIm * byIm;
        return ((re * byRe + im * byIm) / size, (im * byRe - re * byIm) / size);
    }

    private bool FactorReal()
    {
        for (var k = 0; k < _m; k++)
        {
            var pivot = k;
            for (var r = k + 1; r < _m; r++)
            {
                if (Math.Abs(_real[r * _m + k]) > Math.Abs(_real[pivot * _m + k])) pivot = r;
            }

            _realPivots[k] = pivot;
            if (!(Math.Abs(_real[pivot * _m + k]) > 0)) return false;
            if (pivot != k) Swap(_real, k, pivot);
            for (var r = k + 1; r < _m; r++)
            {
                var share = _real[r * _m + k] /= _real[k * _m + k];
                if (share == 0) continue;
                for (var c = k + 1; c < _m; c++) _real[r * _m + c] -= share * _real[k * _m + c];
            }
        }

        return true;
    }

    private bool FactorComplex()
    {
        for (var k = 0; k < _m; k++)
        {
            var pivot = k;
            for (var r = k + 1; r < _m; r++)
            {
                if (Size(r * _m + k) > Size(pivot * _m + k)) pivot = r;
            }

            _pivots[k] = pivot;
            if (!(Size(pivot * _m + k) > 0)) return false;
            if (pivot != k)
            {
                Swap(_re, k, pivot);
                Swap(_im, k, pivot);
            }

            for (var r = k + 1; r < _m; r++)
            {
                var at = r * _m + k;
                var (re, im) = (_re[at], _im[at]) = Over(_re[at], _im[at], _re[k * _m + k], _im[k * _m + k]);
                if (re == 0 && im == 0) continue;
                for (var c = k + 1; c < _m; c++)
                {
                    _re[r * _m + c] -= re * _re[k * _m + c] - im * _im[k * _m + c];
                    _im[r * _m + c] -= re * _im[k * _m + c] + im * _re[k * _m + c];
                }
            }
        }

        return true;
    }

    private void Swap(Span<double> matrix, int a, int b)
    {
        for (var c = 0; c < _m; c++) (matrix[a * _m + c], matrix[b * _m + c]) = (matrix[b * _m + c], matrix[a * _m + c]);
    }

    private double Size(int at) => Math.Abs(_re[at]) + Math.Abs(_im[at]);
}
