using NotebookKit.Materials.Solids;
using NotebookKit.Provenance;
using NotebookKit.Quantities.Numbers;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Vessels.Design;

/// <summary>A braided sleeve pulled over a body: its yarns keep their length and number, so their angle follows the diameter.</summary>
/// <param name="Braid">The sleeve.</param>
/// <param name="Diameter">Diameter it is pulled over.</param>
/// <param name="Angle">Angle its yarns take, from the axis.</param>
/// <param name="ArealWeight">Dry weight of a square metre there.</param>
/// <param name="LengthFactor">Length it covers over its length at its nominal diameter [-].</param>
/// <param name="Coverage">Share of the surface that yarns cover.</param>
/// <param name="YarnPitch">Room each yarn has across itself; below the yarn's width the sleeve is jammed.</param>
/// <param name="JammingAngles">Lowest and highest angle before yarns of this width jam; none where it is jammed at every angle.</param>
/// <remarks>
/// πDn = L·sinθ and axial length L·cosθ with L fixed, so sinθ/D is constant. Source: Head, Ko and Pastore, Handbook of Industrial
/// Braiding, 1989; Du and Popper, J. Text. Inst. 85, 1994, p. 316; Zhang et al., J. Text. Inst. 88, 1997, p. 41.
/// </remarks>
public sealed record SleeveFit(
    Braid Braid, Length Diameter, Angle Angle, AreaDensity ArealWeight, double LengthFactor, Ratio Coverage, Length YarnPitch,
        (Angle Lowest, Angle Highest)? JammingAngles)
{
    /// <summary>Whether its yarns have less room than they are wide. Real sleeves go somewhat past it: tows narrow and thicken.</summary>
    public bool IsJammed => YarnPitch < Braid.YarnWidth.Value;

    /// <summary>Diameters between which it isn't jammed; none where it is jammed at every angle.</summary>
    public (Length Smallest, Length Largest)? FreeDiameters => JammingAngles is { } jam
        ? (DiameterAt(Braid, jam.Lowest), DiameterAt(Braid, jam.Highest))
        : null;

    /// <summary>Pulls a sleeve over a diameter. Source: as the type.</summary>
    /// <param name="braid">The sleeve.</param>
    /// <param name="diameter">Diameter of the body; above 0, below <see cref="MaximumDiameter"/>.</param>
    /// <exception cref="InvalidDesignException">The sleeve isn't valid.</exception>
    /// <exception cref="OutOfRangeException">No sleeve of this construction reaches the diameter.</exception>
    public static SleeveFit Over(Braid braid, Length diameter)
    {
        ArgumentNullException.ThrowIfNull(braid);
        InvalidDesignException.ThrowIfAny(braid.Name, braid.Validate());
        if (FindDiameter(braid, diameter) is not null)
            throw new OutOfRangeException($"diameter under {braid.Name}", diameter.Show(4), MinimumDiameter(braid).Show(4),
                $"below {MaximumDiameter(braid).Show(4)}", DiameterWhy);
        return Fit(braid, diameter);
    }

    /// <summary>The same of a sleeve and a diameter that are known to be valid.</summary>
    internal static SleeveFit Fit(Braid braid, Length diameter)
    {
        var sine = SineAt(braid, diameter.Meters);
        var cosine = Math.Sqrt(1 - sine * sine);
        var yarnWeight = braid.Yarn.Value.KilogramsPerMeter;
        // Each yarn crosses the circumference once a turn: its room across itself, and the share of the surface it covers.
        var pitch = 2 * Math.PI * diameter.Meters * cosine / braid.Carriers;
        var cover = Math.Min(braid.YarnWidth.Value.Meters / pitch, 1);
        return new SleeveFit(
            braid, diameter,
            Angle.FromDegrees(Math.Asin(sine) * 180 / Math.PI),
            AreaDensity.FromGramsPerSquareMeter(1000 * braid.Carriers * yarnWeight / (Math.PI * diameter.Meters * cosine)),
            cosine / Math.Cos(braid.NominalAngle.Radians),
            Ratio.FromPercent(100 * (1 - (1 - cover) * (1 - cover))),
            Length.FromMillimeters(1000 * pitch),
            Jamming(braid));
    }

    /// <summary>Diameter at which the yarns lie at an angle. Source: as the type.</summary>
    /// <param name="braid">The sleeve.</param>
    /// <param name="angle">Angle from the axis; 1° to 90°.</param>
    /// <exception cref="OutOfRangeException">The angle, or the sleeve's own, is out of range.</exception>
    public static Length DiameterAt(Braid braid, Angle angle)
    {
        ArgumentNullException.ThrowIfNull(braid);
        new ValidRange<Angle>(1.Degrees(), 90.Degrees()).Check(angle, "braid angle", "Measure it from the axis.");
        new ValidRange<Angle>(10.Degrees(), 80.Degrees()).Check(braid.NominalAngle, $"{braid.Name}: nominal angle",
            "Most biaxial sleeves are 45° at their nominal diameter.");
        return braid.NominalDiameter * Finite.Check(Math.Sin(angle.Radians) / Math.Sin(braid.NominalAngle.Radians),
            "ratio of diameters", "");
    }

    /// <summary>Diameter at which the yarns would lie square to the axis and the sleeve would have no length left. Source: as the
    /// type.</summary>
    /// <param name="braid">The sleeve.</param>
    public static Length MaximumDiameter(Braid braid) => DiameterAt(braid, 90.Degrees());

    /// <summary>Smallest diameter taken here, where the yarns lie at 5°.</summary>
    /// <param name="braid">The sleeve.</param>
    public static Length MinimumDiameter(Braid braid) => DiameterAt(braid, 5.Degrees());

    internal static Finding? FindDiameter(Braid braid, Length diameter)
    {
        // At 89° a sleeve has a fortieth of its length left: nothing that is laid up by hand.
        return diameter >= MinimumDiameter(braid) && diameter <= DiameterAt(braid, 89.Degrees())
            ? null
            : VesselsFindings.DiameterOutOfRange(braid.Name, diameter, MinimumDiameter(braid), MaximumDiameter(braid), DiameterWhy);
    }

    internal static double SineAt(Braid braid, double diameterMetres) =>
        diameterMetres / braid.NominalDiameter.Meters * Math.Sin(braid.NominalAngle.Radians);

    private const string DiameterWhy = "Its yarns can't reach round; take a wider sleeve, or a narrower one where it hangs loose.";

    /// <summary>The room across a yarn goes with sin2θ, so two angles jam it.</summary>
    private static (Angle, Angle)? Jamming(Braid braid)
    {
        var nominal = 2 * Math.PI * braid.NominalDiameter.Meters * Math.Cos(braid.NominalAngle.Radians) / braid.Carriers;
        var widest = nominal / Math.Sin(2 * braid.NominalAngle.Radians);
        var sine = braid.YarnWidth.Value.Meters / widest;
        if (sine >= 1) return null;
        var low = Math.Asin(sine) / 2 * 180 / Math.PI;
        return (Angle.FromDegrees(low), Angle.FromDegrees(90 - low));
    }
}
