namespace NotebookKit.Clearance.Service;

/// <summary>What an inspection found.</summary>
public enum InspectionResult
{
    /// <summary>The vessel isn't sound, or there is doubt.</summary>
    NotSound,

    /// <summary>Nothing was found.</summary>
    Sound,
}
