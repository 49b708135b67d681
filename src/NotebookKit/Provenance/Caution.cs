namespace NotebookKit.Provenance;

/// <summary>A danger that must be said wherever it applies.</summary>
/// <param name="Topic">One or two words.</param>
/// <param name="Text">The caution itself.</param>
public sealed record Caution(string Topic, string Text)
{
    /// <summary>For example "Proof: prove with water, ...".</summary>
    public override string ToString() => $"{Topic}: {Text}";
}
