using System.Runtime.CompilerServices;
using NotebookKit.Charts;
using NotebookKit.Charts.Drawings;
using NotebookKit.Charts.Explorers;
using NotebookKit.Interactive.Live;
using NotebookKit.Charts.Marks;
using NotebookKit.Logs;
using NotebookKit.Quantities;

namespace NotebookKit.Interactive.Formatters;

/// <summary>
/// Registers charts and drawings. A foreign kernel may bring an F# core too old for Plotly.NET; charts then show as still pictures only,
/// and that is said once instead of failing cell by cell.
/// </summary>
internal static class ChartFormatters
{
    /// <summary>Registers what this kernel can show; gives a sentence where it can't show everything.</summary>
    /// <param name="passesFigures">Whether figures reach the front-end as objects.</param>
    public static string? Register(bool passesFigures)
    {
        try
        {
            return RegisterAll(passesFigures);
        }
        catch (Exception problem) when (IsMissing(problem))
        {
            return $"Charts can't be shown in this kernel, because {Name(problem)} is missing or too old. Use NotebookKit's own kernel "
                + "for them; everything else works.";
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static string? RegisterAll(bool passesFigures)
    {
        Registry.AddAll(typeof(EngineeringChart).Assembly, DesignFormatter.Html, DesignFormatter.Plain);
        Registry.AddAll(typeof(LogReader).Assembly, DesignFormatter.Html, DesignFormatter.Plain);
        Registry.Add<Drawing>(ChartFormatter.Html, ChartFormatter.Plain);
        DrawnResultFormatter.Register();
        Registry.Add<Explorer>(ExplorerFormatter.Html, ExplorerFormatter.Plain);
        Registry.Add<LiveExplorer>(
            (LiveExplorerFormatter.ViewMime, LiveExplorerFormatter.View), (Registry.Html, LiveExplorerFormatter.Html),
                (Registry.Plain, LiveExplorerFormatter.Plain));
        if (!passesFigures) return Still("it can't pass figures on");
        try
        {
            Try();
        }
        catch (Exception problem) when (IsMissing(problem))
        {
            return Still($"{Name(problem)} is missing or too old");
        }
        Registry.Add<EngineeringChart>((ChartFormatter.FigureMime, ChartFormatter.Figure), (Registry.Html, ChartFormatter.Html),
            (Registry.Plain, ChartFormatter.Plain));
        return null;
    }

    private static string Still(string reason)
    {
        Registry.Add<EngineeringChart>(ChartFormatter.StillHtml, ChartFormatter.StillPlain);
        return $"Charts are still pictures in this kernel, because {reason}. {ChartFormatter.NeedsOurs}";
    }

    // A first figure; what it needs is loaded here, and the first chart of the notebook comes at once.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Try()
    {
        var column = new Series("Trial", "-", [0, 1]);
        _ = new EngineeringChart("Trial", Axis.For(column), Axis.For(column)) { Marks = [new Curve(column, column)] }.ToFigureJson();
    }

    private static bool IsMissing(Exception problem) =>
        problem is FileNotFoundException or FileLoadException or TypeLoadException or BadImageFormatException or MissingMemberException
        || (problem is TypeInitializationException { InnerException: { } inner } && IsMissing(inner));

    private static string Name(Exception problem) => problem switch
    {
        FileNotFoundException { FileName: { } file } => Short(file),
        FileLoadException { FileName: { } file } => Short(file),
        TypeInitializationException { InnerException: { } inner } => Name(inner),
        _ => "a part they need",
    };

    private static string Short(string assembly) => assembly.Split(',')[0];
}
