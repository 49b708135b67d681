namespace NotebookKit.Clearance.Service;

/// <summary>What pressed on the wall in a fill.</summary>
public enum FillMedium
{
    /// <summary>Water throughout: little energy.</summary>
    Water,

    /// <summary>Gas, with water below it or without.</summary>
    Gas,
}
