namespace NotebookKit.Propulsion.Phases;

/// <summary>A charge, a nozzle and a flow model as the plain SI numbers that the phases run on.</summary>
internal readonly struct FiringSetup
{
    public FiringSetup(Charge charge, Nozzle nozzle, FlowModel model, double ambientPa)
    {
        ChamberM3 = charge.Chamber.Volume.CubicMeters;
        GasM3 = charge.GasSpace.CubicMeters;
        PressurePa = charge.Pressure.Pascals + ambientPa;
        TemperatureK = charge.GasTemperature.Kelvins;
        GasConstant = charge.Gas.GasConstant.JoulesPerKilogramKelvin;
        Gamma = charge.Gas.HeatCapacityRatio;
        GasKg = PressurePa * GasM3 / (GasConstant * TemperatureK);
        var bore = charge.Chamber.Bore.Meters;
        var throat = nozzle.ThroatArea.SquareMeters;
        WaterJet = new(
            nozzle.WaterContractionCoefficient * throat, Math.PI / 4 * bore * bore, nozzle.WaterVelocityCoefficient,
            charge.WaterDensity.KilogramsPerCubicMeter);
        AirJet = new(nozzle.AirDischargeCoefficient * throat, GasConstant, Gamma);
        WaterExponent = model.WaterPhase.ExponentFor(Gamma);
        AirExponent = model.AirPhase.ExponentFor(Gamma);
        EndPressureRatio = model.EndPressureRatio;
        WithHead = model.Water == WaterFlow.QuasiSteadyWithHead;
    }

    public double ChamberM3 { get; }

    public double GasM3 { get; }

    public double PressurePa { get; }

    public double TemperatureK { get; }

    public double GasConstant { get; }

    public double Gamma { get; }

    public double GasKg { get; }

    public WaterJet WaterJet { get; }

    public AirJet AirJet { get; }

    public double WaterExponent { get; }

    public double AirExponent { get; }

    public double EndPressureRatio { get; }

    public bool WithHead { get; }

    public bool HasWater => GasM3 < ChamberM3;

    public double WaterKg => WaterJet.Density * (ChamberM3 - GasM3);

    public PolytropicLaw Polytropic => new(PressurePa, TemperatureK, GasM3, WaterExponent, Gamma);
}
