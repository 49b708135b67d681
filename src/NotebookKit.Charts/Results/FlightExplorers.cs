using NotebookKit.Charts.Explorers;
using NotebookKit.Charts.Results.Settings;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results;

/// <summary>Explorers of a flight: <c>flight.Explore()</c>.</summary>
public static class FlightExplorers
{
    /// <summary>
    /// Water fraction, nozzle and pressure to drag, thrust curve and apogee to watch: water from 5 % to 70 %, the throat from 0.6 to 1.4
    /// times that of the flight, pressure from a third of the vessel's rated pressure up to it.
    /// </summary>
    /// <param name="flight">The flight to start from.</param>
    /// <exception cref="InvalidDesignException">The flight can't be computed.</exception>
    public static Explorer Explore(this VerticalFlight flight)
    {
        ArgumentNullException.ThrowIfNull(flight);
        var (throat, charge) = (flight.Nozzle.Throat, flight.Charge);
        var (least, rated) = (charge.Chamber.RatedPressure / 3, charge.Chamber.RatedPressure);
        return flight.Explore(5.Percent(), 70.Percent(), throat * 0.6, throat * 1.4,
            charge.Pressure < least ? charge.Pressure * 0.9 : least, rated);
    }

    /// <summary>Water fraction, nozzle and pressure to drag over ranges of one's own.</summary>
    /// <param name="flight">The flight to start from; what isn't dragged is taken from it.</param>
    /// <param name="leastWater">Least water fraction; 0 % to 95 %.</param>
    /// <param name="mostWater">Greatest water fraction; above the least, at most 95 %.</param>
    /// <param name="leastThroat">Narrowest throat; above 0.5 mm.</param>
    /// <param name="mostThroat">Widest throat; above the narrowest, below the vessel's bore.</param>
    /// <param name="leastPressure">Least pressure; above 0.1 bar gauge.</param>
    /// <param name="mostPressure">Greatest pressure; above the least. Settings above the rated pressure are refused in the figure
    /// too.</param>
    /// <exception cref="InvalidDesignException">A range doesn't hold the flight's own value, or every setting is refused.</exception>
    public static Explorer Explore(
        this VerticalFlight flight, Ratio leastWater, Ratio mostWater, Length leastThroat, Length mostThroat, GaugePressure leastPressure,
            GaugePressure mostPressure)
    {
        ArgumentNullException.ThrowIfNull(flight);
        InvalidDesignException.ThrowIfAny(flight.Name, flight.Validate());
        ExplorerParameter[] parameters =
        [
            new("Water fraction", "%", leastWater.Percent, mostWater.Percent, 14, flight.Charge.WaterFraction.Percent),
            new("Nozzle throat", "mm", leastThroat.Millimeters, mostThroat.Millimeters, 7, flight.Nozzle.Throat.Millimeters),
            new("Pressure", "bar gauge", leastPressure.Bar, mostPressure.Bar, 7, flight.Charge.Pressure.Bar),
        ];
        ExplorerNumber[] numbers = [new("Apogee", "m"), new("Time of apogee", "s"), new("Peak thrust", "N"), new("Impulse", "N s"),
            new("Maximum speed", "m/s")];
        return Explorer.Build(
            $"Water, nozzle and pressure, {flight.Name}", new Axis("Time from release", "s"), new Axis("Thrust", "N"), parameters, numbers,
            s => ThrustSetting.Answer(flight, s)) with
        {
            Cautions = Cautions.ForFlight,
            Remark = $"Everything else as in the flight of {flight.Name}: dry mass {flight.DryMass.Show()}, straight up, model "
                + $"“{flight.Fly().Model.Name}”.",
        };
    }
}
