using NotebookKit.Provenance;

namespace NotebookKit.Sheets;

/// <summary>A sheet of paper for the bench, the proof or the pad: a result, and its content in the order in which it is read.</summary>
public interface ISheet : IResult
{
    /// <summary>What stands on the paper.</summary>
    SheetContent Content { get; }
}
