using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Aerodynamics.Bodies;

public class FinnedBodyTests
{
    private static readonly Gen<FinnedBody> Bodies = Gen.Select(
        Gen.Double[2, 6], Gen.Double[5, 25], Gen.Int[3, 6], Gen.Double[0.5, 2], Gen.Double[0.2, 1], Gen.Double[0.4, 1.5],
            Gen.Double[0, 1.2],
        (nose, tube, count, root, taper, span, sweep) => new FinnedBody(
            [Nose.TangentOgive((60 * nose).Millimetres(), 60.Millimetres()), new BodyTube((60 * tube).Millimetres(), 60.Millimetres())],
            [FinSet.Trapezoidal(count, (60 * root).Millimetres(), (60 * root * taper).Millimetres(), (60 * span).Millimetres(),
                (60 * sweep).Millimetres(),
                1.5.Millimetres(), (60 * (nose + tube - root)).Millimetres())]));

    [Fact]
    public void A_larger_copy_has_the_same_coefficients_and_the_same_margin()
        => Gen.Select(Bodies, Gen.Double[0.5, 3]).Sample((body, factor) =>
    {
        var (small, large) = (body.NormalForce(0.3), Scaled(body, factor).NormalForce(0.3));
        Tolerance.Relative(small.TotalSlope, large.TotalSlope, 1e-9);
        Tolerance.Relative(small.CentreOfPressure.Meters * factor, large.CentreOfPressure.Meters, 1e-9);
        Tolerance.Relative(body.Roll().Damping, Scaled(body, factor).Roll().Damping, 1e-9);
    });

    [Fact]
    public void Moving_the_fins_aft_moves_the_centre_of_pressure_aft() => Gen.Select(Bodies, Gen.Double[0.01, 0.2]).Sample((body, metres) =>
    {
        var forward = body with { Fins = [body.Fins[0] with { LeadingEdgeAt = body.Fins[0].LeadingEdgeAt * (1 - metres) }] };
        return forward.NormalForce().CentreOfPressure < body.NormalForce().CentreOfPressure;
    });

    [Fact]
    public void Shares_add_up_and_the_centre_lies_between_the_parts() => Bodies.Sample(body =>
    {
        var result = body.NormalForce();
        Tolerance.Relative(100, result.Components.Sum(c => c.Share.Percent), 1e-9);
        return result.CentreOfPressure >= result.Components.Min(c => c.At) && result.CentreOfPressure <= result.Components.Max(c => c.At);
    });

    [Fact]
    public void Margin_falls_with_angle_of_attack_on_a_long_body() => Bodies.Sample(body =>
    {
        var gravity = body.NormalForce().CentreOfPressure - 0.1.Metres();
        if (gravity < Length.Zero || body.PlanformCentroidM > body.NormalForce().CentreOfPressure.Meters) return true;
        var margin = body.AtAngles(gravity).Margin.Values;
        return Enumerable.Range(1, margin.Count - 1).All(i => margin[i] < margin[i - 1]);
    });

    [Fact]
    public void The_drag_band_is_ordered_and_its_parts_add_up() => Gen.Select(Bodies, Gen.Double[10, 290]).Sample((body, speed) =>
    {
        var result = body.Drag(speed.MetresPerSecond());
        Tolerance.Relative(100, result.Components.Sum(c => c.Share.Percent), 1e-9);
        return result.Low <= result.Middle && result.Middle <= result.High && result.Components.All(c => c.Low <= c.High && c.Low >= 0);
    });

    [Fact]
    public void A_trapezoid_given_by_its_corners_is_the_trapezoid() => Bodies.Sample(body =>
    {
        var fins = body.Fins[0];
        var polygon = fins with { Planform = new PolygonPlanform(fins.Planform.Corners) };
        var (one, other) = (body.NormalForce(0.4), (body with { Fins = [polygon] }).NormalForce(0.4));
        Tolerance.Relative(one.TotalSlope, other.TotalSlope, 1e-9);
        Tolerance.Relative(one.CentreOfPressure.Meters, other.CentreOfPressure.Meters, 1e-9);
        Tolerance.Relative(body.Roll().Damping, (body with { Fins = [polygon] }).Roll().Damping, 1e-9);
        Tolerance.Relative(body.Roll().Forcing, (body with { Fins = [polygon] }).Roll().Forcing, 1e-9);
        var drawn = body with { Fins = [polygon] };
        Tolerance.Relative(body.Drag(60.MetresPerSecond()).Middle, drawn.Drag(60.MetresPerSecond()).Middle, 1e-9);
        Tolerance.Relative(body.MarginAt(body.Length / 2, 8.Degrees()), drawn.MarginAt(body.Length / 2, 8.Degrees()), 1e-9);
        var (sheet, bond) = (new FinSheet("sheet", Pressure.FromGigapascals(5), Pressure.FromMegapascals(500),
            Source.CommonPractice("invented")),
            new FinBond(6.Millimetres(), Pressure.FromMegapascals(10), Source.CommonPractice("invented")));
        var (plate, drawnPlate) = (body.FinStructure(sheet, bond, 60.MetresPerSecond(), 5.MetresPerSecond()),
            drawn.FinStructure(sheet, bond, 60.MetresPerSecond(), 5.MetresPerSecond()));
        Tolerance.Relative(plate.Flutter.FlutterSpeed.MetersPerSecond, drawnPlate.Flutter.FlutterSpeed.MetersPerSecond, 1e-9);
        Tolerance.Relative(plate.DivergencePressure.Pascals, drawnPlate.DivergencePressure.Pascals, 1e-9);
        Tolerance.Relative(plate.BondStress.Pascals, drawnPlate.BondStress.Pascals, 1e-9);
        Tolerance.Relative(fins.WithSpanTimes(1.3).Planform.Area.SquareMeters, polygon.WithSpanTimes(1.3).Planform.Area.SquareMeters, 1e-9);
    });

    // A cranked fin of two trapezoids joined at mid span: areas and centroids add up by hand.
    [Fact]
    public void A_cranked_fin_adds_up_by_hand()
    {
        var fin = new PolygonPlanform([Corner(0, 0), Corner(20, 40), Corner(60, 80), Corner(90, 80), Corner(100, 40), Corner(100, 0)]);
        Assert.Empty(fin.Validate());
        // Inner: chords 100 and 80 over 40 mm, outer: 80 and 30 over 40 mm.
        Tolerance.Relative(((100 + 80) / 2.0 * 40) + ((80 + 30) / 2.0 * 40), fin.Area.SquareMillimeters, 1e-12);
        var inner = 40.0 / 3 * ((100 * 100) + (100 * 80) + (80 * 80));
        var outer = 40.0 / 3 * ((80 * 80) + (80 * 30) + (30 * 30));
        Tolerance.Relative((inner + outer) / 5800, fin.MeanChord.Millimeters, 1e-12);
        Assert.Equal(80, fin.Reach.Millimeters, 9);
        Assert.Equal(100, fin.RootLength.Millimeters, 9);
    }

    [Fact]
    public void A_slotted_fin_is_refused_with_where_it_goes_wrong()
    {
        var fin = new PolygonPlanform([Corner(0, 0), Corner(20, 60), Corner(40, 60), Corner(50, 20), Corner(60, 60), Corner(90, 60),
            Corner(100, 0)]);
        var finding = Assert.Single(fin.Validate());
        Assert.Contains("crossed 4 times", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Six_fins_feel_half_the_carry_over_and_five_are_said_to()
    {
        FinnedBody With(int count) => SampleBodies.ThreeFins with { Fins = [SampleBodies.ThreeFins.Fins[0] with { Count = count }] };
        double PerFin(int count) => With(count).NormalForce().Components[1].Slope / count;
        // J. S. and J. A. Barrowman, 1966: K = 1 + r/(s + r) for three and four, half the carry-over for six.
        Tolerance.Relative(PerFin(3), PerFin(4), 1e-12);
        Tolerance.Relative((1 + (1.0 / 6)) / (1 + (1.0 / 3)), PerFin(6) / PerFin(3), 1e-12);
        Assert.Contains(With(5).NormalForce().Findings, f => f.Message.Contains("five fins", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(0.91)]
    [InlineData(double.NaN)]
    public void A_Mach_number_beyond_the_model_is_refused_with_the_reason(double mach)
    {
        var error = Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.NormalForce(mach));
        Assert.Contains("shocks", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_is_wrong_is_said_at_once()
    {
        var body = new FinnedBody(
            [new BodyTube(0.Metres(), 60.Millimetres()), new BodyTube(1.Metres(), 70.Millimetres())],
            [FinSet.Trapezoidal(7, 100.Millimetres(), 60.Millimetres(), 0.Millimetres(), 40.Millimetres(), (-1).Millimetres(),
                3.Metres())]);
        var error = Assert.Throws<InvalidDesignException>(() => body.NormalForce());
        Assert.Equal(6, error.Findings.Count(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void Fins_off_the_body_are_refused_with_the_range()
    {
        var body = SampleBodies.ThreeFins with { Fins = [SampleBodies.ThreeFins.Fins[0] with { LeadingEdgeAt = 1.75.Metres() }] };
        var error = Assert.Throws<InvalidDesignException>(() => body.NormalForce());
        Assert.Contains("must lie on the body", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_centre_of_gravity_off_the_body_is_refused() =>
        Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.MarginAt(3.Metres(), 5.Degrees()));

    [Fact]
    public void A_jet_wider_than_the_base_is_refused() =>
        Assert.Throws<OutOfRangeException>(() => SampleBodies.ThreeFins.Drag(50.MetresPerSecond(), jet: 80.Millimetres()));

    private static PlanformPoint Corner(double aft, double outward) => new(aft.Millimetres(), outward.Millimetres());

    private static FinnedBody Scaled(FinnedBody body, double factor) => new(
        body.Parts.Select(p => p is Nose nose
            ? nose with { Length = nose.Length * factor, BaseDiameter = nose.BaseDiameter * factor }
            : (BodyPart)new BodyTube(p.Length * factor, p.DiameterAt(p.Length) * factor)).ToArray(),
        body.Fins.Select(f => f with { Planform = f.Planform.Scaled(factor), Thickness = f.Thickness * factor,
            LeadingEdgeAt = f.LeadingEdgeAt * factor }).ToArray());

    [Fact]
    public void A_margin_that_was_never_there_is_gone_at_zero()
    {
        var unstable = SampleBodies.ThreeFins.AtAngles(1.6.Metres());
        Assert.Equal(0, unstable.MarginGoneAt!.Value.Degrees);
        Assert.Equal(0, unstable.OneCalibreAt!.Value.Degrees);
        Assert.Single(unstable.Findings, f => f.Severity == NotebookKit.Provenance.FindingSeverity.Warning);
    }
}
