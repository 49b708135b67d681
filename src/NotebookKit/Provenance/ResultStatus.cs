namespace NotebookKit.Provenance;

/// <summary>Whether a result may be used.</summary>
public enum ResultStatus
{
    /// <summary>The computation reached its end.</summary>
    Completed,

    /// <summary>The computation could not reach its end; the findings say why and no number is given for what was not reached.</summary>
    Failed,
}
