namespace NotebookKit.Flight.Dispersion;

/// <summary>What one flight of two stages differs by.</summary>
/// <param name="Booster">The booster.</param>
/// <param name="Day">Wind and rail, the same for both.</param>
/// <param name="Sustainer">The sustainer.</param>
/// <param name="SeparationS">Time on top of separation's [s].</param>
internal readonly record struct TwoStageDraw(StageDraw Booster, DayDraw Day, StageDraw Sustainer, double SeparationS)
{
    public const int Count = StageDraw.Count + DayDraw.Count + StageDraw.Count + 1;

    public void CopyTo(Span<double> row)
    {
        Booster.CopyTo(row);
        Day.CopyTo(row[StageDraw.Count..]);
        Sustainer.CopyTo(row[(StageDraw.Count + DayDraw.Count)..]);
        row[Count - 1] = SeparationS;
    }
}
