using NotebookKit.Aerodynamics.Bodies;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>What the drag build-up needs of a shape, worked out once, in SI numbers.</summary>
internal sealed class DragGeometry
{
    private readonly FinGeometry[] _fins;

    public DragGeometry(FinnedBody body, DragAssumptions assumptions)
    {
        ReferenceM2 = body.ReferenceM2;
        LengthM = body.LengthM;
        WettedM2 = body.Parts.Sum(p => p.WettedM2);
        BaseM = body.BaseM;
        BaseM2 = BodyPart.Circle(body.BaseM);
        var widest = body.Parts.Max(p => p.AftM);
        BodyForm = FormFactor.Body(Math.Max(2, LengthM / widest), assumptions.BodyForm);
        Rough = assumptions.Roughness.Meters > 0 ? Friction.RoughCore(Math.Max(100, LengthM / assumptions.Roughness.Meters)) : 0;
        ConeM2 = body.Parts.Where(p => p.AftM > p.ForeM).Sum(p => (p.AftAreaM2 - p.ForeAreaM2) * Math.Pow(Math.Sin(p.WallAngle), 2));
        BoatTailM2 = body.Parts.Where(p => p.AftM < p.ForeM).Sum(p => (p.ForeAreaM2 - p.AftAreaM2) * Separation(p.WallAngle));
        _fins = body.Fins.Select(f => new FinGeometry(f, assumptions)).ToArray();
    }

    public double ReferenceM2 { get; }

    public double LengthM { get; }

    public double WettedM2 { get; }

    public double BaseM { get; }

    public double BaseM2 { get; }

    public double BodyForm { get; }

    public double Rough { get; }

    /// <summary>Frontal area of widening parts times sin² of their wall angle where they end [m²].</summary>
    public double ConeM2 { get; }

    /// <summary>Annulus of narrowing parts times the share of it that lies in separated flow at worst [m²].</summary>
    public double BoatTailM2 { get; }

    public ReadOnlySpan<FinGeometry> Fins => _fins;

    // Flow stays on a boat-tail of some 5° and has left one of 20°: common practice, used for the high end of the band alone.
    private static double Separation(double wallAngle) => Math.Clamp(((wallAngle * 180 / Math.PI) - 5) / 15, 0, 1);
}
