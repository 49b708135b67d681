using NotebookKit.Numerics.Ode;
using NotebookKit.Propulsion.Phases;

namespace NotebookKit.Flight.Vertical;

/// <summary>A vertical flight in plain SI numbers: firing, then coast to the top. Allocates nothing unless an observer does.</summary>
internal static class VerticalRun
{
    /// <summary>Flies to the top with nothing recorded; heights and times [m, s].</summary>
    public static (double ApogeeM, double TimeS) ToApogee<TDrag>(in FiringSetup setup, FreeMount<TDrag> mount, OdeSettings settings,
        ref FiringEnd end)
        where TDrag : struct, IDragLaw
    {
        var runner = new Runner<TDrag> { Settings = settings, End = end };
        FiringDispatch.Run(setup, mount, ref runner);
        end = runner.End;
        var none = new NoObserver();
        return Coast(mount, ref none, settings, ref end);
    }

    /// <summary>Coasts from where the jet ended to the top.</summary>
    public static (double ApogeeM, double TimeS) Coast<TDrag, TObserver>(
        FreeMount<TDrag> mount, ref TObserver observer, OdeSettings settings, ref FiringEnd end)
        where TDrag : struct, IDragLaw
        where TObserver : struct, IOdeObserver
    {
        if (end.Failed) return (double.NaN, double.NaN);
        if (end.TopReached) return (end.EndHeight, end.EndTime);

        var phase = new CoastPhase<FreeMount<TDrag>>(mount, CoastMass(mount, end));
        var events = default(ApogeeEvents);
        Span<double> y = [end.EndHeight, end.EndSpeed];
        Span<double> absolute = [settings.RelativeTolerance, settings.RelativeTolerance];
        var result = OdeDriver.Integrate(ref phase, ref events, ref observer, end.EndTime, end.EndTime + Firing.LongestS, y, settings,
            absolute);
        end.Account(result, "coast");
        return end.Failed ? (double.NaN, double.NaN) : (y[0], result.Time);
    }

    public static double CoastMass<TDrag>(FreeMount<TDrag> mount, in FiringEnd end)
        where TDrag : struct, IDragLaw =>
        mount.DryMassKg + end.EndGasKg + end.WaterLeftKg;

    private struct Runner<TDrag> : IFiringRunner<FreeMount<TDrag>>
        where TDrag : struct, IDragLaw
    {
        public OdeSettings Settings;
        public FiringEnd End;

        public void Run<TAir>(in FiringSetup setup, FreeMount<TDrag> mount, TAir air)
            where TAir : struct, IAirPhase<TAir>
        {
            var observers = default(FiringObservers<NoObserver>);
            Firing.Run(setup, mount, air, ref observers, withLedger: false, Settings, ref End);
        }
    }
}
