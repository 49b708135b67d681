namespace NotebookKit.Clearance.Service;

/// <summary>Whether a vessel may be filled, as its record says.</summary>
public enum ServiceStanding
{
    /// <summary>Not to be filled until what is named is done.</summary>
    Grounded,

    /// <summary>Nothing in the record forbids a fill.</summary>
    InService,

    /// <summary>Out of use for good.</summary>
    Retired,
}
