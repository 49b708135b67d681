using System.Runtime.CompilerServices;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Site;

/// <summary>
/// Mean wind against height above ground. Laws hold their direction; a table may turn.
/// Source: power and logarithmic laws of the neutral surface layer, J. Counihan, Adiabatic atmospheric boundary layers, 1975 (unverified);
/// exponents: 1/7 over open land; 0.25 measured over a city, H. Kikumoto et al., 2017; 0.11 over the sea, S. A. Hsu et al., 1994
/// (unverified).
/// </summary>
public sealed record WindProfile
{
    private static readonly ValidRange<Speed> Speeds = new(Speed.Zero, 60.MetresPerSecond());
    private static readonly ValidRange<Length> References = new(1.Metres(), 300.Metres());

    private readonly WindLaw _law;
    private readonly double _scaleMps;
    private readonly double _referenceM;
    private readonly double _shape;
    private readonly double _eastward;
    private readonly double _northward;
    private readonly double[] _heightsM = [];
    private readonly double[] _eastMps = [];
    private readonly double[] _northMps = [];

    private WindProfile(string name, WindLaw law, Speed speed, Length reference, double shape, Angle from)
    {
        Name = name;
        _law = law;
        _scaleMps = Speeds.Check(speed, "wind speed", "No one flies in more.").MetersPerSecond;
        _referenceM = reference.Meters;
        _shape = shape;
        (_eastward, _northward) = Towards(from);
    }

    private WindProfile(string name, double[] heightsM, double[] eastMps, double[] northMps)
    {
        Name = name;
        _law = WindLaw.Table;
        (_heightsM, _eastMps, _northMps) = (heightsM, eastMps, northMps);
    }

    private enum WindLaw
    {
        Uniform,
        Power,
        Logarithmic,
        Table,
    }

    /// <summary>No wind, as somebody has said or measured.</summary>
    public static WindProfile Calm { get; } = Uniform(Speed.Zero);

    /// <summary>Nobody has said what the wind is. Flights are computed in still air then and say so; no drift of theirs holds.</summary>
    public static WindProfile NotGiven { get; } = new("not given, computed in still air", WindLaw.Uniform, Speed.Zero, 10.Metres(), 0,
        270.Degrees()) { IsGiven = false };

    /// <summary>Whether somebody has said what it is.</summary>
    public bool IsGiven { get; private init; } = true;

    /// <summary>What it is, in a few words.</summary>
    public string Name { get; }

    /// <summary>Where the laws come from.</summary>
    public static Source Source { get; } = new("J. Counihan", "Adiabatic atmospheric boundary layers, Atmospheric Environment 9", 1975, "",
        SourceKind.Unverified);

    /// <summary>The same wind at every height.</summary>
    /// <param name="speed">Wind speed; 0 to 60 m/s.</param>
    /// <param name="from">Where it blows from, clockwise from north; any angle, west where none is given.</param>
    /// <exception cref="OutOfRangeException">The speed is outside.</exception>
    public static WindProfile Uniform(Speed speed, Angle? from = null) =>
        new($"{speed.Show()} at every height", WindLaw.Uniform, speed, 10.Metres(), 0, from ?? 270.Degrees());

    /// <summary>Power law u = u_ref (z / z_ref)^α.</summary>
    /// <param name="speed">Wind speed at the reference height; 0 to 60 m/s.</param>
    /// <param name="reference">Reference height; 1 to 300 m.</param>
    /// <param name="exponent">α [-]; 0 to 0.6. 1/7 over open land, 0.11 over the sea, 0.25 over a city.</param>
    /// <param name="from">Where it blows from, clockwise from north; any angle, west where none is given.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static WindProfile PowerLaw(Speed speed, Length reference, double exponent = 1.0 / 7, Angle? from = null)
    {
        References.Check(reference, "reference height of the wind", "Weather stations measure at 10 m.");
        new ValidRange<double>(0, 0.6).Check(exponent, "exponent of the wind profile", "1/7 over open land, more over rough ground.");
        return new($"power law, {speed.Show()} at {reference.Show()}, exponent {Digits.Round(exponent)}", WindLaw.Power, speed, reference,
            exponent, from ?? 270.Degrees());
    }

    /// <summary>Power law over the sea, exponent 0.11. Source: S. A. Hsu et al., 1994 (unverified).</summary>
    /// <param name="speed">Wind speed at the reference height; 0 to 60 m/s.</param>
    /// <param name="reference">Reference height; 1 to 300 m.</param>
    /// <param name="from">Where it blows from, clockwise from north; any angle, west where none is given.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static WindProfile OverSea(Speed speed, Length reference, Angle? from = null) => PowerLaw(speed, reference, 0.11, from);

    /// <summary>Power law over a city, exponent 0.25. Source: H. Kikumoto et al., 2017, lidar over Tokyo, wind above 6 m/s.</summary>
    /// <param name="speed">Wind speed at the reference height; 0 to 60 m/s.</param>
    /// <param name="reference">Reference height; 1 to 300 m.</param>
    /// <param name="from">Where it blows from, clockwise from north; any angle, west where none is given.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static WindProfile OverCity(Speed speed, Length reference, Angle? from = null) => PowerLaw(speed, reference, 0.25, from);

    /// <summary>Logarithmic law u = u_ref ln(z / z₀) / ln(z_ref / z₀), calm below z₀.</summary>
    /// <param name="speed">Wind speed at the reference height; 0 to 60 m/s.</param>
    /// <param name="reference">Reference height; 1 to 300 m.</param>
    /// <param name="roughness">Roughness length z₀; 0.1 mm to a tenth of the reference height. 0.03 m over grass, 0.1 m over crops.</param>
    /// <param name="from">Where it blows from, clockwise from north; any angle, west where none is given.</param>
    /// <exception cref="OutOfRangeException">An input is outside.</exception>
    public static WindProfile LogLaw(Speed speed, Length reference, Length roughness, Angle? from = null)
    {
        References.Check(reference, "reference height of the wind", "Weather stations measure at 10 m.");
        new ValidRange<Length>(0.1.Millimetres(), reference / 10).Check(roughness, "roughness length of the ground",
            "0.03 m over grass, 0.1 m over crops, 1 m over woods.");
        return new($"log law, {speed.Show()} at {reference.Show()}, roughness {roughness.Show()}", WindLaw.Logarithmic, speed, reference,
            roughness.Meters, from ?? 270.Degrees());
    }

    /// <summary>A measured or forecast profile, straight between rows, held constant beyond them.</summary>
    /// <param name="layers">Rows in rising order of height; 1 to 1000.</param>
    /// <exception cref="ArgumentException">There are no rows, too many, or they don't rise.</exception>
    /// <exception cref="OutOfRangeException">A speed or a height is outside its range.</exception>
    public static WindProfile Table(IReadOnlyList<WindLayer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        if (layers.Count is < 1 or > 1000)
            throw new ArgumentException($"the wind table has {layers.Count} rows; it must have 1 to 1000.", nameof(layers));
        for (var i = 0; i < layers.Count; i++)
        {
            Speeds.Check(layers[i].Speed, $"wind speed in row {i + 1}", "No one flies in more.");
            new ValidRange<Length>(Length.Zero, 20_000.Metres()).Check(layers[i].Height, $"height in row {i + 1}",
                "Heights are above ground.");
            if (i > 0 && layers[i].Height <= layers[i - 1].Height)
                throw new ArgumentException($"row {i + 1} of the wind table is at {layers[i].Height.Show()}, not above row {i}; sort the "
                    + "rows by height.", nameof(layers));
        }

        return new WindProfile($"table of {layers.Count} heights",
            layers.Select(l => l.Height.Meters).ToArray(),
            layers.Select(l => l.Speed.MetersPerSecond * Towards(l.From).East).ToArray(),
            layers.Select(l => l.Speed.MetersPerSecond * Towards(l.From).North).ToArray());
    }

    /// <summary>Wind speed at a height.</summary>
    /// <param name="height">Height above ground; zero or above, calm below.</param>
    public Speed At(Length height)
    {
        Velocity(height.Meters, out var east, out var north);
        return Speed.FromMetersPerSecond(Math.Sqrt((east * east) + (north * north)));
    }

    /// <summary>Where the wind blows from at a height, clockwise from north; none where it is calm or nobody has said what it is.</summary>
    /// <param name="height">Height above ground; 0 or above.</param>
    public Angle? FromAt(Length height)
    {
        Velocity(Math.Max(0, height.Meters), out var east, out var north);
        return !IsGiven || (east == 0 && north == 0) ? null
            : Angle.FromDegrees(((Math.Atan2(-east, -north) * 180 / Math.PI) + 360) % 360);
    }

    /// <summary>Wind velocity towards east and north at a height, without allocation [m/s].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Velocity(double heightM, out double eastMps, out double northMps)
    {
        // The usual law goes into step loops whole.
        if (_law == WindLaw.Power && !(heightM <= 0))
        {
            var power = _scaleMps * Math.Exp(_shape * Math.Log(heightM / _referenceM));
            (eastMps, northMps) = (power * _eastward, power * _northward);
            return;
        }

        OtherVelocity(heightM, out eastMps, out northMps);
    }

    private void OtherVelocity(double heightM, out double eastMps, out double northMps)
    {
        if (_law == WindLaw.Table)
        {
            var (i, share) = Row(heightM);
            eastMps = _eastMps[i] + (share * (_eastMps[Math.Min(i + 1, _eastMps.Length - 1)] - _eastMps[i]));
            northMps = _northMps[i] + (share * (_northMps[Math.Min(i + 1, _northMps.Length - 1)] - _northMps[i]));
            return;
        }

        var speed = _law == WindLaw.Uniform ? _scaleMps : heightM <= 0 ? 0
            : _scaleMps * Math.Max(0, Math.Log(heightM / _shape)) / Math.Log(_referenceM / _shape);
        (eastMps, northMps) = (speed * _eastward, speed * _northward);
    }

    /// <summary>Integral of the wind velocity from the ground to a height, in closed form [m²/s].</summary>
    internal void Integral(double heightM, out double east, out double north)
    {
        if (_law == WindLaw.Table)
        {
            (east, north) = (TableIntegral(_eastMps, heightM), TableIntegral(_northMps, heightM));
            return;
        }

        var sum = _law switch
        {
            WindLaw.Uniform => _scaleMps * heightM,
            WindLaw.Power => _scaleMps * heightM * Math.Pow(heightM / _referenceM, _shape) / (1 + _shape),
            _ when heightM <= _shape => 0,
            _ => _scaleMps / Math.Log(_referenceM / _shape) * ((heightM * (Math.Log(heightM / _shape) - 1)) + _shape),
        };
        (east, north) = (sum * _eastward, sum * _northward);
    }

    // A wind from due west has no north in it: the rounding of the sine of a whole number of quarter turns is taken off.
    private static (double East, double North) Towards(Angle from) =>
        (-Math.Round(Math.Sin(from.Radians), 15), -Math.Round(Math.Cos(from.Radians), 15));

    private (int Row, double Share) Row(double heightM)
    {
        if (heightM <= _heightsM[0]) return (0, 0);
        if (heightM >= _heightsM[^1]) return (_heightsM.Length - 1, 0);
        var i = Array.BinarySearch(_heightsM, heightM);
        if (i < 0) i = ~i - 1;
        return (i, (heightM - _heightsM[i]) / (_heightsM[i + 1] - _heightsM[i]));
    }

    private double TableIntegral(double[] speeds, double heightM)
    {
        var sum = speeds[0] * Math.Min(heightM, _heightsM[0]);
        for (var i = 0; i + 1 < _heightsM.Length && _heightsM[i] < heightM; i++)
        {
            var top = Math.Min(heightM, _heightsM[i + 1]);
            var width = top - _heightsM[i];
            var atTop = speeds[i] + ((speeds[i + 1] - speeds[i]) * width / (_heightsM[i + 1] - _heightsM[i]));
            sum += width * (speeds[i] + atTop) / 2;
        }

        return sum + (speeds[^1] * Math.Max(0, heightM - _heightsM[^1]));
    }
}

/// <summary>Wind at one height of a measured or forecast profile.</summary>
/// <param name="Height">Height above ground; 0 or above.</param>
/// <param name="Speed">Wind speed; 0 to 60 m/s.</param>
/// <param name="From">Where it blows from, clockwise from north; −360 to 360°.</param>
public readonly record struct WindLayer(Length Height, Speed Speed, Angle From);
