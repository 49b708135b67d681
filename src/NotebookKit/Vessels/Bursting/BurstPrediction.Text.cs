using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using NotebookKit.Vessels.Laying;

namespace NotebookKit.Vessels.Bursting;

/// <content>What the prediction says of itself.</content>
public sealed partial record BurstPrediction
{
    /// <inheritdoc/>
    public override string Title => $"Burst prediction, {Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForPressure;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines
    {
        get
        {
            var checks = Checks;
            return
            [
                new("Burst", Burst.ToString(), $"{WeakestPart.Name}: {WeakestPart.Cause}"),
                new("Lower-bound burst", Low.ToString(), Low == Burst ? "the same" : Low < KnownLow
                    ? "what keeps a carried sleeve on its neck isn't given" : IsMatrixDominated ? "low end of a wide band"
                    : "the fibres as laid alone"),
                new("First-ply failure (first resin crack)", FirstPlyFailure.ToString(),
                    Vessel.Liner.Material is null ? "leaks: nothing lines the wall" : "the liner keeps the water in"),
                new("Leak", Leak?.Burst.ToString() ?? "not known", Leak is { } leak ? $"{leak.Name}: {leak.Cause}"
                    : "no seal's pressure is given"),
                new("First yield of a closure", Yield?.Burst.ToString() ?? "none", Yield is { } yield ? $"{yield.Name}: {yield.Cause}"
                    : "no closure yields before it breaks"),
                .. Parts.Select(p => new ResultLine(Capital(p.Name), p.Burst.ToString(), p.Cause)),
                new("Strain at the wall's burst", BurstStrain.ToString()),
                new("Netting analysis", checks.Netting.ToString(), "fibres alone, as laid"),
                new("Isotropic wall, thin", checks.ThinWall.ToString(), "the same fibre in every direction alike"),
                new("Isotropic wall, thick", checks.ThickWall.ToString(), "by Lamé"),
                new("Fabrication efficiency", Vessel.Fabrication.Efficiency.Show(),
                    $"range {Vessel.Fabrication.EfficiencyLow.Show()} to {Vessel.Fabrication.EfficiencyHigh.Show()}"),
            ];
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [.. Layup.Findings];
            if (IsMatrixDominated) findings.Add(Finding.Warning(MatrixSentence()));
            else if (WallLow < 0.98 * WallBurst)
                findings.Add(VesselsFindings.WallIsRatedOnItsFibres(WallLow, Vessel.Liner.Material?.IsMetal == false));
            if (CheckSentence() is { } sentence) findings.Add(Finding.Note(sentence));
            if (Vessel.Liner.Material is null)
                findings.Add(VesselsFindings.NothingLinesWall(FirstPlyFailure));
            if (Outcome.LinerShare > 0.25)
                findings.Add(VesselsFindings.LinerCarriesLoad(LinerShare, WallLow < WallBurst, WallLow));
            if (WeakestPart.Burst < WallLow)
                findings.Add(VesselsFindings.WeakestPartIsNotWall(WallBurst, WeakestPart.Name, WeakestPart.Burst));
            if (Without.Count > 0)
                findings.Add(VesselsFindings.BurstDoesWithout(Without.Select(Layup.NameOf), WallBurst));
            findings.AddRange(BurstModel.Widening(this).Select(w => VesselsFindings.PlyWidensSleeve(Layup.NameOf(w.Ply),
                w.Widened.Ply.Name, w.Widened.Angle!.Value, w.Without.Layup.Plies.Skip(w.Ply).First(p => p.Fit is not null).Angle!.Value,
                (Burst, Low), (w.Without.Burst, w.Without.Low))));
            var context = Wall.Context(Layers);
            findings.AddRange(TwoEnds.Together(EndFindings.Of("Nozzle end", Vessel.NozzleEnd, context),
                EndFindings.Of("Forward end", Vessel.ForwardEnd, context)));
            if (Layers.Length > 0 && Wall.Thickness > Wall.Radius / 10)
                findings.Add(VesselsFindings.PliesAreThickForRadius(1000 * Wall.Thickness, 1000 * Wall.Radius));
            return findings;
        }
    }

    /// <summary>Why a rating is refused whatever the tests say: what isn't given of the ends.</summary>
    internal IReadOnlyList<Finding> RatingRefusals =>
        [.. TwoEnds.Together(EndFindings.Refusals("Nozzle end", Vessel.NozzleEnd), EndFindings.Refusals("Forward end", Vessel.ForwardEnd))];

    /// <inheritdoc/>
    public override Working Working => BurstModel.Work(this);

    private string MatrixSentence()
    {
        var turned = string.Join(", ", Turned.Select(t => $"{t.Ply} from {t.Laid.Show()} to {t.AtBurst.Show()}"));
        var turning = turned.Length > 0 && BurstStrain.Hoop.Percent > 3
            ? $" Fibres turn before they lock: {turned}; the body grows {BurstStrain.Hoop.Show(2)} around and "
            + $"{BurstStrain.Axial.Show(2)} along." : "";
        var band = WallLow < WallBurst ? $"{WallLow} to {WallBurst}" : $"up to {WallBurst}";
        return $"Matrix-dominated, wide band: the wall holds {band}, not one number. The fibres as laid aren't in balance: resin and "
            + $"turning fibres make up the rest.{turning} "
            + "Lay the sleeve nearer 54.7° or add a hoop or cloth ply; it is rated on the low end.";
    }

    private string? CheckSentence()
    {
        if (Layers.Length == 0) return null;
        var difference = WallBurst.Pascals - Netting.Pascals;
        if (Math.Abs(difference) < 0.08 * WallBurst.Pascals) return null;
        var percent = Digits.Round(100 * Math.Abs(difference) / WallBurst.Pascals, 2);
        if (difference < 0)
            return $"The laminate answer is {percent} % of itself below netting analysis ({Netting}): "
                + $"{(Outcome.Mode == FailureMode.LinerTear ? "the liner tears before the fibres reach their strength" :
                    "the plies don't all reach their strength at the same strain")}.";
        var liner = 100 * Outcome.LinerShare;
        return $"The laminate answer is {percent} % of itself above netting analysis of the fibres as laid ({Netting}): the liner "
            + $"carries {Digits.Round(liner, 2)} %, "
            + (IsMatrixDominated ? "and turning fibres and what is left of the resin carry the rest."
                : "and resin along the fibres, and fibres that turn a little, carry the rest.");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
