namespace NotebookKit.DesignFiles.Trees;

/// <summary>A place in a text; 0 where a value doesn't come from one.</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1, in characters.</param>
internal readonly record struct Place(int Line, int Column) : IComparable<Place>
{
    /// <inheritdoc/>
    public int CompareTo(Place other) => (Line, Column).CompareTo((other.Line, other.Column));
}
