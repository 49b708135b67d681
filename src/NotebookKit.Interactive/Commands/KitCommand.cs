using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using NotebookKit.Interactive.Tables;

namespace NotebookKit.Interactive.Commands;

/// <summary><c>#!kit</c>: our commands and what they do.</summary>
public sealed class KitCommand : KernelDirectiveCommand
{
    internal static KitCommandInfo Info { get; } = new("#!kit", "#!kit", "Lists the commands of NotebookKit.");

    internal static Task Handle(KitCommand command, KernelInvocationContext context)
    {
        var table = new TextTable("Commands of NotebookKit", ["Write", "to"],
            [.. CommandSet.All.Select(c => (IReadOnlyList<string>)[c.Usage, c.Explanation])]);
        KernelInvocationContextExtensions.Display(context, table);
        return Task.CompletedTask;
    }
}
