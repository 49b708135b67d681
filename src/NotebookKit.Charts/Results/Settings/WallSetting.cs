using NotebookKit.Charts.Explorers;
using NotebookKit.DesignFiles;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Charts.Results.Settings;

/// <summary>Another wall for one setting of its explorer: place of the sleeve in the design's materials, how often its hoop wrap is laid,
/// water fraction [%]. Nobody burst a twin of such a wall: it is rated without a test.</summary>
internal sealed class WallSetting
{
    private const int Points = 25;

    private readonly Design _design;
    private readonly IReadOnlyList<Braid> _braids;
    private readonly Mass _others;
    private readonly HoopWrap _wrap;

    /// <param name="design">The design; its vessel has sleeves and a hoop wrap.</param>
    /// <exception cref="InvalidDesignException">It has none, or can't be computed.</exception>
    public WallSetting(Design design)
    {
        var vessel = design.Vessel;
        _design = design;
        _braids = [.. design.Materials.AllOf<Braid>()];
        Own = vessel.Plies.OfType<BraidedSleeve>().FirstOrDefault()?.Braid ?? throw Lacks("braided sleeve");
        _wrap = vessel.Plies.OfType<HoopWrap>().FirstOrDefault() ?? throw Lacks("hoop wrap");
        _others = design.Vehicle.Parts.MassProperties().Mass - vessel.Layup().Mass;

        InvalidDesignException Lacks(string what) => new(design.Name,
            [Finding.Error($"the vessel has no {what} that another could stand for. Add one to its plies.")]);
    }

    /// <summary>Sleeves to pick from.</summary>
    public IReadOnlyList<string> Sleeves => [.. _braids.Select(b => b.Name)];

    /// <summary>The vessel's own sleeve.</summary>
    public Braid Own { get; }

    /// <summary>The answer.</summary>
    public ExplorerState Answer(IReadOnlyList<double> s)
    {
        try
        {
            var built = Built(_braids[(int)Math.Clamp(Math.Round(s[0]), 0, _braids.Count - 1)], (int)Math.Round(s[1]));
            var rated = built.Rate(_design.Stage.Rules);
            var (layup, chamber) = (built.Layup(), built.ToChamber(rated));
            double[] fills = [.. Enumerable.Range(0, Points).Select(i => 5 + (rated.WorkingPressure.Bar - 5) * i / (Points - 1))];
            double[] heights = [.. fills.Select(f => Apogee(chamber, f.BarGauge(), s[2].Percent(), _others + layup.Mass))];
            return new ExplorerState
            {
                X = fills, Y = heights, Numbers = [rated.WorkingPressure.Bar, layup.Mass.Grams, heights.Max()],
            };
        }
        catch (Exception refusal) when (refusal is InvalidDesignException or OutOfRangeException)
        {
            return ExplorerState.Refused(refusal is InvalidDesignException { Findings: var found }
                ? found.First(f => f.Severity == FindingSeverity.Error).Message : refusal.Message);
        }
    }

    private double Apogee(Chamber chamber, GaugePressure fill, Ratio water, Mass dry)
    {
        var vehicle = _design.Vehicle;
        var site = DesignSetting.SiteOf(_design);
        return new VerticalFlight(new Charge(chamber, water, fill, site.Temperature), vehicle.Nozzle, dry, vehicle.Body.DragCurves().Middle,
            site).Peak().ApogeeMetres;
    }

    private PressureVessel Built(Braid braid, int wraps)
    {
        var vessel = _design.Vessel;
        var at = vessel.Plies.ToList().IndexOf(_wrap);
        return vessel with
        {
            Plies = [.. vessel.Plies.SelectMany((p, i) => p switch
            {
                BraidedSleeve sleeve => [sleeve with { Braid = braid }],
                HoopWrap => i == at ? Enumerable.Repeat<Ply>(_wrap, wraps) : [],
                _ => [p],
            })],
        };
    }
}
