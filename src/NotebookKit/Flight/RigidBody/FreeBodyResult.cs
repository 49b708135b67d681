using NotebookKit.Flight.Site;
using NotebookKit.Numerics.Ode;
using NotebookKit.Numerics.Space;
using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Flight.RigidBody;

/// <summary>The motion of a rigid body, row by row. Source: see its model card.</summary>
public sealed record FreeBodyResult : Result
{
    /// <summary>What was asked.</summary>
    public required FreeBodyFlight Flight { get; init; }

    /// <summary>Time from the start [s].</summary>
    public required Series Time { get; init; }

    /// <summary>Altitude above sphere, ellipsoid or flat ground [m].</summary>
    public required Series Altitude { get; init; }

    /// <summary>Latitude, geodetic [°]; of a flat Earth the way to north over the ground [m].</summary>
    public required Series Latitude { get; init; }

    /// <summary>Longitude [°]; of a flat Earth the way to east over the ground [m].</summary>
    public required Series Longitude { get; init; }

    /// <summary>Velocity over the ground to north [m/s].</summary>
    public required Series North { get; init; }

    /// <summary>Velocity over the ground to east [m/s].</summary>
    public required Series East { get; init; }

    /// <summary>Velocity over the ground downwards [m/s].</summary>
    public required Series Down { get; init; }

    /// <summary>Yaw from the local north [°].</summary>
    public required Series Yaw { get; init; }

    /// <summary>Pitch from the local level [°].</summary>
    public required Series Pitch { get; init; }

    /// <summary>Roll from the local level [°].</summary>
    public required Series Roll { get; init; }

    /// <summary>Turning rate about the forward axis in the inertial frame [°/s].</summary>
    public required Series RollRate { get; init; }

    /// <summary>Turning rate about the right-hand axis in the inertial frame [°/s].</summary>
    public required Series PitchRate { get; init; }

    /// <summary>Turning rate about the downward axis in the inertial frame [°/s].</summary>
    public required Series YawRate { get; init; }

    /// <summary>Mach number [-].</summary>
    public required Series Mach { get; init; }

    /// <summary>Dynamic pressure [Pa].</summary>
    public required Series DynamicPressure { get; init; }

    /// <summary>Density of the air [kg/m³].</summary>
    public required Series Density { get; init; }

    /// <summary>Whether it came down to zero altitude before the time was over.</summary>
    public required bool Landed { get; init; }

    /// <summary>Right-hand sides computed.</summary>
    public required int Evaluations { get; init; }

    /// <inheritdoc/>
    public override string Title => $"Motion of {Flight.Body.Name}, {Flight.Earth}";

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [Provenance.Cautions.Prediction];

    /// <inheritdoc/>
    public override ModelCard Model => RigidBodyModel.Card(Flight.Earth, Flight.Atmosphere);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => Status == ResultStatus.Failed ? [] :
    [
        new("Computed time", $"{Digits.Round(Time[^1], 4)} s", Landed ? "to zero altitude" : "to the given time"),
        new("Altitude at the end", $"{Digits.Round(Altitude[^1], 6)} m"),
        new("Velocity at the end", $"{Digits.Round(North[^1], 4)}, {Digits.Round(East[^1], 4)}, {Digits.Round(Down[^1], 4)} m/s",
            "north, east, down"),
        new("Attitude at the end", $"{Digits.Round(Yaw[^1], 4)}, {Digits.Round(Pitch[^1], 4)}, {Digits.Round(Roll[^1], 4)}°",
            "yaw, pitch, roll"),
        new("Rates at the end", $"{Digits.Round(RollRate[^1], 4)}, {Digits.Round(PitchRate[^1], 4)}, {Digits.Round(YawRate[^1], 4)} °/s",
            "roll, pitch, yaw, in the inertial frame"),
    ];

    /// <inheritdoc/>
    public override Working Working => RigidBodyModel.Working(Flight.Body);

    private static Finding[] Outside(FreeBodyFlight flight, double[] altitudesM)
    {
        const double Lowest = -500, Highest = 20_000;
        var (low, high) = (altitudesM.Min(), altitudesM.Max());
        return flight.Atmosphere is null || (low >= Lowest && high <= Highest) ? []
            : [FlightFindings.HeightOutsideAtmosphere(low, high, Lowest, Highest)];
    }

    internal static FreeBodyResult From<TEarth, TAir>(
        FreeBodyFlight flight, RigidBodySystem<TEarth, TAir, ConstantBody> system, TrajectoryBuilder rows, OdeResult ode,
            IReadOnlyList<Finding> findings)
        where TEarth : struct, IEarth
        where TAir : struct, IAir
    {
        const double Degrees = 180 / Math.PI;
        var columns = new double[16][];
        for (var c = 0; c < columns.Length; c++) columns[c] = new double[rows.Count];
        for (var i = 0; i < rows.Count; i++)
        {
            var t = rows.Time(i);
            var y = rows.State(i);
            var motion = system.Motion(t, y, out var place);
            var velocity = system.OverGround(y, place);
            var (latitude, longitude) = place.Angles;
            var (yaw, pitch, roll) = (place.Attitude.Inverse * Rotation.From(y[6..])).YawPitchRoll();
            var (along, across) = flight.Earth.IsFlat
                ? (y[0], y[1])
                : (latitude * Degrees, Degrees * Math.IEEERemainder(longitude - (system.Earth.Spin.Z * t), 2 * Math.PI));
            ReadOnlySpan<double> row =
            [
                t, place.AltitudeM, along, across, velocity.X, velocity.Y, velocity.Z, yaw * Degrees, pitch * Degrees, roll * Degrees,
                motion.Rates.X * Degrees, motion.Rates.Y * Degrees, motion.Rates.Z * Degrees, motion.Mach, motion.DynamicPressurePa,
                    motion.Air.DensityKgM3,
            ];
            for (var c = 0; c < columns.Length; c++) columns[c][i] = row[c];
        }

        var (alongUnit, latitudeName, longitudeName) = flight.Earth.IsFlat ? ("m", "Way to north", "Way to east")
            : ("°", "Latitude", "Longitude");
        return new FreeBodyResult
        {
            Flight = flight,
            Time = new("Time", "s", columns[0]),
            Altitude = new("Altitude", "m", columns[1]),
            Latitude = new(latitudeName, alongUnit, columns[2]),
            Longitude = new(longitudeName, alongUnit, columns[3]),
            North = new("Velocity to north", "m/s", columns[4]),
            East = new("Velocity to east", "m/s", columns[5]),
            Down = new("Velocity downwards", "m/s", columns[6]),
            Yaw = new("Yaw", "°", columns[7]),
            Pitch = new("Pitch", "°", columns[8]),
            Roll = new("Roll", "°", columns[9]),
            RollRate = new("Roll rate", "°/s", columns[10]),
            PitchRate = new("Pitch rate", "°/s", columns[11]),
            YawRate = new("Yaw rate", "°/s", columns[12]),
            Mach = new("Mach number", "-", columns[13]),
            DynamicPressure = new("Dynamic pressure", "Pa", columns[14]),
            Density = new("Density of the air", "kg/m³", columns[15]),
            Landed = ode.Status == OdeStatus.EndedByEvent,
            Evaluations = ode.Evaluations,
            Status = ode.Succeeded ? ResultStatus.Completed : ResultStatus.Failed,
            Findings = [.. findings, .. Outside(flight, columns[1]), .. ode.Succeeded ? [] : new[] { Finding.Error(ode.Message) }],
        };
    }
}
