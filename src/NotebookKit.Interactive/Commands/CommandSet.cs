using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Directives;

namespace NotebookKit.Interactive.Commands;

/// <summary>The commands of ours.</summary>
internal static class CommandSet
{
    public static IReadOnlyList<KitCommandInfo> All { get; } = [KitCommand.Info, CautionsCommand.Info, UnitsCommand.Info,
        WorkingCommand.Info];

    /// <summary>Adds the commands; false where they are there already.</summary>
    public static bool Register(CompositeKernel root)
    {
        // A second AddDirective of one name throws.
        if (root.KernelInfo.SupportedDirectives.Any(d => d.Name == KitCommand.Info.Name)) return false;
        root.AddDirective<KitCommand>(Declare(KitCommand.Info), KitCommand.Handle);
        root.AddDirective<CautionsCommand>(Declare(CautionsCommand.Info), CautionsCommand.Handle);
        root.AddDirective<UnitsCommand>(Declare(UnitsCommand.Info), UnitsCommand.Handle);
        var working = Declare(WorkingCommand.Info);
        working.Parameters.Add(new KernelDirectiveParameter("--name",
            "variable that holds a result or a working") { AllowImplicitName = true, Required = true });
        root.AddDirective<WorkingCommand>(working, WorkingCommand.Handle);
        return true;
    }

    private static KernelActionDirective Declare(KitCommandInfo info)
        => new(info.Name) { Description = $"{info.Explanation} Usage: {info.Usage}" };
}

/// <summary>A command of ours as it explains itself.</summary>
/// <param name="Name">How it is called: "#!cautions".</param>
/// <param name="Usage">The whole line: "#!working burst".</param>
/// <param name="Explanation">What it does, a sentence.</param>
internal sealed record KitCommandInfo(string Name, string Usage, string Explanation);
