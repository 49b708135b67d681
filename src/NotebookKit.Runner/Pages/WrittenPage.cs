namespace NotebookKit.Runner.Pages;

/// <summary>A page, and what the index has to know of it.</summary>
/// <param name="Html">The page.</param>
/// <param name="Places">Where its card, plans and record stand, and its picture.</param>
internal sealed record WrittenPage(string Html, PagePlaces Places);
