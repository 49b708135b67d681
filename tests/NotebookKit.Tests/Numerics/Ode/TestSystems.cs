using NotebookKit.Numerics.Ode;

namespace NotebookKit.Tests.Numerics.Ode;

/// <summary>Any right-hand side, for tests that need not be fast.</summary>
internal readonly struct Equations(int dimension, Action<double, double[], double[]> rightHandSide) : IOdeSystem
{
    public int Dimension => dimension;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var result = new double[dimension];
        rightHandSide(t, y.ToArray(), result);
        result.CopyTo(dydt);
    }
}

/// <summary>Any event functions, for tests that need not be fast.</summary>
internal readonly struct Watched(List<(int Index, double T, double[] Y)> found,
    params (Func<double, double[], double> Function, OdeEventRule Rule)[] events)
    : IOdeEvents
{
    public int Count => events.Length;

    public OdeEventRule Rule(int index) => events[index].Rule;

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => events[index].Function(t, y.ToArray());

    public void Located(int index, double t, ReadOnlySpan<double> y) => found.Add((index, t, y.ToArray()));
}

/// <summary>Kepler's problem in the plane, allocation-free.</summary>
internal readonly struct TwoBodies : IOdeSystem
{
    public int Dimension => 4;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var r2 = y[0] * y[0] + y[1] * y[1];
        var r3 = r2 * Math.Sqrt(r2);
        dydt[0] = y[2];
        dydt[1] = y[3];
        dydt[2] = -y[0] / r3;
        dydt[3] = -y[1] / r3;
    }
}

/// <summary>Counts crossings of the x axis, allocation-free.</summary>
internal struct AxisCrossings : IOdeEvents
{
    public int Seen { get; private set; }

    public readonly int Count => 1;

    public readonly OdeEventRule Rule(int index) => new(OdeEventDirection.Any, false);

    public readonly double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => y[1];

    public void Located(int index, double t, ReadOnlySpan<double> y) => Seen++;
}
