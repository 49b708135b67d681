using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Vessels.Laying;

/// <summary>What the plies of a vessel come to on its diameter: angles, thickness, cut lengths, masses.</summary>
/// <param name="Vessel">The vessel.</param>
/// <param name="Plies">Its plies as they lie, from the inside out.</param>
/// <param name="LinerMass">Mass of the liner over its whole length.</param>
/// <param name="EndsMass">Mass of both ends.</param>
/// <param name="CentreOfMass">Empty centre of mass, forward of the nozzle end of the straight part.</param>
/// <param name="Findings">What has to be said.</param>
/// <remarks>Source: as <see cref="SleeveFit"/>; thickness and mass from areal weight, densities and fibre volume fraction.</remarks>
public sealed record Layup(
    PressureVessel Vessel, IReadOnlyList<PlyGeometry> Plies, Mass LinerMass, Mass EndsMass, Length CentreOfMass,
        IReadOnlyList<Finding> Findings) : Result
{
    private static readonly ModelCard Card = new(
        "Layup geometry",
        [
            "Yarns of a sleeve keep their number and length; they lie at the angle their diameter asks for.",
            "Cured thickness holds the ply's fibre at its fibre volume fraction, without voids.",
            "A veil adds mass and no strength.",
        ],
        "Sleeves from 5° to 89°; past jamming tows narrow and thicken, which is a warning.",
        [VesselSources.Braiding]);

    /// <summary>Cured thickness of all plies.</summary>
    public Length Thickness => Length.FromMillimeters(Plies.Sum(p => p.Thickness.Millimeters));

    /// <summary>Outer diameter of the vessel.</summary>
    public Length OuterDiameter => Plies.Count > 0 ? Plies[^1].OuterDiameter : Vessel.Liner.OuterDiameter;

    /// <summary>Dry fibre in all plies.</summary>
    public Mass FibreMass => Mass.FromGrams(Plies.Sum(p => p.FibreMass.Grams));

    /// <summary>Resin in all plies, nothing wasted.</summary>
    public Mass ResinMass => Mass.FromGrams(Plies.Sum(p => p.ResinMass.Grams));

    /// <summary>Empty mass: fibre, resin, liner, ends.</summary>
    public Mass Mass => FibreMass + ResinMass + LinerMass + EndsMass;

    /// <summary>Mass of liner and plies a length of the straight part.</summary>
    public LinearDensity WallMassPerLength => LinearDensity.FromGramsPerMeter((FibreMass + ResinMass
        + LinerMass).Grams / LayupModel.WallLength(Vessel).Meters);

    /// <summary>Name of a ply, with its number where another has the same name.</summary>
    /// <param name="ply">Which ply, counted from the inside; 0 to the number of plies less one.</param>
    public string NameOf(int ply)
    {
        new ValidRange<int>(0, Plies.Count - 1).Check(ply, "number of the ply", "Plies are counted from the inside, the first is 0.");
        var name = Plies[ply].Ply.Name;
        return Plies.Count(p => p.Ply.Name == name) > 1 ? $"{name} (ply {ply + 1})" : name;
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; internal init; } = Findings;

    /// <inheritdoc/>
    public override string Title => $"Layup, {Vessel.Name}";

    /// <inheritdoc/>
    public override ModelCard Model => Card;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Plies.Select((p, i) => new ResultLine(
            NameOf(i), $"{p.FibreDirections}, {p.Thickness.ToUnit(LengthUnit.Millimeter).Show()}",
            p.Fit is { } fit
                ? $"{p.ArealWeight.Show()} on {p.InnerDiameter.ToUnit(LengthUnit.Millimeter).Show()}, covers {fit.Coverage.Show(2)}, cut "
                    + $"{p.CutLength.ToUnit(LengthUnit.Millimeter).Show()}"
                : $"{p.ArealWeight.Show()} on {p.InnerDiameter.ToUnit(LengthUnit.Millimeter).Show()}, cut "
                    + $"{p.CutLength.ToUnit(LengthUnit.Millimeter).Show()}{(p.CutWidth is { } around ?
                        $" × {around.ToUnit(LengthUnit.Millimeter).Show()} around" : "")}")),
        new("Outer diameter", OuterDiameter.ToUnit(LengthUnit.Millimeter).Show(),
            $"bore {Vessel.Liner.Bore.ToUnit(LengthUnit.Millimeter).Show()}"),
        new("Volume inside", Vessel.Volume.Show()),
        new("Fibre", FibreMass.Show()),
        new("Resin", ResinMass.Show(), "in the plies, nothing wasted"),
        new("Liner", LinerMass.Show()),
        new("Ends", EndsMass.ToUnit(MassUnit.Gram).Show()),
        new("Empty mass", Mass.Show(), $"wall {WallMassPerLength.Show()}"),
        new("Centre of mass", CentreOfMass.ToUnit(LengthUnit.Millimeter).Show(), "forward of the nozzle end of the straight part"),
    ];

    /// <inheritdoc/>
    public override Working Working => LayupModel.Work(this);
}
