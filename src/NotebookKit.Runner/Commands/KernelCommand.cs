using System.CommandLine;
using NotebookKit.Numerics.Disks;
using NotebookKit.Runner.Jupyter;
using NotebookKit.Runner.Running;
using NotebookKit.Runner.Workers;
using Spectre.Console;

namespace NotebookKit.Runner.Commands;

/// <summary>The commands that make the program a kernel of notebook front-ends.</summary>
internal static class KernelCommand
{
    /// <summary>Their description for the command line.</summary>
    public static Command Create()
    {
        var command = new Command("kernel", "Makes NotebookKit a kernel of the notebook front-ends on this machine.");
        command.Subcommands.Add(Action("add", "Registers the kernel.", Add));
        command.Subcommands.Add(Action("list", "Says where the kernel is registered and whether it would start.", List));
        command.Subcommands.Add(Action("remove", "Removes the kernel from the list.", Remove));
        command.Subcommands.Add(Serve());
        return command;
    }

    private static Command Action(string name, string description, Func<KernelSpec, int> action)
    {
        var prefix = new Option<string?>("--prefix") { Description = "Root of an installation, such as an environment's folder; the "
            + "user's own folder if not given." };
        var command = new Command(name, description) { prefix };
        command.SetAction(parsed => action(new KernelSpec(
            parsed.GetValue(prefix) is { } root ? JupyterFolders.DataBelow(Path.GetFullPath(root)) : JupyterFolders.UserData())));
        return command;
    }

    private static int Add(KernelSpec spec)
    {
        try
        {
            spec.Write(typeof(WorkerProgram).Assembly.Location, WorkerProgram.RuntimeHost());
        }
        catch (Exception error) when (Disk.IsFault(error))
        {
            throw new RequestException($"The kernel can't be registered in {spec.Folder} ({RunFiles.Words(error)}). Make room, look at "
                + "your rights there, or name another place with --prefix.");
        }

        Say($"{KernelInfo.DisplayName} is registered in {spec.Folder}. Choose it in your notebook front-end.");
        return ExitCodes.Success;
    }

    private static int List(KernelSpec spec)
    {
        if (!spec.Exists)
        {
            Say($"{KernelInfo.DisplayName} is not registered in {spec.DataFolder}. Use: kernel add");
            return ExitCodes.Success;
        }

        Say($"{KernelInfo.DisplayName}: {spec.Folder}");
        if (File.Exists(spec.Program))
        {
            Say($"  starts {spec.Program}");
            return ExitCodes.Success;
        }

        Say($"  its program {spec.Program} is gone: go to the folder where NotebookKit lies now and use: kernel add");
        return ExitCodes.Failed;
    }

    private static int Remove(KernelSpec spec)
    {
        if (!spec.Exists) throw new RequestException($"{KernelInfo.DisplayName} is not registered in {spec.DataFolder}.");
        spec.Remove();
        Say($"{KernelInfo.DisplayName} is removed from {spec.DataFolder}.");
        return ExitCodes.Success;
    }

    private static Command Serve()
    {
        var file = new Argument<string>("connection-file") { Description = "Connection file that the front-end wrote." };
        var command = new Command("serve", "Serves one front-end; front-ends call this.") { file };
        command.SetAction((parsed, _) => ServeAsync(parsed.GetRequiredValue(file)));
        return command;
    }

    private static async Task<int> ServeAsync(string connectionFile)
    {
        try
        {
            // Ctrl-C in the terminal of a notebook server is meant for the server; it ends its kernels by message.
            using var signals = new StopSignal(endsOnInterrupt: false);
            await using var server = new KernelServer(ConnectionFile.Read(connectionFile), Directory.GetCurrentDirectory());
            using var orphaned = new ParentWatch(signals.Token);
            await server.ServeAsync(orphaned.Token);
            return ExitCodes.Success;
        }
        catch (ConnectionException e)
        {
            await Console.Error.WriteLineAsync(e.Message);
            return ExitCodes.BadRequest;
        }
    }

    private static void Say(string text) => AnsiConsole.Console.Profile.Out.Writer.WriteLine(text);
}
