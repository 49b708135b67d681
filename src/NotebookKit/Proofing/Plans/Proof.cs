using System.Globalization;
using NotebookKit.Materials.Fluids;
using NotebookKit.Proofing.Blast;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Bursting;
using NotebookKit.Vessels.Laying;
using NotebookKit.Vessels.Ratings;
using UnitsNet;

namespace NotebookKit.Proofing.Plans;

/// <summary>A proof to be planned: the vessel, its working pressure, the rule, the steps. Water only.</summary>
/// <remarks>Source: volumes as <see cref="FilledVessel"/>, energies as <see cref="StoredEnergy"/>, distance as
/// <see cref="StandOff"/>.</remarks>
public sealed record Proof
{
    /// <summary>Name of the vessel.</summary>
    public required string Vessel { get; init; }

    /// <summary>Internal volume; 10 mL to 200 L.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Working pressure that is to be proved; 1 to 200 bar gauge.</summary>
    public required GaugePressure WorkingPressure { get; init; }

    /// <summary>Growth of the vessel under pressure.</summary>
    public required WallExpansion Wall { get; init; }

    /// <summary>How high it is proved and what is accepted.</summary>
    public ProofRule Rule { get; init; } = ProofRule.Club;

    /// <summary>What it is filled with; anything but water is refused.</summary>
    public ProofMedium Medium { get; init; } = ProofMedium.Water;

    /// <summary>Air that can't be bled, measured at ambient pressure; 0 to the limit.</summary>
    public Volume TrappedAir { get; init; }

    /// <summary>Largest share of the volume that may stay air; 0 to 2 %. 0.5 % unless said (common practice, no source).</summary>
    public Ratio TrappedAirLimit { get; init; } = 0.5.Percent();

    /// <summary>The water.</summary>
    public Water Water { get; init; } = Water.AtRoomTemperature;

    /// <summary>Surrounding air pressure.</summary>
    public AbsolutePressure Ambient { get; init; } = AbsolutePressure.StandardSeaLevel;

    /// <summary>Steps as shares of the proof pressure, rising, the last one 100 % (common practice, no source).</summary>
    public IReadOnlyList<Ratio> Steps { get; init; } = [25.Percent(), 50.Percent(), 75.Percent(), 90.Percent(), 100.Percent()];

    /// <summary>Hold at each step below proof; 0 to 1 hour.</summary>
    public Duration StepHold { get; init; } = 60.Seconds();

    /// <summary>Hold at proof pressure; 10 s to 30 min.</summary>
    public Duration ProofHold { get; init; } = 120.Seconds();

    /// <summary>Hold at working pressure on the way down, while leaks are looked for from afar; 0 to 1 hour.</summary>
    public Duration LeakHold { get; init; } = 10.Minutes();

    /// <summary>How the vessel lies, where it is long and lies on two supports.</summary>
    public HorizontalSupport? Support { get; init; }

    /// <summary>Printing of the stand-off formula.</summary>
    public StandOffEdition StandOffEdition { get; init; } = StandOffEdition.AsmeLater;

    /// <summary>Proof pressure: working pressure times the rule's factor.</summary>
    public GaugePressure ProofPressure => Rule.ProofPressure(WorkingPressure);

    /// <summary>The vessel full of water.</summary>
    public FilledVessel Filled => new(Volume, Wall, Water, TrappedAir, Ambient);

    /// <summary>
    /// The proof that a rating asks for: to the rating's proof pressure, with the growth that the layup predicts, on two supports the
    /// vessel's length apart. Source: the rating's and the layup's.
    /// </summary>
    /// <param name="rating">A rating that was given.</param>
    /// <exception cref="InvalidDesignException">The rating was refused.</exception>
    public static Proof For(Rating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        var vessel = rating.Vessel;
        var layup = vessel.Layup();
        var thickness = (layup.OuterDiameter - vessel.Liner.Bore) / 2;
        var wallArea = Math.PI / 4 * (Math.Pow(layup.OuterDiameter.Meters, 2) - Math.Pow(vessel.Liner.Bore.Meters, 2));
        var growth = vessel.Expansion(rating.ProofPressure);
        return new()
        {
            Vessel = vessel.Name,
            Volume = vessel.Volume,
            WorkingPressure = rating.WorkingPressure,
            Rule = ProofRule.For(rating),
            Wall = WallExpansion.Of(growth),
            Support = new(vessel.Liner.Bore, thickness, vessel.Length,
                Density.FromKilogramsPerCubicMeter(layup.WallMassPerLength.KilogramsPerMeter / wallArea),
                AxialModulusOf(growth, thickness)),
        };
    }

    /// <summary>Everything wrong with this proof.</summary>
    public IReadOnlyList<Finding> Validate()
    {
        List<Finding?> findings =
        [
            Medium == ProofMedium.Water
                ? null
                : ProofingFindings.MediumIsAir(ProofPressure),
            string.IsNullOrWhiteSpace(Vessel) ? ProofingFindings.VesselHasNoName() : null,
            new ValidRange<Volume>(10.Millilitres(), 200.Litres()).Find(Volume, "volume of the vessel", "Check the unit it was given in."),
            new ValidRange<GaugePressure>(1.BarGauge(), 200.BarGauge()).Find(WorkingPressure, "working pressure",
                "Club vessels work at 5 to 90 bar; was another unit meant?"),
            new ValidRange<Ratio>(Ratio.Zero, 2.Percent()).Find(TrappedAirLimit.ToUnit(UnitsNet.Units.RatioUnit.Percent),
                "limit of trapped air", "More air than that is a proof with air."),
            new ValidRange<Duration>(Duration.Zero, 1.Hours()).Find(StepHold, "hold at a step", "A hold is minutes, not hours."),
            new ValidRange<Duration>(10.Seconds(), 30.Minutes()).Find(ProofHold, "hold at proof pressure",
                "A shorter hold shows nothing; a longer one makes the laminate creep."),
            new ValidRange<Duration>(Duration.Zero, 1.Hours()).Find(LeakHold, "hold at working pressure",
                "In a longer hold the weather moves the gauge more than a leak does."),
            new ValidRange<AbsolutePressure>(0.5.BarAbsolute(), 1.2.BarAbsolute()).Find(Ambient, "ambient pressure",
                "Was a gauge pressure meant?"),
            FindTrappedAir(),
            FindSteps(),
        ];
        findings.AddRange(Rule.Validate());
        findings.AddRange(Wall.Validate());
        findings.AddRange(Support?.Validate() ?? []);
        return findings.OfType<Finding>().ToList();
    }

    /// <summary>Plans the proof: steps, water to pump, energies, stand-off, supports, checklist.</summary>
    /// <exception cref="InvalidDesignException">Something in the design is refused; all reasons are in it.</exception>
    public ProofPlan Plan()
    {
        var findings = Validate();
        InvalidDesignException.ThrowIfAny($"Proof of {Vessel}", findings);
        var filled = Filled;
        List<ProofStep> steps = [.. Steps.Select((share, i) => StepAt(filled, ProofPressure * share.DecimalFractions,
            i == Steps.Count - 1 ? ProofHold : StepHold))];
        if (LeakHold > Duration.Zero) steps.Add(StepAt(filled, WorkingPressure, LeakHold));
        return new ProofPlan(this, steps, findings);
    }

    // The straight part's pull along over its strain along is what bending meets; a shallow sleeve that shortens under pressure says
    // nothing of it, and 5 GPa is then a low guess for a cracked angle-ply (typical).
    private static Pressure AxialModulusOf(VesselExpansion growth, Length thickness)
    {
        var strain = growth.Strain.Axial.DecimalFractions;
        var stress = growth.HoopForce.NewtonsPerMeter / 2 / thickness.Meters;
        return strain > 1e-4 ? Pressure.FromGigapascals(Math.Clamp(stress / strain / 1e9, 1, 300)) : Pressure.FromGigapascals(5);
    }

    private static ProofStep StepAt(FilledVessel filled, GaugePressure pressure, Duration hold) =>
        new(pressure, hold, filled.WallExpansion(pressure), filled.WaterCompressed(pressure), filled.AirCompressed(pressure));

    private Finding? FindTrappedAir()
    {
        var limit = (Volume * TrappedAirLimit.DecimalFractions).ToUnit(UnitsNet.Units.VolumeUnit.Milliliter);
        return new ValidRange<Volume>(0.Millilitres(), limit)
            .Find(TrappedAir.ToUnit(UnitsNet.Units.VolumeUnit.Milliliter), "trapped air",
                $"Above {TrappedAirLimit.Show()} of the volume the air, not the water, holds the energy: turn the vessel until the vent "
                + "is highest and bleed again.");
    }

    private Finding? FindSteps()
    {
        var shares = Steps.Select(s => s.Percent).ToList();
        var rising = shares.Count > 0 && shares[0] > 0 && shares.Zip(shares.Skip(1)).All(p => p.Second > p.First)
            && Math.Abs(shares[^1] - 100) < 1e-9;
        return rising
            ? null
            : ProofingFindings.StepsOfProofDoNotRise(shares.Select(s => s.ToString("0.#", CultureInfo.InvariantCulture)));
    }
}

/// <summary>What the vessel is filled with for a proof.</summary>
public enum ProofMedium
{
    /// <summary>Water: little energy, a burst is a splash and a crack.</summary>
    Water,

    /// <summary>Air: refused. Named only so that asking for it gets a clear answer.</summary>
    Air,
}
