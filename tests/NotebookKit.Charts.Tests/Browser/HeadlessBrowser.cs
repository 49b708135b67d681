using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;

namespace NotebookKit.Charts.Tests.Browser;

/// <summary>A browser without a window, where the machine has one: opens a page from disk, with no network, and reads what its script
/// wrote.</summary>
internal static partial class HeadlessBrowser
{
    private static readonly string? Program = new[] { "chromium", "chromium-browser", "google-chrome", "google-chrome-stable" }
        .SelectMany(name => (Environment.GetEnvironmentVariable("PATH")
            ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);

    public static string WhyNot => Program is null ? "No Chromium on this machine; install it to run this test." : "";

    /// <summary>The text of the element "result" once the page has come to rest.</summary>
    public static string Run(string html)
    {
        var folder = Directory.CreateTempSubdirectory("notebookkit-page");
        try
        {
            var page = Path.Combine(folder.FullName, "page.html");
            File.WriteAllText(page, html);
            var start = new ProcessStartInfo(Program!) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in new[]
            {
                "--headless", "--no-sandbox", "--disable-gpu", "--enable-unsafe-swiftshader", "--host-resolver-rules=MAP * ~NOTFOUND",
                    "--virtual-time-budget=20000",
                $"--user-data-dir={Path.Combine(folder.FullName, "profile")}", "--dump-dom", new Uri(page).AbsoluteUri,
            })
            {
                start.ArgumentList.Add(argument);
            }
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var dom = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            var result = Result().Match(dom);
            return result.Success ? WebUtility.HtmlDecode(result.Groups["text"].Value)
                : throw new InvalidOperationException($"The page wrote no result. {errors.Result}");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [GeneratedRegex("""<pre id="result">(?<text>.*?)</pre>""", RegexOptions.Singleline)]
    private static partial Regex Result();
}
