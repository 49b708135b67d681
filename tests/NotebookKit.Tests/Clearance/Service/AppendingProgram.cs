using System.Globalization;
using NotebookKit.Clearance.Service;

namespace NotebookKit.Tests.Clearance.Service;

/// <summary>
/// A process of its own that appends events to a record and reports each once it is written: <c>append file name count</c>. It says "ready"
/// and waits for a line before it begins.
/// </summary>
internal static class AppendingProgram
{
    public const string Command = "append";

    public static int Main(string[] arguments)
    {
        if (arguments is not [Command, var path, var name, var count])
        {
            Console.Error.WriteLine("This program holds tests; run them with: dotnet test");
            return 2;
        }

        var file = ServiceFile.Open(path);
        Console.Out.WriteLine("ready");
        Console.In.ReadLine();
        for (var i = 0; i < int.Parse(count, CultureInfo.InvariantCulture); i++)
        {
            // Notes of many lengths, so that a line ends anywhere in a block of the disk.
            var receipt = file.Append(new Flown($"{name}-{i}") { Notes = new string('x', i * 397 % 2000) });
            Console.Out.WriteLine($"{receipt.Entry.Sequence} {name}-{i}");
        }

        return 0;
    }
}
