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
        var density = tables.Closed is { } closed ? 1 / closed.StartVolume : PressurePa / (GasConstant * TemperatureK);
        if (tube is not null)
        {
            TubeAreaM2 = tube.Area.SquareMeters;
            TubeStrokeM = tube.Stroke.Meters;
            TubeHollowM3 = tube.Hollow.CubicMeters;
        }

        // With a tube inside, the gas starts in less room; the part inside a hollow tube stays on the pad.
        StartM3 = GasM3 - TubeAreaM2 * TubeStrokeM + TubeHollowM3;
        AboardShare = GasM3 / (GasM3 + TubeHollowM3);
        StartGasKg = density * StartM3;
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
        Wall = model.WallHeat is { } heat
            ? new(heat, ChamberM3, bore, (heat.WallTemperature ?? charge.GasTemperature).Kelvins)
            : null;
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

    public bool HasWater => GasM3 < ChamberM3;

    public double WaterKg => WaterJet.Density * (ChamberM3 - GasM3);

    public PolytropicLaw Polytropic => new(PressurePa, TemperatureK, StartM3, WaterExponent, Gamma);

    public AirJet IdealJet => new(AirAreaM2, GasConstant, Gamma);
}
