using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive.CSharp;

namespace NotebookKit.Runner.Engine;

/// <summary>
/// Makes cells compile with line numbers, so that an exception can say where it was thrown, and gives the preloaded namespaces to files that a cell
/// loads with #load, as the cell itself has them.
/// </summary>
internal static class ScriptSettings
{
    /// <summary>Changes the kernel's script options. The kernel offers no setting for it; the package is pinned, and a test guards the field's name.</summary>
    /// <param name="kernel">Kernel that hasn't run anything yet.</param>
    /// <param name="namespaces">What a loaded file may use without saying so.</param>
    public static void Apply(CSharpKernel kernel, IEnumerable<string> namespaces)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.Instance | BindingFlags.NonPublic);
        if (field?.GetValue(kernel) is ScriptOptions options)
            field.SetValue(kernel, options.WithEmitDebugInformation(true).WithFileEncoding(Encoding.UTF8).AddImports(namespaces));
    }
}
