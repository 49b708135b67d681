using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;
using UnitsNet;

namespace NotebookKit.Tests.Published.Vessels;

public class RoundBondTests
{
    private const string Volkersen = "Volkersen, Luftfahrtforschung 15, 1938, form for tubes; figures computed independently, finite " +
        "differences on 4000 points agree";

    private static readonly TubeMember Tube = new(50.Millimetres(), 53.Millimetres(), 20.Gigapascals());
    private static readonly TubeMember Ring = new(44.Millimetres(), 50.Millimetres(), 70.Gigapascals());
    private static readonly BondedTube Joint = new(Tube, Ring, 50.Millimetres(), 1000.Megapascals(), 0.3.Millimetres(), 40.Millimetres());

    [Fact]
    [PublishedCase("E27", Volkersen)]
    public void Ring_in_a_tube()
    {
        var shear = Joint.StressAt(80.BarGauge());
        Tolerance.Relative(0.24976, shear.Omega.InverseMillimeters, 1e-4);
        Tolerance.Relative(0.24976, Joint.AxialRate.InverseMillimeters, 1e-4);
        Tolerance.Relative(5, shear.Mean.Megapascals, 1e-4);
        Tolerance.Relative(43.192, shear.AtFirst.Megapascals, 1e-4);
        Tolerance.Relative(6.765, shear.AtSecond.Megapascals, 1e-3);
        Tolerance.Relative(0.3382, shear.Middle.Megapascals, 1e-3);
        Tolerance.Relative(43.192, shear.Peak.Megapascals, 1e-4);
    }

    [Fact]
    [PublishedCase("E28", Volkersen)]
    public void Longer_overlap_and_solid_plug()
    {
        Tolerance.Relative(43.191, (Joint with { Overlap = 80.Millimetres() }).StressAt(80.BarGauge()).Peak.Megapascals, 1e-4);
        var plug = (Joint with { Second = Ring with { InnerRadius = Length.Zero } }).StressAt(80.BarGauge());
        Tolerance.Relative(0.23631, plug.Omega.InverseMillimeters, 1e-4);
        Tolerance.Relative(45.650, plug.AtFirst.Megapascals, 1e-4);
        Tolerance.Relative(1.619, plug.AtSecond.Megapascals, 1e-3);
    }

    // The shear modulus of aluminium in the row is 26 300 MPa.
    [Fact]
    [PublishedCase("E30", Volkersen)]
    public void Twisted_tubes()
    {
        var inner = new TubeMember(20.Millimetres(), 22.5.Millimetres(), 70.Gigapascals()) { ShearModulus = 26.3.Gigapascals() };
        var outer = new TubeMember(22.8.Millimetres(), 25.Millimetres(), 70.Gigapascals()) { ShearModulus = 26.3.Gigapascals() };
        var shear = new BondedTube(inner, outer, 22.65.Millimetres(), 1200.Megapascals(), 0.3.Millimetres(), 20.Millimetres())
            .Twisted(Torque.FromNewtonMeters(200));
        Tolerance.Relative(0.36350, shear.Omega.InverseMillimeters, 1e-4);
        Tolerance.Relative(3.1023, shear.Mean.Megapascals, 1e-4);
        Tolerance.Relative(12.545, shear.AtFirst.Megapascals, 1e-3);
        Tolerance.Relative(10.040, shear.AtSecond.Megapascals, 1e-3);
    }

    [Fact]
    [PublishedCase("E31", "Goland and Reissner, J. Appl. Mech. 11, 1944 (unverified: limit 0.26); figures re-computed")]
    public void Bending_at_the_end_of_a_single_lap()
    {
        double[] loads = [50, 200, 400], factors = [.7880, .6522, .5729];
        for (var i = 0; i < loads.Length; i++)
            Tolerance.Relative(factors[i], Factor(loads[i], 6.25), 1e-3);
        Tolerance.Relative(1, Factor(0, 6.25), 1e-12);
        Tolerance.Relative(0.2612, Factor(90_000, 500), 1e-3);

        static double Factor(double load, double half) =>
            LapJoint.MomentFactor(ForcePerLength.FromNewtonsPerMillimeter(load), 1.6.Millimetres(), half.Millimetres(), 70.Gigapascals(),
                0.33);
    }

    [Fact]
    [PublishedCase("E32", "form of Hart-Smith, NASA CR-112235 and CR-112236, 1973 (unverified; derived again); figures computed " +
        "independently")]
    public void Tough_adhesive_in_a_long_overlap()
    {
        var tough = new ToughAdhesive(40.Megapascals(), Ratio.FromDecimalFractions(1 / 30.0), 30.Percent(), 0.2.Millimetres());
        var stiff = ForcePerLength.FromNewtonsPerMillimeter(112_000);
        var soft = ForcePerLength.FromNewtonsPerMillimeter(60_000);
        Tolerance.Relative(1065.3, LapJoint.LongOverlap(stiff, stiff, tough, 200.Millimetres()).NewtonsPerMillimeter, 1e-4);
        var brittle = tough with { PlasticStrain = 0.Percent() };
        var load = LapJoint.LongOverlap(stiff, stiff, brittle, 200.Millimetres()).NewtonsPerMillimeter;
        Tolerance.Relative(244.40, load, 1e-4);
        // 2τp/ω of the elastic joint.
        Tolerance.Relative(2 * 40 / Math.Sqrt(1200 / 0.2 * 2 / 112_000), load, 1e-9);
        Tolerance.Relative(683.3, LapJoint.LongOverlap(stiff, soft, tough, 200.Millimetres()).NewtonsPerMillimeter, 1e-3);
    }
}
