using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Proofing.Plans;

/// <summary>Figures of a proof worked by hand, and the places where its answer turns, tried on either side.</summary>
public class ProofBoundaryTests
{
    private static readonly Proof Curlew = new()
    {
        Vessel = "Curlew",
        Volume = 2.5.Litres(),
        WorkingPressure = 40.BarGauge(),
        Wall = new WallExpansion(1.2.Percent(), 60.BarGauge(), Source.CommonPractice("test")),
        TrappedAir = 5.Millilitres(),
        Support = new HorizontalSupport(66.Millimetres(), 1.Millimetres(), 60.Centimetres(), Density.FromKilogramsPerCubicMeter(1450),
            10.Gigapascals()),
    };

    // Water at 20 °C gives 45.89e-6 of its volume a bar (Kell 1975): p²·V·κ/2 = (6 MPa)² × 2.5e-3 m³ × 4.589e-10/Pa / 2 = 20.65 J.
    // The wall: ½ × 6 MPa × 30 mL = 90 J. The air: 5 mL × 1.01325/61.01325 = 0.08304 mL at 6.1013 MPa,
    // 6.1013e6 × 0.08304e-6 / 0.4 × (1 − (1.01325/61.01325)^(2/7)) = 0.874 J.
    [Fact]
    public void The_energy_of_a_proof_is_that_of_water_wall_and_trapped_air()
    {
        var plan = Curlew.Plan();
        Tolerance.Relative(20.65, plan.EnergyInWater.Joules, 5e-3);
        Tolerance.Relative(90, plan.EnergyInWall.Joules, 1e-9);
        Tolerance.Relative(0.8738, plan.EnergyInTrappedAir.Joules, 1e-4);
    }

    // The floor of 30 m hides the formula, so the formula is held: 111.5 J / 4.26692 MJ/kg = 26.14 mg,
    // 20 × (2 × 26.14e-6)^(1/3) = 0.7478 m.
    // As air: 6.1013 MPa × 2.5 L / 0.4 × 0.68986 = 26.31 kJ, 6.166 g, 20 × (2 × 6.166e-3)^(1/3) = 4.621 m.
    [Fact]
    public void The_stand_off_counts_all_three_energies_under_its_floor()
    {
        var plan = Curlew.Plan();
        Tolerance.Relative(111.52, plan.StandOff.Energy.Joules, 1e-3);
        Tolerance.Relative(0.7478, plan.StandOff.ByFormula.Meters, 1e-3);
        Tolerance.Relative(26_308, plan.StandOffIfAir.Energy.Joules, 1e-4);
        Tolerance.Relative(4.6206, plan.StandOffIfAir.ByFormula.Meters, 1e-4);
    }

    // At 6 bar the water holds 0.2065 J; 1 mL of air holds 1e-6 × 101 325/0.4 × (1 − (1.01325/7.01325)^(2/7)) = 0.10756 J.
    [Theory]
    [InlineData(1.9, false)]
    [InlineData(1.95, true)]
    [InlineData(3, true)]
    public void Trapped_air_is_said_once_it_holds_more_than_the_water(double millilitres, bool isSaid)
    {
        var plan = (Curlew with { WorkingPressure = 4.BarGauge(), TrappedAir = millilitres.Millilitres() }).Plan();
        Assert.Equal(isSaid, plan.Findings.Any(f => f.Message.Contains("rapped air", StringComparison.Ordinal)));
    }

    // r 33.5 mm, t 1 mm: 1 % of p·r/2t at 6 MPa is 1.005 MPa, section modulus πr²t 3.5257e-6 m³, load 9.80665 × (3.4212 + 0.3052) kg/m
    // = 36.543 N/m: √(8 × 1.005e6 × 3.5257e-6 / 36.543) = 0.8807 m.
    [Theory]
    [InlineData(0.88, false)]
    [InlineData(0.882, true)]
    public void Supports_are_warned_of_where_bending_adds_more_than_a_hundredth(double metres, bool isWarned)
    {
        var plan = (Curlew with { Support = Curlew.Support! with { Span = metres.Metres() } }).Plan();
        Tolerance.Relative(0.88073, plan.LongestSpan!.Value.Meters, 1e-4);
        Assert.Equal(isWarned, plan.Findings.Any(f => f.Message.Contains("Move them closer", StringComparison.Ordinal)));
    }

    [Fact]
    public void Holds_are_a_minute_at_a_step_two_at_proof_and_ten_for_leaks()
    {
        Assert.Equal([60, 60, 60, 60, 120, 600], Curlew.Plan().Steps.Select(s => s.Hold.Seconds));
        Assert.Equal(5, (Curlew with { LeakHold = Duration.Zero }).Plan().Steps.Count);
    }

    [Theory]
    [InlineData(0.0, 100.0)]
    [InlineData(50.0, 50.0, 100.0)]
    [InlineData(50.0, 90.0)]
    [InlineData(50.0, 100.0, 110.0)]
    public void Steps_that_do_not_rise_from_above_nothing_to_proof_are_refused(params double[] shares) =>
        Assert.Contains("steps", Assert.Throws<InvalidDesignException>(() => (Curlew with
        {
            Steps = [.. shares.Select(s => s.Percent())],
        }).Plan()).Message, StringComparison.Ordinal);

    // Half a hundredth of 2.5 L.
    [Theory]
    [InlineData(12.5, true)]
    [InlineData(12.6, false)]
    public void Half_a_hundredth_of_the_volume_may_be_air(double millilitres, bool isTaken) =>
        Assert.Equal(isTaken, (Curlew with { TrappedAir = millilitres.Millilitres() }).Validate()
            .All(f => f.Severity != FindingSeverity.Error));

    // What bends a tube between supports is all of its wall: the liner's 1.5 mm and the plies. The thrust on the end, p·π·r², pulls along
    // 2π·r·t of it, so E = p·r/(2t·ε), with r from the bore's 28.5 mm to the outside. A sleeve of 50 mm stretched over 60 mm lies steeper
    // than 54.7°, so the straight part grows along.
    [Fact]
    public void A_rating_s_proof_takes_the_whole_wall_and_half_the_hoop_s_pull_along()
    {
        var (stock, sample) = (Tests.Vessels.Samples.Stock, Tests.Vessels.Samples.ShortChamber);
        var vessel = sample with
        {
            Liner = new Liner(stock.Solid("PVC-U"), 57.Millimetres(), 1.5.Millimetres()),
            ForwardEnd = sample.ForwardEnd with { Closure = DomedClosure.Ellipsoid(stock.Solid("aluminium 6061-T6"), 2.Millimetres(),
                57.Millimetres()) },
        };
        var rating = vessel.Rate();
        var (support, growth) = (Proof.For(rating).Support!, vessel.Expansion(rating.ProofPressure));
        Tolerance.Relative(1.5 + vessel.Layup().Plies.Sum(p => p.Thickness.Millimeters), support.Wall.Millimeters, 1e-6);
        var (strain, pull) = (growth.Strain.Axial.DecimalFractions, rating.ProofPressure.Pascals / 2 / support.Wall.Meters);
        Assert.True(strain > 1e-4, $"{strain}");
        Assert.InRange(support.AxialModulus.Pascals, pull * 0.0285 / strain, pull * (0.0285 + support.Wall.Meters) / strain);
    }

    [Theory]
    [InlineData(1.09, false)]
    [InlineData(1.1, true)]
    [InlineData(3, true)]
    [InlineData(3.01, false)]
    public void A_proof_factor_goes_from_1_1_to_3(double factor, bool isTaken) =>
        Assert.Equal(isTaken, (ProofRule.Club with { Factor = factor }).Validate().Count == 0);

    [Theory]
    [InlineData(20, true)]
    [InlineData(20.1, false)]
    public void No_more_than_a_fifth_may_stay(double percent, bool isTaken) =>
        Assert.Equal(isTaken, (ProofRule.Club with { PermanentLimit = percent.Percent() }).Validate().Count == 0);

    // A twentieth is just accepted. Less than nothing may be read where more water came out than went in.
    [Theory]
    [InlineData(1, 20, true)]
    [InlineData(1.001, 20, false)]
    [InlineData(-1, 20, true)]
    public void A_twentieth_of_the_growth_may_stay(double permanent, double total, bool isAccepted) => Assert.Equal(isAccepted,
        ProofRule.Club.Accepts(Volume.FromCubicMeters(permanent), Volume.FromCubicMeters(total)));

    // 2.5 % of the step, at least half a bar, and four times what the gauge may be off.
    [Theory]
    [InlineData(10, false, 0, 0.5)]
    [InlineData(40, false, 0, 1)]
    [InlineData(40, true, 0, 4)]
    [InlineData(40, false, 0.4, 1.6)]
    public void A_hold_s_band(double planned, bool isAfterProof, double gaugeError, double band) =>
        Tolerance.Relative(band, HoldBand.Bar(planned, isAfterProof, gaugeError), 1e-12);

    // 20·(2m)^(1/3) = 30 m at m = 1.6875 kg of TNT, 7.2004 MJ at 4.26692 MJ/kg.
    [Theory]
    [InlineData(7.19, true)]
    [InlineData(7.21, false)]
    public void The_floor_governs_up_to_7_2_megajoules(double megajoules, bool governs)
    {
        var standOff = StandOff.ForEnergy(Energy.FromMegajoules(megajoules));
        Assert.Equal(governs, standOff.FloorGoverns);
        Assert.Equal(governs, standOff.Distance.Meters == 30);
        Assert.Equal(governs, standOff.Findings.Count > 0);
    }
}
