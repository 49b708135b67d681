using CsCheck;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Propulsion.Firings;

public class StaticFiringTests
{
    private static readonly Gen<StaticFiring> AnyFiring =
        from water in Gen.Double[0, 60]
        from bar in Gen.Double[3, 55]
        from throat in Gen.Double[4, 25]
        from velocity in Gen.Double[0.8, 1]
        from exponent in Gen.Double[1, 1.4]
        from model in Gen.Int[0, 3]
        from flow in Gen.Enum<WaterFlow>()
        select FiringExamples.Firing with
        {
            Charge = FiringExamples.Charge with { WaterFraction = Ratio.FromPercent(water), Pressure = bar.BarGauge() },
            Nozzle = new Nozzle(throat.Millimetres()) { WaterVelocityCoefficient = velocity },
            Flow = (model switch
            {
                0 => FlowModel.Real,
                1 => FlowModel.Moist,
                2 => FlowModel.Real with { WallWarming = WallWarming.FreeConvection },
                _ => FlowModel.Plain with { WaterPhase = Expansion.Polytropic(exponent), AirPhase = Expansion.Polytropic(exponent) },
            }) with { Water = flow },
        };

    [Fact]
    public void Energy_is_accounted_for_in_every_mode() =>
        AnyFiring.Sample(firing => Tolerance.Absolute(0, firing.Fire().Energy.Imbalance, 1e-6), iter: 60);

    [Fact]
    public void Impulse_equals_the_area_under_the_thrust_curve() =>
        AnyFiring.Sample(firing =>
        {
            var curve = firing.Fire().Curve;
            var area = 0.0;
            for (var i = 1; i < curve.Time.Count; i++) area += (curve.Time[i] - curve.Time[i - 1]) * (curve.Thrust[i]
                + curve.Thrust[i - 1]) / 2;
            Tolerance.Relative(curve.Impulse.NewtonSeconds, area, 1e-3);
        }, iter: 30);

    [Fact]
    public void Pressure_and_masses_only_fall() =>
        AnyFiring.Sample(firing =>
        {
            var curve = firing.Fire().Curve;
            foreach (var series in new[] { curve.Pressure, curve.Water, curve.Gas })
                for (var i = 1; i < series.Count; i++) Assert.True(series[i] <= series[i - 1] * (1 + 1e-7), series.Name);
                    // 1e-7: interpolation of the tables
            for (var i = 1; i < curve.Time.Count; i++) Assert.True(curve.Time[i] >= curve.Time[i - 1]);
        }, iter: 30);

    [Fact]
    public void More_pressure_means_more_impulse() =>
        (from firing in AnyFiring from factor in Gen.Double[0.5, 0.95] select (firing, factor)).Sample(pair =>
        {
            var less = pair.firing with { Charge = pair.firing.Charge with { Pressure = pair.firing.Charge.Pressure * pair.factor } };
            Assert.True(less.Fire().Curve.Impulse < pair.firing.Fire().Curve.Impulse);
        }, iter: 30);

    [Fact]
    public void A_pure_area_coefficient_leaves_the_water_impulse_alone_but_for_the_bore()
    {
        var half = FiringExamples.Firing with { Nozzle = new Nozzle(6.Millimetres()) };
        var whole = FiringExamples.Firing with { Nozzle = new Nozzle(12.Millimetres()) };
        Tolerance.Relative(half.Fire().Curve.WaterPhase!.Impulse.NewtonSeconds, whole.Fire().Curve.WaterPhase!.Impulse.NewtonSeconds, 1e-3);
    }

    [Fact]
    public void The_whole_unsteady_equation_and_the_established_jet_meet_where_one_takes_over_from_the_other()
    {
        // Behind a jet of more than 0.05 of the bore's area the whole equation is followed. Emptying time times area is smooth in that
        // share.
        double Emptying(double share)
        {
            var nozzle = new Nozzle((70 * Math.Sqrt(share)).Millimetres()) { WaterContractionCoefficient = 1 };
            var firing = FiringExamples.Firing with { Nozzle = nozzle, Flow = FlowModel.Plain with { Water = WaterFlow.Unsteady } };
            return firing.Fire().Curve.WaterPhase!.End.Seconds * share;
        }

        double[] times = [.. new[] { 0.0497, 0.0499, 0.0501, 0.0503 }.Select(Emptying)];
        Tolerance.Absolute(times[1] - times[0], times[2] - times[1], 1e-6 * times[0]);
        Tolerance.Absolute(times[3] - times[2], times[2] - times[1], 1e-6 * times[0]);
    }

    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e-7)]
    [InlineData(1e-4)]
    [InlineData(1e-2)]
    public void Next_to_no_water_is_next_to_no_difference(double percent)
    {
        foreach (var flow in Enum.GetValues<WaterFlow>())
        {
            var dry = FiringExamples.Firing with
            {
                Charge = FiringExamples.Charge with { WaterFraction = 0.Percent() }, Nozzle = new Nozzle(24.Millimetres()),
                    Flow = FlowModel.Real with { Water = flow },
            };
            var wet = dry with { Charge = dry.Charge with { WaterFraction = Ratio.FromPercent(percent) } };
            Assert.Equal(ResultStatus.Completed, wet.Fire().Status);
            Tolerance.Relative(dry.Fire().Curve.Impulse.NewtonSeconds, wet.Fire().Curve.Impulse.NewtonSeconds, 1e-6 + 5 * percent / 100);
        }
    }

    [Fact]
    public void A_moving_column_needs_a_nozzle_narrower_than_half_the_bore()
    {
        var wide = FiringExamples.Firing with { Nozzle = new Nozzle(40.Millimetres()),
            Flow = FlowModel.Real with { Water = WaterFlow.Unsteady } };
        var error = Assert.Throws<InvalidDesignException>(() => wide.Fire());
        Assert.Contains("of the bore's area", error.Message, StringComparison.Ordinal);
        Assert.Equal(ResultStatus.Completed, (wide with { Flow = FlowModel.Real }).Fire().Status);
    }

    [Fact]
    public void Psi_and_bar_give_the_same_answer()
    {
        var psi = FiringExamples.Firing with { Charge = FiringExamples.Charge with { Pressure = (40 / 0.0689475729316836).PsiGauge() } };
        Tolerance.Relative(FiringExamples.Firing.Fire().Curve.Impulse.NewtonSeconds, psi.Fire().Curve.Impulse.NewtonSeconds, 1e-9);
    }

    [Fact]
    public void Head_adds_to_thrust_and_matters_most_at_low_pressure()
    {
        double Gain(double bar)
        {
            var plain = FiringExamples.Firing with { Charge = FiringExamples.Charge with { Pressure = bar.BarGauge() } };
            var head = plain with { Flow = FlowModel.Real with { Water = WaterFlow.QuasiSteadyWithHead } };
            return head.Fire().Curve.PeakThrust / plain.Fire().Curve.PeakThrust - 1;
        }

        // ρ g h over Δp, h = 0.66 L over the bore.
        var head = 1000 * 9.80665 * 0.66e-3 / (Math.PI / 4 * 0.07 * 0.07);
        Tolerance.Relative(head / 5e5, Gain(5), 1e-6);
        Tolerance.Relative(head / 50e5, Gain(50), 1e-5);
    }

    [Fact]
    public void Spent_pressure_leaves_water_aboard_and_says_so()
    {
        var firing = FiringExamples.Firing with { Charge = FiringExamples.Charge
            with { WaterFraction = 90.Percent(), Pressure = 1.BarGauge() } };
        var result = firing.Fire();
        Assert.Equal(ResultStatus.Completed, result.Status);
        Assert.Null(result.Curve.GasPhase);
        Assert.Contains(result.Findings, f => f.Message.Contains("water still aboard", StringComparison.Ordinal));
        Assert.True(result.Curve.Water.Values[^1] > 100);
    }

    [Fact]
    public void Water_below_freezing_is_a_warning()
    {
        static bool Warns(StaticFiring firing) => firing.Fire().Findings.Any(f => f.Severity == FindingSeverity.Warning
            && f.Message.Contains("freezes below 0 °C", StringComparison.Ordinal));
        Assert.True(Warns(FiringExamples.Firing with { Charge = FiringExamples.Charge with { GasTemperature = (-5).Celsius() } }));
        Assert.False(Warns(FiringExamples.Firing with { Charge = FiringExamples.Charge
            with { GasTemperature = (-5).Celsius(), WaterFraction = 0.Percent() } }));
        Assert.False(Warns(FiringExamples.Firing));
    }

    // From 1 to 300 bar, from next to no water to 90 %, with any gas and any law, wall and heat: the budget closes.
    [Fact]
    public void Energy_is_accounted_for_with_other_gases_up_to_300_bar() =>
        (from water in Gen.Double[0, 90]
            from logBar in Gen.Double[0, 5.7]
            from throat in Gen.Double[1, 40]
            from celsius in Gen.Double[-18, 58]
            from gas in Gen.Int[0, 2]
            from film in Gen.Int[0, 2]
            from flow in Gen.Enum<WaterFlow>()
            select FiringExamples.Firing with
            {
                Charge = new(new(3.Litres(), 90.Millimetres(), 300.BarGauge()), water.Percent(), Math.Exp(logBar).BarGauge(),
                    celsius.Celsius()) { Gas = gas == 0 ? Gas.Air : gas == 1 ? Gas.Nitrogen : Gas.Hydrogen },
                Nozzle = new(throat.Millimetres()),
                Flow = FlowModel.Real with
                {
                    Water = flow,
                    WallWarming = film == 0 ? null : new() { Wall = ThermalWall.Laminate(1.5.Millimetres()),
                        FilmCoefficient = film == 1 ? null : HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(5000) },
                },
            }).Sample(firing =>
        {
            var result = firing.Fire();
            Assert.Equal(ResultStatus.Completed, result.Status);
            Tolerance.Absolute(0, result.Energy.Imbalance, 1e-6);
        }, iter: 60);

    // Gas that is spent with water still aboard has only the room beside that water; p V/(γ − 1) says what it holds.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_energy_of_spent_gas_is_that_of_its_own_room(bool real)
    {
        var firing = FiringExamples.Firing with
        {
            Charge = FiringExamples.Charge with { Pressure = 2.BarGauge(), WaterFraction = 85.Percent() },
                Flow = real ? FlowModel.Real : FlowModel.Plain,
        };
        var result = firing.Fire();
        Assert.Contains(result.Findings, f => f.Message.Contains("still aboard", StringComparison.Ordinal));
        Tolerance.Relative(3.01325e5 * 0.3e-3 / 0.4, result.Energy.GasAtStart.Joules, real ? 0.02 : 1e-9);
        var leftM3 = 2e-3 - result.Curve.Water[^1] * 1e-6;
        Tolerance.Relative(result.Curve.Pressure[^1] * 1e5 * leftM3 / 0.4, result.Energy.GasAtEnd.Joules, real ? 0.02 : 1e-6);
        Tolerance.Absolute(0, result.Energy.Imbalance, 1e-6);
    }

    [Fact]
    public void Another_gas_is_another_result()
    {
        var air = FiringExamples.Firing with { Charge = FiringExamples.Charge with { WaterFraction = 0.Percent() },
            Flow = FlowModel.Plain };
        var hydrogen = air with { Charge = air.Charge with { Gas = Gas.Hydrogen } };
        // τ goes with 1/√R: hydrogen empties √(4124/287) = 3.8 times as fast.
        Tolerance.Relative(Math.Sqrt(4124.48 / 287.05287), air.Fire().Curve.End / hydrogen.Fire().Curve.End, 0.02);
    }

    [Fact]
    public void The_result_shows_what_it_rests_on()
    {
        var result = FiringExamples.Firing.Fire();
        Assert.Equal(ResultStatus.Completed, result.Status);
        Assert.Equal(Cautions.ForPressure, result.Cautions);
        Assert.NotEmpty(result.Model.Assumptions);
        Assert.NotEmpty(result.Model.Sources);
        Assert.True(result.Evaluations > result.Steps && result.Steps > 10);
        Assert.Empty(result.Findings);
        var ideal = (FiringExamples.Firing with { Flow = FlowModel.Plain }).Fire();
        Assert.Contains(ideal.Findings, f => f.Message.Contains("above 30 bar", StringComparison.Ordinal));
        Assert.Contains(result.Working.Steps, s => s.What.StartsWith("Thrust at release", StringComparison.Ordinal));
        Assert.All(result.Lines, line => Assert.False(string.IsNullOrWhiteSpace(line.Value)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    [InlineData(2)]
    public void Refuses_surroundings_that_are_no_open_air(double bar)
    {
        var error = Assert.Throws<InvalidDesignException>(() => (FiringExamples.Firing with { Ambient = bar.BarAbsolute() }).Fire());
        Assert.Contains("air pressure around the vessel", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_choices_that_do_not_exist()
    {
        Assert.Throws<OutOfRangeException>(() => Expansion.Polytropic(0.9));
        Assert.Throws<OutOfRangeException>(() => Expansion.Polytropic(double.NaN));
        Assert.Throws<InvalidDesignException>(() => (FiringExamples.Firing with { Flow = new FlowModel { EndPressureRatio = 1 } }).Fire());
        Assert.Throws<InvalidDesignException>(() => (FiringExamples.Firing with { Flow = new FlowModel { Water = (WaterFlow)99 } }).Fire());
    }
}
