using MathNet.Numerics.Integration;

namespace NotebookKit.Aerodynamics.Bodies;

/// <summary>
/// Areas and volumes of a nose, by quadrature of its profile. Profiles are taken with the station over length, x/L, and the radius over
/// base radius, r/R. The substitution x/L = sin²φ takes the root singularities of blunt tips and of the Haack series out of the integrand.
/// </summary>
internal readonly struct NoseProfile
{
    private static readonly GaussLegendreRule Rule = new(0, Math.PI / 2, 64);

    private readonly NoseShape _shape;
    private readonly double _lengthM;
    private readonly double _radiusM;
    private readonly double _parameter;

    public NoseProfile(Nose nose)
    {
        _shape = nose.Shape;
        _lengthM = nose.Length.Meters;
        _radiusM = nose.BaseDiameter.Meters / 2;
        _parameter = nose.Parameter;
    }

    public double VolumeM3
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Rule.Order; i++)
            {
                var (x, weight) = Node(i);
                var r = Radius(x);
                sum += weight * r * r;
            }

            return Math.PI * _radiusM * _radiusM * _lengthM * sum;
        }
    }

    public double PlanformM2
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Rule.Order; i++)
            {
                var (x, weight) = Node(i);
                sum += weight * Radius(x);
            }

            return 2 * _radiusM * _lengthM * sum;
        }
    }

    public double PlanformCentroidM
    {
        get
        {
            double area = 0, moment = 0;
            for (var i = 0; i < Rule.Order; i++)
            {
                var (x, weight) = Node(i);
                var strip = weight * Radius(x);
                area += strip;
                moment += strip * x;
            }

            return _lengthM * moment / area;
        }
    }

    public double WettedM2
    {
        get
        {
            // r √(1 + r'²) written as √(r² + (r r')²): r r' stays finite where r' does not.
            var slope = _radiusM / _lengthM;
            var sum = 0.0;
            for (var i = 0; i < Rule.Order; i++)
            {
                var (x, weight) = Node(i);
                var r = Radius(x);
                var rr = slope * RadiusTimesSlope(x);
                sum += weight * Math.Sqrt((r * r) + (rr * rr));
            }

            return 2 * Math.PI * _radiusM * _lengthM * sum;
        }
    }

    /// <summary>r/R at x/L.</summary>
    public double Radius(double x) => _shape switch
    {
        NoseShape.Cone => x,
        NoseShape.TangentOgive => Ogive(x).Radius,
        NoseShape.Ellipsoid => Math.Sqrt(Math.Max(0, x * (2 - x))),
        NoseShape.Parabolic => ((2 * x) - (_parameter * x * x)) / (2 - _parameter),
        NoseShape.Power => Math.Pow(x, _parameter),
        _ => Math.Sqrt(Math.Max(0, HaackSquare(x))),
    };

    /// <summary>(r/R) d(r/R)/d(x/L).</summary>
    private double RadiusTimesSlope(double x) => _shape switch
    {
        NoseShape.Cone => x,
        NoseShape.TangentOgive => Ogive(x).Radius * Ogive(x).Slope,
        NoseShape.Ellipsoid => 1 - x,
        NoseShape.Parabolic => Radius(x) * (2 - (2 * _parameter * x)) / (2 - _parameter),
        NoseShape.Power => _parameter * Math.Pow(x, (2 * _parameter) - 1),
        _ => HaackSlope(x),
    };

    private (double Radius, double Slope) Ogive(double x)
    {
        var fineness = _lengthM / _radiusM;
        var arc = (1 + (fineness * fineness)) / 2;
        var along = fineness * (1 - x);
        var root = Math.Sqrt((arc * arc) - (along * along));
        return (root + 1 - arc, fineness * along / root);
    }

    private double HaackSquare(double x)
    {
        var angle = Math.Acos(Math.Clamp(1 - (2 * x), -1, 1));
        var sine = Math.Sin(angle);
        return (angle - (Math.Sin(2 * angle) / 2) + (_parameter * sine * sine * sine)) / Math.PI;
    }

    private double HaackSlope(double x)
    {
        var angle = Math.Acos(Math.Clamp(1 - (2 * x), -1, 1));
        return Math.Sin(angle) * (2 + (3 * _parameter * Math.Cos(angle))) / Math.PI;
    }

    private static (double X, double Weight) Node(int i)
    {
        var (sine, cosine) = Math.SinCos(Rule.GetAbscissa(i));
        return (sine * sine, Rule.GetWeight(i) * 2 * sine * cosine);
    }
}
