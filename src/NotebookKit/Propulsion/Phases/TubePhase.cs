using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Flow;

namespace NotebookKit.Propulsion.Phases;

/// <summary>
/// Riding up the launch tube. Unknowns: height [m], speed [m/s]; then, where wanted, the budget: impulse [N s], gas work, work against the
/// air outside, work against drag [J].
/// </summary>
internal struct TubePhase<TMount>(
    ClosedGasLaw expansion, TMount mount, double startM3, double areaM2, double strokeM, double massKg, bool withLedger) : IOdeSystem,
        IOdeEvents
    where TMount : struct, IMount
{
    public const int Core = 2, Budget = 4;

    public int Dimension => withLedger ? Core + Budget : Core;

    public int Count => 2;

    public double Pressure(double height) => expansion.Pressure(Volume(height));

    public double Temperature(double height) => expansion.Temperature(Volume(height));

    public double Thrust(ReadOnlySpan<double> y) => (Pressure(y[0]) - mount.Ambient(y[0])) * areaM2;

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var ambient = mount.Surroundings(y[0], y[1], false, out var drag);
        var pressure = Pressure(y[0]);
        var thrust = (pressure - ambient) * areaM2;
        dydt[0] = y[1];
        dydt[1] = (thrust - drag) / massKg - mount.Gravity;
        if (dydt.Length == Core) return;
        dydt[2] = thrust;
        dydt[3] = pressure * areaM2 * y[1];
        dydt[4] = ambient * areaM2 * y[1];
        dydt[5] = drag * y[1];
    }

    public OdeEventRule Rule(int index) => new(index == 0 ? OdeEventDirection.Rising : OdeEventDirection.Falling, true);

    public double Value(int index, double t, ReadOnlySpan<double> y, ReadOnlySpan<double> dydt) => index == 0 ? y[0] - strokeM : y[1] +
        1e-12;

    public void Located(int index, double t, ReadOnlySpan<double> y)
    {
    }

    private double Volume(double height) => startM3 + areaM2 * height;
}
