using NotebookKit.Numerics;
using NotebookKit.Numerics.Ode;
using NotebookKit.Quantities.Numbers;

namespace NotebookKit.Propulsion.Flow;

/// <summary>Makes the table of saturated air that expands with its droplets and without heat.</summary>
/// <remarks>
/// First law for one cubic metre at the start: U = m_a cv T + m_w c T + m_v (L − R_v T), dU = −p dV; vapour saturated as long as there is
/// water in the air to condense. Source: reversible saturated adiabat, any textbook of meteorology; D. Bolton, Mon. Weather Rev. 108 (1980)
/// 1046, eq. 10 (vapour pressure).
/// </remarks>
internal readonly struct MoistExpansion(double dryKg, double waterKg) : IOdeSystem
{
    private const double DryConstant = StandardConstants.DryAirGas, DryCv = 2.5 * DryConstant;
    private const double VapourConstant = 461.5, LiquidHeat = 4190, VapourHeat = 1860;
    private const double Step = 0.05, Longest = 3.3;

    public int Dimension => 2;

    /// <summary>From a pressure and temperature, saturated.</summary>
    public static ExpansionTable Table(double pressurePa, double temperatureK)
    {
        var system = Start(pressurePa, temperatureK);
        var kilograms = system.TotalKg;
        List<(double, double, double, double, double)> entries = [];
        Span<double> y = [temperatureK, 0];
        Span<double> slope = stackalloc double[2];
        Span<double> absolute = [1e-9, 1e-6];
        var settings = new OdeSettings { RelativeTolerance = 1e-10 };
        var run = WorkRun.Current;
        for (var i = 0; ; i++)
        {
            run.ThrowIfStopped();
            var x = i * Step;
            system.Derivatives(x, y, slope);
            var pressure = system.Pressure(x, y[0], out var exponent, slope[0]);
            entries.Add((Math.Log(pressure), exponent, Math.Log(y[0]), -slope[0] / y[0], y[1] / kilograms));
            if (x > Longest) break;
            OdeDriver.Integrate(ref system, x, x + Step, y, settings, absolute);
        }

        return new(1 / kilograms, Step, entries);
    }

    /// <summary>Volume of a kilogram at the start [m³/kg], as the table has it.</summary>
    public static double StartVolume(double pressurePa, double temperatureK) => 1 / Start(pressurePa, temperatureK).TotalKg;

    private static MoistExpansion Start(double pressurePa, double temperatureK)
    {
        var vapourPa = Saturation(temperatureK, out _);
        return new((pressurePa - vapourPa) / (DryConstant * temperatureK), vapourPa / (VapourConstant * temperatureK));
    }

    private double TotalKg => dryKg + waterKg;

    /// <summary>Unknowns: temperature [K] and work done [J], over ln V.</summary>
    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        var temperature = y[0];
        var volume = Math.Exp(t);
        var vapour = Vapour(volume, temperature, out var byTemperature, out var byLogVolume);
        var latent = Latent(temperature) - VapourConstant * temperature;
        var capacity = dryKg * DryCv + waterKg * LiquidHeat + vapour * (VapourHeat - LiquidHeat - VapourConstant) + latent * byTemperature;
        var pressureVolume = (dryKg * DryConstant + vapour * VapourConstant) * temperature;
        dydt[0] = -(pressureVolume + latent * byLogVolume) / capacity;
        dydt[1] = pressureVolume;
    }

    private static double Latent(double temperature) => 2.501e6 - (LiquidHeat - VapourHeat) * (temperature - 273.15);

    private static double Saturation(double temperature, out double logSlope)
    {
        var celsius = temperature - 273.15;
        logSlope = 17.67 * 243.5 / ((celsius + 243.5) * (celsius + 243.5));
        return 611.2 * Math.Exp(17.67 * celsius / (celsius + 243.5));
    }

    private double Vapour(double volume, double temperature, out double byTemperature, out double byLogVolume)
    {
        // Below some -150 °C the fit means nothing and no vapour is left.
        var saturated = temperature > 120 ? Saturation(temperature, out var logSlope) * volume / (VapourConstant * temperature)
            : logSlope = 0;
        // Saturated at the start, and more so the further it expands; rounding must not call that dry.
        if (saturated > waterKg * (1 + 1e-9))
        {
            byTemperature = byLogVolume = 0;
            return waterKg;
        }

        byTemperature = saturated * (logSlope - 1 / temperature);
        byLogVolume = saturated;
        return saturated;
    }

    private double Pressure(double x, double temperature, out double exponent, double slope)
    {
        var volume = Math.Exp(x);
        var vapour = Vapour(volume, temperature, out var byTemperature, out var byLogVolume);
        var constant = dryKg * DryConstant + vapour * VapourConstant;
        exponent = 1 - slope / temperature - VapourConstant * (byLogVolume + byTemperature * slope) / constant;
        return constant * temperature / volume;
    }
}
