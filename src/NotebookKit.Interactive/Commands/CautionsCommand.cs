using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Commands;

/// <summary><c>#!cautions</c>: every caution on one list.</summary>
public sealed class CautionsCommand : KernelDirectiveCommand
{
    internal static KitCommandInfo Info { get; } =
        new("#!cautions", "#!cautions", "Shows every caution for pressurised composite vessels: proof, filling, flight and bench.");

    internal static Task Handle(CautionsCommand command, KernelInvocationContext context)
    {
        IReadOnlyList<Caution> all = [..
            Cautions.ForProof.Concat(Cautions.ForFilling).Concat(Cautions.ForFlight).Concat(Cautions.ForBench).Distinct()];
        KernelInvocationContextExtensions.Display(context, all);
        return Task.CompletedTask;
    }
}
