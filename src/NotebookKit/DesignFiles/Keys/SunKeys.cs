using NotebookKit.DesignFiles.Parts;
using NotebookKit.DesignFiles.Shapes;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.DesignFiles.Keys;

/// <summary>How the filled vehicle waits in the sun.</summary>
internal static class SunKeys
{
    public static ObjectShape<SunAtPad> Sun { get; } = new("wait in the sun", "How the filled vehicle waits in the sun on its pad.", f =>
    {
        var sunlight = f.Needs("sunlight", Kinds.Between(Irradiance.Zero, Irradiance.FromWattsPerSquareMeter(1400),
            "A clear noon has about 1000 W/m²."), "Sunlight on a surface square to it.");
        var absorptance = f.Needs("absorptance", Kinds.Number(0.01, 1, "Black is 0.9 and above, white paint 0.3."),
            "Share of the sunlight that the coat takes up.");
        var wait = f.Needs("wait", Kinds.Between(1.Minutes(), 24.Hours(), "The vessel warms within an hour."), "How long it may wait.");
        var emittance = f.Has("emittance", Kinds.Number(0.01, 1, "Paint and laminate are about 0.9."), 0.9,
            "Emittance of the coat for heat radiation.");
        var film = f.Has("film coefficient", Kinds.Number(1, 200, "Still air has 5 to 10, wind 20 to 50."), 5,
            "Heat transfer to the air in W/(m² K); still air unless given, which errs warm.");
        var share = f.Has("share in sun", Kinds.Number(0.1, 1, "1 errs warm; a cylinder has 0.32 on average."), 1,
            "Share of the surface that the sun meets square on.");
        var limit = f.May("resin limit", Kinds.Celsius(0, 150, "Take it from the resin's data sheet."),
            "Highest temperature of the resin; the wall isn't judged unless given.");
        return v => new(sunlight(v), absorptance(v), wait(v)) { Emittance = emittance(v), Film = film(v), ShareInSun = share(v),
            ResinLimit = limit(v) };
    });
}
