using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;

/// <summary>The list of mutants, and the text of a file with its mutants behind the switch.</summary>
internal static class MutantList
{
    /// <summary>Which mutant a process runs, and which ones a run comes by.</summary>
    public const string Switch = """
        namespace NotebookKit;

        internal static class MutantSwitch
        {
            private static readonly int Asked = int.Parse(System.Environment.GetEnvironmentVariable("NOTEBOOKKIT_MUTANT") ?? "0",
                System.Globalization.CultureInfo.InvariantCulture);
            private static readonly string Seen = System.Environment.GetEnvironmentVariable("NOTEBOOKKIT_MUTANTS_SEEN") ?? "";
            private static readonly bool[] Came = new bool[10_000];

            public static bool On(int mutant)
            {
                if (Seen.Length > 0 && !Came[mutant])
                {
                    lock (Came)
                    {
                        if (!Came[mutant]) System.IO.File.AppendAllText(Seen, $"{mutant}\n");
                        Came[mutant] = true;
                    }
                }

                return mutant == Asked;
            }
        }
        """;

    /// <summary>Reads lines of "# file | tests", then "text «original» text ==> replacement ## equivalent: why".</summary>
    public static List<Mutant> Read(string path)
    {
        List<Mutant> all = [];
        var (file, tests) = ("", "");
        foreach (var line in File.ReadLines(path).Where(l => l.Trim().Length > 0 && !l.StartsWith("//", StringComparison.Ordinal)))
        {
            if (line.StartsWith("# ", StringComparison.Ordinal))
            {
                var head = line[2..].Split(" | ");
                (file, tests) = (head[0].Trim(), head[1].Trim());
                continue;
            }

            var why = line.Split(" ## equivalent: ");
            var sides = why[0].Split(" ==> ");
            if (sides.Length != 2) throw new InvalidDataException($"A mutant is written original ==> replacement: {line}");
            all.Add(new(all.Count + 1, file, tests, sides[0].Trim(), sides[1].Trim(), why.Length > 1 ? why[1].Trim() : ""));
        }

        return all;
    }

    /// <summary>The file with each original in place of a choice by the switch.</summary>
    public static string Switched(string text, List<Mutant> mutants)
    {
        var places = mutants.Select(m => (Mutant: m, At: Find(text, m))).GroupBy(p => p.At).OrderByDescending(g => g.Key.Start).ToList();
        var result = new StringBuilder(text);
        var next = int.MaxValue;
        foreach (var place in places)
        {
            var (start, length) = place.Key;
            if (start + length > next) throw new InvalidDataException($"Mutants overlap: {place.First().Mutant}");
            next = start;
            var original = text.Substring(start, length);
            var choice = place.Aggregate($"({original})", (other, p) =>
                $"(global::NotebookKit.MutantSwitch.On({p.Mutant.Id}) ? ({p.Mutant.Replacement}) : {other})");
            result.Remove(start, length).Insert(start, choice);
        }

        return result.ToString();
    }

    private static (int Start, int Length) Find(string text, Mutant mutant)
    {
        var (open, close) = (mutant.Original.IndexOf('«'), mutant.Original.IndexOf('»'));
        var plain = open < 0 ? mutant.Original : mutant.Original.Replace("«", "").Replace("»", "");
        var at = text.IndexOf(plain, StringComparison.Ordinal);
        if (at < 0 || text.IndexOf(plain, at + 1, StringComparison.Ordinal) >= 0)
            throw new InvalidDataException($"{(at < 0 ? "Not found" : "More than once")}: {mutant}");
        return open < 0 ? (at, plain.Length) : (at + open, close - open - 1);
    }
}

/// <summary>One change of one expression.</summary>
internal sealed record Mutant(int Id, string File, string Tests, string Original, string Replacement, string Equivalent)
{
    public override string ToString() => $"{File}: {Original} ==> {Replacement}";
}
