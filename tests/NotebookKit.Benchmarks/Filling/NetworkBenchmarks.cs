using BenchmarkDotNet.Attributes;
using NotebookKit.Filling.Networks;
using NotebookKit.Quantities;

namespace NotebookKit.Benchmarks.Filling;

/// <summary>What 120 s of a pad with six parts and two vessels cost.</summary>
[MemoryDiagnoser]
public class NetworkBenchmarks
{
    private static readonly SonicRestrictor Coupling = new(1.LitresPerSecondBar(), 0.3);

    private static readonly PadNetwork Plain = new()
    {
        Nodes =
        [
            new CylinderNode(new("cylinder", 10.Litres(), 200.BarGauge())),
            new VesselNode("booster", new(2.5.Litres(), 66.Millimetres(), 45.BarGauge())) { WaterFraction = 30.Percent() },
            new VesselNode("sustainer", new(1.2.Litres(), 60.Millimetres(), 45.BarGauge())) { WaterFraction = 30.Percent() },
        ],
        Links =
        [
            new("cylinder", "booster",
            [
                new RegulatorPart("regulator", 42.BarGauge()), new HosePart("hose", new(4.Millimetres(), 5.Metres())),
                new ValvePart("fill valve", Coupling) { ShutsAt = 40.BarGauge() },
                new PassagePart("restrictor", new SonicRestrictor(0.1.LitresPerSecondBar(), 0.35)), new PassagePart("coupling", Coupling),
            ]),
            new("booster", "sustainer", [new CheckValvePart("check valve", Coupling, UnitsNet.Pressure.FromBars(0.3))]),
        ],
    };

    private static readonly PadNetwork WithWalls = Plain with
    {
        Nodes = [.. Plain.Nodes.Select(n => n is VesselNode vessel ? vessel with { Heat = FillHeat.Wall } : n)],
    };

    private static readonly PadNetwork RealWithWalls = WithWalls with { Properties = GasProperties.Real };

    private static readonly PadNetwork ThroughJunction = Plain with
    {
        Nodes = [.. Plain.Nodes, new JunctionNode("manifold")],
        Links = [Plain.Links[0] with { To = "manifold", Parts = [.. Plain.Links[0].Parts.Where(p => p is not ValvePart)] },
            .. Plain.Links.Skip(1).SelectMany(l => new PadLink[] { new("manifold", "booster", l.Parts), new("manifold", "sustainer",
                l.Parts) })],
    };

    [Benchmark]
    public PadNetworkResult WithoutHeat() => Plain.Fill(UnitsNet.Duration.FromSeconds(120));

    [Benchmark]
    public PadNetworkResult HeatToBothWalls() => WithWalls.Fill(UnitsNet.Duration.FromSeconds(120));

    [Benchmark]
    public PadNetworkResult RealGas() => RealWithWalls.Fill(UnitsNet.Duration.FromSeconds(120));

    [Benchmark]
    public PadNetworkResult Manifold() => ThroughJunction.Fill(UnitsNet.Duration.FromSeconds(120));
}
