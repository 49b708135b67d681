namespace NotebookKit.Runner.Jupyter;

/// <summary>The sockets of a kernel that carry messages.</summary>
internal enum SocketKind
{
    /// <summary>Requests, one after another.</summary>
    Shell,

    /// <summary>Requests that can't wait: interrupt, shutdown.</summary>
    Control,

    /// <summary>Questions to the reader and their answers.</summary>
    Stdin,

    /// <summary>What everybody may hear.</summary>
    Iopub,
}
