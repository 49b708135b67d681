namespace NotebookKit.Vessels.Laminates;

/// <content>The wall in balance between two events.</content>
internal sealed partial class WallEngine
{
    private double ElasticLinerHoop(double x, double y) => _linerTorn
        ? 0
        : _liner.Modulus / (1 - _liner.PoissonRatio * _liner.PoissonRatio) * (y + _liner.PoissonRatio * x) * _liner.Thickness;

    /// <summary>Force a width of a yielded liner: yield stress in the direction of the strain, by deformation theory at constant volume.</summary>
    private (double Axial, double Hoop) YieldedLiner(double x, double y)
    {
        var dx = x + y / 2;
        var dy = y + x / 2;
        var mises = Math.Sqrt(dx * dx - dx * dy + dy * dy);
        return mises > 0 ? (_liner.YieldStrength * _liner.Thickness * dx / mises, _liner.YieldStrength * _liner.Thickness * dy / mises) : (0, 0);
    }

    /// <summary>The state in balance at a value of the leading strain.</summary>
    private WallState Balance(double lead)
    {
        if (_linerTorn || !_linerYielded)
        {
            var other = Follow(lead, 0, 0);
            var (x, y) = _hoopLeads ? (other, lead) : (lead, other);
            return State(x, y, 0, 0, _linerTorn ? 0 : ElasticLinerHoop(x, y));
        }

        // A yielded liner's force turns with the strain: a few passes settle it.
        double n1 = 0, n2 = 0, otherStrain = 0;
        for (var pass = 0; pass < 4; pass++)
        {
            (n1, n2) = _hoopLeads ? YieldedLiner(otherStrain, lead) : YieldedLiner(lead, otherStrain);
            otherStrain = Follow(lead, n1, n2);
        }

        return _hoopLeads ? State(otherStrain, lead, n1, n2, n2) : State(lead, otherStrain, n1, n2, n2);
    }

    private WallState State(double x, double y, double n1, double n2, double linerHoop)
    {
        var axial = _a11 * x + _a12 * y + n1;
        var hoop = _a12 * x + _a22 * y + n2;
        double load;
        if (_load.FollowsShape) load = hoop / Math.Sqrt(1 + 2 * x);
        else load = _load.Hoop >= _load.Axial ? hoop / _load.Hoop : axial / _load.Axial;
        return new(x, y, !_load.FollowsShape, load, linerHoop);
    }

    /// <summary>The strain that goes with the leading one in balance.</summary>
    private double Follow(double lead, double n1, double n2)
    {
        if (_hoopLeads)
        {
            var k1 = _a12 * lead + n1;
            var k2 = _a22 * lead + n2;
            if (!_load.FollowsShape) return (k2 * _load.Axial - k1 * _load.Hoop) / (_a11 * _load.Hoop - _a12 * _load.Axial);
            var m = 1 + 2 * lead;
            return UpperRoot(4 * _a11, 2 * _a11 + 4 * k1 - _a12 * m, 2 * k1 - k2 * m);
        }
        else
        {
            var k1 = _a11 * lead + n1;
            var k2 = _a12 * lead + n2;
            if (!_load.FollowsShape) return (k1 * _load.Hoop - k2 * _load.Axial) / (_a22 * _load.Axial - _a12 * _load.Hoop);
            var m = 1 + 2 * lead;
            return UpperRoot(2 * _a22, _a22 + 2 * k2 - 2 * _a12 * m, k2 - 2 * k1 * m);
        }
    }

    /// <summary>Of two strains in balance the larger one is the wall that hasn't folded.</summary>
    private static double UpperRoot(double a, double b, double c)
    {
        var root = Math.Sqrt(Math.Max(b * b - 4 * a * c, 0));
        return Math.Max(b >= 0 ? -2 * c / (b + root) : (root - b) / (2 * a), -0.499);
    }
}
