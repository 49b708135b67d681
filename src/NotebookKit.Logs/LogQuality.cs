using System.Globalization;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Logs;

/// <summary>How good the rows of a log are: gaps, stamps that stand twice, a clock that was reset, cells without a number, readings at the
/// end of what the sensor can read. In one line.</summary>
public sealed record LogQuality : Result
{
    /// <summary>An interval of so many usual ones is a gap [-]. Common practice, no source.</summary>
    internal const double GapIntervals = 3;

    internal LogQuality(string file) => File = file;

    /// <summary>File as it was asked for.</summary>
    public string File { get; }

    /// <summary>Rows of readings in the file.</summary>
    public required int Rows { get; init; }

    /// <summary>Rows that are used.</summary>
    public required int RowsUsed { get; init; }

    /// <summary>Usual time from row to row; the median.</summary>
    public required Duration Interval { get; init; }

    /// <summary>Intervals of over three usual ones.</summary>
    public required int Gaps { get; init; }

    /// <summary>The longest interval.</summary>
    public required Duration LongestGap { get; init; }

    /// <summary>When the longest interval begins.</summary>
    public required Duration LongestGapAt { get; init; }

    /// <summary>Rows with the stamp of the row before; the first of them is used.</summary>
    public required int DuplicateStamps { get; init; }

    /// <summary>Single rows with an earlier stamp than those around them; they aren't used.</summary>
    public required int RowsOutOfOrder { get; init; }

    /// <summary>Times the clock went back and ran on from there.</summary>
    public required int Resets { get; init; }

    /// <summary>Cells with nothing in them.</summary>
    public required int EmptyCells { get; init; }

    /// <summary>Cells with a logger's word for no reading, such as NaN; they count as empty.</summary>
    public required int CellsWithoutNumber { get; init; }

    /// <summary>Readings that seem to be at the end of what the sensor can read.</summary>
    public required int SaturatedReadings { get; init; }

    /// <summary>All of it in one line.</summary>
    public string Line
    {
        get
        {
            List<string> parts = [Count(Rows, "row") + (RowsUsed < Rows ? $", {RowsUsed} used" : "")];
            parts.Add($"every {Digits.Round(Interval.Seconds)} s");
            parts.Add(Gaps == 0 ? "no gaps"
                : $"{Count(Gaps, "gap")}, the longest {Digits.Round(LongestGap.Seconds)} s at {Digits.Round(LongestGapAt.Seconds, 4)} s");
            if (DuplicateStamps > 0) parts.Add(Count(DuplicateStamps, "duplicate stamp"));
            if (RowsOutOfOrder > 0) parts.Add($"{Count(RowsOutOfOrder, "row")} out of order");
            if (Resets > 0) parts.Add(Count(Resets, "clock reset"));
            if (EmptyCells > 0) parts.Add(Count(EmptyCells, "empty cell"));
            if (CellsWithoutNumber > 0) parts.Add($"{Count(CellsWithoutNumber, "cell")} without a number");
            if (SaturatedReadings > 0) parts.Add(Count(SaturatedReadings, "saturated reading"));
            return string.Join("; ", parts);
        }
    }

    /// <inheritdoc/>
    public override string Title => $"Data quality of {File}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Count of what is wrong with rows",
        [
            "An interval of more than three times the median is a gap.",
            "Equal readings in a row at the extreme of a column, entered by a steep step, are saturated; where the sensor's range is "
                + "given, readings at its ends are.",
        ],
        "Logs of two rows and more.",
        [Source.CommonPractice("gaps of three intervals, saturation of five equal readings")]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines => [new("Data quality", Line)];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => [];

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        new("Gaps", @"\Delta t > 3\,\mathrm{median}(\Delta t)", $"median {Digits.Round(Interval.Seconds)} s", Count(Gaps, "gap"),
            Source.CommonPractice("three intervals")),
    ]);

    /// <summary>The line.</summary>
    public override string ToString() => Line;

    internal static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
