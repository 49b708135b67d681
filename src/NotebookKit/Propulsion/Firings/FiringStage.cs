namespace NotebookKit.Propulsion.Firings;

/// <summary>What a vessel is doing.</summary>
internal enum FiringStage
{
    Tube,
    Start,
    Water,
    Gas,
    Coast,
}
