using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Aerodynamics.FinStructures;

/// <summary>
/// A set of fins as structure: flutter, divergence, root bending and root bond. Source: D. J. Martin, NACA TN 4197, 1958; R. L.
/// Bisplinghoff, H. Ashley, R. L. Halfman, Aeroelasticity, 1955, ch. 8; J. M. Gere, Mechanics of Materials (unverified).
/// </summary>
public sealed record FinStructureResult : StatedResult
{
    /// <summary>Least factor on strength that passes [-]; common practice: two on the sheet, three on a hand-laid bond.</summary>
    public const double RequiredSheetFactor = 2;

    /// <summary>Least factor on the bond that passes [-]; common practice.</summary>
    public const double RequiredBondFactor = 3;

    /// <summary>What the fins are cut from.</summary>
    public required FinSheet Sheet { get; init; }

    /// <summary>The fillets that hold them.</summary>
    public required FinBond Bond { get; init; }

    /// <summary>Sideways gust that was taken at the fastest speed.</summary>
    public required Speed Gust { get; init; }

    /// <summary>The fins that were judged.</summary>
    public required FinSet Fins { get; init; }

    /// <summary>Flutter at the fastest speed.</summary>
    public required FlutterResult Flutter { get; init; }

    /// <summary>Dynamic pressure of torsional divergence.</summary>
    public required Pressure DivergencePressure { get; init; }

    /// <summary>Speed of torsional divergence in the same air.</summary>
    public required Speed DivergenceSpeed { get; init; }

    /// <summary>Angle of attack of the load case: gust over speed, and cant.</summary>
    public required Angle LoadAngle { get; init; }

    /// <summary>Air load on one fin.</summary>
    public required Force FinLoad { get; init; }

    /// <summary>Bending moment at the root.</summary>
    public required Torque RootMoment { get; init; }

    /// <summary>Bending stress at the root.</summary>
    public required Pressure RootStress { get; init; }

    /// <summary>Flexural strength over root stress [-].</summary>
    public required double SheetFactor { get; init; }

    /// <summary>Stress in the more loaded fillet's throat, peel and shear added.</summary>
    public required Pressure BondStress { get; init; }

    /// <summary>Adhesive strength over bond stress [-].</summary>
    public required double BondFactor { get; init; }

    /// <summary>Divergence speed over fastest flight speed [-].</summary>
    public double DivergenceMargin => DivergenceSpeed / Flutter.Fastest;

    /// <summary>Whether the fins' middles lie forward of the root's: bending then adds to the twist, and no pass is given.</summary>
    public required bool IsSweptForward { get; init; }

    /// <summary>Whether flutter, divergence, root and bond all hold; never of fins swept forward, nor without any load on them.</summary>
    public bool Holds => !IsSweptForward && FinLoad > Force.Zero && Flutter.Holds && DivergenceMargin >= FlutterResult.RequiredMargin
        && SheetFactor >= RequiredSheetFactor && BondFactor >= RequiredBondFactor;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFlight;

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Fins as clamped plates",
        [
            "Divergence by strip theory: torsion of a plate about mid chord, lift at quarter chord, sweep-back left out (it helps).",
            "Root load: the fin's own lift slope with interference, gust and cant together, at the mean chord; the plate bends as a beam "
                + "of root width.",
            "Bond: moment taken as a couple across plate and fillets, added to the direct shear.",
        ],
        "Thin plate fins, Mach 0 to 0.8, load angle below 15°.",
        [Literature.Martin, Literature.Bisplinghoff, Literature.Gere]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Flutter.Lines,
        new("Divergence speed", DivergenceSpeed.Show(SpeedUnit.MeterPerSecond), $"margin {Digits.Round(DivergenceMargin)}"),
        new("Air load on one fin", FinLoad.Show(), $"at {LoadAngle.Show()} and {Flutter.Fastest.Show()}"),
        new("Root bending stress", RootStress.Show(PressureUnit.Megapascal),
            $"factor {Digits.Round(SheetFactor)}, required {RequiredSheetFactor}"),
        new("Bond stress", BondStress.Show(PressureUnit.Megapascal), $"factor {Digits.Round(BondFactor)}, required {RequiredBondFactor}"),
    ];
}
