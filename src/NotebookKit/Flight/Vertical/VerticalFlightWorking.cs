using NotebookKit.Propulsion.Firings;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Vertical;

/// <summary>Shows how the numbers at release are reached.</summary>
internal static class VerticalFlightWorking
{
    public static Working For(VerticalFlight flight, in FiringSetup setup)
    {
        List<WorkingStep> steps = [.. FiringWorking.Steps(flight.Charge, flight.Nozzle, flight.Site.Pressure, setup)];
        var dry = flight.DryMass.Kilograms;
        var mass = dry + setup.WaterKg + setup.StartGasKg;
        var thrust = setup.FirstThrust;
        steps.Add(new("Mass at release", @"m = m_{dry} + m_w + m_g",
            $"{Digits.Round(dry, 4)} kg + {Digits.Round(setup.WaterKg, 4)} kg + {Digits.Round(setup.StartGasKg, 4)} kg",
                $"{Digits.Round(mass, 4)} kg", VerticalFlightModel.Newton));
        steps.Add(new("Acceleration at release", @"a = \frac{F}{m} - g",
            $"{Digits.Round(thrust, 4)} N / {Digits.Round(mass, 4)} kg − {Digits.Round(StandardConstants.Gravity, 4)} m/s²",
            $"{Digits.Round(thrust / mass - StandardConstants.Gravity, 4)} m/s²", VerticalFlightModel.Newton));
        return new("Thrust and acceleration at release", steps);
    }
}
