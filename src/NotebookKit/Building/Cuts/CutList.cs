using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using UnitsNet;

namespace NotebookKit.Building.Cuts;

/// <summary>What to cut for a vessel, ply by ply. Source: see <see cref="Model"/>.</summary>
/// <param name="Layup">The layup.</param>
/// <param name="Allowances">What is cut longer.</param>
/// <param name="Pieces">The pieces in the order they are laid.</param>
/// <param name="Findings">What has to be said.</param>
public sealed record CutList(Layup Layup, CutAllowances Allowances, IReadOnlyList<CutPiece> Pieces, IReadOnlyList<Finding> Findings)
    : Result
{
    /// <summary>Works out what to cut. Source: geometry; sleeves as <see cref="SleeveFit"/>.</summary>
    /// <param name="layup">The layup.</param>
    /// <param name="allowances">What is cut longer; the usual where none are given.</param>
    /// <exception cref="InvalidDesignException">An allowance is out of range, or a roll is too narrow for the piece; all reasons are in
    /// it.</exception>
    public static CutList Of(Layup layup, CutAllowances? allowances = null)
    {
        ArgumentNullException.ThrowIfNull(layup);
        allowances ??= new CutAllowances();
        InvalidDesignException.ThrowIfAny("Cut list", allowances.Validate());
        return CutModel.List(layup, allowances);
    }

    /// <summary>Length of a material to take off the shelf, all plies together; zero where none is used.</summary>
    /// <param name="material">Name of the material.</param>
    public Length LengthOf(string material) => Length.FromMeters(Pieces.Where(p => p.Material == material).Sum(p => p.OffTheRoll.Meters));

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; internal init; } = Findings;

    /// <inheritdoc/>
    public override string Title => $"Cut list, {Layup.Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new(
        "Cut sizes",
        [
            "A sleeve's yarns keep their length: over another diameter it covers another length, so it is cut as long as it has to be "
                + "while it lies at its own diameter.",
            "A cloth that is wider than its roll is joined from sections of equal width, each overlapping the next.",
            "A cloth on the bias is cut at 45° across the roll.",
        ],
        "Sizes are nets of the vessel plus the allowances named; check them on the liner before cutting.",
        [VesselSources.Braiding, BuildingSources.Geometry, BuildingSources.BenchPractice]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Pieces.Select(p => new ResultLine(
            p.Ply, $"{(p.Count > 1 ? $"{p.Count} × " : "")}{Mm(p.Along)}{(p.Around is { } around ? $" × {Mm(around)} around" : "")}",
            $"{Mm(p.OffTheRoll)} off the roll{(p.Note.Length > 0 ? "; " + p.Note : "")}")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new(Title, [.. Layup.Plies.Where(p => p.Fit is not null).Select(SleeveStep)]);

    private WorkingStep SleeveStep(PlyGeometry ply)
    {
        var braid = ply.Fit!.Braid;
        return new(
            $"Length of {braid.Name}", @"L_0 = L\,\frac{\cos\theta_0}{\cos\theta}",
            $"{Mm(Length.FromMeters(ply.CutLength.Meters * ply.Fit.LengthFactor))} × cos {braid.NominalAngle.Show()} / cos "
                + $"{ply.Fit.Angle.Show()}", Mm(ply.CutLength), VesselSources.Braiding);
    }

    // Nobody cuts to a tenth of a millimetre.
    private static string Mm(Length length) => $"{Digits.Round(Math.Ceiling(length.Millimeters), 5)} mm";
}

/// <summary>Pieces of one size to cut for one ply.</summary>
/// <param name="Ply">Ply it is for.</param>
/// <param name="Material">What it is cut from.</param>
/// <param name="Count">How many; 1 and more.</param>
/// <param name="Along">Size along the vessel, or the length of a sleeve or tape as it lies on the bench.</param>
/// <param name="Around">Size around the vessel; none for a sleeve or a tape.</param>
/// <param name="OffTheRoll">Length of the roll it takes.</param>
/// <param name="Note">What to mind.</param>
public sealed record CutPiece(string Ply, string Material, int Count, Length Along, Length? Around, Length OffTheRoll, string Note);
