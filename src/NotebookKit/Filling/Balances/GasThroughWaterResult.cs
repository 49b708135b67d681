using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Quantities.Numbers;
using UnitsNet;

namespace NotebookKit.Filling.Balances;

/// <summary>Where water may take the gas that bubbles through it.</summary>
/// <remarks>Source: as <see cref="GasThroughWater"/>.</remarks>
public sealed record GasThroughWaterResult : Result
{
    // Molar gas constant over 18.015 28 g/mol.
    private const double VapourConstant = StandardConstants.MolarGas / 0.01801528;

    private readonly double _gasKg, _cv;

    internal GasThroughWaterResult(GasThroughWater contact, IReadOnlyList<Finding> findings)
    {
        Contact = contact;
        var constant = contact.Gas.GasConstant.JoulesPerKilogramKelvin;
        _cv = constant / (contact.Gas.HeatCapacityRatio - 1);
        _gasKg = contact.Pressure.Pascals * contact.GasSpace.CubicMeters / (constant * contact.Temperature.Kelvins);
        Findings = Math.Abs(WaterCools.Kelvins) > 2
            ? [.. findings, FillingFindings.WaterIsNoBath(WaterCools.Kelvins, contact.Water)] : findings;
    }

    /// <summary>What was computed.</summary>
    public GasThroughWater Contact { get; }

    /// <summary>Mass of the gas.</summary>
    public Mass GasMass => Mass.FromKilograms(_gasKg).ToUnit(UnitsNet.Units.MassUnit.Gram);

    /// <summary>Heat that the water gives the gas until both are as warm; below 0 where the gas is the hotter one.</summary>
    public Energy Heat => Energy.FromJoules(_gasKg * _cv * (Contact.WaterTemperature.Kelvins - Contact.Temperature.Kelvins));

    /// <summary>By how much that heat cools the water, at 4182 J/(kg K); below 0 where the water warms.</summary>
    public TemperatureDelta WaterCools => TemperatureDelta.FromKelvins(Heat.Joules / (Contact.Water.Kilograms * WaterBath.HeatJPerKgK));

    /// <summary>Pressure of vapour that a gas full of it holds at the water's temperature.</summary>
    public AbsolutePressure Vapour => new Water(Contact.WaterTemperature).VapourPressure;

    /// <summary>Mass of that vapour.</summary>
    public Mass VapourMass => Mass.FromKilograms(Vapour.Pascals * Contact.GasSpace.CubicMeters
        / (VapourConstant * Contact.WaterTemperature.Kelvins)).ToUnit(UnitsNet.Units.MassUnit.Gram);

    /// <summary>Pressure of the gas that has exchanged nothing with the water: as given.</summary>
    public AbsolutePressure WithoutContact => Contact.Pressure;

    /// <summary>Pressure of the gas as warm as the water and full of vapour, at the same volume.</summary>
    public AbsolutePressure FullContact => AbsolutePressure.FromPascals(
        Contact.Pressure.Pascals * Contact.WaterTemperature.Kelvins / Contact.Temperature.Kelvins + Vapour.Pascals);

    /// <summary>A bubble of that flow on its way up; none where flow or depth isn't given, or the gas's conductivity isn't known.</summary>
    public BubbleRise? Rise => Contact is { Flow: { } flow, Depth: { } depth, Gas.Real: not null } ? new(flow.KilogramsPerSecond,
        depth.Meters, Contact.Pressure.Pascals, Contact.Temperature.Kelvins, Contact.Gas) : null;

    /// <inheritdoc/>
    public override string Title => "Gas through water, between its bounds";

    /// <inheritdoc/>
    public override ModelCard Model => new("Gas and water at the two limits of contact",
        [
            "Either no contact, or the gas comes to the water's temperature and takes up vapour until it is full.",
            "The water keeps its temperature; by how much it would cool is said.",
            "Heat that evaporates the vapour is left out: at 20 °C the vapour is below a tenth of a per cent of gas at 30 bar.",
        ],
        Rise is null ? "To 300 bar absolute; water from 0 to 60 °C. The state in between isn't computed."
            : "To 300 bar absolute; water from 0 to 60 °C. Of the state in between a least share is computed.",
        [FillingSources.Charging, Water.Source, .. Rise is null ? [] : new[] { BubbleRise.Size, BubbleRise.Rising,
            BubbleRise.Conduction }]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Without contact", WithoutContact.ToString(), Contact.Temperature.Show()),
        new("As warm as the water, full of vapour", FullContact.ToString(),
            Contact.WaterTemperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius).Show()),
        new(Heat.Joules < 0 ? "Heat to the water" : "Heat from the water", Energy.FromJoules(Math.Abs(Heat.Joules)).Show()),
        new(Heat.Joules < 0 ? "The water warms by" : "The water cools by", $"{Digits.Round(Math.Abs(WaterCools.Kelvins))} K"),
        .. Rise is { } bubble ? [new ResultLine("A bubble of that flow", bubble.Diameter.Show(),
                $"{bubble.Time.Show()} to the surface at {bubble.Speed.Show()}"),
            new ResultLine("Of the way to full contact", bubble.StillShare.Show(),
                $"{bubble.CirculatingShare.Show()} where its gas circulates; bubbles that break up come nearer, "
                    + "bubbles that merge less near")]
            : Array.Empty<ResultLine>(),
        new("Vapour", VapourMass.Show(), $"{Digits.Round(Vapour.Pascals / 100)} mbar"),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Heat", @"Q = m\,c_v\,(T_w - T)", $"{GasMass.Show(4)} × {Digits.Round(_cv, 4)} J/(kg·K) × "
            + $"({Digits.Round(Contact.WaterTemperature.Kelvins, 5)} K − {Digits.Round(Contact.Temperature.Kelvins, 5)} K)",
            $"{Digits.Round(Heat.Joules, 4)} J", FillingSources.Charging),
        new("Pressure in full contact", @"p = p_1\,\frac{T_w}{T} + p_v", $"{Contact.Pressure} × "
            + $"{Digits.Round(Contact.WaterTemperature.Kelvins, 5)} / {Digits.Round(Contact.Temperature.Kelvins, 5)} + {Vapour}",
            FullContact.ToString(), Water.Source),
    ]);
}
