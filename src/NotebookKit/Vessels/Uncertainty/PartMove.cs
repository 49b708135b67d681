using NotebookKit.Quantities;

namespace NotebookKit.Vessels.Uncertainty;

/// <summary>How far the last test moved the belief in a part.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Before">Its B-basis without the last test.</param>
/// <param name="After">Its B-basis with it.</param>
public sealed record PartMove(string Part, GaugePressure Before, GaugePressure After)
{
    /// <summary>Change over what it was [-]; above 0 where the part is believed stronger. Source: definition of a relative
    /// change.</summary>
    public double Change => After / Before - 1;
}
