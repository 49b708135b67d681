using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive.CSharp;

namespace NotebookKit.Runner.Engine;

/// <summary>
/// Settings of the compiler that the kernel doesn't offer. They are reached by the name of its field: the package is pinned, and tests see
/// when one stops working.
/// </summary>
internal static class ScriptSettings
{
    /// <summary>
    /// Makes cells compile with line numbers, so that an exception can say where it was thrown, and gives the preloaded namespaces to files
    /// that a cell loads with #load, as the cell itself has them.
    /// </summary>
    /// <param name="kernel">Kernel that hasn't run anything yet.</param>
    /// <param name="namespaces">What a loaded file may use without saying so.</param>
    public static void Apply(CSharpKernel kernel, IEnumerable<string> namespaces) =>
        Change(kernel, options => options.WithEmitDebugInformation(true).WithFileEncoding(Encoding.UTF8).AddImports(namespaces));

    /// <summary>
    /// Stops every cell from carrying all references anew. A cell inherits them from the cell before anyway; carried again, they add up,
    /// and the thousandth cell would weigh a thousand times as much.
    /// </summary>
    /// <param name="kernel">Kernel that has run its first cell.</param>
    public static void InheritReferences(CSharpKernel kernel)
        => Change(kernel, options => options.WithReferences(Array.Empty<MetadataReference>()));

    private static void Change(CSharpKernel kernel, Func<ScriptOptions, ScriptOptions> change)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.Instance | BindingFlags.NonPublic);
        if (field?.GetValue(kernel) is ScriptOptions options) field.SetValue(kernel, change(options));
    }
}
