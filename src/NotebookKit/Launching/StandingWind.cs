using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Launching;

/// <summary>A vehicle that stands in the wind on its pad: whether it tips over.</summary>
/// <remarks>
/// M = ½ ρ v² (C_d D h²/2 + Σ C_f A_f z_f) against (m g + hold-down) times the way from the middle to the line between two feet,
/// b/(2 tan(π/n)).
/// Source: statics; drag of short cylinders, F. M. White, Fluid Mechanics, table 7.3 (unverified), and as C. Matthews 2002 prints it; fins
/// as <see cref="StandingFins"/>.
/// </remarks>
public sealed record StandingWind
{
    private static readonly (double Slenderness, double Drag)[] ShortCylinders =
        [(1, 0.64), (2, 0.68), (5, 0.74), (10, 0.82), (20, 0.91), (40, 0.98)];

    /// <summary>Wind speed at the vehicle, gusts counted; 0 to 60 m/s.</summary>
    public required Speed Wind { get; init; }

    /// <summary>Diameter of the body; 5 mm to 2 m.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Height that stands in the wind; 50 mm to 20 m.</summary>
    public required Length Height { get; init; }

    /// <summary>Mass that holds the pad down: the vehicle empty, and the pad itself; 0.05 to 1000 kg.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Side of the base, from one foot to the next; 20 mm to 10 m. Of a base with unequal sides the shortest.</summary>
    public required Length Base { get; init; }

    /// <summary>Feet, evenly about the middle; 3 to 12, 4 unless given. The vehicle tips over the line between two of them, and three feet
    /// leave that line nearer to the middle than four of the same side.</summary>
    public int Feet { get; init; } = 4;

    /// <summary>Force that pegs or guys hold the base down with; 0 to 100 kN, 0 unless given.</summary>
    public Force HoldDown { get; init; }

    /// <summary>Drag coefficient on diameter times height [-]; 0.2 to 2, that of a short cylinder unless given. Fins add to it.</summary>
    public double? DragCoefficient { get; init; }

    /// <summary>Its sets of fins, which the wind presses on as on plates; empty where it has none, not counted unless given.</summary>
    public IReadOnlyList<StandingFins>? Fins { get; init; }

    internal IReadOnlyList<StandingFins> FinsOrNone => Fins ?? [];

    /// <summary>Density of the air; 0.5 to 1.6 kg/m³, 1.225 kg/m³ unless given.</summary>
    public Density Air { get; init; } = 1.225.KilogramsPerCubicMetre();

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() =>
    [
        .. new[]
        {
            new ValidRange<Speed>(Speed.Zero, 60.MetresPerSecond()).Find(Wind, "wind speed", "Nobody launches in a storm."),
            new ValidRange<Length>(5.Millimetres(), 2.Metres()).Find(Diameter, "diameter of the body", "Check its unit."),
            new ValidRange<Length>(50.Millimetres(), 20.Metres()).Find(Height, "height of the vehicle", "Check its unit."),
            new ValidRange<Mass>(0.05.Kilograms(), 1000.Kilograms()).Find(Mass, "mass on the base", "Check its unit."),
            new ValidRange<Length>(20.Millimetres(), 10.Metres()).Find(Base, "width of the base", "It is measured foot to foot."),
            new ValidRange<int>(3, 12).Find(Feet, "number of feet", "Three feet stand on any ground."),
            new ValidRange<Force>(Force.Zero, 100_000.Newtons()).Find(HoldDown, "hold-down force", "Check its unit."),
            DragCoefficient is { } cd ? new ValidRange<double>(0.2, 2).Find(cd, "drag coefficient", "A short cylinder has 0.6 to 1.2.")
                : null,
            new ValidRange<double>(0.5, 1.6).Find(Air.KilogramsPerCubicMeter, "density of the air in kg/m³", "Sea level has 1.225."),
        }.OfType<Finding>(),
        .. FinsOrNone.SelectMany(f => f.Validate()),
    ];

    /// <summary>Moments, the speed that tips it, and the hold-down that a factor of 2 needs. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">Something is refused; all reasons are in it.</exception>
    public StandingWindResult Run()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Vehicle in the wind", findings);
        return new StandingWindResult(this, findings);
    }

    /// <summary>Drag coefficient times area of body and fins, m².</summary>
    internal double DragM2 => DragOrCylinder * Diameter.Meters * Height.Meters
        + FinsOrNone.Sum(f => f.DragCoefficient * f.Seen.SquareMeters);

    /// <summary>The same times the height that it acts at, m³.</summary>
    internal double DragM3 => DragOrCylinder * Diameter.Meters * Height.Meters * Height.Meters / 2
        + FinsOrNone.Sum(f => f.DragCoefficient * f.Seen.SquareMeters * f.Centre.Meters);

    /// <summary>From the middle to the line between two feet, m.</summary>
    internal double ArmM => Feet == 4 ? Base.Meters / 2 : Base.Meters / (2 * Math.Tan(Math.PI / Feet));

    /// <summary>Drag coefficient of a cylinder across the wind by its height over its diameter.</summary>
    internal double DragOrCylinder
    {
        get
        {
            if (DragCoefficient is { } given) return given;
            var slender = Height / Diameter;
            if (slender <= ShortCylinders[0].Slenderness) return ShortCylinders[0].Drag;
            for (var i = 1; i < ShortCylinders.Length; i++)
            {
                var (a, b) = (ShortCylinders[i - 1], ShortCylinders[i]);
                if (slender <= b.Slenderness)
                    return a.Drag + ((b.Drag - a.Drag) * (slender - a.Slenderness) / (b.Slenderness - a.Slenderness));
            }

            return 1.2;
        }
    }
}
