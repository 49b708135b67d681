namespace NotebookKit.Charts.Explorers;

/// <summary>What a compiled library needs to answer an explorer's settings itself.</summary>
/// <param name="Model">Name of the model.</param>
/// <param name="DesignText">The design as its file has it, without remarks.</param>
public sealed record ExplorerBase(string Model, string DesignText);
