using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Tests.Propulsion;
using UnitsNet;

namespace NotebookKit.Tests.Flight.Vertical;

public class VerticalFlightTests
{
    private static readonly VerticalFlight Curlew = new(
        FiringExamples.Charge, FiringExamples.Nozzle, 800.Grams(), DragCurve.Constant(0.4, 74.Millimetres()),
            LaunchSite.SeaLevel) { Name = "Curlew" };

    private static readonly Gen<VerticalFlight> AnyFlight =
        from water in Gen.Double[0, 60]
        from bar in Gen.Double[15, 50]
        from throat in Gen.Double[8, 20]
        from mass in Gen.Double[0.5, 2]
        from real in Gen.Bool
        from flow in Gen.Enum<WaterFlow>()
        select Curlew with
        {
            Charge = FiringExamples.Charge with { WaterFraction = Ratio.FromPercent(water), Pressure = bar.BarGauge() },
            Nozzle = new Nozzle(throat.Millimetres()),
            DryMass = mass.Kilograms(),
            Flow = (real ? FlowModel.Real : FlowModel.Plain) with { Water = flow },
        };

    [Fact]
    public void Fast_and_recorded_flights_agree() =>
        AnyFlight.Sample(flight =>
        {
            var full = flight.Fly();
            var peak = flight.Peak();
            // Errors of 1e-6 a step add up over some forty steps; the fast path promises 1e-4.
            Tolerance.Relative(full.Apogee.Meters, peak.ApogeeMetres, 1e-4);
            Tolerance.Relative(full.MaximumSpeed.MetersPerSecond, peak.MaximumSpeedMetresPerSecond, 1e-4);
            Assert.True(peak.Evaluations < full.Evaluations);
        }, iter: 40);

    [Fact]
    public void Energy_of_the_gas_is_accounted_for_with_and_without_launch_tube() =>
        (from flight in AnyFlight from hollow in Gen.Double[0, 0.8] from tubed in Gen.Bool select (flight, hollow, tubed)).Sample(t =>
        {
            var tube = new LaunchTube(8.Millimetres(), 0.25.Metres());
            var flight = t.tubed ? t.flight with { LaunchTube = tube with { Hollow = tube.Displaced * t.hollow } } : t.flight;
            Tolerance.Absolute(0, flight.Fly().Energy.Imbalance, 1e-6);
        }, iter: 40);

    // Momentum of vehicle and cargo at the end of the jet: thrust, drag and weight added up, less what the mass that leaves takes along, (F
    // − D − m g) − ṁ v, by quadrature over the recorded columns, which the integration itself never did.
    [Fact]
    public void Momentum_is_accounted_for_in_every_mode() =>
        (from flight in AnyFlight from mode in Gen.Int[0, 4] from tubed in Gen.Bool select (flight, mode, tubed)).Sample(t =>
        {
            var flow = t.mode switch
            {
                0 => FlowModel.Plain,
                1 => FlowModel.Real,
                2 => FlowModel.Moist,
                3 => FlowModel.Real with { WallWarming = WallWarming.FreeConvection },
                _ => FlowModel.Plain with { WaterPhase = Expansion.Isothermal, AirPhase = Expansion.Polytropic(1.2) },
            };
            // Without drag, so that no other column is needed.
            var flight = t.flight with
            {
                Flow = flow with { Water = t.flight.Flow.Water }, Drag = DragCurve.Constant(0, 74.Millimetres()),
                    LaunchTube = t.tubed ? new LaunchTube(8.Millimetres(), 0.2.Metres()) : null,
            };
            var result = flight.Fly();
            var last = result.Curve.Time.Count - 1;
            double Force(int i) => result.Thrust[i] - result.Mass[i] * 9.80665 - result.Curve.MassFlow[i] * result.Speed[i];
            double sum = 0;
            for (int from = 0, i = 1; i <= last + 1; i++)
            {
                if (i <= last && result.Time[i] > result.Time[i - 1]) continue;
                sum += Quadrature.Sum([.. result.Time.Values.Skip(from).Take(i - from)],
                    [.. Enumerable.Range(from, i - from).Select(Force)]);
                from = i;
            }

            Tolerance.Absolute(0, (result.Mass[last] * result.EndOfJet.Speed.MetersPerSecond - sum) / result.Curve.Impulse.NewtonSeconds,
                1e-6);
        }, iter: 60);

    [Fact]
    public void More_drag_and_more_ambient_pressure_mean_less_height() =>
        AnyFlight.Sample(flight =>
        {
            var height = flight.Peak().ApogeeMetres;
            Assert.True((flight with { Drag = flight.Drag.Times(1.2) }).Peak().ApogeeMetres < height);
            Assert.True((flight with { Site = new("mountain", 2000.Metres(), Atmosphere.Standard) }).Peak().ApogeeMetres > height);
        }, iter: 30);

    [Fact]
    public void The_coast_of_a_flight_meets_the_closed_form_at_constant_density_within_the_change_of_density()
    {
        var result = Curlew.Fly();
        var (v, h) = (result.EndOfJet.Speed.MetersPerSecond, result.EndOfJet.Height.Meters);
        var mass = result.Mass.Values[^1];
        var density = StandardAtmosphere.At(((result.Apogee.Meters + h) / 2).Metres()).Density.KilogramsPerCubicMeter;
        var k = 0.5 * density * 0.4 * Math.PI / 4 * 0.074 * 0.074;
        var height = h + mass / (2 * k) * Math.Log(1 + k * v * v / (mass * 9.80665));
        Tolerance.Relative(height, result.Apogee.Meters, 2e-3);
    }

    [Fact]
    public void A_drag_table_that_is_constant_gives_the_constant_answer()
    {
        // A table with one value raised by one part in 10^12 is no constant to the code, but is one to anybody else.
        var table = DragCurve.From("table", Curlew.Drag.ReferenceArea, m => m > 0.5 ? 0.4 * (1 + 1e-12) : 0.4);
        Assert.False(table.IsConstant);
        Tolerance.Relative(Curlew.Fly().Apogee.Meters, (Curlew with { Drag = table }).Fly().Apogee.Meters, 1e-9);
    }

    [Fact]
    public void Less_drag_while_the_jet_runs_means_more_height()
    {
        var lighter = Curlew with { DragUnderThrust = DragCurve.Constant(0.3, 74.Millimetres()) };
        Assert.True(lighter.Fly().Apogee > Curlew.Fly().Apogee);
    }

    [Fact]
    public void Events_come_in_order_and_end_at_the_top()
    {
        var result = Curlew.Fly();
        Assert.Equal("apogee", result.Events[^1].Name);
        Assert.Equal(result.Events.Select(e => e.Time.Seconds).Order(), result.Events.Select(e => e.Time.Seconds));
        Assert.Equal(["water out", "flow unchoked", "maximum speed", "end of jet", "apogee"], result.Events.Select(e => e.Name));
        Tolerance.Absolute(0, result.Speed.Values[^1], 1e-9);
        Tolerance.Relative(result.Apogee.Meters, result.Height.Values.Max(), 1e-12);
        Assert.All(new[] { result.Height, result.Speed, result.Thrust, result.Mass, result.WaterLevel, result.Mach, result.DynamicPressure,
            result.Pressure },
            s => Assert.Equal(result.Time.Count, s.Count));
    }

    [Fact]
    public void The_result_carries_cautions_model_and_working()
    {
        var result = Curlew.Fly();
        Assert.Equal(Cautions.ForFlight, result.Cautions);
        Assert.Contains(result.Model.Assumptions, a => a.Contains("no rail", StringComparison.Ordinal));
        Assert.Equal("Acceleration at release", result.Working.Steps[^1].What);
        Assert.Contains("Curlew", result.Title, StringComparison.Ordinal);
        Assert.All(result.Lines, line => Assert.False(string.IsNullOrWhiteSpace(line.Value)));
    }

    [Fact]
    public void A_vehicle_too_heavy_to_lift_is_refused()
    {
        var heavy = Curlew with { DryMass = 90.Kilograms() };
        var error = Assert.Throws<InvalidDesignException>(() => heavy.Fly());
        Assert.Contains("would not lift", error.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidDesignException>(() => heavy.Peak());
    }

    [Fact]
    public void A_vehicle_beyond_the_drag_model_is_refused_with_its_mach_number()
    {
        var fast = Curlew with
        {
            Charge = FiringExamples.Charge with { Chamber = FiringExamples.Chamber with { RatedPressure = 300.BarGauge() },
                Pressure = 280.BarGauge() },
            DryMass = 300.Grams(),
        };
        var result = fast.Fly();
        Assert.Equal(ResultStatus.Failed, result.Status);
        Assert.Empty(result.Lines);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error && f.Message.Contains("Mach", StringComparison.Ordinal));
        Assert.Equal(ResultStatus.Failed, fast.Peak().Status);
        Assert.True(double.IsNaN(fast.Peak().ApogeeMetres));
    }

    [Fact]
    public void A_vehicle_that_stops_while_its_jet_still_runs_reports_that_as_its_top()
    {
        // Thrust falls below weight long before the water is out.
        var weak = Curlew with
        {
            Charge = FiringExamples.Charge with { WaterFraction = 80.Percent(), Pressure = 6.BarGauge() },
            Nozzle = new Nozzle(7.Millimetres()),
            DryMass = 2.5.Kilograms(),
        };
        var result = weak.Fly();
        Assert.Equal(ResultStatus.Completed, result.Status);
        Assert.True(result.Curve.Water.Values[^1] > 0);
        Tolerance.Absolute(0, result.Speed.Values[^1], 1e-9);
        Tolerance.Relative(result.Apogee.Meters, weak.Peak().ApogeeMetres, 1e-4);
    }

    [Fact]
    public void A_vehicle_that_hardly_lifts_comes_down_again_and_says_so()
    {
        // Thrust is above weight for the first milliseconds only.
        var weak = Curlew with
        {
            Charge = FiringExamples.Charge with { WaterFraction = 24.Percent(), Pressure = 0.3.BarGauge() },
            Nozzle = new Nozzle(16.5.Millimetres()),
            DryMass = 790.Grams(),
        };
        var thrust = weak.Setup(weak.Tables).FirstThrust;
        var just = weak with { DryMass = (thrust / 9.80665 * 0.995 - weak.Charge.WaterMass.Kilograms -
            weak.Charge.GasMass(weak.Site.Pressure).Kilograms).Kilograms() };
        var result = just.Fly();
        Assert.Equal(ResultStatus.Completed, result.Status);
        Assert.InRange(result.Apogee.Meters, 0, 0.01);
    }

    // It lifts, but the gas has grown weak before the tube ends. Nothing has left: the gas has given just its work.
    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 0)]
    [InlineData(true, 0.6)]
    public void A_vehicle_that_stops_on_its_launch_tube_has_no_height(bool real, double hollow)
    {
        var tube = new LaunchTube(12.Millimetres(), 0.4.Metres());
        tube = tube with { Hollow = tube.Displaced * hollow };
        var heavy = Curlew with
        {
            Charge = FiringExamples.Charge with { Pressure = 4.BarGauge(), WaterFraction = 85.Percent() },
            LaunchTube = tube with { Stroke = 0.4.Metres() },
            Flow = real ? FlowModel.Real : FlowModel.Plain,
            DryMass = 2.7.Kilograms(),
        };
        Assert.DoesNotContain(heavy.Validate(), f => f.Severity == FindingSeverity.Error);
        var result = heavy.Fly();
        Assert.Equal(ResultStatus.Failed, result.Status);
        Assert.Contains(result.Findings, f => f.Severity == FindingSeverity.Error
            && f.Message.Contains("stops on its launch tube", StringComparison.Ordinal));
        Assert.DoesNotContain(result.Events, e => e.Name is "launch tube left" or "end of jet");
        Assert.True(double.IsNaN(heavy.Peak().ApogeeMetres));
        Tolerance.Absolute(0, result.Energy.Imbalance, 1e-6);
        Tolerance.Relative((result.Energy.GasAtStart - result.Energy.GasAtEnd).Joules,
            (result.Energy.LaunchTube + result.Energy.OutsideAir).Joules, 1e-6);
    }

    [Fact]
    public void A_launch_tube_longer_than_the_vessel_is_refused() =>
        Assert.Contains("Use a shorter tube", Assert.Throws<InvalidDesignException>(() => (Curlew
            with { LaunchTube = new LaunchTube(12.Millimetres(), 3.Metres()) }).Fly()).Message, StringComparison.Ordinal);

    [Fact]
    public void Assumptions_are_compared_with_the_default_first()
    {
        var comparison = (Curlew with { DryMass = 600.Grams() }).CompareFlows();
        Assert.Equal(7, comparison.Lines.Count);
        Assert.Empty(comparison.Findings);
        var apogees = comparison.Variants.Select(v => v.Flight!.Apogee.Meters).ToList();
        // Heat only adds, moisture only adds, and at 40 bar an ideal gas promises more than a real one.
        Assert.True(apogees[1] > apogees[0] && apogees[2] > apogees[1] && apogees[3] > apogees[1] && apogees[6] > apogees[0]);
        Assert.Throws<InvalidDesignException>(() => (Curlew with { DryMass = 150.Kilograms() }).CompareFlows());
    }

    [Fact]
    public void Assumptions_that_do_not_hold_are_left_out_with_their_reason()
    {
        var wide = Curlew with { Nozzle = new Nozzle(40.Millimetres()) };
        var comparison = wide.CompareFlows();
        Assert.Equal(2, comparison.Findings.Count);
        Assert.Contains(comparison.Lines, l => l.Value == "not computed");
    }

    [Fact]
    public void All_that_is_wrong_is_said_at_once()
    {
        var bad = Curlew with
        {
            DryMass = Mass.Zero,
            Nozzle = new Nozzle(80.Millimetres()),
            Charge = FiringExamples.Charge with { WaterFraction = 100.Percent() },
            DragUnderThrust = DragCurve.Constant(0.3, 60.Millimetres()),
        };
        Assert.Equal(4, bad.Validate().Count);
    }

    [Fact]
    public void The_fast_path_allocates_nothing()
    {
        double sum = 0;
        foreach (var flow in new[] { FlowModel.Plain, FlowModel.Real, FlowModel.Real with { Water = WaterFlow.Unsteady } })
        {
            var flight = Curlew with { Flow = flow };
            var tables = flight.Tables;
            for (var i = 0; i < 50; i++) sum += flight.PeakUnchecked(tables).ApogeeMetres;
            var before = GC.GetAllocatedBytesForCurrentThread();
            sum += flight.PeakUnchecked(tables).ApogeeMetres;
            Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.True(sum > 0);
    }
}
