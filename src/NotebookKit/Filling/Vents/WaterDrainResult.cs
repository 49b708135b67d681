using NotebookKit.Filling.Balances;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Vents;

/// <summary>How long a vessel's water takes to be driven out, and what pressure is left.</summary>
/// <remarks>Source: as <see cref="WaterDrain"/>.</remarks>
public sealed record WaterDrainResult : Result
{
    private readonly double _outM3;

    internal WaterDrainResult(WaterDrain drain, double[] seconds, double[] pascals, double outM3, IReadOnlyList<Finding> findings)
    {
        Drain = drain;
        Time = new("Time", "s", seconds);
        Pressure = new("Pressure", "bar gauge", Array.ConvertAll(pascals, p => (p - drain.Ambient.Pascals) / 1e5));
        PressureThen = AbsolutePressure.FromPascals(pascals[^1]).ToGauge(drain.Ambient);
        _outM3 = outM3;
        Findings = WaterLeft > Volume.Zero
            ? [.. findings, FillingFindings.GasIsSpentWithWaterLeft(PressureThen, WaterLeft)]
            : findings;
    }

    /// <summary>What was run.</summary>
    public WaterDrain Drain { get; }

    /// <summary>Times.</summary>
    public Series Time { get; }

    /// <summary>Pressure of the gas at those times.</summary>
    public Series Pressure { get; }

    /// <summary>Time until the water is out, or the pressure is down to where it is no longer watched.</summary>
    public Duration Duration => Duration.FromSeconds(Time[^1]);

    /// <summary>Pressure of the gas then.</summary>
    public GaugePressure PressureThen { get; }

    /// <summary>Water that is out then.</summary>
    public Volume WaterOut => Volume.FromLiters(1000 * _outM3);

    /// <summary>Water that is left then; 0 where it is all out.</summary>
    public Volume WaterLeft => _outM3 < Drain.WaterVolume.CubicMeters ? Volume.FromLiters(Drain.WaterVolume.Liters - 1000 * _outM3)
        : Volume.Zero;

    /// <inheritdoc/>
    public override string Title => $"Water driven out from {Drain.From}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Water driven out by trapped gas",
        ["Ideal gas with one exponent; no inertia of the water, no speed inside the vessel.",
            "No head unless the vessel stands on its opening; a hose that rises or a long line takes longer."],
        "An opening below a tenth of the bore; to 300 bar gauge.",
        [FillingSources.Torricelli]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Time", $"{Digits.Round(Duration.Seconds)} s", $"{WaterOut.Show()} of water"),
        new("Pressure then", PressureThen.ToString()),
        .. WaterLeft > Volume.Zero ? [new ResultLine("Water left", WaterLeft.Show())] : Array.Empty<ResultLine>(),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Pressure when the water is out", @"p_1 = p_0\left(\frac{V_0}{V_1}\right)^n",
            $"{Drain.From.ToAbsolute(Drain.Ambient)} × ({Digits.Round(Drain.GasVolume.Liters, 4)} L / "
                + $"{Digits.Round(Drain.GasVolume.Liters + WaterOut.Liters, 4)} L)^{Digits.Round(Drain.Exponent)}",
                PressureThen.ToString(), FillingSources.Torricelli),
        new("Time of the water", @"t = \int \frac{dV}{C_d\,A\,\sqrt{2\,(p(V) - p_a)/\rho}}",
            $"{WaterOut.Show()} through {Digits.Round(Drain.EffectiveArea.SquareMillimeters, 4)} mm², summed",
                $"{Digits.Round(Duration.Seconds, 4)} s", FillingSources.Torricelli),
    ]);
}
