using System.Runtime.CompilerServices;
using Microsoft.DotNet.Interactive;

namespace NotebookKit.Interactive.Live;

/// <summary>Finds the front-end of a session, where it has one that takes controls.</summary>
public static class FrontEnd
{
    // Bound to the life of each kernel, so that sessions don't see each other's.
    private static readonly ConditionalWeakTable<Kernel, IFrontEndLink> Links = [];

    /// <summary>Gives a session its front-end.</summary>
    /// <param name="kernel">Any kernel of the session.</param>
    /// <param name="link">The front-end.</param>
    public static void Attach(Kernel kernel, IFrontEndLink link)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        Links.AddOrUpdate(kernel.RootKernel, link);
    }

    /// <summary>The front-end of the session whose cell runs; none where there is none, as in an exported page.</summary>
    public static IFrontEndLink? Current =>
        KernelInvocationContext.Current is { } context && Links.TryGetValue(context.HandlingKernel.RootKernel, out var link) ? link : null;
}
