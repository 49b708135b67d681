using NotebookKit.Filling.Balances;
using NotebookKit.Numerics.Ode;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Vents;

/// <summary>Runs a vent: by a sum over pressure where that is exact, else in steps of time.</summary>
internal static class VentSimulation
{
    private const double HorizonSeconds = 3600;

    private static readonly OdeSettings Settings = new() { RelativeTolerance = 1e-8 };

    public static VentCurve Run(Vent vent, FillHeat heat)
    {
        var ambientPa = vent.Ambient.Pascals;
        if (vent.Properties == GasProperties.Ideal && heat != FillHeat.Wall)
        {
            var sum = Sum(vent, heat);
            return VentCurve.From(heat, ambientPa, sum.Seconds, sum.Pascals, sum.Kelvins);
        }

        var (pascals, seconds, kelvins, water) = Integrate(vent, heat);
        return VentCurve.From(heat, ambientPa, seconds, pascals, kelvins) with
        {
            WaterTemperature = water.Length == 0 ? null : new("Water temperature", "°C", Array.ConvertAll(water, k => k - 273.15)),
        };
    }

    /// <summary>Time as a sum over pressure, for an ideal gas without heat or at constant temperature.</summary>
    public static (double[] Pascals, double[] Seconds, double[] Kelvins) Sum(Vent vent, FillHeat heat)
    {
        double pa = vent.Ambient.Pascals, start = vent.From.ToAbsolute(vent.Ambient).Pascals,
            end = vent.SafePressure.ToAbsolute(vent.Ambient).Pascals;
        double t0 = (vent.GasAtStart ?? vent.Temperature).Kelvins, constant = vent.Gas.GasConstant.JoulesPerKilogramKelvin,
            gasM3 = vent.GasVolume.CubicMeters, g = vent.Gas.HeatCapacityRatio;
        var factor = heat == FillHeat.Adiabatic ? g : 1;
        double KelvinsAt(double pascals) => heat == FillHeat.Adiabatic ? t0 * Math.Pow(pascals / start, (g - 1) / g) : t0;

        // In x = ln(p/pa): dp/dt = -κ R T ṁ/V.
        var (x, seconds) = PressureClock.Run(
            x =>
            {
                var p = pa * Math.Exp(x);
                var kelvin = KelvinsAt(p);
                return -gasM3 * p / (factor * constant * kelvin * vent.Restrictor.KilogramsPerSecond(p, kelvin, pa, vent.Gas));
            },
            Math.Log(start / pa), Math.Log(end / pa), 0, -Math.Log(vent.Restrictor.CriticalRatioFor(vent.Gas)), 40);
        var pascals = Array.ConvertAll(x, v => pa * Math.Exp(v));
        return (pascals, seconds, Array.ConvertAll(pascals, KelvinsAt));
    }

    /// <summary>Steps of time, for any gas and with heat from the wall.</summary>
    public static (double[] Pascals, double[] Seconds, double[] Kelvins, double[] WaterKelvins) Integrate(Vent vent, FillHeat heat)
    {
        var law = new GasLaw(vent.Gas, vent.Properties);
        double startPa = vent.From.ToAbsolute(vent.Ambient).Pascals, kelvin = (vent.GasAtStart ?? vent.Temperature).Kelvins,
            wallK = vent.Temperature.Kelvins, gasM3 = vent.GasVolume.CubicMeters;
        var system = new VentSystem(law, vent.Restrictor, new FlowScale(law, startPa, kelvin), gasM3, vent.Ambient.Pascals, wallK)
        {
            Heat = heat == FillHeat.Wall ? new HeatPath(vent.WallOrPlain, law) : null,
            WaterM3 = (vent.Chamber.Volume - vent.GasVolume).CubicMeters,
            Isothermal = heat == FillHeat.Isothermal,
        };
        Span<double> y = [law.AtPressure(startPa, kelvin).Density * gasM3, kelvin, wallK, 0];
        Span<double> tolerance = [1e-10, 1e-6, 1e-6, 1e-4];
        var rows = new TrajectoryBuilder(VentSystem.Unknowns);
        rows.Add(0, y);
        var events = new VentEvents(system, vent.SafePressure.ToAbsolute(vent.Ambient).Pascals);
        var observer = new TrajectoryRecorder(rows, 3);
        var result = OdeDriver.Integrate(ref system, ref events, ref observer, 0, HorizonSeconds, y, Settings, tolerance);
        if (result.Status != OdeStatus.EndedByEvent)
        {
            var why = result.Succeeded
                ? $"After an hour the vessel still holds {AbsolutePressure.FromPascals(system.Gas(y).Pascals).ToGauge(vent.Ambient)}: "
                    + "the vent is too small."
                : result.Message + (law.IsReal ? " Real gas without heat turns liquid on the way down: let the wall give heat, or "
                    + "compute it as an ideal gas." : "");
            throw new InvalidDesignException("Vent", [Finding.Error(why)]);
        }

        double[] seconds = new double[rows.Count], pascals = new double[rows.Count], kelvins = new double[rows.Count],
            water = system.Heat is { FollowsWater: true } ? new double[rows.Count] : [];
        for (var i = 0; i < rows.Count; i++)
        {
            seconds[i] = rows.Time(i);
            pascals[i] = system.Gas(rows.State(i)).Pascals;
            kelvins[i] = rows.State(i)[VentSystem.Kelvins];
            if (water.Length > 0) water[i] = system.WaterKelvins(rows.State(i));
        }

        return (pascals, seconds, kelvins, water);
    }
}
