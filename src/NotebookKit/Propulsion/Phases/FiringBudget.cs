namespace NotebookKit.Propulsion.Phases;

/// <summary>What jets and gas have exchanged: impulses [N s] and energies [J].</summary>
internal struct FiringBudget
{
    public double TubeImpulse, WaterImpulse, AirImpulse;
    public double GasWork, OutsideWork, WaterJetEnergy, ColumnWork, WaterJetGroundEnergy;
    public double EnthalpyOut, HeatIn, AirJetEnergy, AirJetGroundEnergy;
    public double TubeWork, DragWork;

    /// <summary>Adds the mass budget of a water phase.</summary>
    public void AddWater(ReadOnlySpan<double> ledger)
    {
        WaterImpulse += ledger[0];
        GasWork += ledger[1];
        OutsideWork += ledger[2];
        WaterJetEnergy += ledger[3];
        ColumnWork += ledger[4];
        WaterJetGroundEnergy += ledger[5];
        DragWork += ledger[6];
    }

    /// <summary>Adds the budget of a gas phase.</summary>
    public void AddAir(ReadOnlySpan<double> ledger)
    {
        AirImpulse += ledger[0];
        EnthalpyOut += ledger[1];
        HeatIn += ledger[2];
        AirJetEnergy += ledger[3];
        AirJetGroundEnergy += ledger[4];
        DragWork += ledger[5];
    }

    /// <summary>Adds the mass budget of a launch tube.</summary>
    public void AddTube(ReadOnlySpan<double> ledger)
    {
        TubeImpulse += ledger[0];
        GasWork += ledger[1];
        OutsideWork += ledger[2];
        TubeWork += ledger[1] - ledger[2];
        DragWork += ledger[3];
    }
}
