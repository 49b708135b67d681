using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Aerodynamics.Fins;
using NotebookKit.Aerodynamics.NormalForces;
using NotebookKit.Numerics.Space;

namespace NotebookKit.Flight.Motion;

/// <summary>
/// A finned body as a six-degree-of-freedom flight reads it: slopes against Mach number and strips for the cross flow, prepared once, read
/// without allocating. Source: the component method of <see cref="FinnedBody"/>; strip theory for roll.
/// </summary>
internal sealed class AeroTable
{
    private const int Intervals = 36, Columns = 6, SlicesPerPart = 4;

    private readonly double[] _values = new double[(Intervals + 1) * Columns];
    private readonly double[] _slopes = new double[(Intervals + 1) * Columns];
    private readonly double _step = DragCurve.MaximumMach / Intervals;

    private readonly double[] _stripStationM;
    private readonly double[] _stripDragM2;

    public AeroTable(FinnedBody body)
    {
        var parts = body.Placed().Where(p => Math.Abs(p.Part.AftM - p.Part.ForeM) >= 1e-9)
            .Select(p => (NormalForceModel.Body(p.Part, body.ReferenceM2), p.ForeM)).ToArray();
        var fins = body.Fins.Select(f => (Set: f, Fin: f.Planform.Integrals, Radius: body.RadiusUnderM(f))).ToArray();
        for (var i = 0; i <= Intervals; i++)
        {
            var row = _values.AsSpan(i * Columns, Columns);
            var mach = i * _step;
            foreach (var ((slope, fromFore), fore) in parts) Add(row, slope * body.ReferenceM2, fore + fromFore);
            foreach (var (set, fin, radius) in fins)
            {
                var panel = NormalForceModel.PanelSlope(fin, body.ReferenceM2, mach) * body.ReferenceM2;
                Add(row, NormalForceModel.SetSlope(set.Count, fin, radius, body.ReferenceM2, mach) * body.ReferenceM2,
                    set.LeadingEdgeAt.Meters + fin.CentreM);
                var forcing = set.Count * panel * (fin.MeanChordOutM + radius);
                row[3] += forcing;
                row[4] += forcing * set.Cant.Radians;
                // Each strip c dy at radius r meets the flow at an angle p r / V: damping − n a ∫ c r² dy.
                row[5] -= set.Count * panel / fin.AreaM2 * FinIntegrals.SecondMoment(set.Planform.Strips, radius);
            }
        }

        for (var c = 0; c < Columns; c++)
        {
            // Even in Mach number, hence flat at rest; at the other end the parabola through the last three.
            for (var i = 1; i < Intervals; i++) _slopes[(i * Columns) + c] = (Value(i + 1, c) - Value(i - 1, c)) / 2;
            _slopes[(Intervals * Columns) + c] = ((3 * Value(Intervals, c)) - (4 * Value(Intervals - 1, c)) + Value(Intervals - 2, c)) / 2;
        }

        (_stripStationM, _stripDragM2) = Strips(body);
    }

    /// <summary>Coefficients at a Mach number; the last ones beyond the table, where a flight is refused.</summary>
    public AeroCoefficients At(double mach)
    {
        var place = Math.Min(mach, DragCurve.MaximumMach) / _step;
        var i = Math.Min((int)place, Intervals - 1);
        var u = place - i;
        var at = i * Columns;
        return new(Read(at, u), Read(at + 1, u), Read(at + 2, u), Read(at + 3, u), Read(at + 4, u), Read(at + 5, u));
    }

    /// <summary>Adds the force and moment of the body's cross flow: each strip has the drag of a cylinder at its own sideways
    /// speed.</summary>
    public void AddCrossFlow(double densityKgM3, in Vector throughAir, in Vector rates, double centreM, ref double sideN, ref double downN,
        ref double pitchNm, ref double yawNm)
    {
        for (var i = 0; i < _stripStationM.Length; i++)
        {
            var aft = _stripStationM[i] - centreM;
            var side = throughAir.Y - (rates.Z * aft);
            var down = throughAir.Z + (rates.Y * aft);
            var push = -0.5 * densityKgM3 * _stripDragM2[i] * Math.Sqrt((side * side) + (down * down));
            sideN += push * side;
            downN += push * down;
            pitchNm += aft * push * down;
            yawNm -= aft * push * side;
        }
    }

    private double Value(int row, int column) => _values[(row * Columns) + column];

    private static void Add(Span<double> row, double slopeM2, double stationM)
    {
        row[0] += slopeM2;
        row[1] += slopeM2 * stationM;
        row[2] += slopeM2 * stationM * stationM;
    }

    private static (double[] Stations, double[] Drags) Strips(FinnedBody body)
    {
        var factor = body.CrossFactor(null) * Crossflow.LongCylinder;
        // Two points a slice: exact for the area and the centroid of any straight wall.
        var offset = 0.5 / Math.Sqrt(3);
        var (stations, drags) = (new List<double>(), new List<double>());
        foreach (var (part, fore) in body.Placed())
        {
            var length = part.LengthM / SlicesPerPart;
            for (var s = 0; s < SlicesPerPart; s++)
            {
                foreach (var at in new[] { (s + 0.5 - offset) * length, (s + 0.5 + offset) * length })
                {
                    stations.Add(fore + at);
                    drags.Add(factor * part.DiameterAtM(at) * length / 2);
                }
            }
        }

        return ([.. stations], [.. drags]);
    }

    private double Read(int at, double u)
    {
        var (v0, v1, s0, s1) = (_values[at], _values[at + Columns], _slopes[at], _slopes[at + Columns]);
        var d = v1 - v0;
        return v0 + (u * (s0 + (u * ((3 * d) - (2 * s0) - s1 + (u * (s0 + s1 - (2 * d)))))));
    }
}
