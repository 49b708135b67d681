using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet.Units;

namespace NotebookKit.Flight.Flights;

/// <summary>The few numbers of a flight that can be followed by hand.</summary>
internal static class FlightWorking
{
    public static Working For(FlightResult result)
    {
        if (result.Status == ResultStatus.Failed) return new(result.Title, []);
        var f = result.Figures;
        var (thrust, mass) = (result.Thrust[0], result.Mass[0]);
        var landed = result.Mass[^1];
        var steps = new List<WorkingStep>
        {
            new("Felt acceleration at release", @"a = \frac{F}{m\,g}",
                $"{Digits.Round(thrust, 4)} N / ({Digits.Round(mass, 4)} kg × 9.807 m/s²)",
                $"{Digits.Round(thrust / mass / StandardConstants.Gravity, 4)} g", FlightModel.Newton),
            new("Angle of attack off the rail", @"\alpha = \arctan\frac{w}{v}",
                $"{(result.Site.Wind.IsGiven ? f.RailWind.Show(4) : "wind not given, 0 m/s")} across, {f.RailExitSpeed.Show(4)} along a "
                + "vertical rail",
                f.RailExitAngle.Show(AngleUnit.Degree, 4), FlightModel.RailPractice),
            new("Maximum dynamic pressure", @"q = \frac{\rho\,v^2}{2}", $"at Mach {Digits.Round(f.MaximumMach, 4)}",
                f.MaximumDynamicPressure.Show(PressureUnit.Kilopascal, 4), FlightModel.Newton),
            new("Energy at landing", @"E = \frac{m\,v^2}{2}", $"{Digits.Round(landed, 4)} kg × ({f.LandingSpeed.Show(4)})² / 2",
                f.LandingEnergy.Show(4), FlightModel.Newton),
        };
        if (f.OpeningTime is not null && result.Vehicle.Canopy is { } canopy)
        {
            var area = (canopy.DragAreaLowM2 + canopy.DragAreaHighM2) / 2;
            steps.Add(new("Descent speed", @"v = \sqrt{\frac{2\,m\,g}{\rho\,C_D\,S_0}}",
                $"{Digits.Round(landed, 4)} kg, C_D S₀ = {Digits.Round(area, 4)} m²", f.DescentSpeed.Show(4), FlightModel.Knacke));
        }

        return new(result.Title, steps);
    }
}
