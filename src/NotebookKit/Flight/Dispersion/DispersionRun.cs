using NotebookKit.Flight.RigidBody;
using NotebookKit.Numerics;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Dispersion;

/// <summary>Flies a range of the flights of a dispersion. Every flight depends on the seed and its number alone.</summary>
internal sealed class DispersionRun
{
    public const int RowLength = FlightInputs.Count + FlightOutputs.Count;

    private readonly Vehicle _vehicle;
    private readonly LaunchSite _site;
    private readonly Spread _spread;
    private readonly SpreadNumbers _numbers;
    private readonly FlightNumbers _base;
    private readonly VehicleNumbers? _sixDegrees;
    private readonly SeededSamples _samples;
    private readonly Length _gustTop;

    public DispersionRun(Vehicle vehicle, LaunchSite site, Spread spread, ulong seed, bool isSixDegrees)
    {
        _vehicle = vehicle;
        _site = site;
        _spread = spread;
        _numbers = new(vehicle, site, spread);
        _base = vehicle.Numbers(site);
        _sixDegrees = isSixDegrees ? vehicle.SixDegrees() : null;
        _samples = new SeededSamples(seed);

        // Gust fields reach some way above the nominal top; beyond they hold their last value.
        var marks = spread.Gusts is null ? new FlightMarks() : FlightRun.Fly(_base, null, FlightAccuracy.Fast);
        _gustTop = Math.Clamp(double.IsNaN(marks.ApogeeM) ? 0 : 1.3 * marks.ApogeeM, 100, 5000).Metres();
    }

    /// <summary>The bits of flight 0.</summary>
    public string Fingerprint()
    {
        Span<double> row = stackalloc double[RowLength];
        Fly(0, row);
        var hash = 14695981039346656037UL;
        foreach (var value in row) hash = unchecked((hash ^ BitConverter.DoubleToUInt64Bits(value)) * 1099511628211UL);
        return hash.ToString("x16", System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Rows of inputs and outputs of the flights from one number on, in order.</summary>
    public double[] Rows(int first, int count, int? threads, IProgress<int>? progress, CancellationToken cancellation)
    {
        var rows = new double[(long)count * RowLength];
        var done = 0;
        var step = Math.Max(1, count / 100);
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = threads ?? -1 };
        Parallel.For(0, count, options, i =>
        {
            StopRequest.ThrowIfAsked();
            Fly(first + i, rows.AsSpan(i * RowLength, RowLength));
            var finished = Interlocked.Increment(ref done);
            if (finished % step == 0 || finished == count) progress?.Report(finished);
        });
        return rows;
    }

    private void Fly(long flight, Span<double> row)
    {
        var inputs = FlightInputs.Draw(_numbers, _samples, flight);
        inputs.CopyTo(row);
        var numbers = Varied(inputs, flight);
        var sixDegrees = _sixDegrees is null ? null : _sixDegrees with
        {
            Dry = new(_sixDegrees.Dry.MassKg * inputs.Mass, _sixDegrees.Dry.CentreM + inputs.CentreM, _sixDegrees.Dry.RollKgM2 * inputs.Mass, _sixDegrees.Dry.PitchKgM2 * inputs.Mass),
            Cant = inputs.Cant,
        };
        FlightOutputs.Write(FlightRun.Fly(numbers, sixDegrees, FlightAccuracy.Fast), row[FlightInputs.Count..]);
    }

    private FlightNumbers Varied(in FlightInputs inputs, long flight)
    {
        var charge = _vehicle.Charge with
        {
            Pressure = _vehicle.Charge.Pressure * inputs.Pressure,
            WaterFraction = Ratio.FromDecimalFractions(Math.Clamp(_vehicle.Charge.WaterFraction.DecimalFractions + inputs.Water, 0, 0.95)),
        };
        var direction = _site.Rail.Direction(inputs.TiltNorth, inputs.TiltEast);
        var gusts = _spread.Gusts?.Field(_gustTop, _samples.Part((int)(flight % int.MaxValue)).Seed) ?? _site.Gusts;
        var deployment = _base.Deployment;
        return _base with
        {
            Air = new(_site.Atmosphere.Law, _site.Elevation.Meters, _site.Wind, -_base.RailM * direction.Z, gusts, inputs.WindSpeed, inputs.WindTurn),
            RailDirection = direction,
            DryKg = _base.DryKg * inputs.Mass,
            DragFactor = inputs.Drag,
            Firing = _vehicle.Setup(charge, _site),
            ThrustFactor = inputs.Thrust,
            Deployment = deployment with { DelayS = Math.Max(0, deployment.DelayS + inputs.TimerS), DragM2 = deployment.DragM2 * inputs.Canopy },
        };
    }
}
