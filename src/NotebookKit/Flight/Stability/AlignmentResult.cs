using NotebookKit.Aerodynamics.FinStructures;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Flight.Stability;

/// <summary>
/// What a jig's crookedness does in flight: roll rates and the chance of roll-pitch resonance. Source: strip theory, J. S. Barrowman, 1967;
/// resonance, J. D. Nicolaides, 1953 (unverified).
/// </summary>
public sealed record AlignmentResult : StatedResult
{
    /// <summary>The distribution of cant.</summary>
    public required CantResult Cant { get; init; }

    /// <summary>Pitching and rolling at the cant that nine in ten stay within.</summary>
    public required PitchRollResult AtNineInTen { get; init; }

    /// <summary>Share of the jigs-full whose roll rate lies in the band about the pitch frequency.</summary>
    public required Ratio InResonanceBand { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model => AtNineInTen.Model;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Cant.Lines,
        new("Roll rate, 90 % below", $"{Digits.Round(Math.Abs(AtNineInTen.SteadyRoll.RadiansPerSecond) / (2 * Math.PI))} Hz",
            $"at {AtNineInTen.Speed.Show()}"),
        new("Critical cant", AtNineInTen.CriticalCant.Show(AngleUnit.Degree), "roll at the pitch frequency, at any speed"),
        new("Chance of resonance", InResonanceBand.Show(2), $"roll between {PitchRollResult.BandFrom} and {PitchRollResult.BandTo} of "
            + "the pitch frequency"),
    ];
}
