using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>
/// What varies from one flight to the next, as standard deviations of normal distributions cut at four of them, unless said otherwise.
/// The defaults are common practice, no source: put in your own as you learn them.
/// </summary>
public sealed record Spread
{
    /// <summary>Fill pressure, as a share of its gauge value; 0 to 20 %. 1 % unless given: a club gauge read by eye.</summary>
    public Ratio Pressure { get; init; } = 1.Percent();

    /// <summary>Water fraction, in points of it; 0 to 10 %. 0.5 unless given.</summary>
    public Ratio Water { get; init; } = 0.5.Percent();

    /// <summary>Thrust at one pressure, as a share; 0 to 30 %. 2 % unless given.</summary>
    public Ratio Thrust { get; init; } = 2.Percent();

    /// <summary>
    /// Drag, as a share; 0 to 50 %. Where none is given: evenly spread over the band of the build-up, or 5 % about a measured curve.
    /// </summary>
    public Ratio? Drag { get; init; }

    /// <summary>Dry mass, as a share; 0 to 20 %. Where none is given: by the mass budget's own spreads.</summary>
    public Ratio? DryMass { get; init; }

    /// <summary>Centre of gravity; 0 to 100 mm. Where none is given: by the mass budget's own spreads. In six degrees of freedom
    /// only.</summary>
    public Length? CentreOfGravity { get; init; }

    /// <summary>Wind speed, as a share of the mean; 0 to 100 %. 20 % unless given.</summary>
    public Ratio WindSpeed { get; init; } = 20.Percent();

    /// <summary>Wind direction; 0 to 180°. 15° unless given.</summary>
    public Angle WindDirection { get; init; } = 15.Degrees();

    /// <summary>Gusts, a field of its own for every flight; none unless given.</summary>
    public DrydenTurbulence? Gusts { get; init; }

    /// <summary>Tilt of the rail, to north and to east each; 0 to 10°. 1° unless given.</summary>
    public Angle RailTilt { get; init; } = 1.Degrees();

    /// <summary>Mean cant of the fins; 0 to 2°. 0.1° unless given. In six degrees of freedom only.</summary>
    public Angle Cant { get; init; } = 0.1.Degrees();

    /// <summary>Timer, or delay after the top; 0 to 10 s. 0.1 s unless given.</summary>
    public Duration Timer { get; init; } = 0.1.Seconds();

    /// <summary>Whether the canopy's drag is spread evenly over the handbook's band; its middle where not. Yes unless given.</summary>
    public bool CanopyBand { get; init; } = true;

    /// <summary>Nothing varies: every flight is the same.</summary>
    public static Spread None { get; } = new()
    {
        Pressure = Ratio.Zero,
        Water = Ratio.Zero,
        Thrust = Ratio.Zero,
        Drag = Ratio.Zero,
        DryMass = Ratio.Zero,
        CentreOfGravity = Length.Zero,
        WindSpeed = Ratio.Zero,
        WindDirection = Angle.Zero,
        RailTilt = Angle.Zero,
        Cant = Angle.Zero,
        Timer = Duration.Zero,
        CanopyBand = false,
    };

    /// <summary>Everything that is wrong with the spread.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        const string Deviation = "It is a standard deviation.";
        ValidRange<Ratio> Share(double percent) => new(0.Percent(), percent.Percent());
        Finding?[] findings =
        [
            Share(20).Find(Pressure, "spread of the fill pressure", Deviation),
            Share(10).Find(Water, "spread of the water fraction", Deviation),
            Share(30).Find(Thrust, "spread of the thrust", Deviation),
            Drag is { } drag ? Share(50).Find(drag, "spread of the drag", Deviation) : null,
            DryMass is { } mass ? Share(20).Find(mass, "spread of the dry mass", Deviation) : null,
            CentreOfGravity is { } centre ? new ValidRange<Length>(Length.Zero, 100.Millimetres()).Find(centre,
                "spread of the centre of gravity", Deviation) : null,
            Share(100).Find(WindSpeed, "spread of the wind speed", Deviation),
            new ValidRange<Angle>(Angle.Zero, 180.Degrees()).Find(WindDirection, "spread of the wind direction", Deviation),
            new ValidRange<Angle>(Angle.Zero, 10.Degrees()).Find(RailTilt, "spread of the rail's tilt", Deviation),
            new ValidRange<Angle>(Angle.Zero, 2.Degrees()).Find(Cant, "spread of the fin cant", Deviation),
            new ValidRange<Duration>(Duration.Zero, 10.Seconds()).Find(Timer, "spread of the timer", Deviation),
        ];
        return findings.OfType<Finding>().ToArray();
    }
}
