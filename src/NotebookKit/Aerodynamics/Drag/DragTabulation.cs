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
    private readonly double _jetM2;
    private readonly (DragBuildUp Late, DragBuildUp Early)[] _ends;
    private readonly bool _baseGoesByFriction;

    public DragTabulation(FinnedBody body, AirConditions air, DragAssumptions assumptions, double jetM2)
    {
        (_body, _air, _assumptions, _jetM2) = (body, air, assumptions, jetM2);
        _geometry = new DragGeometry(body, assumptions);

        // The lower of the two base forms goes by friction, and with it by the air, where it is the lower one at every speed. Where they
        // cross, on short bodies, the base stays as it is at the pad.
        _ends = new (DragBuildUp, DragBuildUp)[MachTable.Intervals + 1];
        for (var i = 0; i < _ends.Length; i++) _ends[i] = BuiltUp(i * MachTable.Step);
        _baseGoesByFriction = Array.TrueForAll(_ends,
            e => Math.Max(e.Late.BaseByFriction, e.Early.BaseByFriction) <= e.Early.BaseByMach);
    }

    /// <summary>The curve at a place in the band: 0 its low end, 1 its high end.</summary>
    public DragCurve Curve(string name, double weight)
    {
        var friction = MachTable.From(mach => ByReynolds(mach, weight));
        return DragCurve.From(name, _body.ReferenceArea, mach => Whole(mach, weight) - (Compressibility(mach) * ByReynolds(mach, weight)),
            new FrictionTable(friction, _assumptions.CompressibleFriction ? DragBuildUp.FrictionFall : 0, _air));
    }

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

    private (DragBuildUp Late, DragBuildUp Early) BuiltUp(double mach)
    {
        var perMetre = _air.DensityKgM3 * Math.Max(SlowestMps, mach * _air.SoundMps) / _air.ViscosityPaS;
        return (
            new(_geometry, _assumptions, mach, perMetre, _jetM2, late: true),
            new(_geometry, _assumptions, mach, perMetre, _jetM2, late: false));
    }
}
