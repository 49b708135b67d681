using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Provenance;

namespace NotebookKit.Propulsion.Phases;

/// <summary>A charge, a nozzle and a flow model as the plain SI numbers that the phases run on.</summary>
internal readonly struct FiringSetup
{
    public FiringSetup(Charge charge, Nozzle nozzle, FlowModel model, double ambientPa, FiringTables tables, LaunchTube? tube = null)
    {
        Tables = tables;
        ChamberM3 = charge.Chamber.Volume.CubicMeters;
        GasM3 = charge.GasSpace.CubicMeters;
        GaugePa = charge.Pressure.Pascals;
        PressurePa = GaugePa + ambientPa;
        TemperatureK = charge.GasTemperature.Kelvins;
        GasConstant = charge.Gas.GasConstant.JoulesPerKilogramKelvin;
        Gamma = charge.Gas.HeatCapacityRatio;
        if (tube is not null)
        {
            TubeAreaM2 = tube.Area.SquareMeters;
            TubeStrokeM = tube.Stroke.Meters;
            TubeHollowM3 = tube.Hollow.CubicMeters;
        }

        (StartM3, AboardShare) = Room(GasM3, tube);
        StartGasKg = Density(charge, ambientPa, tables.Closed?.StartVolume) * StartM3;
        GasKg = StartGasKg * AboardShare;
        var bore = charge.Chamber.Bore.Meters;
        var throat = nozzle.ThroatArea.SquareMeters;
        WaterJet = new(
            nozzle.WaterContractionCoefficient * throat, Math.PI / 4 * bore * bore, nozzle.WaterVelocityCoefficient,
            charge.WaterDensity.KilogramsPerCubicMeter);
        AirAreaM2 = nozzle.AirDischargeCoefficient * throat;
        WaterExponent = model.WaterPhase.ExponentFor(Gamma);
        AirExponent = model.AirPhase.ExponentFor(Gamma);
        EndPressureRatio = model.EndPressureRatio;
        Mode = model.Water switch
        {
            WaterFlow.QuasiSteady => WaterJetMode.Plain,
            WaterFlow.QuasiSteadyWithHead => WaterJetMode.Head,
            _ => WaterJetMode.Inertial,
        };
        Wall = model.WallWarming is { } heat
            ? new(heat, ChamberM3, bore, (heat.WallTemperature ?? charge.GasTemperature).Kelvins)
            : null;
    }

    public FiringSetup(Charge charge, Nozzle nozzle, FlowModel model, double ambientPa)
        : this(charge, nozzle, model, ambientPa, FiringTables.For(charge, model, ambientPa))
    {
    }

    /// <summary>Gas that goes up with the vehicle [kg], to the last digit as a setup has it, without the tables of a firing.</summary>
    /// <exception cref="InvalidDesignException">The gas has no such state.</exception>
    public static double GasAboardKg(Charge charge, FlowModel model, double ambientPa, LaunchTube? tube)
    {
        var (startM3, aboardShare) = Room(charge.GasSpace.CubicMeters, tube);
        return Density(charge, ambientPa, FiringTables.StartVolume(charge, model, ambientPa)) * startM3 * aboardShare;
    }

    public FiringTables Tables { get; }

    public double ChamberM3 { get; }

    /// <summary>Gas space once any launch tube is out.</summary>
    public double GasM3 { get; }

    /// <summary>Gas space at release.</summary>
    public double StartM3 { get; }

    public double GaugePa { get; }

    public double PressurePa { get; }

    public double TemperatureK { get; }

    public double GasConstant { get; }

    public double Gamma { get; }

    /// <summary>Gas at release, with that inside a hollow launch tube.</summary>
    public double StartGasKg { get; }

    /// <summary>Gas that goes up with the vehicle.</summary>
    public double GasKg { get; }

    public double AboardShare { get; }

    public double TubeAreaM2 { get; }

    public double TubeStrokeM { get; }

    public double TubeHollowM3 { get; }

    public WaterJet WaterJet { get; }

    public double AirAreaM2 { get; }

    public double WaterExponent { get; }

    public double AirExponent { get; }

    public double EndPressureRatio { get; }

    public WaterJetMode Mode { get; }

    public WallLaw? Wall { get; }

    /// <summary>Whether the head of the column adds to the pressure of a quasi-steady jet.</summary>
    public bool WithHead => Mode == WaterJetMode.Head;

    /// <summary>Whether there is a column to speak of; a ten-millionth of the volume is a wet wall.</summary>
    public bool HasWater => ChamberM3 - GasM3 > 1e-7 * ChamberM3;

    public double WaterKg => WaterJet.Density * (ChamberM3 - GasM3);

    /// <summary>Expansion of the gas at release.</summary>
    public ClosedGasLaw ClosedGas => Tables.Closed is { } table ? new(table, StartM3)
        : new(PressurePa, TemperatureK, StartM3, WaterExponent, Gamma);

    /// <summary>The jet of an ideal gas.</summary>
    public AirJet AirJet => new(AirAreaM2, GasConstant, Gamma);

    /// <summary>Thrust of the established jet at release [N]; on a launch tube, that of the piston.</summary>
    public double FirstThrust
    {
        get
        {
            if (TubeStrokeM > 0) return GaugePa * TubeAreaM2;
            if (HasWater)
            {
                var speed = WaterJet.Speed(GaugePa);
                return WaterJet.Density * WaterJet.JetAreaM2 * speed * speed;
            }

            new GasOutflow(this).MassFlow(GasKg, TemperatureK, PressurePa - GaugePa, out _, out var thrust, out _);
            return thrust;
        }
    }

    // With a tube inside, the gas starts in less room; the part inside a hollow tube stays on the pad.
    private static (double StartM3, double AboardShare) Room(double gasM3, LaunchTube? tube)
    {
        var hollowM3 = tube?.Hollow.CubicMeters ?? 0;
        return (gasM3 - (tube is null ? 0 : tube.Area.SquareMeters * tube.Stroke.Meters) + hollowM3, gasM3 / (gasM3 + hollowM3));
    }

    private static double Density(Charge charge, double ambientPa, double? startVolume) => startVolume is { } volume ? 1 / volume
        : (charge.Pressure.Pascals + ambientPa)
            / (charge.Gas.GasConstant.JoulesPerKilogramKelvin * charge.GasTemperature.Kelvins);
}
