using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive.CSharp;

namespace NotebookKit.Runner.Engine;

/// <summary>Makes cells compile with line numbers, so that an exception can say where it was thrown.</summary>
internal static class ScriptDebugging
{
    /// <summary>Turns line numbers on. The kernel offers no setting for it; the package is pinned, and a test guards the field's name.</summary>
    /// <param name="kernel">Kernel that hasn't run anything yet.</param>
    public static void TurnOn(CSharpKernel kernel)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.Instance | BindingFlags.NonPublic);
        if (field?.GetValue(kernel) is ScriptOptions options)
            field.SetValue(kernel, options.WithEmitDebugInformation(true).WithFileEncoding(Encoding.UTF8));
    }
}
