namespace NotebookKit.Clearance.Service;

/// <summary>The mark of a service record's end, short enough to be written on the vessel's label: the first eight digits of the last
/// line's fingerprint, "3f9a-71c2".</summary>
internal static class EndMark
{
    private const int Digits = 8;

    /// <summary>The mark of a fingerprint; empty where there is none.</summary>
    public static string Of(string fingerprint) => fingerprint.Length < Digits ? "" : $"{fingerprint[..4]}-{fingerprint[4..Digits]}";
}
