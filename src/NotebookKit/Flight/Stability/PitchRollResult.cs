using NotebookKit.Flight.Design;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>
/// Pitching and rolling at one speed, and how close the two are. Source: J. S. Barrowman, M.S. thesis, 1967; J. D. Nicolaides, 1953;
/// C. H. Murphy, BRL R-1216, 1963 (all unverified).
/// </summary>
public sealed record PitchRollResult : StatedResult
{
    /// <summary>Ratio of roll to pitch frequency from which resonance is warned of [-]; common practice.</summary>
    public const double BandFrom = 0.7;

    /// <summary>Ratio of roll to pitch frequency up to which resonance is warned of [-]; common practice.</summary>
    public const double BandTo = 1.4;

    /// <summary>Speed through the air.</summary>
    public required Speed Speed { get; init; }

    /// <summary>Natural frequency in pitch.</summary>
    public required Frequency PitchFrequency { get; init; }

    /// <summary>Share of critical damping by the pitch rate alone [-].</summary>
    public required double RotationalDamping { get; init; }

    /// <summary>Share of critical damping with the sideways drift [-].</summary>
    public required double Damping { get; init; }

    /// <summary>Cant of the fins it was asked for.</summary>
    public required Angle Cant { get; init; }

    /// <summary>Steady roll rate by that cant.</summary>
    public required RotationalSpeed SteadyRoll { get; init; }

    /// <summary>Roll rate that locks in with pitching.</summary>
    public required RotationalSpeed ResonantRoll { get; init; }

    /// <summary>Cant that rolls it at its pitch frequency, where lock-in begins; it doesn't depend on speed. 90° for a body without
    /// fins.</summary>
    public required Angle CriticalCant { get; init; }

    /// <summary>Steady roll rate over pitch frequency [-].</summary>
    public double RollToPitch => Math.Abs(SteadyRoll.RadiansPerSecond) / (2 * Math.PI * PitchFrequency.Hertz);

    /// <summary>How much a small built-in asymmetry grows in resonance, 1 / 2ζ [-].</summary>
    public double Amplification => 1 / (2 * Damping);

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Small oscillation in pitch, steady roll",
        [
            "Constant speed and mass, small angles; forcing and damping of roll with the fins' own three-dimensional lift slope.",
            "The two-dimensional slope would put the roll rate a third as high: not safe here.",
            "Water counts in pitch and slips in roll.",
        ],
        "Stable vehicles, Mach 0 to 0.9.",
        [MassLiterature.Barrowman, MassLiterature.Nicolaides, MassLiterature.Murphy]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Pitch frequency", PitchFrequency.Show(FrequencyUnit.Hertz), $"at {Speed.Show()}"),
        new("Damping", Digits.Round(Damping), $"of critical; {Digits.Round(RotationalDamping)} by pitch rate alone"),
        new("Steady roll", $"{Digits.Round(SteadyRoll.RadiansPerSecond / (2 * Math.PI))} Hz",
            $"by a cant of {Cant.Show(AngleUnit.Degree)}"),
        new("Roll over pitch", Digits.Round(RollToPitch), $"keep out of {BandFrom} to {BandTo}"),
        new("Critical cant", CriticalCant.Show(AngleUnit.Degree), "at any speed"),
        new("Amplification in resonance", Digits.Round(Amplification)),
    ];
}
