using NotebookKit.Numerics;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Record;
using NotebookKit.Tests.Flight;
using NotebookKit.Vessels.Allowables;
using NotebookKit.Vessels.Ends;
using NotebookKit.Vessels.Laminates;
using UnitsNet;

namespace NotebookKit.Tests.House;

/// <summary>Inputs at the edge that once brought a foreign exception, no number, or a computation that heard no stop.</summary>
public class EdgeInputTests
{
    [Fact]
    public void An_end_without_a_name_is_validated_like_any_other()
    {
        var vessel = Vessels.Samples.Trainer;
        var end = vessel.NozzleEnd with { Fittings = (-1).Grams() };
        Assert.Equal(end.Validate("a", vessel.Liner.Bore).Count, end.Validate("", vessel.Liner.Bore).Count);
    }

    [Fact]
    public void Pieces_that_add_up_beyond_a_whole_number_are_too_many()
    {
        var piece = new SheetPiece("fin", [new(0.Millimetres(), 0.Millimetres()), new(50.Millimetres(), 0.Millimetres()),
            new(0.Millimetres(), 50.Millimetres())]) { Count = int.MaxValue };
        var nest = new SheetNest(300.Millimetres(), 200.Millimetres(), [piece, piece]);
        Assert.Throws<InvalidDesignException>(() => nest.Place());
    }

    [Theory]
    [InlineData(5e-324)]
    [InlineData(-5e-324)]
    [InlineData(1e-310)]
    [InlineData(double.MaxValue)]
    [InlineData(double.MinValue)]
    public void Numbers_at_the_ends_of_a_double_can_be_shown(double value) => Assert.Contains("×10", Digits.Round(value),
        StringComparison.Ordinal);

    // Standard error √(P(1 − P)/n)/(r(1 − P)) with r² = −2 ln(1 − P) ≈ 2P for small P: 1/√(2n).
    [Fact]
    public void The_error_of_a_quantile_near_nothing_is_a_number() =>
        Assert.Equal(1 / Math.Sqrt(20), SampleSize.QuantileRadiusError(10, 1e-18), 12);

    [Fact]
    public void More_samples_than_can_be_counted_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SampleSize.ForMaximumToCover(1 - 1e-15));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void A_share_outside_of_a_Weibull_law_is_refused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeibullFit(10, 2).Quantile(share));

    [Fact]
    public void Values_in_two_units_are_no_one_Weibull_law() =>
        Assert.Contains("too far apart", Assert.Throws<ArgumentException>(() => WeibullFit.Of([1e-60, 1, 2])).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_bonded_overlap_of_nothing_has_no_peak()
    {
        var lap = new ShearLag(69.Gigapascals(), 2.Millimetres(), 69.Gigapascals(), 2.Millimetres(), 800.Megapascals(), 0.2.Millimetres(),
            0.Millimetres());
        Assert.Throws<InvalidDesignException>(() => { _ = lap.PeakRatio; });
        Assert.Throws<InvalidDesignException>(() => { _ = lap.Mean(ForcePerLength.FromNewtonsPerMeter(1)); });
        Assert.Throws<InvalidDesignException>(() => { _ = (lap with { Overlap = 20.Millimetres(), BondLine = 0.Millimetres() }).Omega; });
    }

    [Fact]
    public void A_ply_without_strength_has_no_reserve() => Assert.Throws<OutOfRangeException>(() => new PlyStrength(Pressure.Zero,
        822.Megapascals(), 53.Megapascals(), 84.Megapascals(), 40.Megapascals()).Reserve(
            new PlyStress(Pressure.Zero, Pressure.Zero, Pressure.Zero), FailureCriterion.TsaiWu));

    [Fact]
    public void Turbulence_is_met_at_speed()
    {
        Assert.Throws<OutOfRangeException>(() => DrydenTurbulence.LateralSpectrum(1.MetresPerSecond(), 100.Metres(), Speed.Zero, 1));
        Assert.Throws<OutOfRangeException>(() => DrydenTurbulence.LongitudinalSpectrum(1.MetresPerSecond(), Length.Zero,
            10.MetresPerSecond(), 1));
        Assert.Throws<OutOfRangeException>(() => DrydenTurbulence.LateralSpectrum(1.MetresPerSecond(), 100.Metres(), 10.MetresPerSecond(),
            double.NaN));
    }

    [Fact]
    public void Two_entries_of_one_name_can_not_be_compared()
    {
        var mark = new EvidenceMark("proof", new string('a', 64), "a proof");
        var record = new DesignRecordBuilder("Curlew").Build() with { Evidence = [mark, mark] };
        Assert.Contains("\"proof\" is there 2 times", Assert.Throws<FormatException>(() => record.ComparedWith(record)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_ply_whose_layup_gives_no_size_is_not_cut()
    {
        var layup = Vessels.Samples.Trainer.Layup();
        var bare = layup with { Plies = [.. layup.Plies.Select(p => p with { Fit = null, CutWidth = null })] };
        Assert.Contains("no size to cut", Assert.Throws<InvalidDesignException>(() => CutList.Of(bare)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_at_the_end_of_the_calendar_has_no_test_due_after_it() => Assert.Throws<OutOfRangeException>(() =>
        new RetestRule("ours", null, 5, Source.CommonPractice("a test")).Due(DateOnly.MaxValue));

    // Gas without a state: its table of the expansion would never end.
    [Fact]
    public void A_stack_and_a_map_of_gas_without_a_state_are_refused_or_skip_it()
    {
        var pair = SampleVehicles.TwoStages;
        var hot = pair with { Sustainer = pair.Sustainer with { Flow = FlowModel.Real,
            Charge = pair.Sustainer.Charge with { GasTemperature = Temperature.FromKelvins(1e12) } } };
        Assert.Throws<InvalidDesignException>(() => hot.Stack(SampleVehicles.Breezy));
    }
}
