namespace NotebookKit.Flight.Design;

/// <summary>Which end of the drag build-up's band a flight takes.</summary>
public enum DragEnd
{
    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The low end: the highest flight, the one to hold against a ceiling.</summary>
    Low,

    /// <summary>The high end: the lowest flight.</summary>
    High,
}
