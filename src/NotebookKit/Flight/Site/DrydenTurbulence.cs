using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>
/// Gusts near the ground by Dryden's spectra: strength and scale against height, and a gust field made from a seed.
/// Source: MIL-F-8785C, 1980, 3.7.3, low altitude (MIL-HDBK-1797 writes the scales of v and w with factors of two; this is 8785C).
/// </summary>
/// <param name="WindAt20Feet">Mean wind at 20 ft (6.1 m); 0 to 30 m/s. 15, 30 and 45 kn stand for light, moderate and severe.</param>
public sealed record DrydenTurbulence(Speed WindAt20Feet)
{
    private const double FootM = 0.3048, LowestFt = 10, HighestFt = 1000;

    /// <summary>Mean wind at 20 ft; 0 to 30 m/s.</summary>
    public Speed WindAt20Feet { get; init; } = new ValidRange<Speed>(Speed.Zero, 30.MetresPerSecond())
        .Check(WindAt20Feet, "wind at 20 ft", "45 kn (23 m/s) already stands for severe turbulence.");

    /// <summary>Where it comes from.</summary>
    public static Source Source { get; } = new("US DoD", "MIL-F-8785C, Flying Qualities of Piloted Airplanes", 1980, "3.7.3, low altitude",
        SourceKind.Standard);

    /// <summary>Standard deviation of horizontal gusts at a height. Source: MIL-F-8785C, 3.7.3.</summary>
    /// <param name="height">Height above ground; 0 to 2000 m, held to 10 to 1000 ft, where the model is.</param>
    /// <exception cref="OutOfRangeException">The height is outside.</exception>
    public Speed Horizontal(Length height) => Speed.FromMetersPerSecond(HorizontalMps(Feet(height)));

    /// <summary>Standard deviation of vertical gusts. Source: MIL-F-8785C, 3.7.3.</summary>
    public Speed Vertical => 0.1 * WindAt20Feet;

    /// <summary>Scale length of horizontal gusts at a height. Source: MIL-F-8785C, 3.7.3.</summary>
    /// <param name="height">Height above ground; 0 to 2000 m, held to 10 to 1000 ft, where the model is.</param>
    /// <exception cref="OutOfRangeException">The height is outside.</exception>
    public static Length Scale(Length height) => Length.FromMeters(ScaleM(Feet(height)));

    /// <summary>Power spectral density of gusts along the line of flight at a circular frequency [m²/s² per rad/s]. Source:
    /// MIL-F-8785C.</summary>
    /// <param name="deviation">Standard deviation; 0 or above.</param>
    /// <param name="scale">Scale length; above 0.</param>
    /// <param name="speed">Speed through the gusts; above 0.</param>
    /// <param name="frequency">Circular frequency [rad/s]; 0 or above.</param>
    public static double LongitudinalSpectrum(Speed deviation, Length scale, Speed speed, double frequency)
    {
        var (s, time) = Checked(deviation, scale, speed, frequency);
        return 2 * s * s * time / Math.PI / (1 + Math.Pow(time * frequency, 2));
    }

    /// <summary>Power spectral density of gusts across the line of flight at a circular frequency [m²/s² per rad/s]. Source:
    /// MIL-F-8785C.</summary>
    /// <param name="deviation">Standard deviation; 0 or above.</param>
    /// <param name="scale">Scale length; above 0.</param>
    /// <param name="speed">Speed through the gusts; above 0.</param>
    /// <param name="frequency">Circular frequency [rad/s]; 0 or above.</param>
    public static double LateralSpectrum(Speed deviation, Length scale, Speed speed, double frequency)
    {
        var (s, time) = Checked(deviation, scale, speed, frequency);
        var square = Math.Pow(time * frequency, 2);
        return s * s * time / Math.PI * (1 + (3 * square)) / Math.Pow(1 + square, 2);
    }

    /// <summary>
    /// A frozen field of horizontal gusts along a vertical path, from a seed: both components across the path, made by a filter with the
    /// across spectrum whose strength and scale follow the height. Source: MIL-F-8785C spectra; exact step of the second-order filter.
    /// </summary>
    /// <param name="top">Height of the field; 10 to 5000 m.</param>
    /// <param name="seed">Seed; any number.</param>
    /// <exception cref="OutOfRangeException">The height is outside.</exception>
    public GustField Field(Length top, ulong seed)
    {
        new ValidRange<Length>(10.Metres(), 5000.Metres()).Check(top, "height of the gust field",
            "Give the height of the flight and a little more.");
        var count = (int)Math.Ceiling(top.Meters / GustField.StepM) + 2;
        var samples = new SeededSamples(seed);
        return new GustField(seed, Component(samples, 0, count), Component(samples, 1, count));
    }

    private static (double Deviation, double Time) Checked(Speed deviation, Length scale, Speed speed, double frequency)
    {
        new ValidRange<double>(-1e9, 1e9).Check(frequency, "frequency", "Give the frequency in rad/s.");
        return (new ValidRange<Speed>(Speed.Zero, 1000.MetresPerSecond()).Check(deviation, "deviation of the gusts",
            "Severe turbulence has 10 m/s.")
            .MetersPerSecond, new ValidRange<Length>(1.Millimetres(), 100_000.Metres()).Check(scale, "scale of turbulence",
                "Take the scale at the height.").Meters / new ValidRange<Speed>(0.001.MetresPerSecond(), 10_000.MetresPerSecond())
                .Check(speed, "speed through the air", "Turbulence is met at speed.").MetersPerSecond);
    }

    internal double HorizontalMps(double heightFt) => 0.1 * WindAt20Feet.MetersPerSecond / Math.Pow(0.177 + (0.000823 * heightFt), 0.4);

    internal static double ScaleM(double heightFt) => heightFt / Math.Pow(0.177 + (0.000823 * heightFt), 1.2) * FootM;

    private static double Feet(Length height) => Math.Clamp(
        new ValidRange<Length>(Length.Zero, 2000.Metres()).Check(height, "height above ground",
            "The low-altitude model ends at 1000 ft and is held above.").Feet, LowestFt, HighestFt);

    /// <summary>Gusts of one component on the grid [m/s].</summary>
    private double[] Component(SeededSamples samples, int component, int count)
    {
        // Filter of unit variance in x/L with the across spectrum: y = a + √3·b-type combination of a double pole at −1. In states (p, q)
        // with p' = −p + w, q' = −q + p: y = √3 p + (1 − √3) q, scaled so that var(y) = 1 (var p = 1/2, cov = 1/4, var q = 1/4).
        var root = Math.Sqrt(3);
        var norm = 1 / Math.Sqrt((3.0 / 2) + (2 * root * (1 - root) / 4) + ((1 - root) * (1 - root) / 4));
        var values = new double[count];
        var (p, q) = (Math.Sqrt(0.5) * samples.Normal(0, component), 0.0);
        q = (p / 2) + (Math.Sqrt(0.125) * samples.Normal(0, component, 1));
        for (var i = 0; i < count; i++)
        {
            var feet = Math.Clamp(i * GustField.StepM / FootM, LowestFt, HighestFt);
            values[i] = HorizontalMps(feet) * norm * ((root * p) + ((1 - root) * q));
            var h = GustField.StepM / ScaleM(feet);
            var e = Math.Exp(-h);
            // Exact covariance of the noise that white noise of unit density adds over a step: ∫ of (e⁻ˢ, s e⁻ˢ) products.
            var pp = (1 - (e * e)) / 2;
            var pq = (1 - (e * e * (1 + (2 * h)))) / 4;
            var qq = (1 - (e * e * (1 + (2 * h) + (2 * h * h)))) / 4;
            var first = Math.Sqrt(pp);
            var (n1, n2) = (samples.Normal(i + 1, component), samples.Normal(i + 1, component, 1));
            var mixed = pq / first;
            (p, q) = ((e * p) + (first * n1), (e * (q + (h * p))) + (mixed * n1) + (Math.Sqrt(Math.Max(0, qq - (mixed * mixed))) * n2));
        }

        return values;
    }
}
