namespace NotebookKit.Clearance.Cards;

/// <summary>In which order the vessels of two stages are filled.</summary>
public enum FillOrder
{
    /// <summary>Nobody said.</summary>
    NotGiven,

    /// <summary>The booster first, then the sustainer; each behind its own valve.</summary>
    BoosterFirst,

    /// <summary>The sustainer first, then the booster; each behind its own valve.</summary>
    SustainerFirst,

    /// <summary>Both through one line at once.</summary>
    Together,
}
