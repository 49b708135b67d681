using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Published;
using NotebookKit.Vessels.Built;
using UnitsNet;

namespace NotebookKit.Tests.Vessels.Built;

/// <summary>Readings are invented; what they must come to is reckoned here from areas and densities, not by the library.</summary>
public class AsBuiltTests
{
    private static PressureVessel Design => Samples.Trainer;

    /// <summary>The readings of a vessel built exactly to a fibre fraction and a share of voids, fibre as designed times a
    /// factor.</summary>
    private static AsBuiltReadings Exact(double fibreFraction, double voids, double fibre = 1, bool withErrors = true)
    {
        var layup = Design.Layup();
        var (sleeve, veil) = (layup.Plies[0], layup.Plies[1]);
        var density = ((BraidedSleeve)sleeve.Ply).Braid.Fibre.Density.Value.KilogramsPerCubicMeter;
        var veilDensity = ((VeilWrap)veil.Ply).Veil.FibreDensity.Value.KilogramsPerCubicMeter;
        var resin = Design.Resin.Density.Value.KilogramsPerCubicMeter;
        double Ring(PlyGeometry p) => Math.PI / 4 * (Math.Pow(p.OuterDiameter.Meters, 2) - Math.Pow(p.InnerDiameter.Meters, 2));
        var fibreArea = fibre * Ring(sleeve) * sleeve.FibreFraction.DecimalFractions;
        var section = fibreArea / fibreFraction + Ring(veil);
        var veilFibre = fibre * Ring(veil) * veil.FibreFraction.DecimalFractions;
        var resinArea = section * (1 - voids) - fibreArea - veilFibre;
        var perMetre = fibreArea * density + veilFibre * veilDensity;
        var dry = fibre * layup.FibreMass.Kilograms;
        var laminate = dry * (perMetre + resinArea * resin) / perMetre;
        var bare = Design.Liner.OuterDiameter.Meters;
        var outer = Math.Sqrt(bare * bare + 4 / Math.PI * section);
        Reading<Mass> Weighed(double kilograms, double grams)
            => new(Mass.FromGrams(1000 * kilograms), withErrors ? Mass.FromGrams(grams) : null);
        return new()
        {
            Serial = "T-7",
            Liner = Weighed(layup.LinerMass.Kilograms, 0.5),
            Cured = Weighed(layup.LinerMass.Kilograms + laminate, 0.5),
            DryFibre = Weighed(dry, 0.5),
            OuterDiameters = [.. Enumerable.Repeat(new Reading<Length>(Length.FromMillimeters(1000 * outer),
                withErrors ? 0.02.Millimetres() : null), 5)],
            LinerDiameters = [new(Length.FromMillimeters(1000 * bare), withErrors ? 0.02.Millimetres() : null)],
        };
    }

    [Theory]
    [InlineData(0.40, 0.0)]
    [InlineData(0.46, 0.025)]
    [InlineData(0.33, 0.06)]
    public void Shares_come_back_from_masses_and_diameters(double fibreFraction, double voids)
    {
        var built = Design.AsBuilt(Exact(fibreFraction, voids));
        Tolerance.Absolute(fibreFraction, built.FibreFraction.Value.DecimalFractions, 1e-6);
        Tolerance.Absolute(voids, built.Voids.Value.DecimalFractions, 1e-6);
        Tolerance.Relative(built.Thickness.Value.Millimeters, built.Vessel.Layup().Thickness.Millimeters, 1e-6);
    }

    [Fact]
    [PublishedCase("V01", "Kaw, Mechanics of Composite Materials, 2nd ed. 2006, Ex. 3.1: glass 2500, epoxy 1200 kg/m³, 70 % fibre: density "
        + "2110 kg/m³, fibre mass share 0.8294; voids by ASTM D2734 from a density of 2110 and 2067.8 kg/m³")]
    public void A_sample_without_voids_has_the_density_of_its_parts()
    {
        var glass = Samples.Stock.Fibre("E-glass") with { Density = Property.Measured(2500.KilogramsPerCubicMetre(), 0, "example") };
        var resin = Design.Resin with { Density = Property.Measured(1200.KilogramsPerCubicMetre(), 0, "example") };
        var vessel = Design with
        {
            Resin = resin,
            Plies = [new BraidedSleeve(((BraidedSleeve)Design.Plies[0]).Braid with { Fibre = glass })],
            Fabrication = Design.Fabrication with { FibreFraction = 70.Percent() },
        };
        var layup = vessel.Layup();
        AsBuiltReadings Readings(double grams) => new()
        {
            Liner = layup.LinerMass.Read(), Cured = (layup.LinerMass + layup.FibreMass / 0.8294).Read(), DryFibre = layup.FibreMass.Read(),
            Sample = new(grams.Grams().Read(), 10.Millilitres().Read()),
        };
        var sound = vessel.AsBuilt(Readings(21.10));
        Tolerance.Absolute(0, sound.Voids.Value.DecimalFractions, 5e-4);
        Tolerance.Absolute(0.70, sound.FibreFraction.Value.DecimalFractions, 1e-3);
        Tolerance.Absolute(1 - 2067.8 / 2110, vessel.AsBuilt(Readings(20.678)).Voids.Value.DecimalFractions, 5e-4);
    }

    // Against draws of every reading from its rectangle (JCGM 101:2008, propagation of distributions): 1000 of them tell a standard
    // uncertainty within 6.7 % at three sigma. Material densities keep still: their spread is no reading.
    [Fact]
    public void First_order_uncertainty_is_that_of_drawn_readings()
    {
        var exact = Exact(0.42, 0.02);
        var still = Design with
        {
            Resin = Design.Resin with { Density = Design.Resin.Density with { Spread = 0 } },
            Plies = [.. Design.Plies.Select(p => p is BraidedSleeve s ? s with
            {
                Braid = s.Braid with { Fibre = s.Braid.Fibre with { Density = s.Braid.Fibre.Density with { Spread = 0 } } },
            } : (Ply)((VeilWrap)p with { Veil = ((VeilWrap)p).Veil
                with { FibreDensity = ((VeilWrap)p).Veil.FibreDensity with { Spread = 0 } } }))],
        };
        var random = new Random(11);
        double Draw() => 2 * random.NextDouble() - 1;
        Reading<Mass> Mass0(Reading<Mass> r) => r with { Value = r.Value + r.Within!.Value * Draw() };
        var drawn = Enumerable.Range(0, 1000).Select(_ =>
        {
            double tape = Draw() * 0.02, liner = Draw() * 0.02;
            return still.AsBuilt(exact with
            {
                Liner = Mass0(exact.Liner), Cured = Mass0(exact.Cured), DryFibre = Mass0(exact.DryFibre!),
                OuterDiameters = [.. exact.OuterDiameters.Select(d => d with { Value = d.Value + tape.Millimetres() })],
                LinerDiameters = [.. exact.LinerDiameters.Select(d => d with { Value = d.Value + liner.Millimetres() })],
            });
        }).Select(b => (Fibre: b.FibreFraction.Value.DecimalFractions, Voids: b.Voids.Value.DecimalFractions)).ToList();
        var first = still.AsBuilt(exact);
        Tolerance.Relative(Deviation(drawn.Select(d => d.Fibre)), first.FibreFraction.Expanded!.Value.DecimalFractions / 2, 0.067);
        Tolerance.Relative(Deviation(drawn.Select(d => d.Voids)), first.Voids.Expanded!.Value.DecimalFractions / 2, 0.067);

        static double Deviation(IEnumerable<double> values) => MathNet.Numerics.Statistics.Statistics.StandardDeviation(values);
    }

    [Fact]
    public void A_reading_without_its_error_leaves_the_uncertainty_not_given()
    {
        var built = Design.AsBuilt(Exact(0.42, 0.02, withErrors: false));
        Assert.Null(built.FibreFraction.Expanded);
        Assert.Contains("uncertainty not given", built.FibreFraction.ToString(), StringComparison.Ordinal);
        Assert.Contains(built.Findings, f => f.Message.Contains("without its error", StringComparison.Ordinal));
    }

    [Fact]
    public void Later_answers_use_what_was_built_and_say_so()
    {
        var built = Design.AsBuilt(Exact(0.46, 0.01, fibre: 0.9));
        Assert.True(built.Burst <= built.DesignedBurst);
        Tolerance.Relative(0.9, built.Vessel.Burst().Netting / Design.Burst().Netting, 0.02);
        Assert.Equal(built.Burst, built.Vessel.Burst().Burst);
        Tolerance.Relative(0.9, built.Vessel.Layup().Plies[0].FibreMass / Design.Layup().Plies[0].FibreMass, 1e-3);
        foreach (var findings in new[] { built.Vessel.Layup().Findings, built.Vessel.Burst().Findings, built.Vessel.Rate().Findings })
            Assert.Contains(findings, f => f.Message.Contains("as built (T-7), 40 % as designed", StringComparison.Ordinal));
        Assert.DoesNotContain(Design.Layup().Findings, f => f.Message.Contains("as built", StringComparison.Ordinal));
        Assert.Contains(built.Lines, l => l.Name == "Burst" && l.Note.Contains("as designed", StringComparison.Ordinal));
    }

    [Fact]
    public void More_fibre_than_designed_raises_no_pressure()
    {
        var built = Design.AsBuilt(Exact(0.40, 0.01, fibre: 1.1));
        Assert.True(built.Vessel.Burst().WallBurst <= Design.Burst().WallBurst * 1.01);
        Assert.Contains(built.Findings, f => f.Message.Contains("isn't counted for strength", StringComparison.Ordinal));
        Tolerance.Absolute(0.40, built.FibreFraction.Value.DecimalFractions, 1e-6);
    }

    [Fact]
    public void Plies_weighed_one_by_one_answer_as_their_sum_does()
    {
        var exact = Exact(0.44, 0.02);
        var plies = Design.Layup().Plies;
        var single = Design.AsBuilt(exact with
        {
            DryFibre = null,
            DryPlies = [.. plies.Select((p, i) => new PlyReading(i + 1, p.FibreMass.ReadWithin(0.1.Grams())))],
        });
        Tolerance.Relative(0.44, single.FibreFraction.Value.DecimalFractions, 1e-6);
        Tolerance.Absolute(0.02, single.Voids.Value.DecimalFractions, 1e-6);
    }

    [Fact]
    public void Voids_are_warned_of_with_what_they_take()
    {
        var built = Design.AsBuilt(Exact(0.40, 0.03));
        Assert.Contains(built.Findings, f => f.Severity == FindingSeverity.Warning
            && f.Message.StartsWith("Voids of 3 %", StringComparison.Ordinal)
                && f.Message.Contains("unverified", StringComparison.Ordinal));
    }

    public static TheoryData<string, string> Refused => new()
    {
        { "liner", "it must weigh more than its liner of" },
        { "fibre", "it must weigh more than its dry fibre of" },
        { "wet", "it must weigh no more than the" },
        { "voids", "they must be" },
        { "diameter", "it must be above the liner's" },
        { "volume", "Neither an outer diameter nor a displaced sample" },
        { "twice", "give one of both" },
        { "ply", "the design has plies 1 to 2" },
        { "scale", "take a finer scale" },
        { "unit", "mass of the cured vessel is" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Readings_that_do_not_add_up_are_refused_in_one_sentence(string what, string says)
    {
        var exact = Exact(0.42, 0.02);
        var wrong = what switch
        {
            "liner" => exact with { Cured = exact.Liner with { Value = exact.Liner.Value * 0.9 } },
            "fibre" => exact with { Cured = exact.Cured with { Value = exact.Liner.Value + exact.DryFibre!.Value * 0.9 } },
            "wet" => exact with { Wet = exact.Cured with { Value = exact.Cured.Value - 5.Grams() } },
            "voids" => exact with { Cured = exact.Cured with { Value = exact.Cured.Value * 1.15 } },
            "diameter" => exact with { OuterDiameters = [exact.LinerDiameters[0]] },
            "volume" => exact with { OuterDiameters = [] },
            "twice" => exact with { DryPlies = [new PlyReading(1, 50.Grams().Read())] },
            "ply" => exact with { DryFibre = null, DryPlies = [new PlyReading(3, 50.Grams().Read())] },
            "scale" => exact with { Liner = exact.Liner with { Within = exact.Liner.Value } },
            _ => exact with { Cured = 400.Kilograms().Read() },
        };
        Assert.Contains(says, Assert.Throws<InvalidDesignException>(() => Design.AsBuilt(wrong)).Message, StringComparison.Ordinal);
    }
}
