using NotebookKit.Quantities;

namespace NotebookKit.Filling.Networks;

/// <summary>What may come to stand in every part of a network while its regulators work.</summary>
internal static class NetworkRatings
{
    public static IReadOnlyList<PartRating> Of(PadNetwork pad, Func<string, GaugePressure> seenAt)
    {
        var stands = pad.Nodes.ToDictionary(n => n.Name, n => n switch
        {
            CylinderNode c => c.Cylinder.Pressure, SupplyNode s => s.Pressure, VesselNode v => v.Start, _ => GaugePressure.Zero,
        });
        // A pressure goes through every line once a round; a tree has no more rounds than lines.
        for (var round = 0; round < pad.Links.Count; round++)
        {
            foreach (var link in pad.Links)
            {
                stands[link.To] = Higher(stands[link.To], pad.Nodes.First(n => n.Name == link.To) is OutsideNode ? GaugePressure.Zero
                    : Behind(link, stands[link.From]));
                if (!link.IsOneWay) stands[link.From] = Higher(stands[link.From], stands[link.To]);
            }
        }

        return
        [
            .. pad.Nodes.Where(n => n.IsPart).Select(n =>
                new PartRating(n.Name, n.RatedTo, n.ProvedOn, stands[n.Name], seenAt(n.Name))),
            .. pad.Links.SelectMany(link => Parts(link, stands[link.From], stands[link.To], seenAt(link.From), seenAt(link.To))),
        ];
    }

    private static IEnumerable<PartRating> Parts(PadLink link, GaugePressure from, GaugePressure to, GaugePressure seenFrom,
        GaugePressure seenTo)
    {
        var (here, seen) = (from, seenFrom);
        for (var i = 0; i < link.Parts.Count; i++)
        {
            var part = link.Parts[i];
            // What lies behind reaches back to here unless a part in between holds it.
            var open = !link.Parts.Skip(i).Any(p => p is CheckValvePart or RegulatorPart or ReliefPart) || part is CheckValvePart;
            var (stands, shown) = (open ? Higher(here, to) : here, open ? Higher(seen, seenTo) : seen);
            yield return new($"{part.Name} ({link.Name})", part.RatedTo, part.ProvedOn, stands, shown);
            if (part is not RegulatorPart regulator) continue;
            (here, seen) = (Lower(here, regulator.Most), Lower(seen, regulator.Most));
        }
    }

    private static GaugePressure Behind(PadLink link, GaugePressure from) =>
        link.Parts.OfType<RegulatorPart>().Aggregate(from, (p, regulator) => Lower(p, regulator.Most));

    private static GaugePressure Higher(GaugePressure a, GaugePressure b) => a > b ? a : b;

    private static GaugePressure Lower(GaugePressure a, GaugePressure b) => a < b ? a : b;
}
