using NotebookKit.Aerodynamics.Bodies;
using NotebookKit.Aerodynamics.Drag;
using NotebookKit.Flight.Site;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Design;

/// <summary>
/// A booster with a sustainer on top, each a whole vehicle of its own. The booster's own nose sits inside the sustainer's tail, or becomes
/// the shoulder between two diameters. Source of its models: those of a flight; momentum over separation.
/// </summary>
/// <param name="Name">What it is called.</param>
/// <param name="Booster">The lower stage, with the nose it falls with.</param>
/// <param name="Sustainer">The upper stage.</param>
public sealed record TwoStageVehicle(string Name, Vehicle Booster, Vehicle Sustainer)
{
    private const double JointToleranceM = 0.5e-3;

    /// <summary>What separates the stages; a latch at the end of the booster's jet unless given.</summary>
    public Separation Separation { get; init; } = Separation.ByPressureLatch();

    /// <summary>A drag curve of one's own for both together; by the build-up where none is given.</summary>
    public DragCurve? MeasuredStackDrag { get; init; }

    /// <summary>Both stages together as one vehicle, driven by the booster: for its drag, its margin and its flight to
    /// separation.</summary>
    /// <param name="site">Where it starts; the sustainer's gas is weighed in its air.</param>
    public Vehicle Stack(LaunchSite site)
    {
        ArgumentNullException.ThrowIfNull(site);
        var (body, shift) = StackBody();
        List<MassPart> parts =
        [
            .. Sustainer.Parts.Parts.Select(p => p with { Name = $"sustainer: {p.Name}" }),
            .. Booster.Parts.Parts.Select(p => p with { Name = $"booster: {p.Name}", At = p.At + shift }),
            .. ChargeParts(site),
        ];
        return new(Name, body, new(parts), Booster.Charge, Booster.Nozzle, Booster.NozzleEndAt + shift)
        {
            Flow = Booster.Flow,
            LaunchTube = Booster.LaunchTube,
            Surface = Booster.Surface,
            DragEnd = Booster.DragEnd,
            MeasuredDrag = MeasuredStackDrag,
            Deployment = Deployment.None,
        };
    }

    /// <summary>How far the booster's stations lie further aft in the stack.</summary>
    internal Length BoosterShift => StackBody().Shift;

    /// <summary>Water and gas of the sustainer as the stack carries them.</summary>
    internal MassState SustainerCharge(LaunchSite site) => ChargeParts(site).Aggregate(default(MassState),
        (sum, part) => part.State.With(sum));

    private List<MassPart> ChargeParts(LaunchSite site)
    {
        var tank = Sustainer.Airframe.Chamber;
        var (water, gas) = (Sustainer.Charge.WaterMass, Sustainer.GasKg(site).Kilograms());
        var level = water.Kilograms / tank.WaterDensity.KilogramsPerCubicMeter / (Math.PI / 4 * tank.Bore.Meters * tank.Bore.Meters);
        var ullage = tank.InsideLength.Meters - level;
        List<MassPart> parts =
        [
            new("sustainer: gas", gas, Sustainer.NozzleEndAt - (level + (ullage / 2)).Metres()) { Extent = ullage.Metres(),
                Basis = MassBasis.Weighed },
        ];
        if (water > Mass.Zero) parts.Add(new("sustainer: water", water,
            Sustainer.NozzleEndAt - (level / 2).Metres()) { Extent = level.Metres(), Basis = MassBasis.Weighed });
        return parts;
    }

    private (FinnedBody Body, Length Shift) StackBody()
    {
        var (above, below) = (Sustainer.Body, Booster.Body);
        if (above.Parts.Count == 0 || below.Parts.Count < 2)
            throw new InvalidDesignException(Name, [FlightFindings.StageHasNoBody()]);
        List<BodyPart> parts = [.. above.Parts];
        var nose = below.Parts[0].Length;
        var shift = above.Length - nose;
        if (Math.Abs(above.BaseM - below.Parts[1].ForeM) > JointToleranceM)
        {
            parts.Add(new Transition(nose, above.BaseM.Metres(), below.Parts[1].ForeM.Metres()) { Name = "Shoulder" });
            shift = above.Length;
        }

        parts.AddRange(below.Parts.Skip(1).Select(p => p with { Name = $"Booster {p.Name}" }));
        return (new FinnedBody(parts,
        [
            .. above.Fins.Select(f => f with { Name = $"Sustainer {f.Name}" }),
            .. below.Fins.Select(f => f with { Name = $"Booster {f.Name}", LeadingEdgeAt = f.LeadingEdgeAt + shift }),
        ])
        {
            Name = Name,
        }, shift);
    }
}
