using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Commands;

/// <summary><c>#!working name</c>: how the result in a variable was reached, step by step.</summary>
public sealed class WorkingCommand : KernelDirectiveCommand
{
    /// <summary>Name of a variable that holds a result or a working.</summary>
    public string Name { get; set; } = "";

    internal static KitCommandInfo Info { get; } =
        new("#!working", "#!working burst", "Shows how the result in a variable (here: burst) was reached: formula, numbers, "
            + "answer, source.");

    internal static async Task Handle(WorkingCommand command, KernelInvocationContext context)
    {
        var found = await ValueOf(command.Name, context);
        switch (found)
        {
            case IResult { Working.Steps.Count: 0 } result:
                context.Fail(context.Command, message: $"'{command.Name}' ({result.Title}) holds a result that shows no working.");
                break;
            case IResult result:
                KernelInvocationContextExtensions.Display(context, result.Working);
                break;
            case Working working:
                KernelInvocationContextExtensions.Display(context, working);
                break;
            case null:
                context.Fail(context.Command, message: $"There is no variable '{command.Name}' with a value. Run the cell that makes it "
                    + $"first, then {Info.Usage}.");
                break;
            default:
                context.Fail(context.Command, message: $"'{command.Name}' holds a {found.GetType().Name}, which shows no working. Name a "
                    + $"variable that holds a result, for example: {Info.Usage}.");
                break;
        }
    }

    private static async Task<object?> ValueOf(string name, KernelInvocationContext context)
    {
        if (context.HandlingKernel.RootKernel is not CompositeKernel root) return null;
        foreach (var kernel in root.ChildKernels.Where(k => k.KernelInfo.SupportedKernelCommands.Any(c => c.Name == nameof(RequestValue))))
        {
            var answer = await kernel.SendAsync(new RequestValue(name, "text/plain"));
            if (answer.Events.OfType<ValueProduced>().FirstOrDefault() is { Value: { } value }) return value;
        }
        return null;
    }
}
