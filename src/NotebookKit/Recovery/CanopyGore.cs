using NotebookKit.Provenance;
using UnitsNet;

namespace NotebookKit.Recovery;

/// <summary>
/// One of the equal gores of a canopy as it lies flat, sewn size, without seams. A flat circular canopy's gore is a sector of the circle of
/// the nominal diameter; a hemisphere's is as wide at each place as its share of the circle of latitude. Source: geometry; the area of all
/// gores is the nominal area.
/// </summary>
public sealed record CanopyGore
{
    private readonly double _widthPerRadian, _radiusMetres;
    private readonly bool _isFlat;

    private CanopyGore(Canopy canopy, int count)
    {
        _isFlat = canopy.Type == CanopyType.FlatCircular;
        // The hemisphere with the area of the nominal circle: 2 π r² = π/4 D².
        _radiusMetres = canopy.NominalDiameter.Meters / (_isFlat ? 2 : 2 * Math.Sqrt(2));
        _widthPerRadian = 2 * Math.PI / count;
        Count = count;
    }

    /// <summary>How many make one canopy; 4 to 32.</summary>
    public int Count { get; }

    /// <summary>From the apex to the skirt, along the gore's middle.</summary>
    public Length Height => Length.FromMeters(HeightMetres);

    /// <summary>Width at the skirt, along the skirt.</summary>
    public Length SkirtWidth => WidthAt(Height);

    private double HeightMetres => _isFlat ? _radiusMetres : _radiusMetres * Math.PI / 2;

    /// <summary>The gore of a canopy; none where the number of gores isn't given, or the type's gore is no plain function of its
    /// diameter.</summary>
    /// <param name="canopy">The canopy.</param>
    /// <exception cref="InvalidDesignException">The canopy has an error.</exception>
    public static CanopyGore? Of(Canopy canopy)
    {
        ArgumentNullException.ThrowIfNull(canopy);
        InvalidDesignException.ThrowIfAny("Canopy", canopy.Validate());
        return canopy is { Gores: { } count, Type: CanopyType.FlatCircular or CanopyType.Hemispherical } ? new(canopy, count) : null;
    }

    /// <summary>Width around the canopy at a distance from the apex; a share of the canopy's circle there.</summary>
    /// <param name="fromApex">Distance along the gore's middle; 0 to <see cref="Height"/>.</param>
    /// <exception cref="OutOfRangeException">The distance is outside its range.</exception>
    public Length WidthAt(Length fromApex)
    {
        new ValidRange<Length>(Length.Zero, Length.FromMeters(HeightMetres * (1 + 1e-9))).Check(fromApex, "distance from the apex",
            "The gore ends at the skirt.");
        return Length.FromMeters(_widthPerRadian * (_isFlat ? fromApex.Meters : _radiusMetres * Math.Sin(fromApex.Meters / _radiusMetres)));
    }

    /// <summary>The sewn outline, apex at zero: down one side, along the skirt, up the other.</summary>
    /// <param name="steps">Steps down each side; 8 and more.</param>
    public IReadOnlyList<(Length Along, Length Across)> Outline(int steps = 48)
    {
        new ValidRange<int>(8, 10_000).Check(steps, "steps of the outline", "48 are finer than a pencil.");
        // A sector's side is straight and its skirt an arc; a hemisphere's gore has curved sides and, laid flat, a straight skirt.
        var half = _widthPerRadian / 2;
        List<(double Along, double Across)> side = _isFlat
            ? [(0, 0), (HeightMetres * Math.Cos(half), HeightMetres * Math.Sin(half))]
            : [.. Enumerable.Range(0, steps + 1).Select(i => HeightMetres * i / steps).Select(s =>
                (s, WidthAt(Length.FromMeters(s)).Meters / 2))];
        var skirt = _isFlat ? Enumerable.Range(1, steps - 1).Select(i => half * (1 - (2.0 * i / steps)))
            .Select(a => (Along: HeightMetres * Math.Cos(a), Across: HeightMetres * Math.Sin(a))) : [];
        return [.. side.Concat(skirt).Concat(side.AsEnumerable().Reverse().SkipLast(1).Select(p => (p.Along, -p.Across)))
            .Select(p => (Length.FromMeters(p.Item1), Length.FromMeters(p.Item2)))];
    }
}
