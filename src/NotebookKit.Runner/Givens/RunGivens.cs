using NotebookKit.Record.Givens;
using NotebookKit.Runner.Commands;

namespace NotebookKit.Runner.Givens;

/// <summary>The givens that a run asks for, from the command line or, where nothing is said there, from the environment.</summary>
internal static class RunGivens
{
    /// <summary>The environment variable that may carry them: lines of <c>name=value</c>.</summary>
    public const string Variable = "NOTEBOOKKIT_GIVENS";

    /// <summary>Reads them.</summary>
    /// <param name="said">Those of the command line, each <c>name=value</c>.</param>
    /// <exception cref="RequestException">Those of the environment can't be read.</exception>
    public static GivenOverrides Of(IReadOnlyCollection<string> said)
    {
        if (said.Count > 0) return GivenOverrides.Parse(said);
        try
        {
            return GivenOverrides.Parse((Environment.GetEnvironmentVariable(Variable) ?? "").Split('\n'));
        }
        catch (FormatException error)
        {
            throw new RequestException($"The environment variable {Variable} can't be used: {error.Message}");
        }
    }

    /// <summary>The same as assignments, as a worker is told them.</summary>
    /// <param name="givens">The givens.</param>
    public static IEnumerable<string> Assignments(GivenOverrides givens) => givens.Names.Select(n => $"{n}={givens.TextOf(n)}");
}
