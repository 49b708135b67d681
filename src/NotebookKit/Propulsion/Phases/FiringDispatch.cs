namespace NotebookKit.Propulsion.Phases;

/// <summary>Binds the chosen laws, so that the step loop calls them without looking anything up.</summary>
internal static class FiringDispatch
{
    public static void Run<TMount, TRunner>(in FiringSetup setup, TMount mount, ref TRunner runner)
        where TMount : struct, IMount
        where TRunner : struct, IFiringRunner<TMount>
    {
        var tables = setup.Tables;
        var ideal = new IdealAirPhase<TMount>(setup.IdealJet, mount, setup.ChamberM3, setup.AirExponent, 0, false);
        if (tables.Closed is null)
        {
            runner.Run(setup, setup.Polytropic, mount, ideal);
            return;
        }

        var closed = new TableLaw(tables.Closed, setup.StartM3);
        if (tables.Gas is null)
        {
            runner.Run(setup, closed, mount, ideal);
        }
        else if (setup.Wall is { } wall)
        {
            runner.Run(setup, closed, mount, new HeatedAirPhase<TMount>(
                tables.Gas, wall, mount, setup.AirAreaM2, setup.ChamberM3, tables.EnergyZero, 0, false));
        }
        else
        {
            runner.Run(setup, closed, mount, new RealAirPhase<TMount>(
                tables.Jet!, mount, setup.AirAreaM2, setup.ChamberM3, tables.StartEnergy, 0, false));
        }
    }
}
