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

/// <summary>What a result rests on: the model, what it assumes, where it holds, where it comes from.</summary>
/// <param name="Name">Name of the model.</param>
/// <param name="Assumptions">What it assumes, a sentence each.</param>
/// <param name="ValidRange">Where it holds, a sentence.</param>
/// <param name="Sources">Where it comes from.</param>
public sealed record ModelCard(string Name, IReadOnlyList<string> Assumptions, string ValidRange, IReadOnlyList<Source> Sources);

/// <summary>One number of a result as people read it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The value with its unit and sensible digits.</param>
/// <param name="Note">A short remark; may be empty.</param>
public sealed record ResultLine(string Name, string Value, string Note = "");

/// <summary>Whether a result may be used.</summary>
public enum ResultStatus
{
    /// <summary>The computation reached its end.</summary>
    Completed,

    /// <summary>The computation could not reach its end; the findings say why and no number is given for what was not reached.</summary>
    Failed,
}
