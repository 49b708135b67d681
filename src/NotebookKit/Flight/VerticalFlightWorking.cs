using NotebookKit.Propulsion;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight;

/// <summary>Shows how the numbers at release are reached.</summary>
internal static class VerticalFlightWorking
{
    public static Working For(VerticalFlight flight, in FiringSetup setup)
    {
        List<WorkingStep> steps = [.. FiringWorking.Steps(flight.Charge, flight.Nozzle, flight.Site.Pressure, setup)];
        var dry = flight.DryMass.Kilograms;
        var mass = dry + setup.WaterKg + setup.StartGasKg;
        var thrust = FirstThrust(setup);
        steps.Add(new("Mass at release", @"m = m_{dry} + m_w + m_g",
            $"{Digits.Round(dry, 4)} kg + {Digits.Round(setup.WaterKg, 4)} kg + {Digits.Round(setup.StartGasKg, 4)} kg", $"{Digits.Round(mass, 4)} kg", VerticalFlightModel.Newton));
        steps.Add(new("Acceleration at release", @"a = \frac{F}{m} - g",
            $"{Digits.Round(thrust, 4)} N / {Digits.Round(mass, 4)} kg − 9.807 m/s²", $"{Digits.Round(thrust / mass - AtmosphereLaw.Gravity, 4)} m/s²", VerticalFlightModel.Newton));
        return new("Thrust and acceleration at release", steps);
    }

    /// <summary>Thrust of the established jet at release pressure [N]; on a launch tube, that of the piston.</summary>
    public static double FirstThrust(in FiringSetup setup)
    {
        if (setup.TubeStrokeM > 0) return setup.GaugePa * setup.TubeAreaM2;
        if (setup.HasWater)
        {
            var speed = setup.WaterJet.Speed(setup.GaugePa);
            return setup.WaterJet.Density * setup.WaterJet.JetAreaM2 * speed * speed;
        }

        var ambient = setup.PressurePa - setup.GaugePa;
        double thrust;
        if (setup.Tables.Jet is { } real) real.MassFlow(0, setup.PressurePa, setup.AirAreaM2, ambient, out thrust);
        else setup.IdealJet.MassFlow(setup.PressurePa, setup.TemperatureK, ambient, out thrust);
        return thrust;
    }
}
