namespace NotebookKit.Vessels.Laminates;

/// <summary>
/// Follows a tube wall from no load to its end: resin cracks, the liner yields, fibres break one family at a time. Plain SI, its
/// arrays reused from run to run, no allocation.
/// </summary>
/// <remarks>
/// <para>
/// The wall is a membrane with uniform strain (a closed tube can't curl). Between two events it is linear in Green's strain and the
/// second Piola-Kirchhoff stress S = A·E, exact for fibres that turn. Pressure in a closed tube does work on its volume, which gives
/// S_hoop = p·R·λx and S_axial = p·R·λy²/(2·λx); with small strain these are p·R and p·R/2. Fibres alone then balance only where the
/// turned angle has tan² = 2: an off-netting wall with cracked resin turns towards it, held by what is left of the resin and by the liner.
/// </para>
/// <para>
/// Source: ply by ply degradation as Jones, Mechanics of Composite Materials, 2nd ed. 1999, §4.5; netting angle as Evans and Gibson,
/// Proc. R. Soc. A 458, 2002; the finite-strain balance is derived here from the energy of a closed tube.
/// </para>
/// </remarks>
internal sealed partial class WallEngine
{
    /// <summary>Green's strain past which nothing is followed further; small strains know no such end.</summary>
    private const double LargestGreenStrain = 1.0;
    private const double LargestSmallStrain = 1e3;

    private readonly bool[] _cracked;
    private readonly bool[] _broken;
    private readonly PlaneStiffness[] _local;
    private readonly WallLayer[] _layers;
    private readonly (double C2, double S2, double SC2)[] _turn;
    private int _count;
    private LinerLayer _liner;
    private WallLoad _load;
    private FailureCriterion _criterion;
    private double _residual;
    private bool _linerYielded;
    private bool _linerTorn;
    private double _a11, _a12, _a22;
    private bool _hoopLeads;
    private double _plane, _planeForce, _linerForce;
    // Leading strain that the wall was known to hold before its last event, and whether that strain was around.
    private double _heldTo;
    private bool _heldHoop;

    public WallEngine(int capacity)
    {
        _cracked = new bool[capacity];
        _broken = new bool[capacity];
        _local = new PlaneStiffness[capacity];
        _layers = new WallLayer[capacity];
        _turn = new (double, double, double)[capacity];
    }

    /// <summary>Takes a wall and makes it whole.</summary>
    public void Set(ReadOnlySpan<WallLayer> layers, in LinerLayer liner, in WallLoad load, FailureCriterion criterion, double residual)
    {
        layers.CopyTo(_layers);
        _count = layers.Length;
        _liner = liner;
        _load = load;
        _criterion = criterion;
        _residual = residual;
        _plane = liner.Modulus / (1 - liner.PoissonRatio * liner.PoissonRatio);
        _planeForce = _plane * liner.Thickness;
        _linerForce = liner.YieldStrength * liner.Thickness;
        for (var i = 0; i < _count; i++)
        {
            var (sine, cosine) = Math.SinCos(_layers[i].Angle);
            _turn[i] = (cosine * cosine, sine * sine, 2 * sine * cosine);
        }

        Reset();
    }

    /// <summary>Layers of the wall in hand.</summary>
    public ReadOnlySpan<WallLayer> Layers => _layers.AsSpan(0, _count);

    /// <summary>Whether a layer's resin has cracked on the way.</summary>
    public bool IsCracked(int layer) => _cracked[layer];

    /// <summary>Follows the wall to its end.</summary>
    /// <param name="trace">Takes every event in order; none where not wanted.</param>
    /// <param name="beyond">A wall that can't come above this load isn't followed to its end [N/m].</param>
    public WallOutcome Run(List<WallEvent>? trace = null, double beyond = 0)
    {
        Reset();
        var outcome = new WallOutcome
        {
            FirstPlyFailureLineLoad = double.NaN, FirstPlyFailurePly = -1, Mode = FailureMode.Mechanism, Ply = -1,
        };
        var reached = 0.0;
        var lost = false;
        var broken = false;
        for (var pass = 0; pass < 3 * _count + 4; pass++)
        {
            var (state, load, mode, layer) = NextEvent();
            // Once fibres have broken, what is left counts for no more than its fibres as they lie.
            if (broken) load = Math.Min(load, NettingOfTheRest());
            load = Math.Max(reached, load);
            var ply = layer < 0 ? -1 : _layers[layer].Ply;
            trace?.Add(new WallEvent(load, mode, ply));
            if (mode == FailureMode.Matrix && outcome.FirstPlyFailurePly < 0)
            {
                outcome.FirstPlyFailureLineLoad = load;
                outcome.FirstPlyFailurePly = ply;
            }

            // The burst is the first loss of fibre or liner that no later state outlives.
            var loses = mode is not (FailureMode.Matrix or FailureMode.LinerYield);
            broken |= mode is FailureMode.FibreTension or FailureMode.FibreCompression;
            if (load > reached) lost = false;
            if (loses && !lost)
            {
                lost = true;
                outcome.Mode = mode;
                outcome.Ply = ply;
                outcome.State = state;
                outcome.ResinStrain = MaximumResinStrain(state);
                outcome.LinerShare = state.LinerShare;
            }

            reached = load;
            if (Apply(mode, layer)) break;
            if (broken && beyond > 0 && Math.Max(reached, NettingOfTheRest()) <= beyond) break;
        }

        outcome.BurstLineLoad = reached;
        return outcome;
    }

    /// <summary>Strain of the sound wall at a load by small-strain theory; the published closed-tube formulae.</summary>
    public WallState Sound(double lineLoad)
    {
        Reset();
        var determinant = _a11 * _a22 - _a12 * _a12;
        var (axial, hoop) = (lineLoad * _load.Axial, lineLoad * _load.Hoop);
        var x = (_a22 * axial - _a12 * hoop) / determinant;
        var y = (_a11 * hoop - _a12 * axial) / determinant;
        var (along, around) = ElasticLiner(x, y);
        return new(x, y, true, lineLoad, Share(along, axial, around, hoop));
    }

    /// <summary>State at a load, with all damage that comes before it; false where the wall doesn't reach it.</summary>
    public bool TryHold(double lineLoad, out WallState state)
    {
        Reset();
        for (var pass = 0; pass < 3 * _count + 4; pass++)
        {
            var (next, load, mode, layer) = NextEvent();
            if (load >= lineLoad)
            {
                state = AtLoad(lineLoad, next);
                return true;
            }

            if (Apply(mode, layer)) break;
        }

        state = default;
        return false;
    }

    /// <summary>Stress of a layer in its own axes at a state, with the damage the wall now has [Pa].</summary>
    public (double Along, double Across, double Shear) Stress(int layer, in WallState state)
    {
        var (c2, s2, sc2) = _turn[layer];
        double x = state.X, y = state.Y;
        var e1 = c2 * x + s2 * y;
        var e2 = s2 * x + c2 * y;
        ref var q = ref _local[layer];
        return (q.S11 * e1 + q.S12 * e2, q.S12 * e1 + q.S22 * e2, q.S66 * sc2 * (y - x));
    }

    private void Reset()
    {
        Array.Clear(_cracked);
        Array.Clear(_broken);
        _linerYielded = false;
        _linerTorn = _liner.Thickness <= 0;
        _heldTo = 0;
        Assemble();
    }

    /// <summary>Marks what an event damaged; true where nothing is left to carry more.</summary>
    private bool Apply(FailureMode mode, int layer)
    {
        switch (mode)
        {
            case FailureMode.Mechanism: return true;
            case FailureMode.LinerYield: _linerYielded = true; break;
            case FailureMode.Matrix: _cracked[layer] = true; break;
            case FailureMode.LinerTear:
                _linerTorn = true;
                // With every ply cracked nothing keeps the water in.
                if (!AnySound()) return true;
                break;
            default: _broken[layer] = true; break;
        }

        if (_count > 0 && AllBroken()) return true;
        Assemble();
        return false;
    }

    private double NettingOfTheRest()
    {
        double around = 0, along = 0;
        for (var i = 0; i < _count; i++)
        {
            if (_broken[i]) continue;
            var force = _layers[i].NettingStrength * _layers[i].Thickness;
            around += force * _turn[i].S2;
            along += force * _turn[i].C2;
        }

        return Math.Min(
            _load.Hoop > 0 ? around / _load.Hoop : double.PositiveInfinity,
                _load.Axial > 0 ? along / _load.Axial : double.PositiveInfinity);
    }

    private bool AnySound()
    {
        for (var i = 0; i < _count; i++)
            if (!_cracked[i] && !_broken[i]) return true;
        return false;
    }

    private bool AllBroken()
    {
        for (var i = 0; i < _count; i++)
            if (!_broken[i]) return false;
        return true;
    }

    private void Assemble()
    {
        double a11 = 0, a12 = 0, a22 = 0;
        for (var i = 0; i < _count; i++)
        {
            ref var l = ref _layers[i];
            if (_broken[i])
            {
                _local[i] = default;
                continue;
            }

            var f = _cracked[i] ? _residual : 1;
            var q = PlaneStiffness.Of(l.E1, l.E2 * f, l.G12 * f, l.Nu12 * f);
            _local[i] = q;
            var (c2, s2, sc2) = _turn[i];
            var mixed = 0.5 * sc2 * sc2 * (q.S12 + 2 * q.S66);
            a11 += (q.S11 * c2 * c2 + q.S22 * s2 * s2 + mixed) * l.Thickness;
            a22 += (q.S11 * s2 * s2 + q.S22 * c2 * c2 + mixed) * l.Thickness;
            a12 += (0.25 * sc2 * sc2 * (q.S11 + q.S22 - 4 * q.S66) + q.S12 * (c2 * c2 + s2 * s2)) * l.Thickness;
        }

        if (!_linerTorn && !_linerYielded)
        {
            a11 += _planeForce;
            a22 += _planeForce;
            a12 += _planeForce * _liner.PoissonRatio;
        }

        (_a11, _a12, _a22) = (a11, a12, a22);
        // The strain that grows under load leads: around for a wall that fattens, along for one that grows longer.
        _hoopLeads = a11 * _load.Hoop - a12 * _load.Axial >= a22 * _load.Axial - a12 * _load.Hoop;
    }

    /// <summary>The next thing that gives way as the wall in its present state is strained, and the largest load on the way
    /// there.</summary>
    private (WallState State, double Load, FailureMode Mode, int Layer) NextEvent()
    {
        const double first = 2e-4, factor = 1.5;
        double low = 0, lowUse = 0, high = first, peak = 0;
        var peakState = default(WallState);
        WallState state;
        FailureMode mode;
        int layer;
        double use;
        // What the wall held before its last event it most often holds after it: the search goes on from there.
        var skipped = _heldTo > 0 && _heldHoop == _hoopLeads;
        if (skipped) high = _heldTo;
        while (true)
        {
            state = Balance(high);
            use = Use(state, out mode, out layer);
            if (use >= 1)
            {
                if (!skipped || low > 0) break;
                (skipped, high) = (false, first);
                continue;
            }

            // A wall may pass a highest load and snap to a state further on, where turned fibres lock.
            if (state.LineLoad > peak) (peak, peakState) = (state.LineLoad, state);
            (low, lowUse) = (high, use);
            high *= factor;
            if (high <= (_load.FollowsShape ? LargestGreenStrain : LargestSmallStrain)) continue;
            if (!skipped) return (peakState, peak, FailureMode.Mechanism, -1);
            skipped = false;
            (low, lowUse, high, peak) = (0, 0, first, 0);
        }

        (_heldTo, _heldHoop) = (low, _hoopLeads);

        // Regula falsi (Illinois): the use is nearly linear in the strain, so a few passes do.
        double lowValue = lowUse - 1, highValue = use - 1;
        var side = 0;
        for (var pass = 0; pass < 60 && highValue > 1e-10 && high - low > 1e-14; pass++)
        {
            var middle = low + (high - low) * lowValue / (lowValue - highValue);
            var trial = Balance(middle);
            var value = Use(trial, out var trialMode, out var trialLayer) - 1;
            if (value >= 0)
            {
                (high, highValue, state, mode, layer) = (middle, value, trial, trialMode, trialLayer);
                if (side == 1) lowValue *= 0.5;
                side = 1;
            }
            else
            {
                (low, lowValue) = (middle, value);
                if (side == -1) highValue *= 0.5;
                side = -1;
                if (value > -1e-10)
                {
                    Use(trial, out mode, out layer);
                    state = trial;
                    break;
                }
            }
        }

        return (state, Math.Max(peak, state.LineLoad), mode, layer);
    }

    private WallState AtLoad(double lineLoad, in WallState above)
    {
        // By halving: the innermost loop of every sampled burst, and the state handed back has to be one that bears the load.
        double low = 0, high = _hoopLeads ? above.Y : above.X;
        var state = above;
        for (var pass = 0; pass < 60 && high - low > 1e-13; pass++)
        {
            var middle = 0.5 * (low + high);
            var trial = Balance(middle);
            if (trial.LineLoad >= lineLoad) (high, state) = (middle, trial);
            else low = middle;
        }

        return state;
    }

    /// <summary>Largest use of any strength in the wall, and whose it is.</summary>
    private double Use(in WallState state, out FailureMode mode, out int layer)
    {
        var largest = double.NegativeInfinity;
        mode = FailureMode.Mechanism;
        layer = -1;
        for (var i = 0; i < _count; i++)
        {
            if (_broken[i]) continue;
            var (s1, s2, t) = Stress(i, state);
            ref readonly var strength = ref _layers[i].Strength;
            if (_criterion != FailureCriterion.MaximumStress)
            {
                var any = Utilisation.Of(_criterion, strength, s1, s2, t, !_cracked[i]);
                if (any.Value > largest) (largest, mode, layer) = (any.Value, any.Mode, i);
                continue;
            }

            // The same as Utilisation says for the largest stress, written out: the innermost loop of every sampled burst.
            var fibre = s1 >= 0 ? s1 / strength.Xt : -s1 / strength.Xc;
            if (fibre > largest)
                (largest, mode, layer) = (fibre, s1 >= 0 ? FailureMode.FibreTension : FailureMode.FibreCompression, i);
            if (_cracked[i]) continue;
            var across = s2 >= 0 ? s2 / strength.Yt : -s2 / strength.Yc;
            var shear = Math.Abs(t) / strength.S;
            var matrix = across > shear ? across : shear;
            if (matrix > largest) (largest, mode, layer) = (matrix, FailureMode.Matrix, i);
        }

        if (_linerTorn) return largest;
        var strain = Math.Max(state.Axial, state.Hoop) / _liner.UsableStrain;
        if (strain > largest) (largest, mode, layer) = (strain, FailureMode.LinerTear, -1);
        if (_linerYielded) return largest;
        var sx = _plane * (state.X + _liner.PoissonRatio * state.Y);
        var sy = _plane * (state.Y + _liner.PoissonRatio * state.X);
        var yield = Math.Sqrt(sx * sx - sx * sy + sy * sy) / _liner.YieldStrength;
        if (yield > largest) (largest, mode, layer) = (yield, FailureMode.LinerYield, -1);
        return largest;
    }
}
