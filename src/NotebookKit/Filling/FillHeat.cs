namespace NotebookKit.Filling;

/// <summary>What the wall does to the gas while it is filled or vented.</summary>
public enum FillHeat
{
    /// <summary>No heat to the wall: the fastest rise, the hottest gas, the largest fall while it cools. True for a fill of a few seconds.</summary>
    Adiabatic,

    /// <summary>The wall takes all heat at once: the slowest rise. True for a fill of many minutes.</summary>
    Isothermal,
}
