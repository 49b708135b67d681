namespace NotebookKit.Provenance;

/// <summary>What every result of the library can show of itself. Notebooks, pages and the terminal all draw from it.</summary>
public interface IResult
{
    /// <summary>A heading: "Burst prediction, Curlew vessel".</summary>
    string Title { get; }

    /// <summary>What the result rests on.</summary>
    ModelCard Model { get; }

    /// <summary>Whether it may be used.</summary>
    ResultStatus Status { get; }

    /// <summary>Its main numbers, in reading order.</summary>
    IReadOnlyList<ResultLine> Lines { get; }

    /// <summary>What has to be said about input or answer.</summary>
    IReadOnlyList<Finding> Findings { get; }

    /// <summary>The dangers that apply.</summary>
    IReadOnlyList<Caution> Cautions { get; }

    /// <summary>How the answer was reached.</summary>
    Working Working { get; }
}
