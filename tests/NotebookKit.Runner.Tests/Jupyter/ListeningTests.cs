using System.Diagnostics;
using System.Net;
using System.Text.Json;

namespace NotebookKit.Runner.Tests.Jupyter;

/// <summary>Where the kernel listens, as the operating system sees it.</summary>
public sealed class ListeningTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [SkippableFact]
    public async Task It_listens_at_the_address_of_the_connection_file_and_nowhere_else()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Reads Linux's table of sockets.");
        // An address of this machine that nothing else uses.
        var connection = KernelClient.NewConnection() with { Ip = "127.0.0.7" };
        await File.WriteAllTextAsync(folder["connection.json"], JsonSerializer.Serialize(connection));
        using var process = ProgramRun.Start("kernel", "serve", folder["connection.json"]);
        try
        {
            using var client = new KernelClient(connection);
            client.WaitUntilHeard();
            Assert.Equal("2", client.Value("1 + 1"));

            int[] ports = [connection.ShellPort, connection.ControlPort, connection.IopubPort, connection.StdinPort,
                connection.HeartbeatPort];
            List<Process> family = [process, .. Children(process.Id)];
            Assert.True(family.Count > 1);
            var listening = family.SelectMany(Listening).ToList();
            Assert.Equal(ports.Order(), listening.Select(l => l.Port).Order());
            Assert.All(listening, l => Assert.Equal(IPAddress.Parse("127.0.0.7"), l.Address));
        }
        finally
        {
            process.Kill(entireProcessTree: true);
        }
    }

    private static IEnumerable<Process> Children(int parent) => Directory.EnumerateDirectories($"/proc/{parent}/task")
        .SelectMany(t => File.ReadAllText(Path.Combine(t, "children")).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .Select(id => Process.GetProcessById(int.Parse(id, System.Globalization.CultureInfo.InvariantCulture)));

    // A process's sockets are links to "socket:[number]"; the tables hold the same numbers with address and state, 0A for listening.
    private static IEnumerable<IPEndPoint> Listening(Process process)
    {
        var own = Directory.EnumerateFiles($"/proc/{process.Id}/fd").Select(f => new FileInfo(f).LinkTarget
            ?? "").Where(l => l.StartsWith("socket:[", StringComparison.Ordinal)).Select(l => l[8..^1]).ToHashSet();
        foreach (var table in new[] { "tcp", "tcp6" })
        {
            foreach (var line in File.ReadLines($"/proc/{process.Id}/net/{table}").Skip(1))
            {
                var columns = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                if (columns[3] != "0A" || !own.Contains(columns[9])) continue;
                var (address, port) = (Convert.FromHexString(columns[1].Split(':')[0]), Convert.ToInt32(columns[1].Split(':')[1], 16));
                // Words of four bytes, the lowest first.
                for (var i = 0; i < address.Length; i += 4) Array.Reverse(address, i, 4);
                yield return new IPEndPoint(new IPAddress(address), port);
            }
        }
    }
}
