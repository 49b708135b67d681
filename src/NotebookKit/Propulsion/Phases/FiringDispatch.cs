namespace NotebookKit.Propulsion.Phases;

/// <summary>Binds the chosen laws, so that the step loop calls them without looking anything up.</summary>
internal static class FiringDispatch
{
    public static void Run<TMount, TRunner>(in FiringSetup setup, TMount mount, ref TRunner runner)
        where TMount : struct, IMount
        where TRunner : struct, IFiringRunner<TMount>
    {
        var tables = setup.Tables;
        if (tables.Gas is null)
            runner.Run(setup, mount, new IdealAirPhase<TMount>(setup.AirJet, mount, setup.ChamberM3, setup.AirExponent, 0, false));
        else if (setup.Wall is { } wall)
            runner.Run(setup, mount, new HeatedAirPhase<TMount>(tables.Gas, wall, mount, setup.AirAreaM2, setup.ChamberM3,
                tables.EnergyZero, 0, false));
        else
            runner.Run(setup, mount, new RealAirPhase<TMount>(tables.Jet!, mount, setup.AirAreaM2, setup.ChamberM3, tables.StartEnergy, 0,
                false));
    }
}
