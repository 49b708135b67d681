using NotebookKit.Provenance;

namespace NotebookKit.Charts.Drawings;

/// <summary>All that a map of the field needs: plain numbers [m], east and north of the pad, angles [°] clockwise from north.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Landings">Where flights came down.</param>
public sealed record FieldMap(string Title, IReadOnlyList<(double EastM, double NorthM)> Landings)
{
    /// <summary>Edge of the field; empty where it isn't given.</summary>
    public IReadOnlyList<(double EastM, double NorthM)> Field { get; init; } = [];

    /// <summary>The field in words: "circle of 500 m"; empty where it isn't given.</summary>
    public string FieldName { get; init; } = "";

    /// <summary>The ellipse that holds nine in ten; none draws none.</summary>
    public FieldEllipse? Ellipse { get; init; }

    /// <summary>Where the rail leans to, and by how much from upright [°]; none where it stands upright.</summary>
    public (double TowardsDegrees, double LeanDegrees)? Rail { get; init; }

    /// <summary>Where the wind blows from, and its speed in words; none where it isn't given.</summary>
    public (double FromDegrees, string Speed)? Wind { get; init; }

    /// <summary>Distance of the crew [m]; none where it isn't shown.</summary>
    public double? CrewM { get; init; }

    /// <summary>Distance of spectators [m]; none where it isn't shown.</summary>
    public double? SpectatorsM { get; init; }

    /// <summary>A remark for the key, such as the share off the field; may be empty.</summary>
    public string Remark { get; init; } = "";

    /// <summary>All that is wrong with it.</summary>
    public IReadOnlyList<Finding> Validate() => Landings.Count < 2
        ? [Finding.Error($"The map has {Landings.Count} landings; it needs at least 2.")]
        : Landings.Any(l => !double.IsFinite(l.EastM) || !double.IsFinite(l.NorthM))
            ? [Finding.Error("A landing of the map isn't a number; leave failed flights out.")] : [];
}

/// <summary>An ellipse about a place [m].</summary>
/// <param name="EastM">Middle, east of the pad [m].</param>
/// <param name="NorthM">Middle, north of the pad [m].</param>
/// <param name="MajorM">Longer semi-axis [m]; above 0.</param>
/// <param name="MinorM">Shorter semi-axis [m]; above 0.</param>
/// <param name="BearingDegrees">Bearing of the longer axis [°].</param>
public sealed record FieldEllipse(double EastM, double NorthM, double MajorM, double MinorM, double BearingDegrees);
