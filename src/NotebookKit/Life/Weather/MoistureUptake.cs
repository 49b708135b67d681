using NotebookKit.Numerics;
using NotebookKit.Numerics.Functions;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Life.Weather;

/// <summary>How fast a dry wall takes up water from wet or damp surroundings.</summary>
/// <param name="Thickness">Thickness of the wall; 0.05 mm to 100 mm.</param>
/// <param name="Diffusivity">Diffusivity through the thickness, an area per time; 10⁻¹⁰ to 10⁻² mm²/s.</param>
/// <param name="Faces">Faces that water enters by.</param>
/// <remarks>Source: J. Crank, The Mathematics of Diffusion, 1975; C.-H. Shen, G. S. Springer, J. Compos. Mater. 10 (1976) 2 (approximation,
/// unverified).</remarks>
public sealed record MoistureUptake(Length Thickness, KinematicViscosity Diffusivity, WetFaces Faces)
{
    private const string CheckDiffusivity = "Epoxy laminates are 10⁻⁸ to 10⁻⁶ mm²/s near room temperature.";

    /// <summary>Everything that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
        [.. new[]
        {
            new ValidRange<Length>(0.05.Millimetres(), 100.Millimetres()).Find(Thickness.ToUnit(LengthUnit.Millimeter), "wall thickness",
                "Check its unit."),
            new ValidRange<double>(1e-10, 1e-2).Find(DiffusivityMm2PerS, "diffusivity in mm²/s", CheckDiffusivity),
            Enum.IsDefined(Faces) ? null : LifeFindings.FacesUnknown((int)Faces),
        }.OfType<Finding>()];

    /// <summary>Share of the final uptake after a time, exact. Source: Crank 1975, plane sheet.</summary>
    /// <param name="time">Time in the damp; 0 to 200 years.</param>
    /// <exception cref="InvalidDesignException">The wall is out of range.</exception>
    /// <exception cref="OutOfRangeException">The time is out of range.</exception>
    public Ratio ShareAfter(Duration time) => Share(Exact(Scaled(time)));

    /// <summary>Share by the closed approximation, within about 3.5 % of the final uptake. Source: Shen and Springer 1976,
    /// unverified.</summary>
    /// <param name="time">Time in the damp; 0 to 200 years.</param>
    /// <exception cref="InvalidDesignException">The wall is out of range.</exception>
    /// <exception cref="OutOfRangeException">The time is out of range.</exception>
    public Ratio ApproximateShareAfter(Duration time) => Share(-NearZero.ExpLessOne(-7.3 * Math.Pow(Scaled(time), 0.75)));

    /// <summary>Share by the square-root law of the start, which is right to about half and runs past 1 afterwards. Source: Crank
    /// 1975.</summary>
    /// <param name="time">Time in the damp; 0 to 200 years.</param>
    /// <exception cref="InvalidDesignException">The wall is out of range.</exception>
    /// <exception cref="OutOfRangeException">The time is out of range.</exception>
    public Ratio EarlyShareAfter(Duration time) => Share(4 * Math.Sqrt(Scaled(time) / Math.PI));

    /// <summary>Time until a share of the final uptake is reached. Source: Crank 1975, solved.</summary>
    /// <param name="share">Share of the final uptake; 0.1 to 99.99 %.</param>
    /// <exception cref="InvalidDesignException">The wall is out of range.</exception>
    /// <exception cref="OutOfRangeException">The share is out of range.</exception>
    public Duration TimeTo(Ratio share)
    {
        InvalidDesignException.ThrowIfAny("Moisture uptake", Validate());
        var wanted = new ValidRange<Ratio>(0.1.Percent(), 99.99.Percent())
            .Check(share.ToUnit(RatioUnit.Percent), "share of the final uptake", "The end itself is never reached.").DecimalFractions;
        var root = BracketedRoot.Solve(u => Exact(u * u) - wanted, 0, 2);
        return Duration.FromDays(root * root * PathMm * PathMm / DiffusivityMm2PerS / 86_400);
    }

    /// <summary>Water in the wall after a time. Source: Crank 1975.</summary>
    /// <param name="time">Time in the damp; 0 to 200 years.</param>
    /// <param name="saturation">Uptake of the saturated wall, as a share of its mass; above 0 to 10 %.</param>
    /// <exception cref="InvalidDesignException">The wall is out of range.</exception>
    /// <exception cref="OutOfRangeException">An input is out of range.</exception>
    public MoistureResult After(Duration time, Ratio saturation) => new(this, time, Saturation(saturation), ShareAfter(time));

    /// <summary>Diffusivity from two weighings of a dried sample in the damp, wet on both faces. Source: Shen and Springer 1976.</summary>
    /// <param name="thickness">Thickness of the sample; 0.05 mm to 100 mm.</param>
    /// <param name="saturation">Uptake of the saturated sample, as a share of its mass; above 0 to 10 %.</param>
    /// <param name="first">Uptake at the first weighing; 0 % to below the second.</param>
    /// <param name="firstTime">Time of the first weighing; 0 to before the second.</param>
    /// <param name="second">Uptake at the second weighing; above the first, at most 60 % of the saturation.</param>
    /// <param name="secondTime">Time of the second weighing; above the first.</param>
    /// <exception cref="OutOfRangeException">A size or an uptake is out of range.</exception>
    /// <exception cref="InvalidDesignException">The weighings are not in order.</exception>
    public static KinematicViscosity DiffusivityFrom(Length thickness, Ratio saturation, Ratio first, Duration firstTime, Ratio second,
        Duration secondTime)
    {
        new ValidRange<Length>(0.05.Millimetres(), 100.Millimetres()).Check(thickness.ToUnit(LengthUnit.Millimeter), "sample thickness",
            "Check its unit.");
        Saturation(saturation);
        var inOrder = first >= Ratio.Zero && second > first && firstTime >= Duration.Zero && secondTime > firstTime
            && double.IsFinite(secondTime.Seconds);
        if (!inOrder)
            InvalidDesignException.ThrowIfAny("Weighings", [LifeFindings.WeighingsRefused(first, firstTime, second, secondTime)]);
        // Beyond this the square-root law bends over, and the figure would come out too low: water would seem slower than it is.
        if (second > saturation * 0.6)
            InvalidDesignException.ThrowIfAny("Weighings", [LifeFindings.SecondUptakeOutOfRange(second, saturation)]);
        var slope = (second.DecimalFractions - first.DecimalFractions) / (Math.Sqrt(secondTime.Seconds) - Math.Sqrt(firstTime.Seconds));
        var quarter = thickness.Meters / (4 * saturation.DecimalFractions);
        return KinematicViscosity.FromSquareMetersPerSecond(Math.PI * quarter * quarter * slope * slope);
    }

    internal double DiffusivityMm2PerS => Diffusivity.SquareMetersPerSecond * 1e6;

    /// <summary>Thickness of the wall that would do the same with both faces wet [mm].</summary>
    internal double PathMm => Faces == WetFaces.OuterOnly ? 2 * Thickness.Millimeters : Thickness.Millimeters;

    /// <summary>D t / h² [-].</summary>
    internal double Scaled(Duration time)
    {
        InvalidDesignException.ThrowIfAny("Moisture uptake", Validate());
        new ValidRange<double>(0, 200).Check(time.Days / 365.25, "time in the damp in years", "Count from when the wall was dry.");
        return DiffusivityMm2PerS * time.Seconds / (PathMm * PathMm);
    }

    /// <summary>Share of a plate with both faces wet: images of the faces early, decaying waves late; both exact, each where it converges
    /// fast.</summary>
    internal static double Exact(double x)
    {
        if (x <= 0) return 0;
        if (x < 0.06)
        {
            var root = Math.Sqrt(x);
            var sum = 1 / Math.Sqrt(Math.PI);
            for (var n = 1; n <= 6; n++) sum += 2 * (n % 2 == 0 ? 1 : -1) * IntegralOfErfc(n / (2 * root));
            return 4 * root * sum;
        }

        var rest = 0.0;
        for (var j = 0; j < 12; j++)
        {
            double odd = 2 * j + 1;
            rest += Math.Exp(-odd * odd * Math.PI * Math.PI * x) / (odd * odd);
        }

        return 1 - 8 / (Math.PI * Math.PI) * rest;
    }

    private static double IntegralOfErfc(double z) => Math.Exp(-z * z) / Math.Sqrt(Math.PI) - z * MathNet.Numerics.SpecialFunctions.Erfc(z);

    private static Ratio Saturation(Ratio saturation) =>
        new ValidRange<Ratio>(0.001.Percent(), 10.Percent()).Check(saturation.ToUnit(RatioUnit.Percent), "uptake at saturation",
            "Epoxy takes up 1 to 6 %, a laminate about half of that.");

    private static Ratio Share(double share) => Ratio.FromPercent(100 * share);
}

/// <summary>Which faces of a wall water can enter by.</summary>
public enum WetFaces
{
    /// <summary>Both faces.</summary>
    Both,

    /// <summary>The outer face alone: a liner keeps the inner one dry, and the same uptake takes four times as long.</summary>
    OuterOnly,
}
