using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Launching.Heating;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using UnitsNet;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>The wait in the sun of a design's file, against the same stated in code, and on the pad sheet.</summary>
public class DesignSunTests
{
    private const string Sun = """
        { "sunlight": "950 W/m²", "absorptance": 0.9, "wait": "90 min", "share in sun": 0.5, "resin limit": "45 °C" }
        """;

    private static readonly Design Sunny = DesignFixture.Curlew.With("sun", Sun);

    [Fact]
    public void The_wait_is_that_of_its_parts_in_code()
    {
        var fill = DesignSheets.FillOf(Sunny.Stage);
        var said = DesignSheets.SunOf(Sunny.Stage, fill, null)!;
        var own = new WaitInSun
        {
            Filled = new(fill.Target, Sunny.Site!.Temperature) { Ambient = Sunny.Site.Pressure, WaterFraction = 32.Percent() },
            Chamber = fill.Chamber, Sun = new(Sunny.Site.Temperature, Irradiance.FromWattsPerSquareMeter(950), 0.9, 0.9,
                HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(5)),
            ShareInSun = 0.5, ResinLimit = 45.Celsius(), Watch = 90.Minutes(),
        }.Run();
        Tolerance.Relative(own.Pressure.Values[^1], said.Pressure.Values[^1], 1e-12);
        Tolerance.Relative(own.SunnySide.Values[^1], said.SunnySide.Values[^1], 1e-12);
        Assert.Equal(own.PassesResin, said.PassesResin);
        Assert.NotNull(said.PassesResin);
    }

    [Fact]
    public void The_pad_sheet_says_how_warm_it_gets_and_when_to_vent()
    {
        var sheet = DesignSheets.Of(Sunny.Stage, Sunny.Site, []).Pad!;
        var section = sheet.Content.Sections.Single(s => s.Heading == "Waiting in the sun, filled and shut");
        Assert.Equal(5, section.Table!.Rows.Count);
        Assert.Equal("90", section.Table.Rows[^1][0]);
        Assert.Contains(sheet.Findings, f => f.Message.Contains("the resin's limit", StringComparison.Ordinal));
        // What it may stand is what the sun leaves, and venting of the worst state is over by then.
        Tolerance.Absolute(sheet.Sun!.MustBeVented!.Value.Seconds - sheet.Vent!.WorstState.Seconds, sheet.Sun.VentBy!.Value.Seconds, 1e-9);
        Assert.Null(DesignSheets.Of(DesignFixture.Curlew.Stage, DesignFixture.Curlew.Site, []).Pad!.Sun);
    }

    [Fact]
    public void What_the_coat_takes_up_is_never_assumed()
    {
        Assert.Contains("absorptance", Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.With("sun",
            """{ "sunlight": "950 W/m²", "wait": "90 min" }""")).Message, StringComparison.Ordinal);
        Assert.Contains("1400 W/m²", Assert.Throws<DesignFileException>(() => DesignFixture.Curlew.With("sun",
            """{ "sunlight": "9500 W/m²", "absorptance": 0.9, "wait": "90 min" }""")).Message, StringComparison.Ordinal);
    }
}
