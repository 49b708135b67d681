using NotebookKit.Aerodynamics.Fins;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>What the drag build-up needs of a set of fins, in SI numbers.</summary>
internal readonly struct FinGeometry
{
    public FinGeometry(FinSet fins, DragAssumptions assumptions)
    {
        var fin = fins.Planform.Integrals;
        Name = fins.Name;
        MeanChordM = fin.MeanChordM;
        WettedM2 = 2 * fins.Count * fin.AreaM2;
        EdgeM2 = fins.Count * fin.SpanM * fins.Thickness.Meters;
        Form = FormFactor.Plate(Math.Min(0.25, fins.Thickness.Meters / fin.MeanChordM));
        Rough = assumptions.Roughness.Meters > 0 ? Friction.RoughCore(Math.Max(100, MeanChordM / assumptions.Roughness.Meters)) : 0;
        LeadSweepSquare = fin.CosLeadSweep * fin.CosLeadSweep;
        Leading = fins.LeadingEdge;
        Trailing = fins.TrailingEdge;
        var root = fins.Planform.RootLength.Meters;
        var ratio = fins.Thickness.Meters / root;
        // Hoerner ch. VIII, a wing against a wall, on root chord squared; never below zero.
        JunctionM2 = fins.Count * root * root * Math.Max(0, (0.8 * ratio * ratio * ratio) - 0.0003);
    }

    public string Name { get; }

    public double MeanChordM { get; }

    public double WettedM2 { get; }

    public double EdgeM2 { get; }

    public double Form { get; }

    public double Rough { get; }

    public double LeadSweepSquare { get; }

    public FinEdge Leading { get; }

    public FinEdge Trailing { get; }

    public double JunctionM2 { get; }
}
