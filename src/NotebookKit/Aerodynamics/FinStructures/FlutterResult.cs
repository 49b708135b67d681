using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>
/// Flutter speed of a plate fin. Source: D. J. Martin, NACA TN 4197, 1958, eq. 18, with its own constant of 39.3 (2.674 in any one unit of
/// pressure); a form with half of it is widely copied and gives speeds too high by √2.
/// </summary>
public sealed record FlutterResult : StatedResult
{
    /// <summary>Least ratio of flutter speed to fastest flight speed that passes [-].</summary>
    public const double RequiredMargin = 1.5;

    /// <summary>Mach number above which nothing passes [-].</summary>
    public const double MaximumMach = 0.8;

    /// <summary>Predicted flutter speed.</summary>
    public required Speed FlutterSpeed { get; init; }

    /// <summary>Fastest flight speed asked about.</summary>
    public required Speed Fastest { get; init; }

    /// <summary>Mach number at the fastest speed [-].</summary>
    public required double Mach { get; init; }

    /// <summary>Plate thickness that gives the wanted margin, everything else kept.</summary>
    public required Length RequiredThickness { get; init; }

    /// <summary>Flutter speed over fastest flight speed [-].</summary>
    public double Margin => FlutterSpeed / Fastest;

    /// <summary>Whether the margin is at least 1.5 and the speed at most Mach 0.8.</summary>
    public bool Holds => Margin >= RequiredMargin && Mach <= MaximumMach;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Martin's flutter criterion",
        [
            "Thickness over the longest chord, the lowest ratio of a plate of constant thickness; a fin of any outline takes the taper "
                + "of the trapezoid with its area, span and root.",
            "Small deflections about a straight flight. Onset falls as a fin is bent by its load: a measured thin wing lost 22 % of its "
                + "onset speed from 3° to 7° at the root. The criterion can't follow that; the margin has to.",
            "Left out: fin mass against air density, bending frequency and bend-twist coupling of the laminate, sweep, flexible root and "
                + "body, tip bodies, damage, warm resin.",
            "On a measured wing (AGARD 445.6) it was too high by 7 to 55 %, growing towards Mach 1: hence the margin of 1.5 and no pass "
                + "above Mach 0.8.",
        ],
        "Thin plate fins clamped at the root, to Mach 0.8.",
        [Literature.Martin, Literature.Yates, Literature.Drachinsky]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Flutter speed", FlutterSpeed.Show(SpeedUnit.MeterPerSecond), "predicted; true onset may be lower"),
        new("Fastest flight speed", Fastest.Show(SpeedUnit.MeterPerSecond), $"Mach {Digits.Round(Mach, 2)}"),
        new("Margin", Digits.Round(Margin), Holds ? $"holds: at least {RequiredMargin}"
            : $"doesn't hold: at least {RequiredMargin} is required, below Mach {MaximumMach}"),
        new("Thickness for that margin", RequiredThickness.Show(LengthUnit.Millimeter)),
    ];
}
