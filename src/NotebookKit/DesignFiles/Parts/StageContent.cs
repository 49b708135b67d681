using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Filling.Fills;
using NotebookKit.Flight.Design;
using NotebookKit.Materials.Fluids;
using NotebookKit.Proofing.Plans;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Propulsion.Flow;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ratings;
using NotebookKit.Vessels.Testing;
using UnitsNet;

namespace NotebookKit.DesignFiles.Parts;

/// <summary>What a file says of one stage, before anything is computed.</summary>
internal sealed record StageContent(Func<string, PressureVessel> Vessel, RuleSet Rules, GaugePressure? WorkingPressure,
    Func<PressureVessel, bool, VesselEvidence> Evidence)
{
    public Func<Proof, Proof> Proof { get; init; } = asked => asked;

    public FinnedBody? Body { get; init; }

    public IReadOnlyList<MassLine>? Masses { get; init; }

    public (Nozzle Nozzle, Length Station)? Nozzle { get; init; }

    public LaunchTube? LaunchTube { get; init; }

    public ChargeContent? Charge { get; init; }

    public PadEquipment? Pad { get; init; }

    public SunAtPad? Sun { get; init; }

    public Canopy? Canopy { get; init; }

    public FinContent? Fins { get; init; }

    public GearContent? Gear { get; init; }

    public Deployment? Deployment { get; init; }

    public DragAssumptions Surface { get; init; } = new();

    public DragEnd DragEnd { get; init; }

    public DragCalibration? DragCalibration { get; init; }

    public FlowModel Flow { get; init; } = FlowModel.Real;

    /// <summary>Marks of its tests.</summary>
    public Func<IReadOnlyList<TestMark>> Tests { get; init; } = () => [];

    /// <summary>Mark of the vessel as the file states it.</summary>
    public Func<string> Mark { get; init; } = () => "";
}

/// <summary>What a file says of the charge.</summary>
internal sealed record ChargeContent(GaugePressure Fill, Ratio WaterFraction, Temperature? GasTemperature, Gas Gas, Density? WaterDensity);
