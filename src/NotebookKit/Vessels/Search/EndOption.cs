using NotebookKit.Vessels.Design;

namespace NotebookKit.Vessels.Search;

/// <summary>An end to choose from in a search.</summary>
/// <param name="Name">What the option is called: "dome of 2 mm, tail of 40 mm"; not empty, and no name twice in a list.</param>
/// <param name="End">The end: closure, joints, fitting, cap discs.</param>
public sealed record EndOption(string Name, VesselEnd End);
