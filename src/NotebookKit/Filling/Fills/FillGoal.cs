namespace NotebookKit.Filling.Fills;

/// <summary>When the wanted pressure is to be there.</summary>
public enum FillGoal
{
    /// <summary>When the valve shuts; it then falls while the gas cools.</summary>
    WhenShut,

    /// <summary>After the gas has cooled: the fill has to overshoot, and the overshoot has to stay within the rating.</summary>
    AfterCooling,
}
