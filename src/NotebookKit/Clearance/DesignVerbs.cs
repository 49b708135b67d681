using NotebookKit.DesignFiles;

namespace NotebookKit.Clearance;

/// <summary>What is done with a design as its file has it.</summary>
public static class DesignVerbs
{
    /// <summary>Computes the design anew and holds it against its own requirements. Source: see the result's model card.</summary>
    /// <param name="design">The design.</param>
    public static DesignCheck Check(this Design design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new(design);
    }
}
