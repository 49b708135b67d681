using NotebookKit.Clearance.Designs;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;

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

    /// <summary>Checks two states of a design and says what moved from one to the other. Source: see the result's model card.</summary>
    /// <param name="design">The state after.</param>
    /// <param name="before">The state before.</param>
    public static DesignComparison Compare(this Design design, Design before)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(before);
        return new(before.Check(), design.Check());
    }

    /// <summary>Computes and checks the design for every combination of some of its values, in parallel. Source: see the result's model
    /// card.</summary>
    /// <param name="design">The design.</param>
    /// <param name="axes">What is varied; together 1 to 10 000 designs.</param>
    /// <exception cref="InvalidDesignException">No axis, one twice, or too many designs.</exception>
    /// <exception cref="DesignFiles.Trees.DesignFileException">A name means no value of the design, or the first value can't be its
    /// value.</exception>
    public static DesignSweep Sweep(this Design design, params IReadOnlyList<SweepAxis> axes)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(axes);
        return DesignSweep.Of(design, axes);
    }

    /// <summary>The same, each axis as text: "fill pressure=20..60 bar gauge/9", "throat=11 mm; 13 mm".</summary>
    /// <param name="design">The design.</param>
    /// <param name="axes">What is varied, a text each.</param>
    /// <exception cref="FormatException">A text can't be read.</exception>
    /// <exception cref="InvalidDesignException">No axis, one twice, or too many designs.</exception>
    public static DesignSweep Sweep(this Design design, params IReadOnlyList<string> axes)
    {
        ArgumentNullException.ThrowIfNull(axes);
        return design.Sweep([.. axes.Select(SweepAxis.Parse)]);
    }
}
