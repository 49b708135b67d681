using NotebookKit.Clearance;
using NotebookKit.DesignFiles;
using NotebookKit.DesignFiles.Trees;
using NotebookKit.Flight.Dispersion;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Recovery;
using UnitsNet;

namespace NotebookKit.Tests.DesignFiles;

/// <summary>Fill, fins, gear and scatter of a design's file, against the same things stated in code.</summary>
public class DesignEquipmentTests
{
    private const string Fill = """
        {
          "regulator": "60 bar gauge", "restrictor": { "kind": "orifice", "diameter": "0.5 mm", "discharge coefficient": 0.8 },
          "port": "under water", "water in line": "20 mL", "check valve": true
        }
        """;

    private const string Fins = """
        {
          "sheet": { "name": "carbon sheet, 0/90", "shear modulus": "5 GPa", "flexural strength": "400 MPa" },
          "bond": { "fillet leg": "10 mm", "strength": "10 MPa" }, "gust": "6 m/s"
        }
        """;

    private const string Gear = """
        {
          "cord": { "stiffness": "800 N/m", "breaking load": "600 N" }, "front": "212 g", "apart": "8 m/s", "anchor": "120 N",
          "joint": {
            "pins": 2, "pin diameter": "2 mm", "pin shear strength": "60 MPa", "piston bore": "66 mm", "separating force": "684 N",
            "drag separation": "5 N", "trapped pressure": "0.018 bar gauge"
          }
        }
        """;

    private static readonly Design Bare = DesignFixture.Curlew.Without("pad").Without("fin structure").Without("recovery.gear")
        .Without("scatter");

    private static readonly Design Whole = Bare.With("pad", Fill).With("fin structure", Fins).With("recovery.gear", Gear)
        .With("scatter", """{ "flights": 40, "seed": 7, "wind speed spread": "10 %" }""");

    [Fact]
    public void The_fill_is_that_of_its_parts_in_code()
    {
        var (chamber, water) = (Bare.Vehicle.Charge.Chamber, 32.Percent());
        var run = new PadFill
        {
            Chamber = chamber, Supply = 60.BarGauge(), Target = 58.BarGauge(), WaterFraction = water,
            Restrictor = new Orifice(0.5.Millimetres(), 0.8), Ambient = Bare.Site!.Pressure, Temperature = Bare.Site.Temperature,
            Heat = FillHeat.Wall, Wall = FillWall.Of(chamber, water), Port = PortPosition.UnderWater, WaterInLine = 20.Millilitres(),
            HasCheckValve = true,
        }.Run();
        Assert.Equal(run.DurationWithWater!.Value.Seconds, ((Duration)Of("fill time")).Seconds, 9);
    }

    [Fact]
    public void The_fins_are_judged_at_the_maximum_speed_of_light_drag()
    {
        var fast = (Bare.Vehicle with { DragEnd = DragEnd.Low }).Fly(Bare.Site!).Figures.MaximumSpeed;
        var fins = Bare.Stage.Body!.FinStructure(new("s", 5.Gigapascals(), 400.Megapascals(), Source.CommonPractice("s")),
            new(10.Millimetres(), 10.Megapascals(), Source.CommonPractice("b")), fast, 6.MetresPerSecond(),
            new(Bare.Site!.Pressure, Bare.Site.Temperature));
        Assert.Equal(fins.Flutter.Margin, (double)Of("flutter margin"), 9);
        Assert.Equal(fins.SheetFactor, (double)Of("factor on the fin sheet"), 9);
        Assert.Equal(fins.BondFactor, (double)Of("factor on the fin bond"), 9);
    }

    [Fact]
    public void The_opening_load_is_held_against_what_the_gear_takes()
    {
        var load = Bare.Vehicle.Fly(Bare.Site!).Figures.Opening!.DesignLoad;
        var gear = new RecoveryGear
        {
            Canopy = Bare.Vehicle.Canopy!, Cord = new ShockCord(ForcePerLength.FromNewtonsPerMeter(800), 600.Newtons()),
            Front = 212.Grams(),
            Rear = Bare.Stage.Masses.MassProperties().Mass - 212.Grams(), Apart = 8.MetresPerSecond(), Anchor = 120.Newtons(),
            Joint = new PinJoint(new ShearPins(2, 2.Millimetres(), 60.Megapascals()), 66.Millimetres(), 684.Newtons())
            {
                DragSeparation = 5.Newtons(), Trapped = 0.018.BarGauge(),
            },
        };
        Assert.Equal(gear, Whole.Stage.RecoveryGear);
        Assert.Equal(load.Newtons, ((Force)Of("opening load")).Newtons, 9);
        Assert.Equal(load / gear.Check().AllowedLoad, (double)Of("opening load over allowed load"), 9);
    }

    [Fact]
    public void The_scatter_is_that_of_so_many_flights_with_their_seed()
    {
        var flown = Bare.Vehicle.Disperse(Bare.Site!, new Spread { WindSpeed = 10.Percent() }, 40, 7);
        Assert.Equal(flown.Landings!.Circle(95.Percent()).Meters, ((Length)Of("landing scatter radius")).Meters, 9);
        Assert.Equal(flown.OffField!.High.DecimalFractions, (double)Of("chance of landing off the field"), 12);
    }

    [Fact]
    public void What_is_written_is_what_is_read()
    {
        var again = Design.Parse(Whole.ToText());
        Assert.Equal(Whole, again);
        Assert.Equal(Whole.Stage.PadFill, again.Stage.PadFill);
        Assert.Equal(Whole.Stage.FinSheet, again.Stage.FinSheet);
        Assert.Equal(Whole.Stage.RecoveryGear, again.Stage.RecoveryGear);
        Assert.Equal(Whole.Scatter, again.Scatter);
        var measured = Whole.With("pad.restrictor",
            """{ "kind": "measured", "conductance": "0.035 dm³/(s·bar)", "critical ratio": 0.45 }""");
        Assert.Equal(new SonicRestrictor(0.035.LitresPerSecondBar(), 0.45), Design.Parse(measured.ToText()).Stage.PadFill!.Restrictor);
    }

    [Theory]
    [InlineData("fill time", "\"10 s\"", "Add \"pad\"")]
    [InlineData("flutter margin", "1.5", "Add \"fin structure\"")]
    [InlineData("opening load over allowed load", "1", "Add \"recovery.gear\"")]
    [InlineData("landing scatter radius", "\"400 m\"", "Add \"scatter\"")]
    public void A_requirement_on_what_the_design_does_not_give_can_not_be_told_and_says_what_to_add(string figure, string limit, string add)
    {
        var outcome = Required(Bare, figure, limit);
        Assert.Equal(RequirementVerdict.CannotTell, outcome.Verdict);
        Assert.Contains(add, outcome.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flutter margin", "1.5")]
    [InlineData("opening load over allowed load", "1")]
    [InlineData("opening load", "\"60 N\"")]
    [InlineData("landing scatter radius", "\"400 m\"")]
    public void A_requirement_may_be_of_them_and_stands_in_the_record(string figure, string limit)
    {
        Assert.NotEqual(RequirementVerdict.CannotTell, Required(Whole, figure, limit).Verdict);
        Assert.Contains(Checked(Whole, figure, limit).Record.Requirements, r => r.Name == "own");
    }

    [Theory]
    [InlineData("fin structure.gust", "6 bar gauge", "a speed is wanted")]
    [InlineData("pad.restrictor.diameter", "70 mm", "0.05 mm to 50 mm")]
    [InlineData("recovery.gear.cord.stiffness", "800 N", "a stiffness is wanted")]
    [InlineData("scatter.flights", "1000000", "10000")]
    public void A_value_of_the_wrong_kind_or_out_of_range_is_refused(string path, string value, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<DesignFileException>(() => Whole.With(path, value)).Message, StringComparison.Ordinal);

    private static object Of(string figure) => Required(Whole, figure, figure switch
    {
        "fill time" => "\"1 h\"", "opening load" => "\"1 N\"", "landing scatter radius" => "\"1 m\"", _ => "1",
    }).Computed!;

    private static RequirementOutcome Required(Design design, string figure, string limit) => Checked(design, figure, limit).Outcomes[0];

    private static DesignCheck Checked(Design design, string figure, string limit) => design.Without("decisions").With("requirements",
        $$"""[{ "of": "{{figure}}", "name": "own", "at most": {{limit}}, "why": "A test." }]""").Check();
}
