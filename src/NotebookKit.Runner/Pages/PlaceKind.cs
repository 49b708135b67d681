namespace NotebookKit.Runner.Pages;

/// <summary>What the index leads to.</summary>
internal enum PlaceKind
{
    /// <summary>Nothing of these.</summary>
    None,

    /// <summary>The flight card.</summary>
    FlightCard,

    /// <summary>The planned proof.</summary>
    ProofPlan,

    /// <summary>The cut list.</summary>
    CuttingPlan,

    /// <summary>The design record.</summary>
    Record,
}
