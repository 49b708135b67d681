using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>Wind pressure for things that stand: from a mean speed and the roughness of the ground, or from a gust speed and an
/// exposure.</summary>
/// <remarks>Source: EN 1991-1-4 (unverified; checked against open calculation sheets); ASCE 7-10 (unverified; checked against an open
/// procedure sheet).</remarks>
public static class PeakWind
{
    private const double Density = 1.25, LowestM = 4.572;

    /// <summary>Peak pressure with gusts: q_p = (1 + 7 I_v) ½ 1.25 v_m², v_m = c_r v_b. Source: EN 1991-1-4, 4.3 to 4.5.</summary>
    /// <param name="basic">Basic speed, ten minutes' mean at 10 m over open land; 0.1 to 60 m/s.</param>
    /// <param name="roughness">Roughness length of the ground; 0.003 m (sea) to 1 m (town).</param>
    /// <param name="height">Height above ground; 1 to 200 m, above the roughness.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Pressure PeakPressure(Speed basic, Length roughness, Length height)
    {
        var mean = MeanSpeed(basic, roughness, height).MetersPerSecond;
        return Pressure.FromPascals((1 + (7 * Turbulence(roughness, height))) * 0.5 * Density * mean * mean);
    }

    /// <summary>Mean speed at a height. Source: EN 1991-1-4, 4.3.</summary>
    /// <param name="basic">Basic speed; 0.1 to 60 m/s.</param>
    /// <param name="roughness">Roughness length of the ground; 0.003 m to 1 m.</param>
    /// <param name="height">Height above ground; 1 to 200 m.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Speed MeanSpeed(Speed basic, Length roughness, Length height)
    {
        var speed = new ValidRange<Speed>(0.1.MetresPerSecond(), 60.MetresPerSecond()).Check(basic, "basic wind speed",
            "It is the mean of ten minutes at 10 m.");
        var (z0, z) = Check(roughness, height);
        return speed * (0.19 * Math.Pow(z0 / 0.05, 0.07) * Math.Log(z / z0));
    }

    /// <summary>Turbulence intensity at a height [-]. Source: EN 1991-1-4, 4.4.</summary>
    /// <param name="roughness">Roughness length of the ground; 0.003 m to 1 m.</param>
    /// <param name="height">Height above ground; 1 to 200 m.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static double Turbulence(Length roughness, Length height)
    {
        var (z0, z) = Check(roughness, height);
        return 1 / Math.Log(z / z0);
    }

    /// <summary>Velocity pressure of a gust speed: q = 0.613 K_z K_d V². Source: ASCE 7-10.</summary>
    /// <param name="gust">Three-second gust at 10 m; 0.1 to 100 m/s.</param>
    /// <param name="height">Height above ground; 0 to 200 m. Below 15 ft that of 15 ft counts.</param>
    /// <param name="overWater">Flat ground or water all round (exposure D); open land (C) unless said.</param>
    /// <param name="directionality">K_d [-]; 0.5 to 1, 0.95 for round things.</param>
    /// <exception cref="OutOfRangeException">An input is outside its range.</exception>
    public static Pressure VelocityPressure(Speed gust, Length height, bool overWater = false, double directionality = 0.95)
    {
        var speed = new ValidRange<Speed>(0.1.MetresPerSecond(), 100.MetresPerSecond()).Check(gust, "gust speed", "It is a gust of 3 s.");
        var kd = new ValidRange<double>(0.5, 1).Check(directionality, "directionality factor", "Round things have 0.95.");
        return Pressure.FromPascals(0.613 * Exposure(height, overWater) * kd * speed.MetersPerSecond * speed.MetersPerSecond);
    }

    /// <summary>Exposure coefficient K_z = 2.01 (z/z_g)^(2/α) [-]. Source: ASCE 7-10.</summary>
    /// <param name="height">Height above ground; 0 to 200 m.</param>
    /// <param name="overWater">Flat ground or water all round (exposure D); open land (C) otherwise.</param>
    /// <exception cref="OutOfRangeException">The height is outside its range.</exception>
    public static double Exposure(Length height, bool overWater)
    {
        var z = Math.Max(LowestM, new ValidRange<Length>(Length.Zero, 200.Metres()).Check(height, "height above ground",
            "Check its unit.").Meters);
        return 2.01 * (overWater ? Math.Pow(z / 213.36, 2 / 11.5) : Math.Pow(z / 274.32, 2 / 9.5));
    }

    private static (double Roughness, double Height) Check(Length roughness, Length height) =>
        (new ValidRange<Length>(0.003.Metres(), 1.Metres()).Check(roughness, "roughness length of the ground",
            "Mown grass has 0.01 m.").Meters,
            new ValidRange<Length>(1.Metres(), 200.Metres()).Check(height, "height above ground",
                "Below 1 m the law doesn't hold; take 1 m.").Meters);
}
