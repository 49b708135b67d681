using System;
using System.Collections.Generic;
using System.IO;
using System.IO.Compression;
using System.Linq;
using System.Text;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

/// <summary>Puts the compiled library, the page's script and style and the demo designs into one HTML file.</summary>
public sealed class PackLivePage : Task
{
    // The page is written in UTF-16: each of 46341 letters, in two runs, is one unit of it, so that two carry 31 bits; none ends a script
    // element, stands for another or is half a pair.
    private const int FirstLetter = 0x3400, FirstRun = 0xd800 - FirstLetter, SecondRun = 0xe000, Letters = 46341;

    /// <summary>Folder of the published framework.</summary>
    public string Framework { get; set; }

    /// <summary>Folder of the page's own parts.</summary>
    public string Parts { get; set; }

    /// <summary>Designs that the page offers.</summary>
    public ITaskItem[] Designs { get; set; }

    /// <summary>File to write.</summary>
    public string To { get; set; }

    /// <inheritdoc/>
    public override bool Execute()
    {
        var page = File.ReadAllText(Path.Combine(Parts, "live.html"));
        foreach (var part in new[] { "unpack.js", "worker.js", "early.js", "begin.js" })
            page = page.Replace("/*" + part + "*/", File.ReadAllText(Path.Combine(Parts, part)));
        var (own, files) = (new StringBuilder(), new StringBuilder());
        // The page's own script: its parts, in the order of their numbers.
        var scripts = Directory.GetFiles(Parts, "*.js").Where(f => char.IsDigit(Path.GetFileName(f)[0]))
            .OrderBy(f => f, StringComparer.Ordinal);
        Append(own, "id=\"style\"", File.ReadAllBytes(Path.Combine(Parts, "live.css")));
        Append(own, "id=\"page\"", new UTF8Encoding(false).GetBytes(string.Concat(scripts.Select(File.ReadAllText))));
        foreach (var design in Designs)
            Append(own, "class=\"design\" data-name=\"" + Path.GetFileName(design.ItemSpec) + "\"", File.ReadAllBytes(design.ItemSpec));
        // The loader's modules come first, then the largest: each part is unpacked while the rest of the page is still being read.
        foreach (var file in Directory.GetFiles(Framework, "*.js").OrderBy(f => f, StringComparer.Ordinal)
            .Concat(Directory.GetFiles(Framework, "*.wasm").OrderByDescending(f => new FileInfo(f).Length)))
        {
            Append(files, "data-name=\"" + Path.GetFileName(file) + "\"", File.ReadAllBytes(file));
            files.Append("<script>part()</script>\n");
        }

        // The mark at the beginning says UTF-16, whatever a web server says of its files.
        page = page.Replace("<!--page-->", own.ToString()).Replace("<!--parts-->", files.ToString());
        File.WriteAllText(To, page, new UnicodeEncoding(bigEndian: false, byteOrderMark: true));
        Log.LogMessage(MessageImportance.Low, "Packed " + To);
        return true;
    }

    private static void Append(StringBuilder files, string attributes, byte[] bytes)
    {
        var packed = Packed(bytes);
        files.Append("<script type=\"text/plain\" " + attributes + " data-bytes=\"" + packed.Length + "\">").Append(Text(packed))
            .Append("</script>\n");
    }

    private static byte[] Packed(byte[] bytes)
    {
        using (var to = new MemoryStream())
        {
            // The smallest size has no name in the oldest framework that a build task is compiled for.
            using (var zip = new GZipStream(to, (CompressionLevel)3, true)) zip.Write(bytes, 0, bytes.Length);
            return to.ToArray();
        }
    }

    private static string Text(byte[] bytes)
    {
        var text = new StringBuilder((bytes.Length * 16 / 31) + 4);
        long held = 0;
        var bits = 0;
        for (var i = 0; i < bytes.Length || bits > 0; i++)
        {
            if (i < bytes.Length) held |= (long)bytes[i] << bits;
            bits += 8;
            if (bits < 31 && i < bytes.Length - 1) continue;
            var two = held & 0x7fffffff;
            text.Append(Letter((int)(two / Letters))).Append(Letter((int)(two % Letters)));
            held >>= 31;
            bits = Math.Max(0, bits - 31);
        }

        return text.ToString();
    }

    private static char Letter(int number) => (char)(number < FirstRun ? FirstLetter + number : SecondRun + number - FirstRun);
}
