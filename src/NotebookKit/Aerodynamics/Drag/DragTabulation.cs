using NotebookKit.Aerodynamics.Airflow;
using NotebookKit.Aerodynamics.Bodies;

namespace NotebookKit.Aerodynamics.Drag;

/// <summary>Tables of a body's drag in the air at the pad, with what goes by the Reynolds number kept apart.</summary>
internal sealed class DragTabulation
{
    // At rest the friction laws diverge while the drag vanishes: the coefficient is held at that of a walking pace, and at this.
    private const double SlowestMps = 1;
    private const double MostCoefficient = 5;

    private readonly FinnedBody _body;
    private readonly AirConditions _air;
    private readonly DragAssumptions _assumptions;
    private readonly DragGeometry _geometry;
    private readonly (DragBuildUp Late, DragBuildUp Early)[] _ends;
    private readonly bool _baseGoesByFriction;

    public DragTabulation(FinnedBody body, AirConditions air, DragAssumptions assumptions, double jetM2)
    {
        (_body, _air, _assumptions) = (body, air, assumptions);
        _geometry = new DragGeometry(body, assumptions);
        _ends = new (DragBuildUp, DragBuildUp)[MachTable.Intervals + 1];
        for (var i = 0; i < _ends.Length; i++) _ends[i] = BuiltUp(i * MachTable.Step, jetM2);
        _baseGoesByFriction = GoesByFriction(_ends);
    }

    private DragTabulation(DragTabulation other, double jetM2)
    {
        (_body, _air, _assumptions, _geometry) = (other._body, other._air, other._assumptions, other._geometry);
        _ends = new (DragBuildUp, DragBuildUp)[other._ends.Length];
        for (var i = 0; i < _ends.Length; i++)
        {
            ref readonly var ends = ref other._ends[i];
            var mach = i * MachTable.Step;
            _ends[i] = (ends.Late.WithJet(_geometry, mach, jetM2), ends.Early.WithJet(_geometry, mach, jetM2));
        }

        _baseGoesByFriction = GoesByFriction(_ends);
    }

    /// <summary>The same while a jet fills another area of the base [m²].</summary>
    public DragTabulation WithJet(double jetM2) => new(this, jetM2);

    /// <summary>The curve at a place in the band: 0 its low end, 1 its high end.</summary>
    public DragCurve Curve(string name, double weight)
    {
        var (rest, friction) = (new double[_ends.Length], new double[_ends.Length]);
        for (var i = 0; i < _ends.Length; i++)
        {
            var mach = i * MachTable.Step;
            friction[i] = ByReynolds(mach, weight);
            rest[i] = Whole(mach, weight) - (Compressibility(mach) * friction[i]);
        }

        return DragCurve.From(name, _body.ReferenceArea, MachTable.Of(rest),
            new FrictionTable(MachTable.Of(friction), _assumptions.CompressibleFriction ? DragBuildUp.FrictionFall : 0, _air));
    }

    // The lower of the two base forms goes by friction, and with it by the air, where it is the lower one at every speed. Where they
    // cross, on short bodies, the base stays as it is at the pad.
    private static bool GoesByFriction((DragBuildUp Late, DragBuildUp Early)[] ends) =>
        Array.TrueForAll(ends, e => Math.Max(e.Late.BaseByFriction, e.Early.BaseByFriction) <= e.Early.BaseByMach);

    private double Whole(double mach, double weight)
    {
        var (late, early) = Ends(mach);
        var low = DragBuildUp.Low(late, early, _assumptions.ProtuberanceDrag);
        return Math.Min(MostCoefficient, low + (weight * (DragBuildUp.High(late, early, _assumptions.ProtuberanceDrag) - low)));
    }

    /// <summary>What goes by the Reynolds number, without its fall with Mach number.</summary>
    private double ByReynolds(double mach, double weight)
    {
        var (late, early) = Ends(mach);
        var low = Math.Min(late.Friction, early.Friction);
        var friction = low + (weight * (Math.Max(late.Friction, early.Friction) - low));
        var lowerBase = _baseGoesByFriction ? (1 - weight) * Math.Min(late.BaseByFriction, early.BaseByFriction) : 0;
        return (friction / Compressibility(mach)) + (lowerBase * Math.Sqrt(Compressibility(mach)));
    }

    private double Compressibility(double mach) => _assumptions.CompressibleFriction ? 1 - (DragBuildUp.FrictionFall * mach * mach) : 1;

    // All curves are of one build-up, made once at each Mach number of the tables.
    private ref readonly (DragBuildUp Late, DragBuildUp Early) Ends(double mach) => ref _ends[(int)Math.Round(mach / MachTable.Step)];

    private (DragBuildUp Late, DragBuildUp Early) BuiltUp(double mach, double jetM2)
    {
        var perMetre = _air.DensityKgM3 * Math.Max(SlowestMps, mach * _air.SoundMps) / _air.ViscosityPaS;
        return (
            new(_geometry, _assumptions, mach, perMetre, jetM2, late: true),
            new(_geometry, _assumptions, mach, perMetre, jetM2, late: false));
    }
}
