using NotebookKit.Filling.Balances;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Filling.Networks;

/// <summary>A hose that comes off or tears under pressure: the force of its jet and the energy it holds.</summary>
/// <remarks>
/// F = p A (1 + γ) (2/(γ+1))^(γ/(γ−1)) − pa A of a choked end, as long as the supply keeps the pressure up; energy of the gas in the hose
/// by three formulas. Source: momentum theorem with choked flow, NACA Report 1135, 1953; isentropic expansion, Brode's p V/(γ − 1),
/// availability at constant temperature.
/// </remarks>
public sealed record HoseWhip : Result
{
    internal static readonly ValidRange<GaugePressure> Pressures = new(GaugePressure.Zero, 300.BarGauge());

    internal HoseWhip(HosePart part, GaugePressure pressure, AbsolutePressure ambient)
    {
        new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Check(ambient, "ambient pressure",
            "Was a gauge pressure meant?");
        (Part, Pressure, Ambient) = (part, pressure, ambient);
        Held = part.VolumeAt(pressure);
    }

    /// <summary>The hose.</summary>
    public HosePart Part { get; }

    /// <summary>Pressure in it.</summary>
    public GaugePressure Pressure { get; }

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; }

    /// <summary>Volume of the gas in the hose, grown under pressure where its growth is given.</summary>
    public Volume Held { get; }

    /// <summary>Force of the jet on the loose end while the pressure stands.</summary>
    public Force Force
    {
        get
        {
            double area = Math.PI / 4 * Part.Hose.Bore.Meters * Part.Hose.Bore.Meters, g = Gas.Air.HeatCapacityRatio;
            return UnitsNet.Force.FromNewtons(area * Math.Max(0, Inside * (1 + g) * Gas.Air.CriticalPressureRatio - Ambient.Pascals));
        }
    }

    /// <summary>Energy of the gas by Brode's formula: the largest for air of the three below 14 bar, and common for blasts.</summary>
    public Energy Brode => Energy.FromJoules(Pressure.Pascals * Held.CubicMeters / (Gas.Air.HeatCapacityRatio - 1));

    /// <summary>Energy that the gas gives while it expands without heat.</summary>
    public Energy Isentropic
    {
        get
        {
            var g = Gas.Air.HeatCapacityRatio;
            return Energy.FromJoules(Inside * Held.CubicMeters / (g - 1) * (1 - Math.Pow(Ambient.Pascals / Inside, (g - 1) / g)));
        }
    }

    /// <summary>Energy that the gas gives while it expands at constant temperature, less what the air outside takes.</summary>
    public Energy Availability =>
        Energy.FromJoules(Held.CubicMeters * (Inside * Math.Log(Inside / Ambient.Pascals) - Pressure.Pascals));

    /// <inheritdoc/>
    public override string Title => $"{Part.Name} coming off at {Pressure}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Jet and energy of a torn hose",
        ["The torn end is open to the full bore and chokes; friction in the hose is left out, which errs high.",
            "The gas that still flows in from the supply isn't counted in the energy."],
        "To 300 bar gauge, air.", [FillingSources.Naca1135]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Force of the jet", Force.Show()), new("Gas held", Held.Show()), new("Energy, Brode", Brode.Show()),
        new("Energy, isentropic", Isentropic.Show()), new("Energy, at constant temperature", Availability.Show()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Force.Newtons > 20 ? [FillingFindings.HoseWhips(Part.Name, Force)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Force", @"F = p\,A\,(1 + \gamma)\left(\frac{2}{\gamma + 1}\right)^{\gamma/(\gamma - 1)} - p_a\,A",
            $"{Pressure.ToAbsolute(Ambient)} on {Part.Hose.Bore.Show()}", Force.Show(), FillingSources.Naca1135),
    ]);

    private double Inside => Pressure.ToAbsolute(Ambient).Pascals;
}
