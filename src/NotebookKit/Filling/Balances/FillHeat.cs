namespace NotebookKit.Filling.Balances;

/// <summary>What the wall does to the gas while it is filled or vented.</summary>
public enum FillHeat
{
    /// <summary>No heat to the wall: the fastest rise, the hottest gas, the largest fall while it cools. A bound that fills of a few
    /// seconds come near.</summary>
    Adiabatic,

    /// <summary>The wall takes all heat at once: the slowest rise. A bound that fills of many minutes come near.</summary>
    Isothermal,

    /// <summary>Heat passes to the wall by convection, in steps of time; lies between the bounds.</summary>
    Wall,
}
