namespace NotebookKit.Vessels.Ends.Modes;

/// <summary>Shape of the shell that an opening is cut into.</summary>
public enum OpenedShell
{
    /// <summary>A cylinder: the wall of the body.</summary>
    Cylinder,

    /// <summary>A sphere: a hemispherical dome.</summary>
    Sphere,
}
