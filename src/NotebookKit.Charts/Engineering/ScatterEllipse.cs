namespace NotebookKit.Charts.Engineering;

/// <summary>An ellipse that holds a share of all landings.</summary>
/// <param name="Label">What it holds: "90 %".</param>
/// <param name="East">Centre east of the pad [m]; any finite value.</param>
/// <param name="North">Centre north of the pad [m]; any finite value.</param>
/// <param name="LongHalf">Longer half axis [m]; 0 or above.</param>
/// <param name="ShortHalf">Shorter half axis [m]; 0 or above.</param>
/// <param name="BearingDegrees">Direction of the longer axis, clockwise from north [deg]; any finite value.</param>
public sealed record ScatterEllipse(string Label, double East, double North, double LongHalf, double ShortHalf, double BearingDegrees)
{
    /// <summary>Points around the ellipse, east and north of the pad [m].</summary>
    internal (double[] East, double[] North) Outline(int points = 96)
    {
        var bearing = double.DegreesToRadians(BearingDegrees);
        var (sin, cos) = Math.SinCos(bearing);
        var angles = Enumerable.Range(0, points + 1).Select(i => 2 * Math.PI * i / points).ToArray();
        return (
            [.. angles.Select(a => East + (LongHalf * Math.Cos(a) * sin) + (ShortHalf * Math.Sin(a) * cos))],
            [.. angles.Select(a => North + (LongHalf * Math.Cos(a) * cos) - (ShortHalf * Math.Sin(a) * sin))]);
    }
}
