using NotebookKit.Charts.Explorers;

namespace NotebookKit.Charts.Tests.Explorers;

/// <summary>A throw without air: every answer in closed form.</summary>
internal static class Ballistics
{
    public static readonly ExplorerParameter[] Parameters = [new("Speed", "m/s", 10, 50, 9, 20), new("Angle", "deg", 10, 80, 8, 45)];

    public static readonly ExplorerNumber[] Numbers = [new("Range", "m"), new("Height", "m")];

    public static ExplorerState Throw(IReadOnlyList<double> setting)
    {
        var (speed, angle) = (setting[0], double.DegreesToRadians(setting[1]));
        var (sin, cos) = Math.SinCos(angle);
        var end = 2 * speed * sin / 9.81;
        double[] times = [.. Enumerable.Range(0, 21).Select(i => end * i / 20)];
        return new ExplorerState { X = [.. times.Select(t => speed * cos * t)],
            Y = [.. times.Select(t => (speed * sin * t) - (4.905 * t * t))],
            Numbers = [speed * cos * end, speed * speed * sin * sin / (2 * 9.81)] };
    }

    public static ExplorerState Limited(IReadOnlyList<double> setting) =>
        setting[0] > 40 ? ExplorerState.Refused("Speed is above 40 m/s; <b>refused</b>.") : Throw(setting);

    public static Explorer Build(Func<IReadOnlyList<double>, ExplorerState>? model = null) =>
        Explorer.Build("Throw", new Axis("Distance", "m"), new Axis("Height", "m"), Parameters, Numbers, model ?? Throw);
}
