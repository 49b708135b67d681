using NotebookKit.Propulsion.Flow;
using NotebookKit.Propulsion.Phases;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// Whether a vehicle comes down with water and pressure aboard: a look ahead from the pad, and from where it comes to rest in the air.
/// Allocates nothing.
/// </summary>
/// <remarks>
/// Source: Newton's second law and Bernoulli's jet, marched in even steps of gas volume. No drag, friction or head, so that the look ahead
/// errs towards flying; from rest it falls nose down with its jet driving, as three degrees of freedom have it, so that the fall errs
/// towards landing charged.
/// </remarks>
internal static class ChargedLanding
{
    /// <summary>Gauge pressure that counts as gone [Pa]: the least charge that any firing is computed for.</summary>
    public const double GonePa = 1e4;

    private const int Steps = 256;

    /// <summary>Whether that much counts as still charged.</summary>
    public static bool IsCharged(double waterKg, double gaugePa) => waterKg > 0 && gaugePa >= GonePa;

    /// <summary>What is aboard, in words.</summary>
    public static string Aboard(double waterKg, double gaugePa) => waterKg > 0
        ? $"{Digits.Round(waterKg)} kg of water and {Digits.Round(gaugePa / 1e5)} bar gauge"
        : $"{Digits.Round(gaugePa / 1e5)} bar gauge";

    /// <summary>Where a vehicle let go on its pad comes to rest before it lands charged; false where it doesn't.</summary>
    /// <param name="setup">What is fired.</param>
    /// <param name="dryKg">Mass without water and gas [kg].</param>
    /// <param name="rest">Where and with what it comes to rest.</param>
    public static bool Ahead(in FiringSetup setup, double dryKg, out ChargedRest rest)
    {
        rest = default;
        if (!setup.HasWater) return false;
        var ambient = setup.PressurePa - setup.GaugePa;
        var (jet, law) = (setup.WaterJet, setup.ClosedGas.ForStartVolume(setup.StartM3 * setup.AboardShare));
        double height = 0, speed = 0, time = 0, volume = setup.GasM3;
        if (setup.TubeStrokeM > 0 && !RideTube(setup, dryKg, ambient, ref height, ref speed, ref time)) return false;
        var step = (setup.ChamberM3 - volume) / Steps;
        for (var i = 0; i < Steps; i++)
        {
            var middle = volume + (step / 2);
            var gauge = law.Pressure(middle) - ambient;
            if (gauge < GonePa) return false;
            var (flow, push) = JetThrust(jet, gauge, dryKg + setup.GasKg, setup.ChamberM3 - middle);
            var seconds = step / flow;
            var faster = speed + ((push - StandardConstants.Gravity) * seconds);
            height += (speed + faster) / 2 * seconds;
            (speed, time, volume) = (faster, time + seconds, volume + step);
            if (speed > 0) continue;
            height = Math.Max(0, height);
            rest = new(time, height, jet.Density * (setup.ChamberM3 - volume), law.Pressure(volume) - ambient);
            return FallsCharged(setup, dryKg, height, volume, ambient);
        }

        return false;
    }

    /// <summary>Whether water and pressure are still aboard when a vehicle that is at rest in the air reaches the ground.</summary>
    /// <param name="setup">What is fired.</param>
    /// <param name="dryKg">Mass without water and gas [kg].</param>
    /// <param name="heightM">Height of the rest [m].</param>
    /// <param name="gasM3">Volume of the gas at rest [m³].</param>
    /// <param name="ambientPa">Air pressure outside [Pa].</param>
    public static bool FallsCharged(in FiringSetup setup, double dryKg, double heightM, double gasM3, double ambientPa)
    {
        var (jet, law) = (setup.WaterJet, setup.ClosedGas.ForStartVolume(setup.StartM3 * setup.AboardShare));
        double height = heightM, speed = 0, volume = gasM3;
        var step = (setup.ChamberM3 - volume) / Steps;
        for (var i = 0; i < Steps && step > 0; i++)
        {
            var middle = volume + (step / 2);
            var gauge = law.Pressure(middle) - ambientPa;
            if (gauge < GonePa) return false;
            var (flow, push) = JetThrust(jet, gauge, dryKg + setup.GasKg, setup.ChamberM3 - middle);
            var seconds = step / flow;
            var faster = speed + ((StandardConstants.Gravity + push) * seconds);
            height -= (speed + faster) / 2 * seconds;
            if (height <= 0) return true;
            (speed, volume) = (faster, volume + step);
        }

        return false;
    }

    /// <summary>Time until the water is out, or the pressure gone, with the pressure alone driving [s].</summary>
    /// <param name="setup">What is fired.</param>
    /// <param name="waterKg">Water aboard [kg].</param>
    /// <param name="ambientPa">Air pressure outside [Pa].</param>
    public static double EmptyingS(in FiringSetup setup, double waterKg, double ambientPa)
    {
        var (jet, law) = (setup.WaterJet, setup.ClosedGas.ForStartVolume(setup.StartM3 * setup.AboardShare));
        var (seconds, step) = (0.0, waterKg / jet.Density / Steps);
        for (var i = 0; i < Steps; i++)
        {
            var gauge = law.Pressure(setup.ChamberM3 - ((Steps - i - 0.5) * step)) - ambientPa;
            if (gauge < GonePa) break;
            seconds += step / (jet.JetAreaM2 * jet.Speed(gauge));
        }

        return seconds;
    }

    private static (double FlowM3S, double PushMps2) JetThrust(in WaterJet jet, double gaugePa, double emptyKg, double waterM3)
    {
        var speed = jet.Speed(gaugePa);
        var flow = jet.JetAreaM2 * speed;
        return (flow, jet.Density * flow * speed / (emptyKg + (jet.Density * waterM3)));
    }

    /// <summary>False where it doesn't leave the tube, of which the flight itself tells.</summary>
    private static bool RideTube(in FiringSetup setup, double dryKg, double ambientPa, ref double height, ref double speed, ref double time)
    {
        var (law, mass, step) = (setup.ClosedGas, dryKg + setup.WaterKg + setup.StartGasKg, setup.TubeStrokeM / Steps);
        for (var i = 0; i < Steps; i++)
        {
            var push = (law.Pressure(setup.StartM3 + (setup.TubeAreaM2 * (i + 0.5) * step)) - ambientPa) * setup.TubeAreaM2;
            var square = (speed * speed) + (2 * ((push / mass) - StandardConstants.Gravity) * step);
            if (square <= 0) return false;
            var faster = Math.Sqrt(square);
            time += 2 * step / (speed + faster);
            speed = faster;
        }

        height = setup.TubeStrokeM;
        return true;
    }
}
