namespace NotebookKit.Propulsion.Phases;

/// <summary>What the jets and the gas have exchanged: impulses [N s] and energies [J].</summary>
internal struct FiringLedger
{
    public double WaterImpulse, GasWork, OutsideWork, WaterJetEnergy, HeadWork;
    public double AirImpulse, EnthalpyOut, HeatIn, AirJetEnergy;
}
