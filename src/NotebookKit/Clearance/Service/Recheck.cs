namespace NotebookKit.Clearance.Service;

/// <summary>What a vessel needs after something happened to it, before it is filled again.</summary>
public enum Recheck
{
    /// <summary>A proof, and an inspection that finds it sound.</summary>
    InspectionAndProof,

    /// <summary>A proof.</summary>
    Proof,

    /// <summary>An inspection that finds it sound; a proof will do as well.</summary>
    Inspection,
}
