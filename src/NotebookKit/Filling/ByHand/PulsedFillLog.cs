using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Fills;
using NotebookKit.Filling.Networks;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Numerics.Fits;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.ByHand;

/// <summary>A logged fill whose valve was opened at known times: restrictor, leak and heat to the wall are fitted together.</summary>
/// <remarks>
/// Least squares of the network model on the gauge over three unknowns: conductance on the way in, film coefficient of the wall, and
/// conductance of a leak to the open air. Source: D. W. Marquardt 1963; G. A. F. Seber, C. J. Wild, Nonlinear Regression, 1989.
/// </remarks>
public sealed record PulsedFillLog
{
    /// <summary>Vessel, supply, water and ambient as they were; its restrictor is the first guess, and its critical ratio is
    /// kept.</summary>
    public required PadFill Fill { get; init; }

    /// <summary>When the valve was open, on the log's clock.</summary>
    public required IReadOnlyList<ValveOpening> Openings { get; init; }

    /// <summary>The clock, in s, rising from 0 or later.</summary>
    public required Series Time { get; init; }

    /// <summary>The gauge, in bar gauge.</summary>
    public required Series Pressure { get; init; }

    /// <summary>Everything wrong with this log.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            .. GaugeColumns.Wrong(Time, Pressure),
            Time.Values.Zip(Time.Values.Skip(1)).All(p => p.Second > p.First) && Time.Count > 0 && Time[0] >= 0 ? null
                : FillingFindings.TimesDoNotRise(),
            Openings.Count > 0 ? null : FillingFindings.NoOpeningGiven(),
            .. new ValvePart("valve", Fill.Restrictor) { Openings = Openings }.Validate(),
        ];
        if (findings.All(f => f is null))
        {
            var rise = Pressure.Values.Max() - Pressure[0];
            if (rise < 1) findings.Add(FillingFindings.GaugeRisesTooLittle(rise));
        }

        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Fits restrictor, heat and leak. Source: as the type.</summary>
    /// <exception cref="InvalidDesignException">The log can't be fitted; all reasons are in it.</exception>
    public PulsedFillFit Fit()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny("Pulsed fill log", findings);
        double[] data = [.. Pressure.Values];
        var guess = Math.Log(Fill.Restrictor.Conductance.LitresPerSecondBar);
        double[] low = [guess - 3, Math.Log(1), 0], high = [guess + 3, Math.Log(2000), 30], steps = [1e-3, 1e-2, 1e-3];
        var fit = new[] { 20.0, 120 }.Select(film => CurveFit.Of(Gauge, data, [guess, Math.Log(film), 0.05], low, high, steps))
            .MinBy(f => f.Scatter)!;
        return new PulsedFillFit(this, fit, findings);
    }

    /// <summary>The pad with a set of unknowns: ln of the conductance in dm³/(s bar), ln of the film coefficient, leak in
    /// 0.001 dm³/(s bar).</summary>
    internal PadNetwork With(double[] x) => new()
    {
        Nodes =
        [
            Fill.Cylinder is { } cylinder ? new CylinderNode(cylinder) : new SupplyNode("supply", Fill.Supply),
            new VesselNode("vessel", Fill.Chamber with { RatedPressure = 300.BarGauge() })
            {
                WaterFraction = Fill.WaterFraction, Start = Pressure[0] > 0 ? Pressure[0].BarGauge() : GaugePressure.Zero,
                Heat = FillHeat.Wall, Wall = (Fill.Wall ?? FillWall.Of(Fill.Chamber, Fill.WaterFraction)) with
                {
                    Film = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Math.Exp(x[1])), FilmFactor = 1,
                },
            },
            new OutsideNode(),
        ],
        Links =
        [
            new(Fill.Cylinder?.Name ?? "supply", "vessel",
            [
                .. Fill.Cylinder is null ? Array.Empty<LinePart>() : [new RegulatorPart("regulator", Fill.Supply)],
                new ValvePart("valve", Sonic(Math.Exp(x[0]), Math.Clamp(Fill.Restrictor.CriticalRatio, 0, 0.7))) { Openings = Openings },
            ]),
            new("vessel", "outside", [new PassagePart("leak", Sonic(Math.Max(x[2], 1e-9) / 1000, 0.3))]),
        ],
        Temperature = Fill.Temperature, Ambient = Fill.Ambient, Gas = Fill.Gas, Properties = Fill.Properties,
    };

    private static SonicRestrictor Sonic(double litresPerSecondBar, double ratio) =>
        new(SonicConductance.FromLitresPerSecondBar(litresPerSecondBar), ratio);

    private double[] Gauge(double[] x) => NetworkTrace.GaugeAt(new NetworkModel(With(x)), "vessel", Time.Values);
}
