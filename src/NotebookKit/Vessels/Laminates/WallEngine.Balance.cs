namespace NotebookKit.Vessels.Laminates;

/// <content>The wall in balance between two events.</content>
internal sealed partial class WallEngine
{
    private (double Axial, double Hoop) ElasticLiner(double x, double y)
    {
        if (_linerTorn) return default;
        return (_planeForce * (x + _liner.PoissonRatio * y), _planeForce * (y + _liner.PoissonRatio * x));
    }

    /// <summary>The larger of the liner's shares of the pull along and around; a plastic liner over a sleeve carries more of the one
    /// along.</summary>
    private static double Share(double linerAxial, double axial, double linerHoop, double hoop) =>
        Math.Max(axial > 0 ? linerAxial / axial : 0, hoop > 0 ? linerHoop / hoop : 0);

    /// <summary>The state in balance at a value of the leading strain.</summary>
    private WallState Balance(double lead)
    {
        if (!_linerTorn && _linerYielded) return YieldedBalance(lead);
        var other = Follow(lead);
        var (x, y) = _hoopLeads ? (other, lead) : (lead, other);
        var (along, around) = ElasticLiner(x, y);
        return State(x, y, 0, 0, along, around);
    }

    /// <summary>
    /// The same with a yielded liner, whose force is its yield stress in the direction of the strain, by deformation theory at constant
    /// volume. The lack of balance rises with the other strain, so a bracketed Newton finds it.
    /// </summary>
    private WallState YieldedBalance(double lead)
    {
        // Past −2 or −1/2 of the leading strain a liner at constant volume would take the load with the wrong sign.
        var low = Math.Max(_hoopLeads ? -1.999 * lead : -0.499 * lead, -0.499);
        var high = lead;
        for (var pass = 0; pass < 40 && Lack(lead, high, out _) < 0; pass++) high = 2 * high + lead;
        var other = Math.Clamp(Follow(lead), low, high);
        for (var pass = 0; pass < 50; pass++)
        {
            var lack = Lack(lead, other, out var slope);
            if (lack > 0) high = other;
            else low = other;
            var next = other - lack / slope;
            if (!(next > low && next < high)) next = 0.5 * (low + high);
            if (Math.Abs(next - other) < 1e-10 * lead) break;
            other = next;
        }

        var (x, y) = _hoopLeads ? (other, lead) : (lead, other);
        var (n1, n2) = YieldedLiner(x, y, out _);
        return State(x, y, n1, n2, n1, n2);
    }

    /// <summary>How far a pair of strains is from balance, and how that changes with the other strain.</summary>
    private double Lack(double lead, double other, out double slope)
    {
        var (x, y) = _hoopLeads ? (other, lead) : (lead, other);
        var (n1, n2) = YieldedLiner(x, y, out var mises);
        var (dx, dy) = (x + y / 2, y + x / 2);
        var force = _linerForce;
        var cube = mises * mises * mises;
        // Derivatives of the liner's force along and around with the other strain.
        double along, around;
        if (_hoopLeads) (along, around) = (force * (1 / mises - 0.75 * dx * dx / cube), force * (0.5 / mises - 0.75 * dx * dy / cube));
        else (along, around) = (force * (0.5 / mises - 0.75 * dx * dy / cube), force * (1 / mises - 0.75 * dy * dy / cube));
        var axial = _a11 * x + _a12 * y + n1;
        var hoop = _a12 * x + _a22 * y + n2;
        var (axialSlope, hoopSlope) = _hoopLeads ? (_a11 + along, _a12 + around) : (_a12 + along, _a22 + around);
        if (!_load.FollowsShape)
        {
            var sign = _hoopLeads ? 1 : -1;
            slope = sign * (axialSlope * _load.Hoop - hoopSlope * _load.Axial);
            return sign * (axial * _load.Hoop - hoop * _load.Axial);
        }

        if (_hoopLeads)
        {
            slope = 2 * axialSlope * (1 + 2 * x) + 4 * axial - hoopSlope * (1 + 2 * y);
            return 2 * axial * (1 + 2 * x) - hoop * (1 + 2 * y);
        }

        slope = hoopSlope * (1 + 2 * y) + 2 * hoop - 2 * axialSlope * (1 + 2 * x);
        return hoop * (1 + 2 * y) - 2 * axial * (1 + 2 * x);
    }

    private (double Axial, double Hoop) YieldedLiner(double x, double y, out double mises)
    {
        var dx = x + y / 2;
        var dy = y + x / 2;
        mises = Math.Sqrt(dx * dx - dx * dy + dy * dy);
        var force = _linerForce;
        return (force * dx / mises, force * dy / mises);
    }

    private WallState State(double x, double y, double n1, double n2, double linerAxial, double linerHoop)
    {
        var axial = _a11 * x + _a12 * y + n1;
        var hoop = _a12 * x + _a22 * y + n2;
        double load;
        if (_load.FollowsShape) load = hoop / Math.Sqrt(1 + 2 * x);
        else load = _load.Hoop >= _load.Axial ? hoop / _load.Hoop : axial / _load.Axial;
        return new(x, y, !_load.FollowsShape, load, Share(linerAxial, axial, linerHoop, hoop));
    }

    /// <summary>The strain that goes with the leading one in balance, a yielded liner left out.</summary>
    private double Follow(double lead)
    {
        var m = 1 + 2 * lead;
        if (_hoopLeads)
        {
            var (k1, k2) = (_a12 * lead, _a22 * lead);
            return _load.FollowsShape
                ? UpperRoot(4 * _a11, 2 * _a11 + 4 * k1 - _a12 * m, 2 * k1 - k2 * m)
                : (k2 * _load.Axial - k1 * _load.Hoop) / (_a11 * _load.Hoop - _a12 * _load.Axial);
        }
        else
        {
            var (k1, k2) = (_a11 * lead, _a12 * lead);
            return _load.FollowsShape
                ? UpperRoot(2 * _a22, _a22 + 2 * k2 - 2 * _a12 * m, k2 - 2 * k1 * m)
                : (k1 * _load.Hoop - k2 * _load.Axial) / (_a22 * _load.Axial - _a12 * _load.Hoop);
        }
    }

    /// <summary>Of two strains in balance the larger one is the wall that hasn't folded.</summary>
    private static double UpperRoot(double a, double b, double c)
    {
        var root = Math.Sqrt(Math.Max(b * b - 4 * a * c, 0));
        return Math.Max(b >= 0 ? -2 * c / (b + root) : (root - b) / (2 * a), -0.499);
    }

    private double MaximumResinStrain(in WallState state)
    {
        var largest = 0.0;
        for (var i = 0; i < _count; i++)
        {
            var (c2, s2, sc2) = _turn[i];
            largest = Math.Max(largest, Math.Max(Math.Abs(s2 * state.X + c2 * state.Y), Math.Abs(sc2 * (state.Y - state.X))));
        }

        return largest;
    }
}
