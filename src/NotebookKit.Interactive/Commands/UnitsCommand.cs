using System.Reflection;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using NotebookKit.Interactive.Tables;
using NotebookKit.Quantities;

namespace NotebookKit.Interactive.Commands;

/// <summary><c>#!units</c>: how numbers with units are written.</summary>
public sealed class UnitsCommand : KernelDirectiveCommand
{
    internal static KitCommandInfo Info { get; } = new("#!units", "#!units",
        "Lists how numbers with units are written, for example 63.Millimetres() and 55.BarGauge().");

    internal static Task Handle(UnitsCommand command, KernelInvocationContext context)
    {
        KernelInvocationContextExtensions.Display(context, Table());
        return Task.CompletedTask;
    }

    // Read from the library itself, so that a literal added there is listed here.
    internal static TextTable Table()
    {
        var rows =
            from type in typeof(LengthLiterals).Assembly.GetExportedTypes()
            where type.Name.EndsWith("Literals", StringComparison.Ordinal)
            let methods = type.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(m => !m.IsSpecialName).Select(m =>
                m.Name).Distinct().ToList()
            where methods.Count > 0
            orderby type.Name
            select (IReadOnlyList<string>)[Spaced(type.Name[..^"Literals".Length]), string.Join("   ", methods.Select(m => $"12.{m}()"))];
        return new TextTable("Numbers with units", ["Quantity", "write"], [.. rows])
        {
            Remark = "Gauge and absolute pressure are different types and never mix: say which one is meant. Plain Pressure is for "
                + "stress and stiffness.",
        };
    }

    private static string Spaced(string name) =>
        string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : c.ToString()));
}
