using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Flight.Site;

public sealed partial record LaunchSite
{
    /// <summary>The launch rail; 1.5 m upright where none is given.</summary>
    public Rail Rail { get; init; } = new(1.5.Metres());

    /// <summary>Wind against height; <see cref="WindProfile.NotGiven"/> unless given. Say <see cref="WindProfile.Calm"/> where there is
    /// none.</summary>
    public WindProfile Wind { get; init; } = WindProfile.NotGiven;

    /// <summary>Gusts on top of the wind, from a seed; none where none are given.</summary>
    public GustField? Gusts { get; init; }

    /// <summary>Height above the pad that no flight may pass; 10 m to 10 km; none where none is given.</summary>
    public Length? Ceiling { get; init; }

    /// <summary>The ground that everything must land on; none where none is given.</summary>
    public FlyingField? Field { get; init; }

    /// <summary>What a flight over the ground has to say of the wind, where nobody has given one.</summary>
    internal IReadOnlyList<Finding> WindFindings() => Wind.IsGiven
        ? []
        : [FlightFindings.WindOfFlightIsNotGiven()];

    private IEnumerable<Finding> FieldFindings()
    {
        foreach (var finding in Rail.Validate()) yield return finding;
        if (Ceiling is { } ceiling && new ValidRange<Length>(10.Metres(), 10_000.Metres()).Find(ceiling, "ceiling",
            "It is a height above the pad.") is { } wrong)
            yield return wrong;
        if (Field is null) yield break;
        foreach (var finding in Field.Validate()) yield return finding;
    }
}
