using NotebookKit.Filling.Balances;
using NotebookKit.Filling.Restrictors;
using NotebookKit.Materials.Fluids;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Filling.Networks;

/// <summary>What is wrong with a network before it is run.</summary>
internal static class NetworkChecks
{
    private const int MostUnknowns = 80;

    public static IReadOnlyList<Finding> Of(PadNetwork pad)
    {
        List<Finding> findings =
        [
            .. pad.Nodes.SelectMany(n => n.Validate()), .. pad.Links.SelectMany(l => l.Validate()), .. GasChecks.FindConstants(pad.Gas),
            .. new[]
            {
                new ValidRange<UnitsNet.Temperature>((-20).Celsius(), 50.Celsius()).Find(
                    pad.Temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeCelsius), "temperature",
                    "Colder fills are not usual; a higher temperature weakens a laminating resin."),
                new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(pad.Ambient, "ambient pressure",
                    "Was a gauge pressure meant?"),
                new ValidRange<double>(1e-12, 1e-4).Find(pad.Tolerance, "error allowed per step", "1e-7 is fine for a pad."),
                Enum.IsDefined(pad.Properties) ? null
                    : FillingFindings.PropertiesOfGasUnknown(pad.Properties.ToString(), Enum.GetNames<GasProperties>()),
                pad.Properties == GasProperties.Real && pad.Gas.Real is null ? FillingFindings.NoEquationOfState(pad.Gas.ToString()) : null,
                pad.Gas.Real is null && pad.Nodes.OfType<VesselNode>().Any(v => v.Heat == FillHeat.Wall && v.Wall?.Film is null)
                    ? FillingFindings.ViscosityAndConductivityUnknown(pad.Gas.ToString()) : null,
            }.OfType<Finding>(),
        ];
        foreach (var twice in pad.Nodes.GroupBy(n => n.Name).Where(g => g.Count() > 1)) findings.Add(FillingFindings.NodeTwice(twice.Key));
        var known = pad.Nodes.Select(n => n.Name).ToHashSet();
        foreach (var link in pad.Links)
        {
            if (new[] { link.From, link.To }.FirstOrDefault(n => !known.Contains(n)) is { } stranger)
                findings.Add(FillingFindings.LinkToNowhere(link.Name, stranger));
        }

        if (findings.Any(f => f.Severity == FindingSeverity.Error)) return findings;
        var wet = Wet(pad);
        findings.AddRange(pad.Links.SelectMany(l => Link(pad, l, wet)));
        if (Loop(pad) is { } loop) findings.Add(FillingFindings.LoopWithoutValve(loop.Name));
        foreach (var vessel in pad.Nodes.OfType<VesselNode>())
        {
            if (!pad.Links.Any(l => l.From == vessel.Name
                || l.To == vessel.Name)) findings.Add(FillingFindings.NodeStandsAlone(vessel.Name));
            // A gauge on the open air reads zero; 1.013 bar is what a barometer reads.
            if (Math.Abs(vessel.Start.Pascals - pad.Ambient.Pascals) < 0.01 * pad.Ambient.Pascals)
                findings.Add(FillingFindings.StartLooksAbsolute(vessel.Name, vessel.Start));
            if (vessel.WaterFraction > UnitsNet.Ratio.Zero && pad.Temperature < 0.Celsius())
                findings.Add(FillingFindings.WaterMayFreeze(pad.Temperature));
        }

        if (NetworkModel.UnknownsOf(pad) > MostUnknowns) findings.Add(FillingFindings.NetworkTooLarge(pad.Nodes.Count, pad.Links.Count));
        return findings;
    }

    // Places that hold water, or that water can come to: out of a port under it, out of a line, through junctions.
    private static HashSet<string> Wet(PadNetwork pad)
    {
        HashSet<string> wet = [.. pad.Nodes.OfType<VesselNode>().Where(v => v.WaterFraction.Value > 0).Select(v => v.Name)];
        for (var count = -1; count < wet.Count;)
        {
            count = wet.Count;
            foreach (var link in pad.Links)
            {
                if (link.WaterInLine is not null || Gives(link.From, link.FromPort)) wet.Add(link.To);
                if (!link.IsOneWay && Gives(link.To, link.ToPort)) wet.Add(link.From);
            }
        }

        return wet;

        bool Gives(string name, PortPosition port) => wet.Contains(name)
            && (port == PortPosition.UnderWater || pad.Nodes.First(n => n.Name == name) is JunctionNode);
    }

    private static IEnumerable<Finding> Link(PadNetwork pad, PadLink link, HashSet<string> wet)
    {
        PadNode from = pad.Nodes.First(n => n.Name == link.From), to = pad.Nodes.First(n => n.Name == link.To);
        foreach (var valve in link.Parts.OfType<ValvePart>())
        {
            var watched = valve.Watches ?? link.To;
            if (valve.ShutsAt is not { } at) continue;
            if (pad.Nodes.FirstOrDefault(n => n.Name == watched) is not VesselNode vessel)
                yield return FillingFindings.ValveWatchesNoVessel(valve.Name, watched);
            else if (at > vessel.Chamber.RatedPressure)
                yield return FillingFindings.TargetAboveRatedPressure(at, vessel.Chamber.RatedPressure);
        }

        var ends = new[] { (Node: from, Port: link.FromPort), (Node: to, Port: link.ToPort) };
        foreach (var (node, port) in ends)
        {
            if (port == PortPosition.NotGiven && node is VesselNode && wet.Contains(node.Name))
                yield return FillingFindings.PositionOfPortNotGiven(link.Name, node.Name);
        }

        if (to is not (OutsideNode or VesselNode)
            && (link.WaterInLine is not null || (link.FromPort == PortPosition.UnderWater && from is VesselNode)))
            yield return to is JunctionNode ? FillingFindings.WaterPassesJunction(link.Name, to.Name)
                : FillingFindings.WaterRunsIntoLine(link.Name, to.Name);
        if (link.ToPort == PortPosition.UnderWater && to is VesselNode && !link.IsOneWay)
            yield return FillingFindings.WaterRunsBackIntoLine(link.Name, to.Name);
        if (from is OutsideNode) yield return FillingFindings.LinkBeginsOutside(link.Name);
        if (to is CylinderNode or SupplyNode && link.IsOneWay) yield return FillingFindings.CheckValvePointsBack(
            link.Parts.First(p => p is CheckValvePart or RegulatorPart or ReliefPart).Name, link.To, link.From);
        if (link.Parts.OfType<RegulatorPart>().FirstOrDefault() is { } regulator && from is CylinderNode cylinder
            && cylinder.Cylinder.Pressure < regulator.Set)
            yield return FillingFindings.CylinderBelowRegulator(cylinder.Name, cylinder.Cylinder.Pressure, regulator.Set);
    }

    // A line that closes a loop of lines that no valve can part.
    private static PadLink? Loop(PadNetwork pad)
    {
        var root = pad.Nodes.ToDictionary(n => n.Name, n => n.Name);
        string Find(string name) => root[name] == name ? name : root[name] = Find(root[name]);
        foreach (var link in pad.Links.Where(l => l.Parts.All(p => p is not (ValvePart or ReliefPart))
            && pad.Nodes.First(n => n.Name == l.To) is not OutsideNode))
        {
            var (a, b) = (Find(link.From), Find(link.To));
            if (a == b) return link;
            root[a] = b;
        }

        return null;
    }
}
