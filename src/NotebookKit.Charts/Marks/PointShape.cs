namespace NotebookKit.Charts.Marks;

/// <summary>Shapes of points that stay apart in black and white.</summary>
public enum PointShape
{
    /// <summary>A filled disc.</summary>
    Circle,

    /// <summary>A ring.</summary>
    Ring,

    /// <summary>A filled square.</summary>
    Square,

    /// <summary>A filled diamond.</summary>
    Diamond,

    /// <summary>A filled triangle.</summary>
    Triangle,

    /// <summary>A diagonal cross: what was refused or missed.</summary>
    Cross,
}
