using System.CommandLine;
using NotebookKit.Runner.Wording;

namespace NotebookKit.Runner.Commands;

/// <summary>What is wrong with a command line, each mistake once and in one sentence.</summary>
internal static class CommandMistakes
{
    /// <summary>Refuses a command line that can't be understood.</summary>
    /// <param name="parsed">The command line as read.</param>
    /// <exception cref="RequestException">It has a mistake.</exception>
    public static void ThrowIfAny(ParseResult parsed)
    {
        if (parsed.Errors.Count == 0) return;
        var command = parsed.CommandResult.Command;
        List<string> sentences = [.. Unknown(parsed, command)];
        sentences.AddRange(parsed.Errors.Select(e => e.Message).Where(m => sentences.Count == 0
            || !(m.Contains("nrecognized command", StringComparison.Ordinal) || m.Contains("was not matched", StringComparison.Ordinal)
                || m.Contains("is required", StringComparison.Ordinal) || m.StartsWith("Required", StringComparison.Ordinal))));
        throw new RequestException(sentences[0], [.. sentences.Skip(1), .. command is RootCommand ? [] : new[] { Usage(command) }]);
    }

    private static IEnumerable<string> Unknown(ParseResult parsed, Command command)
    {
        if (parsed.UnmatchedTokens is not [var token, ..]) yield break;
        var shown = token.Length > 80 ? token[..80] : token;
        List<string> options = [.. command.Options.Where(o => !o.Hidden).Select(o => o.Name)];
        if (token.StartsWith('-'))
            yield return $"\"{shown}\" is no option of {command.Name}" + Meant(token, options)
                + (options.Count == 0 ? $" {command.Name} has none." : $" It takes {string.Join(", ", options)}.");
        else if (command.Subcommands.Count > 0)
        {
            List<string> commands = [.. command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name)];
            yield return $"There is no command \"{shown}\"" + Meant(token, commands) + $" Commands are {string.Join(", ", commands)}.";
        }
        else
        {
            yield return $"\"{shown}\" is more than {command.Name} takes. Put a value with spaces in quotation marks.";
        }
    }

    private static string Meant(string word, IReadOnlyList<string> known) =>
        NearestName.Of(word, known) is { } nearest ? $"; is \"{nearest}\" meant?" : ".";

    private static string Usage(Command command) => $"Usage: {command.Name} "
        + string.Join(' ', command.Arguments.Select(a => $"<{a.Name}>").Concat(command.Options.Where(o => o.Required)
            .Select(o => $"{o.Name} \"...\""))) + $"   (all of it: {command.Name} --help)";
}
