using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using NotebookKit.Interactive.Commands;
using NotebookKit.Interactive.Formatters;
using NotebookKit.Record.Givens;

namespace NotebookKit.Interactive;

/// <summary>Teaches a notebook to show our results, quantities, charts and drawings, and brings our commands.</summary>
public sealed class NotebookKitExtension : IKernelExtension
{
    /// <summary>What the extension says when it has loaded.</summary>
    public const string Greeting =
        "NotebookKit is loaded. Results show their numbers, findings, cautions and working by themselves; #!kit lists our commands.";

    /// <inheritdoc/>
    public Task OnLoadAsync(Kernel kernel) => LoadAsync(kernel);

    /// <summary>Loads formatters and commands into a kernel; a second call does nothing more.</summary>
    /// <param name="kernel">Any kernel of the notebook.</param>
    /// <param name="passesFigures">
    /// Whether the program around the kernel hands figures to the front-end as the objects they are. The stock kernel makes text of them,
    /// which front-ends don't draw: there
    /// charts are still pictures, and say which kernel shows them live.
    /// </param>
    public static Task LoadAsync(Kernel kernel, bool passesFigures = false) => LoadAsync(kernel, passesFigures, GivenOverrides.None);

    /// <summary>The same for a run that was asked to use other givens, which its cards then say.</summary>
    /// <param name="kernel">Any kernel of the notebook.</param>
    /// <param name="passesFigures">Whether figures reach the front-end as objects.</param>
    /// <param name="givens">The values asked for.</param>
    internal static Task LoadAsync(Kernel kernel, bool passesFigures, GivenOverrides givens)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        if (kernel.RootKernel is not CompositeKernel root || !CommandSet.Register(root)) return Task.CompletedTask;
        var shortfall = FormatterSet.Register(passesFigures, givens);
        // A cell of a kernel that isn't ours has to do without what ours gives every session; the next cell has it. From inside a cell it
        // can only be put off.
        if (!passesFigures && KernelInvocationContext.Current
            is not null) root.FindKernelByName("csharp")?.DeferCommand(new SubmitCode($"{OurNamespaces.Usings}\n{Session.Declaration}"));
        // Outside a cell there is nowhere to say it.
        KernelInvocationContext.Current?.DisplayAs(shortfall is null ? Greeting : $"{Greeting} {shortfall}", "text/plain");
        return Task.CompletedTask;
    }
}
