using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Sheets;
using NotebookKit.Tests.Vessels;
using UnitsNet;

namespace NotebookKit.Tests.Filling.Balances;

/// <summary>A published measurement may start at 700 bar gauge; a vessel of one's own may not, and neither may a rating.</summary>
public class PublishedTraceTests
{
    private static readonly PublishedTrace Trace = new(new("A. Author", "A fast discharge", 2011));

    private static Vent Emptied(Gas gas, double bar, PublishedTrace? trace = null)
    {
        var chamber = new Chamber(25.Litres(), 200.Millimetres(), 700.BarGauge());
        return new()
        {
            Chamber = chamber,
            Restrictor = new Orifice(1.Millimetres(), 0.8),
            From = bar.BarGauge(),
            SafePressure = 5.BarGauge(),
            Gas = gas,
            Properties = GasProperties.Real,
            Trace = trace,
            Wall = FillWall.Of(chamber, Ratio.Zero, ThermalWall.Steel(20.Millimetres())),
        };
    }

    private static PadFill Filled(double bar, PublishedTrace? trace = null) => new()
    {
        Chamber = new Chamber(29.Litres(), 230.Millimetres(), bar.BarGauge()),
        Gas = Gas.Helium,
        Properties = GasProperties.Real,
        Restrictor = new Orifice(1.Millimetres(), 0.8),
        Start = 20.BarGauge(),
        Target = (bar - 50).BarGauge(),
        Supply = bar.BarGauge(),
        Heat = FillHeat.Wall,
        Trace = trace,
    };

    public static readonly TheoryData<string> Gases = ["air", "nitrogen", "hydrogen", "helium"];

    private static Gas Named(string name) =>
        name switch { "air" => Gas.Air, "nitrogen" => Gas.Nitrogen, "hydrogen" => Gas.Hydrogen, _ => Gas.Helium };

    // What is left after the gas has warmed is what the equation says of the mass: between the first and the last reading as much mass
    // has left as the gas's own density says.
    [Theory]
    [MemberData(nameof(Gases))]
    public void A_published_vessel_empties_from_700_bar(string name)
    {
        var vent = Emptied(Named(name), 700, Trace);
        var curve = VentSimulation.Run(vent, FillHeat.Wall);
        Assert.Equal(700, curve.Pressure[0], 1e-6);
        Assert.Equal(5, curve.Pressure[^1], 1e-6);
        Assert.True(curve.Temperature.Values.Min() < curve.Temperature[0] - 20);
        var result = vent.Run();
        Assert.Contains("700 bar gauge, a published measurement only", result.Model.ValidRange, StringComparison.Ordinal);
        Assert.Contains(result.Findings, f => f.Message.Contains("for comparison with A. Author", StringComparison.Ordinal));
        Assert.Contains(Trace.Source, result.Model.Sources);
    }

    [Fact]
    public void Above_700_bar_even_a_published_vessel_is_refused()
    {
        Assert.Contains("it must be above the safe 5 bar gauge and no more than 700 bar gauge.", Single(Emptied(Gas.Helium, 700.1,
            Trace).Validate()), StringComparison.Ordinal);
        Assert.Contains(Filled(701, Trace).Validate(), f => f.Message.Contains("supply pressure is 701 bar gauge; it must be 0 bar gauge "
            + "to 700 bar gauge.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_vessel_of_ones_own_stays_at_300_bar()
    {
        Assert.Empty(Emptied(Gas.Air, 300).Validate());
        var said = Single(Emptied(Gas.Air, 300.1).Validate());
        Assert.Contains("no more than 300 bar gauge; only a measurement that others published is computed to 700 bar gauge: name it by "
            + "Trace.",
            said, StringComparison.Ordinal);
        Assert.DoesNotContain(Filled(300).Validate(), f => f.Severity == FindingSeverity.Error);
        foreach (var what in new[] { "supply pressure", "rated pressure of the vessel" })
            Assert.Contains(Filled(301).Validate(), f => f.Message.StartsWith($"{what} is 301 bar gauge; it must be",
                StringComparison.Ordinal) && f.Message.Contains("name it by Trace", StringComparison.Ordinal));
    }

    [Fact]
    public void A_published_vessel_is_filled_to_650_bar_of_helium()
    {
        var result = Filled(700, Trace).Run();
        Tolerance.Absolute(650, result.ShutPressure.Bar, 1e-3);
        var ideal = 651.01325e5 * 0.029 / (Gas.Helium.GasConstant.JoulesPerKilogramKelvin * result.ShutTemperature.Kelvins);
        // The second virial coefficient of helium, 11.8 cm³/mol at 300 K, falls by a tenth to 500 K: the compressibility factor is
        // 1 + B p/(R T) to within that, less the third coefficient's share.
        var share = 11.8e-6 * 651.01325e5 / (8.3144598 * result.ShutTemperature.Kelvins);
        Assert.InRange(ideal / result.GasMass.Kilograms, 1 + 0.85 * share, 1 + share);
    }

    [Fact]
    public void An_ideal_gas_is_not_traced_above_300_bar() =>
        Assert.Contains("set Properties to GasProperties.Real", Single((Emptied(Gas.Air, 400, Trace) with
        {
            Properties = GasProperties.Ideal,
        }).Validate()), StringComparison.Ordinal);

    [Fact]
    public void Ones_own_log_is_no_publication()
    {
        foreach (var source in new Source[] { new("Us", "Our gauge", 2026, "", SourceKind.Measured), Source.CommonPractice("a habit"),
            new("", "A title", 2011), new("A. Author", "Undated", null) })
            Assert.Contains("it must be a publication with author, title and year", Single(Emptied(Gas.Air, 400,
                new(source)).Validate()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rated_vessel_is_no_published_one()
    {
        var rated = Samples.Trainer.ToChamber(Samples.Trainer.Rate(RuleSets.Club, evidence: Samples.Twins(Samples.Trainer)));
        var vent = Emptied(Gas.Air, 30, Trace) with { Chamber = rated };
        Assert.Contains("it must be one whose pressure is stated by hand", Single(vent.Validate()), StringComparison.Ordinal);
    }

    [Fact]
    public void Neither_rating_nor_proof_nor_charge_goes_there()
    {
        Assert.Contains("working pressure wanted is 301 bar gauge; it must be 0.5 bar gauge to 300 bar gauge.",
            Single(Samples.Trainer.Rate(RuleSets.Club, 301.BarGauge()).Findings), StringComparison.Ordinal);
        Assert.Contains("it must be 0.1 bar gauge to 300 bar gauge", Single(new Charge(new Chamber(2.Litres(), 66.Millimetres(),
            700.BarGauge()), 0.Percent(), 301.BarGauge(), 20.Celsius()).Validate()), StringComparison.Ordinal);
        Assert.Empty(new Charge(new Chamber(2.Litres(), 66.Millimetres(), 700.BarGauge()), 0.Percent(), 300.BarGauge(),
            20.Celsius()).Validate());
        Assert.NotEmpty(new SourceCylinder("A", 10.Litres(), 301.BarGauge()).Validate());
    }

    [Fact]
    public void No_sheet_is_printed_of_it() =>
        Assert.Contains("a sheet is of a vessel of one's own", Assert.Throws<InvalidDesignException>(() => PadSheet.Of("vehicle",
            Filled(700, Trace).Run(), null, null)).Message, StringComparison.Ordinal);

    private static string Single(IEnumerable<Finding> findings) =>
        Assert.Single(findings, f => f.Severity == FindingSeverity.Error).Message;
}
