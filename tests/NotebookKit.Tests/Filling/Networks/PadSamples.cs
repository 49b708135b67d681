using NotebookKit.Filling.Networks;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Networks;

/// <summary>Pads for tests, invented.</summary>
internal static class PadSamples
{
    public static readonly SonicRestrictor Coupling = new(1.LitresPerSecondBar(), 0.3), Small = new(0.1.LitresPerSecondBar(), 0.35);

    public static Chamber Booster { get; } = new(2.5.Litres(), 66.Millimetres(), 45.BarGauge());

    public static Chamber Sustainer { get; } = new(1.2.Litres(), 60.Millimetres(), 45.BarGauge());

    /// <summary>Cylinder, regulator, hose, valve and restrictor to a booster, and through it by a check valve to a sustainer.</summary>
    public static PadNetwork TwoStages { get; } = new()
    {
        Nodes =
        [
            new CylinderNode(new("cylinder", 10.Litres(), 200.BarGauge())) { RatedTo = 232.BarGauge(), ProvedOn = new(2024, 5, 1) },
            new VesselNode("booster", Booster) { WaterFraction = 30.Percent(), Heat = FillHeat.Wall, ProvedOn = new(2026, 3, 2) },
            new VesselNode("sustainer", Sustainer) { WaterFraction = 30.Percent(), Heat = FillHeat.Wall, ProvedOn = new(2026, 4, 9) },
        ],
        Links =
        [
            new("cylinder", "booster",
            [
                new RegulatorPart("regulator", 42.BarGauge()) { RatedTo = 300.BarGauge(), Droop = 2.Bar(),
                    DroopFlow = MassFlow.FromGramsPerSecond(5), SupplyEffect = 0.01, SetAtInlet = 200.BarGauge(), Creep = 0.Bar() },
                new HosePart("hose", new Hose(4.Millimetres(), 5.Metres())) { RatedTo = 100.BarGauge(), GrowthPerBar = 5e-4 },
                new ValvePart("fill valve", Coupling) { RatedTo = 200.BarGauge(), ShutsAt = 40.BarGauge(), Watches = "sustainer" },
                new PassagePart("restrictor", Small) { RatedTo = 200.BarGauge() },
            ]),
            new("booster", "sustainer", [new CheckValvePart("check valve", Coupling, 0.3.Bar()) { RatedTo = 60.BarGauge() }]),
        ],
    };

    /// <summary>A supply and one vessel through one restrictor, shut at the target: what a plain fill is.</summary>
    public static PadNetwork Single(PadFill fill) => new()
    {
        Nodes = [new SupplyNode("supply", fill.Supply), new VesselNode("vessel", fill.Chamber) { WaterFraction = fill.WaterFraction,
            Heat = fill.Heat, Wall = fill.Wall, Start = fill.Start }],
        Links = [new("supply", "vessel", [new ValvePart("valve", fill.Restrictor) { ShutsAt = fill.Target }])],
        Temperature = fill.Temperature, Ambient = fill.Ambient, Gas = fill.Gas, Properties = fill.Properties, Tolerance = 1e-11,
    };
}
