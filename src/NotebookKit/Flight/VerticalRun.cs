using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight;

/// <summary>A vertical flight in plain SI numbers: firing, then coast to the top. Allocates nothing unless an observer does.</summary>
internal static class VerticalRun
{
    /// <summary>Flies to the top with nothing recorded; heights and times [m, s].</summary>
    public static (double ApogeeM, double TimeS) ToApogee<TDrag>(in FiringSetup setup, FreeMount<TDrag> mount, OdeSettings settings, ref FiringEnd end)
        where TDrag : struct, IDragLaw
    {
        var none = new NoObserver();
        Firing.Run(setup, setup.Polytropic, mount, ref none, ref none, withLedger: false, settings, ref end);
        return Coast(setup, mount, ref none, settings, ref end);
    }

    /// <summary>Coasts from where the jet ended to the top.</summary>
    public static (double ApogeeM, double TimeS) Coast<TDrag, TObserver>(
        in FiringSetup setup, FreeMount<TDrag> mount, ref TObserver observer, OdeSettings settings, ref FiringEnd end)
        where TDrag : struct, IDragLaw
        where TObserver : struct, IOdeObserver
    {
        if (end.Failed) return (double.NaN, double.NaN);
        if (end.TopReached) return (end.EndHeight, end.EndTime);

        var phase = new CoastPhase<FreeMount<TDrag>>(mount, CoastMass(setup, mount, end));
        var events = default(ApogeeEvents);
        Span<double> y = [end.EndHeight, end.EndSpeed];
        Span<double> absolute = [settings.RelativeTolerance, settings.RelativeTolerance];
        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, end.EndTime, end.EndTime + Firing.LongestS, y, settings, absolute);
        end.Account(result, "coast");
        return end.Failed ? (double.NaN, double.NaN) : (y[0], result.Time);
    }

    public static double CoastMass<TDrag>(in FiringSetup setup, FreeMount<TDrag> mount, in FiringEnd end)
        where TDrag : struct, IDragLaw =>
        mount.DryMassKg + end.EndGasKg + end.WaterLeftKg;
}
