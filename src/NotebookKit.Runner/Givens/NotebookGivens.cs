using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;

namespace NotebookKit.Runner.Givens;

/// <summary>The givens of one notebook and of the files it loads.</summary>
/// <param name="Notebook">Name of the notebook.</param>
/// <param name="Givens">What its code states, in order.</param>
/// <param name="Unreadable">Why there may be givens that can't be told before it runs, a clause each; empty where all can.</param>
internal sealed record NotebookGivens(string Notebook, IReadOnlyList<StatedGiven> Givens, IReadOnlyList<string> Unreadable)
{
    /// <summary>Those of a name, upper and lower case alike; a notebook may state one more than once.</summary>
    /// <param name="name">Name.</param>
    public IEnumerable<StatedGiven> Named(string name)
    {
        var listed = Givens.Where(g => string.Equals(g.Name, name, StringComparison.OrdinalIgnoreCase)).ToList();
        return listed.Count > 0 ? listed
            : Designs.Where(d => Holds(d, name)).Select(d => new StatedGiven(name, null, null, null, null, "", "") { Of = d });
    }

    /// <summary>Why a name can't be told apart in one of its designs; none where it can.</summary>
    /// <param name="name">Name.</param>
    public string? Ambiguity(string name)
    {
        foreach (var design in Designs)
        {
            try
            {
                design.Has(name);
            }
            catch (DesignFileException several)
            {
                return several.Message;
            }
        }

        return null;
    }

    // A name that means several values of this design may be another notebook's.
    private static bool Holds(Design design, string name)
    {
        try
        {
            return design.Has(name);
        }
        catch (DesignFileException)
        {
            return false;
        }
    }

    /// <summary>Designs that it reads, of which every value may be given by its path or its plain name.</summary>
    public IReadOnlyList<Design> Designs { get; init; } = [];
}
