using NotebookKit.Quantities;

namespace NotebookKit.Tests.Published.Propulsion;

/// <summary>
/// A 2 L bottle with 1 kg of water at 40 psi on a load cell, 21 mm throat, ambient 83 kPa, 39 clean runs. Never tuned to the level of
/// thrust, which moved by half between sessions. The bore isn't printed; 105 mm is that of such bottles (common practice, no source) and
/// hardly matters.
/// </summary>
public class MeasuredWaterJetTests
{
    private const string Bottle = "Pressurised 2 L bottle on a load-cell stand, classroom records of 2017 to 2020: mean of 39 runs; "
        + "reference derived with isentropic air, 2025";

    [Theory]
    [PublishedCase("N20", Bottle + "; the model class: 191 N, 16.15 N s at any area coefficient, water out 0.191 s (Cd 1) and "
        + "0.239 s (0.8)")]
    [InlineData(1, 0.191, 0.209)]
    [InlineData(0.8, 0.239, 0.262)]
    [InlineData(0.75, double.NaN, 0.279)]
    public void The_plain_model_agrees_with_its_reference(double coefficient, double waterOut, double end)
    {
        var curve = Fire(coefficient, FlowModel.Plain);
        if (!double.IsNaN(waterOut)) Tolerance.Relative(waterOut, curve.WaterPhase!.End.Seconds, 0.005);
        // The reference's end of thrust isn't defined; the jet's last thousandth of pressure takes a few milliseconds.
        Tolerance.Relative(end, curve.End.Seconds, 0.03);
        Tolerance.Relative(191 * coefficient, curve.PeakThrust.Newtons, 0.005);
        Tolerance.Relative(16.15, curve.Impulse.NewtonSeconds, 0.005);
    }

    [Theory]
    [PublishedCase("N20", Bottle + ": duration 0.271 s, s.d. 0.009; half of the impulse at 0.262 of it; 10 % and 12 %")]
    [InlineData(0.75)]
    [InlineData(0.8)]
    public void Duration_and_half_impulse(double coefficient)
    {
        foreach (var flow in new[] { FlowModel.Plain, FlowModel.Real })
        {
            var curve = Fire(coefficient, flow);
            Tolerance.Relative(0.271, curve.End.Seconds, 0.1);
            Tolerance.Relative(0.262, HalfImpulse(curve) / curve.End.Seconds, 0.12);
        }

        // Moist air pushes longer: its half impulse comes at 0.298 of its duration, 14 % late, which these records don't support.
        Tolerance.Relative(0.271, Fire(coefficient, FlowModel.Moist).End.Seconds, 0.1);
    }

    [Fact]
    [PublishedCase("N20", Bottle)]
    public void A_clean_nozzle_would_be_too_quick() =>
        Assert.True(Fire(0.95, FlowModel.Plain).End.Seconds < 0.9 * 0.271);

    [Theory]
    [PublishedCase("N21", Bottle + ": F(100 ms)/F(50 ms) 0.691, s.d. 0.029, F(150)/F(50) 0.486; 0.06")]
    [InlineData(0.75)]
    [InlineData(0.8)]
    public void Shape_of_the_thrust(double coefficient)
    {
        var curve = Fire(coefficient, FlowModel.Moist);
        Tolerance.Absolute(0.691, Thrust(curve, 0.1) / Thrust(curve, 0.05), 0.06);
        Tolerance.Absolute(0.486, Thrust(curve, 0.15) / Thrust(curve, 0.05), 0.06);
    }

    [Fact]
    [PublishedCase("N22", Bottle + ": impulse 12 N s to 18 N s is all that the sessions allow to claim")]
    public void Impulse_lies_within_the_sessions() =>
        Assert.InRange(Fire(0.78, FlowModel.Moist).Impulse.NewtonSeconds, 12, 18);

    [Fact]
    [PublishedCase("N30 N31 N32", "Encyclopaedia Britannica, 11th ed., Hydraulics (1911): sharp edge 0.62, short tube 0.82, bell "
        + "mouth 0.97; 0.02")]
    public void Coefficients_of_the_three_classic_mouths()
    {
        Tolerance.Absolute(0.62, Nozzle.SharpEdged(10.Millimetres()).WaterDischargeCoefficient, 0.02);
        Tolerance.Absolute(0.82, Nozzle.ShortTube(10.Millimetres()).WaterDischargeCoefficient, 0.02);
        Tolerance.Absolute(0.97, Nozzle.Rounded(10.Millimetres()).WaterVelocityCoefficient, 0.02);
        Assert.All([Nozzle.SharpEdged(10.Millimetres()), Nozzle.ShortTube(10.Millimetres()), Nozzle.Rounded(10.Millimetres()),
            Nozzle.Conical(10.Millimetres())],
            nozzle => Assert.Empty(nozzle.Validate()));
    }

    // Castel's 0.946 and 0.963 are remembered: what gates is their place between the measured short tube and the bell mouth, and that the
    // source says so.
    [Fact]
    [PublishedCase("N34", "Castel, conical converging mouth of 13.4° (unverified), between the mouths of Encyclopaedia Britannica 1911")]
    public void A_conical_mouth_lies_between_tube_and_bell()
    {
        var cone = Nozzle.Conical(10.Millimetres());
        Assert.InRange(cone.WaterDischargeCoefficient, Nozzle.ShortTube(10.Millimetres()).WaterDischargeCoefficient,
            Nozzle.Rounded(10.Millimetres()).WaterDischargeCoefficient);
        Assert.Equal(NotebookKit.Provenance.SourceKind.Unverified, cone.Source.Kind);
    }

    // 0.62 is 0.97 of speed times 0.64 of area. One 0.9 lumped into area or into speed: thrusts 2 · 0.9 A Δp and 2 · 0.81 A Δp, 10 % apart.
    [Fact]
    [PublishedCase("P74", "Encyclopaedia Britannica, 11th ed., Hydraulics (1911): 0.62 = 0.97 × 0.64; momentum of the jet")]
    public void Narrow_and_slow_jets_are_kept_apart()
    {
        var sharp = Nozzle.SharpEdged(10.Millimetres());
        Tolerance.Relative(0.97, sharp.WaterVelocityCoefficient, 1e-12);
        Tolerance.Relative(0.64, sharp.WaterContractionCoefficient, 1e-12);
        static double First(double speed, double area) => new StaticFiring(
            new Charge(new Chamber(2.Litres(), 105.Millimetres(), 45.BarGauge()), 30.Percent(), 30.BarGauge(), 293.15.Kelvins()),
            new Nozzle(5.Millimetres()) { WaterVelocityCoefficient = speed, WaterContractionCoefficient = area },
            AbsolutePressure.StandardSeaLevel).Fire().Curve.PeakThrust.Newtons;
        var push = 2 * 30e5 * Math.PI / 4 * 25e-6;
        Tolerance.Relative(0.9 * push, First(1, 0.9), 2e-3);
        Tolerance.Relative(0.81 * push, First(0.9, 1), 2e-3);
    }

    private static ThrustCurve Fire(double coefficient, FlowModel flow) => new StaticFiring(
        new Charge(new Chamber(2.Litres(), 105.Millimetres(), 8.BarGauge()), 50.Percent(), 40.PsiGauge(), 293.15.Kelvins()),
        new Nozzle(21.Millimetres()) { WaterContractionCoefficient = coefficient, AirDischargeCoefficient = coefficient },
        AbsolutePressure.FromPascals(83_000)) { Flow = flow }.Fire().Curve;

    private static double Thrust(ThrustCurve curve, double time)
    {
        var i = Enumerable.Range(1, curve.Time.Count - 1).First(k => curve.Time[k] >= time);
        return curve.Thrust[i - 1] + (curve.Thrust[i] - curve.Thrust[i - 1]) * (time - curve.Time[i - 1]) / (curve.Time[i] - curve.Time[i -
            1]);
    }

    private static double HalfImpulse(ThrustCurve curve)
    {
        double half = curve.Impulse.NewtonSeconds / 2, sum = 0;
        for (var i = 1; ; i++)
        {
            sum += (curve.Time[i] - curve.Time[i - 1]) * (curve.Thrust[i] + curve.Thrust[i - 1]) / 2;
            if (sum >= half) return curve.Time[i];
        }
    }
}
