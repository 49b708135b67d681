using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Fins;

namespace NotebookKit.Aerodynamics.NormalForces;

/// <summary>The component method of one body as closed forms in SI numbers, worked out once and read without allocation.</summary>
internal sealed class AerodynamicNumbers
{
    private readonly FinNumbers[] _fins;
    private readonly double _slope, _slopeStation, _slopeStationSquare;

    public AerodynamicNumbers(FinnedBody body)
    {
        ReferenceM2 = body.ReferenceM2;
        ReferenceM = body.ReferenceM;
        foreach (var (part, fore) in body.Placed())
        {
            if (Math.Abs(part.AftM - part.ForeM) < 1e-9) continue;
            var (slope, fromFore) = NormalForceModel.Body(part, ReferenceM2);
            _slope += slope;
            _slopeStation += slope * (fore + fromFore);
            _slopeStationSquare += slope * (fore + fromFore) * (fore + fromFore);
        }

        _fins = body.Fins.Select(f => new FinNumbers(body, f)).ToArray();
        CrossflowM2 = body.CrossFactor(null) * Crossflow.LongCylinder * body.PlanformM2;
        CrossflowCentreM = body.PlanformCentroidM;
    }

    public double ReferenceM2 { get; }

    public double ReferenceM { get; }

    /// <summary>Drag area of the body across the flow, finite length allowed for [m²]: its force is q sin²α times this.</summary>
    public double CrossflowM2 { get; }

    /// <summary>Where that force acts, aft of the nose tip [m].</summary>
    public double CrossflowCentreM { get; }

    /// <summary>The sums at a Mach number; beyond 0.9 those of 0.9, so that a trial step may overshoot.</summary>
    public AerodynamicSums At(double mach)
    {
        var held = Math.Min(mach, Ranges.MaximumMach);
        var beta = Math.Sqrt(1 - (held * held));
        var (slope, station, square, forcing, damping) = (_slope, _slopeStation, _slopeStationSquare, 0.0, 0.0);
        foreach (ref readonly var fin in _fins.AsSpan())
        {
            var stretch = beta * fin.Stretch;
            var panel = fin.PanelFactor / (2 + Math.Sqrt(4 + (stretch * stretch)));
            var set = fin.SetFactor * panel;
            slope += set;
            station += set * fin.CentreM;
            square += set * fin.CentreM * fin.CentreM;
            forcing += fin.ForcingFactor * panel;
            damping -= fin.DampingFactor * panel;
        }

        return new AerodynamicSums(slope, station, square, forcing, damping);
    }

    private readonly struct FinNumbers
    {
        public FinNumbers(FinnedBody body, FinSet set)
        {
            var fin = set.Planform.Integrals;
            var radius = body.RadiusUnderM(set);
            PanelFactor = 2 * Math.PI * fin.AspectRatio * fin.AreaM2 / body.ReferenceM2;
            Stretch = fin.AspectRatio / fin.CosMidSweep;
            SetFactor = set.Count / 2.0 * NormalForceModel.Interference(set.Count, radius, fin.SpanM);
            CentreM = set.LeadingEdgeAt.Meters + fin.CentreM;
            ForcingFactor = set.Count * (fin.MeanChordOutM + radius) / body.ReferenceM * set.Cant.Radians;
            DampingFactor = 2 * set.Count * FinIntegrals.SecondMoment(set.Planform.Strips,
                radius) / (fin.AreaM2 * body.ReferenceM * body.ReferenceM);
        }

        public double PanelFactor { get; }

        public double Stretch { get; }

        public double SetFactor { get; }

        public double CentreM { get; }

        public double ForcingFactor { get; }

        public double DampingFactor { get; }
    }
}
