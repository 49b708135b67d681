using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Directives;

namespace NotebookKit.Interactive.Commands;

/// <summary>The commands of ours.</summary>
internal static class CommandSet
{
    /// <summary>Adds the commands where they aren't there yet; says whether it did.</summary>
    public static bool Register(Kernel root)
    {
        if (root is not CompositeKernel composite) return false;
        if (composite.KernelInfo.SupportedDirectives.Any(d => d.Name == CautionsCommand.Name)) return false;
        composite.AddDirective<CautionsCommand>(
            new KernelActionDirective(CautionsCommand.Name) { Description = "Shows every caution that applies to pressurised composite vessels, their proof, filling and flight." },
            CautionsCommand.Handle);
        return true;
    }
}
