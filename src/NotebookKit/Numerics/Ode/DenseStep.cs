namespace NotebookKit.Numerics.Ode;

/// <summary>An accepted step with its continuous solution of order 4: the state anywhere between its ends. Valid while it is being handed
/// over.</summary>
/// <remarks>Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, II.6.</remarks>
public readonly ref struct DenseStep
{
    private readonly ReadOnlySpan<double> _coefficients;
    private readonly double _length;

    internal DenseStep(double start, double length, double end, ReadOnlySpan<double> coefficients)
    {
        Start = start;
        End = end;
        _length = length;
        _coefficients = coefficients;
    }

    /// <summary>Where the step begins [unit of t].</summary>
    public double Start { get; }

    /// <summary>Where the step ends: at its full length, or at the terminal event that cut it short [unit of t].</summary>
    public double End { get; }

    /// <summary>Number of unknowns.</summary>
    public int Dimension => _coefficients.Length / 5;

    /// <summary>The state at a point of the step.</summary>
    /// <param name="t">Independent variable [unit of t]; <see cref="Start"/> to <see cref="End"/>.</param>
    /// <param name="y">Receives the state, or its first unknowns where it is shorter [unit of each unknown].</param>
    public void State(double t, Span<double> y)
    {
        var n = Dimension;
        var wanted = Math.Min(n, y.Length);
        var x = (t - Start) / _length;
        var r = 1 - x;
        for (var i = 0; i < wanted; i++)
        {
            y[i] = _coefficients[i] + x * (_coefficients[n + i] + r * (_coefficients[2 * n + i]
                + x * (_coefficients[3 * n + i] + r * _coefficients[4 * n + i])));
        }
    }

    /// <summary>State and derivative at once, the same bits as one by one.</summary>
    internal void StateAndDerivative(double t, Span<double> y, Span<double> dydt)
    {
        var n = Dimension;
        var x = (t - Start) / _length;
        var r = 1 - x;
        for (var i = 0; i < n; i++)
        {
            var last = _coefficients[4 * n + i];
            var inner = _coefficients[3 * n + i] + r * last;
            var middle = _coefficients[2 * n + i] + x * inner;
            var outer = _coefficients[n + i] + r * middle;
            y[i] = _coefficients[i] + x * outer;
            dydt[i] = (outer + x * (r * (inner - x * last) - middle)) / _length;
        }
    }

    /// <summary>The derivative of the interpolant at a point of the step.</summary>
    /// <param name="t">Independent variable [unit of t]; <see cref="Start"/> to <see cref="End"/>.</param>
    /// <param name="dydt">Receives the derivative [unit of each unknown per unit of t].</param>
    public void Derivative(double t, Span<double> dydt)
    {
        var n = Dimension;
        var x = (t - Start) / _length;
        var r = 1 - x;
        for (var i = 0; i < n; i++)
        {
            var inner = _coefficients[3 * n + i] + r * _coefficients[4 * n + i];
            var middle = _coefficients[2 * n + i] + x * inner;
            var outer = _coefficients[n + i] + r * middle;
            var middleSlope = inner - x * _coefficients[4 * n + i];
            dydt[i] = (outer + x * (r * middleSlope - middle)) / _length;
        }
    }
}
