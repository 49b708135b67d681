namespace NotebookKit.Charts.Drawings;

/// <summary>One page of patterns at full size.</summary>
/// <param name="Number">Its number; 1 and more.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Svg">The page as SVG, in millimetres.</param>
/// <param name="Tiles">The pieces of patterns on it.</param>
public sealed record TemplatePage(int Number, int Count, string Svg, IReadOnlyList<TemplateTile> Tiles);

/// <summary>A rectangle of one pattern on one page.</summary>
/// <param name="Template">Name of the pattern.</param>
/// <param name="Row">Row of the piece, from 1.</param>
/// <param name="Column">Column of the piece, from 1.</param>
/// <param name="FromMm">Where it begins on the pattern, along and across [mm].</param>
/// <param name="SizeMm">Its size [mm].</param>
/// <param name="AtMm">Where it lies on the page [mm].</param>
public sealed record TemplateTile(string Template, int Row, int Column, (double Along, double Across) FromMm,
    (double Along, double Across) SizeMm, (double X, double Y) AtMm);
