using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Flight.Site;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>Where it flies: air, rail, wind, ceiling, field.</summary>
internal static class SiteKeys
{
    private static readonly UnitShape<Length> Elevation = Kinds.Metres(-500, 6000, "It is counted from mean sea level.");
    private static readonly UnitShape<Speed> Wind = Kinds.MetresPerSecond(0, 60, "No one flies in more.");
    private static readonly UnitShape<Length> Reference = Kinds.Metres(1, 300, "Weather stations measure at 10 m.");
    private static readonly UnitShape<Angle> Direction = Kinds.Degrees(-360, 360, "Clockwise from north.");
    private static readonly UnitShape<Length> Place = Kinds.Metres(-20_000, 20_000, "It is counted from the pad.");

    private static readonly EitherShape<Atmosphere, Atmosphere> AtmosphereShape = new(
        new WordShape<Atmosphere>("atmosphere", ("standard", Atmosphere.Standard), ("linear lapse", Atmosphere.LinearLapse)), a => a,
        new ChoiceShape<Atmosphere>("atmosphere in full", "kind",
            (["of the day"], "The standard lapse hung on readings at the ground.", f =>
            {
                var at = f.Needs("elevation", Elevation, "Where they were read, above mean sea level.");
                var temperature = f.Needs("temperature", Kinds.Celsius(-40, 55, "Check the thermometer's unit."), "Air temperature there.");
                var pressure = f.Needs("pressure", Kinds.Between(0.4.BarAbsolute(), 1.1.BarAbsolute(),
                    "Give the barometer's own reading, not the one reduced to sea level."), "Air pressure there.");
                return v => Atmosphere.OfTheDay(at(v), temperature(v), pressure(v));
            })));

    private static readonly ObjectShape<Rail> RailShape = new("rail", "The launch rail.", f =>
    {
        var guided = f.Needs("guided", Kinds.Metres(0.05, 20, "Measure until the last button leaves."),
            "Way that the vehicle is guided over.");
        var elevation = f.Has("elevation", Kinds.Degrees(45, 90, "Range rules want 60° or more."), 90.Degrees(),
            "Angle above the horizon.");
        var towards = f.Has("towards", Direction, 0.Degrees(), "Where it leans to, clockwise from north.");
        var friction = f.Has("friction", Kinds.Number(0, 1, "Plastic on aluminium has 0.1 to 0.3."), 0.2, "Coefficient of friction.");
        return v => new Rail(guided(v)) { Elevation = elevation(v), Towards = towards(v), Friction = friction(v) };
    });

    private static readonly ObjectShape<WindLayer> Layer = new("wind at a height", "Wind at one height of a profile.", f =>
    {
        var height = f.Needs("height", Kinds.Metres(0, 20_000, "Heights are above ground."), "Height above ground.");
        var speed = f.Needs("speed", Wind, "Wind speed.");
        var from = f.Needs("from", Direction, "Where it blows from, clockwise from north.");
        return v => new(height(v), speed(v), from(v));
    });

    private static readonly ChoiceShape<WindProfile> WindShape = new("wind", "kind",
        (["calm"], "No wind, as somebody has said or measured.", _ => _ => WindProfile.Calm),
        (["uniform"], "The same wind at every height.", f =>
        {
            var speed = f.Needs("speed", Wind, "Wind speed.");
            var from = From(f);
            return v => WindProfile.Uniform(speed(v), from(v));
        }),
        (["power law"], "Wind that rises by a power of height.", f => Law(f, f2 =>
        {
            var exponent = f2.Has("exponent", Kinds.Number(0, 0.6, "1/7 over open land, more over rough ground."), 1.0 / 7, "Exponent.");
            return (v, speed, reference, from) => WindProfile.PowerLaw(speed, reference, exponent(v), from);
        })),
        (["over sea"], "Power law over the sea.", f => Law(f, _ => (_, speed, reference, from) => WindProfile.OverSea(speed, reference,
            from))),
        (["over city"], "Power law over a city.", f => Law(f, _ => (_, speed, reference, from) =>
            WindProfile.OverCity(speed, reference, from))),
        (["log law"], "Wind that rises by the logarithm of height.", f => Law(f, f2 =>
        {
            var roughness = f2.Needs("roughness", Kinds.Metres(0.0001, 30, "0.03 m over grass, 0.1 m over crops, 1 m over woods."),
                "Roughness length of the ground.");
            return (v, speed, reference, from) => WindProfile.LogLaw(speed, reference, roughness(v), from);
        })),
        (["table"], "A measured or forecast profile.", f =>
        {
            var layers = f.Needs("layers", Kinds.List(Layer, 1, 1000), "Rows in rising order of height.");
            return v => WindProfile.Table(layers(v));
        }));

    private static readonly ObjectShape<GustField> Gusts = new("gusts", "Gusts on top of the wind, from a seed.", f =>
    {
        var wind = f.Needs("wind at 20 ft", Kinds.MetresPerSecond(0, 30, "45 kn already stands for severe turbulence."),
            "Mean wind at 20 ft.");
        var top = f.Needs("top", Kinds.Metres(1, 2000, "The model holds up to 2000 m."), "Height up to which there are gusts.");
        var seed = f.Needs("seed", Kinds.Count(0, int.MaxValue, "Any whole number."), "Seed: the same gives the same gusts.");
        return v => new DrydenTurbulence(wind(v)).Field(top(v), (ulong)seed(v));
    });

    private static readonly ObjectShape<FieldCorner> Corner = new("corner of the field", "A corner of the field, seen from the pad.", f =>
    {
        var east = f.Needs("east", Place, "To the east of the pad.");
        var north = f.Needs("north", Place, "To the north of the pad.");
        return v => new(east(v), north(v));
    });

    private static readonly ChoiceShape<FlyingField> FieldShape = new("field", "kind",
        (["circle"], "A circle about the pad.", f =>
        {
            var radius = f.Needs("radius", Kinds.Metres(5, 20_000, "It is counted from the pad."), "Its radius.");
            return v => FlyingField.Circle(radius(v));
        }),
        (["outline"], "A polygon.", f =>
        {
            var corners = f.Needs("corners", Kinds.List(Corner, 3, 200), "Its corners in order, either way round.");
            return v => FlyingField.Outline([.. corners(v)]);
        }));

    public static ObjectShape<LaunchSite> Site { get; } = new("site", "Where it flies.", f =>
    {
        var name = f.Needs("name", TextShape.Name, "Name of the field.");
        var elevation = f.Needs("elevation", Elevation, "Height of the pad above mean sea level.");
        var atmosphere = f.Else("atmosphere", AtmosphereShape, Atmosphere.Standard, "The air above it; \"standard\" unless given.");
        var rail = f.Part("rail", RailShape, "The launch rail; 1.5 m upright unless given.");
        var wind = f.Else("wind", WindShape, WindProfile.NotGiven, "Wind against height; without it no drift of a flight holds.");
        var gusts = f.Part("gusts", Gusts, "Gusts on top of the wind; none unless given.");
        var ceiling = f.May("ceiling", Kinds.Metres(10, 10_000, "It is a height above the pad."),
            "Height above the pad that no flight may pass.");
        var field = f.Part("field", FieldShape, "The ground that everything must land on.");
        return v =>
        {
            var site = new LaunchSite(name(v), elevation(v), atmosphere(v))
            {
                Wind = wind(v), Gusts = gusts(v), Ceiling = ceiling(v), Field = field(v),
            };
            return rail(v) is { } own ? site with { Rail = own } : site;
        };
    });

    private static Func<Values, Angle> From(FieldList f) =>
        f.Has("from", Direction, 270.Degrees(), "Where it blows from, clockwise from north.");

    private static Func<Values, WindProfile> Law(FieldList f,
        Func<FieldList, Func<Values, Speed, Length, Angle, WindProfile>> define)
    {
        var speed = f.Needs("speed", Wind, "Wind speed at the reference height.");
        var reference = f.Needs("reference", Reference, "Reference height.");
        var make = define(f);
        var from = From(f);
        return v => make(v, speed(v), reference(v), from(v));
    }
}
