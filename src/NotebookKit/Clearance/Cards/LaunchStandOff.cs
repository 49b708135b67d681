using NotebookKit.Flight.Design;
using NotebookKit.Flight.Flights;
using NotebookKit.Flight.Site;
using NotebookKit.Flight.Staging;
using NotebookKit.Materials.Fluids;
using NotebookKit.Proofing.Blast;
using NotebookKit.Propulsion.Charges;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Clearance.Cards;

/// <summary>
/// How far crew and spectators stay from a filled vehicle, computed for its vessels as they are filled. Source: ASME PCC-2, Appendices
/// 501-II and 501-III, for the crew; the spectators' larger distance is common practice, no source.
/// </summary>
/// <remarks>Distances may be kept larger, never smaller: <see cref="Keeping"/>.</remarks>
public sealed record LaunchStandOff : Result
{
    /// <summary>Spectators stand without cover: so many times the crew's distance [-]; common practice, no source.</summary>
    public const double SpectatorFactor = 2;

    /// <summary>Spectators stay at least this share of the highest apogee away [-]; common practice, no source.</summary>
    public const double ShareOfApogee = 0.25;

    private static readonly Length Farthest = 2000.Metres();

    private LaunchStandOff(IReadOnlyList<Charge> charges, string vehicle, Energy energy, Length apogee, Length? crew = null,
        Length? spectators = null)
    {
        Charges = charges;
        Vehicle = vehicle;
        Apogee = apogee;
        Blast = StandOff.ForEnergy(energy);
        var (byCrew, byApogee) = (Blast.Distance * SpectatorFactor, apogee * ShareOfApogee);
        MinimumCrew = Blast.Distance;
        MinimumSpectators = byCrew > byApogee ? byCrew : byApogee;
        CrewSetBy = crew > MinimumCrew ? "kept larger by choice" : Blast.FloorGoverns ? "floor of the method"
            : "blast of the stored energy";
        SpectatorsSetBy = spectators > MinimumSpectators ? "kept larger by choice"
            : byCrew >= byApogee ? $"{SpectatorFactor} times the crew's distance, without cover (common practice, no source)"
            : $"{(ShareOfApogee * 100).Percent().Show()} of the highest apogee (common practice, no source)";
        Crew = crew ?? MinimumCrew;
        Spectators = spectators ?? MinimumSpectators;
    }

    /// <summary>What the vehicle is called.</summary>
    public string Vehicle { get; }

    /// <summary>The charges it was computed for, the booster's first.</summary>
    public IReadOnlyList<Charge> Charges { get; }

    /// <summary>Highest apogee that was reckoned with.</summary>
    public Length Apogee { get; }

    /// <summary>Stored energy and its distance.</summary>
    public StandOff Blast { get; }

    /// <summary>Computed distance of the crew, behind cover.</summary>
    public Length MinimumCrew { get; }

    /// <summary>Computed distance of spectators, without cover.</summary>
    public Length MinimumSpectators { get; }

    /// <summary>Distance that the crew keeps, behind cover.</summary>
    public Length Crew { get; }

    /// <summary>Distance that spectators keep.</summary>
    public Length Spectators { get; }

    /// <summary>What sets the crew's distance.</summary>
    public string CrewSetBy { get; }

    /// <summary>What sets the spectators' distance.</summary>
    public string SpectatorsSetBy { get; }

    /// <inheritdoc/>
    public override string Title => $"Stand-off at the pad, {Vehicle}";

    /// <inheritdoc/>
    public override ModelCard Model => new(
        "Stand-off at the pad",
        [.. Blast.Model.Assumptions, "Gas at fill pressure above the water and the compressed water itself, all vessels together.",
            "The crew is behind cover; spectators are not."],
        Blast.Model.ValidRange,
        Blast.Model.Sources);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        new("Crew, behind cover", Crew.Show(), CrewSetBy),
        new("Spectators", Spectators.Show(), SpectatorsSetBy),
        new("Stored energy", StandOff.ShowEnergy(Blast.Energy),
            string.Join(" and ", Charges.Select(c => $"{c.Chamber.Volume.Show()} at {c.Pressure}"))),
        new("Blast formula alone", Blast.ByFormula.Show()),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Blast.Findings;

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForFilling;

    /// <inheritdoc/>
    public override Working Working => new(Title,
    [
        .. Blast.Working.Steps,
        new("Spectators", @"R_s = \max(2\,R_c,\ \frac{h}{4})", $"max({SpectatorFactor} × {MinimumCrew.Show()}, {Apogee.Show()} / 4)",
            MinimumSpectators.Show(), Source.CommonPractice("distance of spectators")),
    ]);

    /// <summary>The stand-off of one vehicle as it is charged. Source: ASME PCC-2, Appendices 501-II and 501-III.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be flown; carries all findings.</exception>
    public static LaunchStandOff For(Vehicle vehicle, LaunchSite site)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return new([vehicle.Charge], vehicle.Name, Stored(vehicle.Charge, site), HighestApogee(vehicle, site));
    }

    /// <summary>The stand-off of two stages, both charged. Source: ASME PCC-2, Appendices 501-II and 501-III.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="site">Where it starts.</param>
    /// <exception cref="InvalidDesignException">The vehicle can't be flown; carries all findings.</exception>
    /// <exception cref="InvalidOperationException">The stages never separate, so there is no apogee to reckon with.</exception>
    public static LaunchStandOff For(TwoStageVehicle vehicle, LaunchSite site)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var (booster, sustainer) = (vehicle.Booster.Charge, vehicle.Sustainer.Charge);
        return new([booster, sustainer], vehicle.Name, Stored(booster, site) + Stored(sustainer, site),
            WithLightDrag(vehicle).Fly(site).Apogee);
    }

    /// <summary>The same with distances that are kept larger than the computed ones.</summary>
    /// <param name="crew">Distance of the crew; the computed one to 2 km.</param>
    /// <param name="spectators">Distance of spectators; the computed one to 2 km.</param>
    /// <exception cref="OutOfRangeException">A distance is below the computed one.</exception>
    public LaunchStandOff Keeping(Length crew, Length spectators)
    {
        new ValidRange<Length>(MinimumCrew, Farthest).Check(crew, "crew's distance",
            "The distance can't be below the computed stand-off. Move the control post back.");
        new ValidRange<Length>(MinimumSpectators, Farthest).Check(spectators, "spectators' distance",
            "The distance can't be below the computed stand-off. Move the line back.");
        return new(Charges, Vehicle, Blast.Energy, Apogee, crew, spectators);
    }

    /// <summary>Why this isn't the stand-off of a vehicle with these charges; none where it is.</summary>
    internal string? Unlike(string vehicle, IReadOnlyList<Charge> charges)
    {
        if (vehicle != Vehicle) return $"the stand-off was computed for {Vehicle}, not for {vehicle}";
        if (charges.Count != Charges.Count) return $"the stand-off was computed for {Charges.Count} vessels, the vehicle has "
            + $"{charges.Count}";
        var other = charges.Zip(Charges).FirstOrDefault(c => c.First != c.Second);
        return other == default
            ? null
            : $"the stand-off was computed for a fill of {other.Second.Chamber.Volume.Show()} to {other.Second.Pressure} with "
                + $"{other.Second.WaterFraction.Show()} of water, the vehicle is filled to {other.First.Pressure} in "
                + $"{other.First.Chamber.Volume.Show()} with {other.First.WaterFraction.Show()}";
    }

    /// <summary>Highest apogee over the drag band.</summary>
    private static Length HighestApogee(Vehicle vehicle, LaunchSite site) => WithLightDrag(vehicle).Fly(site).Apogee;

    internal static TwoStageVehicle WithLightDrag(TwoStageVehicle vehicle) =>
        vehicle with { Booster = WithLightDrag(vehicle.Booster), Sustainer = WithLightDrag(vehicle.Sustainer) };

    internal static Vehicle WithLightDrag(Vehicle vehicle) => vehicle.MeasuredDrag is null ? vehicle with { DragEnd = DragEnd.Low }
        : vehicle;

    private static Energy Stored(Charge charge, LaunchSite site)
    {
        var gas = StoredEnergy.OfGas(charge.Pressure, charge.GasSpace, site.Pressure, heatCapacityRatio: charge.Gas.HeatCapacityRatio);
        return charge.Water > Volume.Zero ? gas + StoredEnergy.OfWater(charge.Pressure, charge.Water, Water.AtRoomTemperature) : gas;
    }
}
