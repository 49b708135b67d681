using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Propulsion.Firings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet.Units;

namespace NotebookKit.Flight.Staging;

/// <summary>The bookkeeping of two stages that can be followed by hand: what each would gain without gravity and drag.</summary>
internal static class TwoStageWorking
{
    private static readonly Source Tsiolkovsky = new("K. E. Tsiolkovsky", "Rocket equation", 1903, "", SourceKind.Unverified);

    /// <summary>Gain in speed of a stage without gravity and drag [m/s].</summary>
    public static double IdealGain(double jetMps, double beforeKg, double afterKg) => jetMps * Math.Log(beforeKg / afterKg);

    public static Working For(TwoStageResult result)
    {
        if (result.Status == ResultStatus.Failed) return new(result.Title, []);
        var (vehicle, site) = (result.Vehicle, result.Site);
        var above = Loaded(vehicle.Sustainer, site);
        var below = Loaded(vehicle.Booster, site);
        var (first, firstGain) = Gain("Booster", vehicle.Booster, site, above + below);
        var (second, secondGain) = Gain("Sustainer", vehicle.Sustainer, site, above);
        return new(result.Title,
        [
            new("Mass at release", @"m_0 = m_1 + m_2", $"{Digits.Round(below, 4)} kg + {Digits.Round(above, 4)} kg",
                $"{Digits.Round(above + below, 4)} kg", FlightModel.Newton),
            first,
            second,
            new("Together, before gravity and drag", @"\Delta v = \Delta v_1 + \Delta v_2",
                $"{Digits.Round(firstGain, 4)} m/s + {Digits.Round(secondGain, 4)} m/s",
                $"{Digits.Round(firstGain + secondGain, 4)} m/s", Tsiolkovsky),
            new("Speed at separation", @"v_1 = v_2 = v", "the same for both as they separate",
                result.SeparationSpeed.Show(SpeedUnit.MeterPerSecond, 4), FlightModel.Newton),
        ]);
    }

    private static double Loaded(Vehicle stage, LaunchSite site) =>
        stage.Parts.State().MassKg + stage.Charge.WaterMass.Kilograms + stage.GasKg(site);

    private static (WorkingStep Step, double Gain) Gain(string name, Vehicle stage, LaunchSite site, double beforeKg)
    {
        // The jet that the stage has on a stand, which head and height change little.
        var curve = new StaticFiring(stage.Charge, stage.Nozzle, site.Pressure) { Flow = stage.Flow }.Fire().Curve;
        var expelled = curve.Expelled.Kilograms;
        var jet = curve.Impulse.NewtonSeconds / expelled;
        var gain = IdealGain(jet, beforeKg, beforeKg - expelled);
        return (new($"{name}, ideal gain", @"\Delta v = c\,\ln\frac{m_0}{m_0 - m_e}",
            $"{Digits.Round(jet, 4)} m/s × ln({Digits.Round(beforeKg, 4)} kg / {Digits.Round(beforeKg - expelled, 4)} kg)",
                $"{Digits.Round(gain, 4)} m/s", Tsiolkovsky), gain);
    }
}
