using NotebookKit.Quantities;
using NotebookKit.Vessels.Shells;

namespace NotebookKit.Tests.Published.Vessels;

public class CylinderTests
{
    private const string Shigley = "Shigley, Mechanical Engineering Design, ";

    [Fact]
    [PublishedCase("V22", Shigley + "thin-walled vessel example, printed 774 psi and 12 000 psi")]
    public void Thin_and_thick_cylinder_of_eight_inches()
    {
        var pressure = ThinCylinder.PressureFor(12_000.Psi(), 7.5.Inches(), 0.25.Inches());
        Tolerance.Relative(774.2, pressure.Psi, 1e-4);
        var thick = new ThickCylinder(3.75.Inches(), 4.Inches(), pressure);
        Tolerance.Relative(12_012, thick.HoopStress(3.75.Inches()).PoundsForcePerSquareInch, 1e-4);
        Tolerance.Relative(5619, thick.AxialStress().PoundsForcePerSquareInch, 2e-4);
    }

    [Fact]
    [PublishedCase("V23", Shigley + "Lamé's equations with pressure inside and outside; figures re-computed")]
    public void Lame_with_two_pressures()
    {
        var cylinder = new ThickCylinder(30.Millimetres(), 50.Millimetres(), 200.BarGauge(), 50.BarGauge());
        Tolerance.Relative(3.4375, cylinder.AxialStress().Megapascals, 1e-10);
        Tolerance.Relative(26.875, cylinder.HoopStress(30.Millimetres()).Megapascals, 1e-10);
        Tolerance.Relative(-20, cylinder.RadialStress(30.Millimetres()).Megapascals, 1e-10);
        Tolerance.Relative(11.875, cylinder.HoopStress(50.Millimetres()).Megapascals, 1e-10);
        Tolerance.Relative(-5, cylinder.RadialStress(50.Millimetres()).Megapascals, 1e-10);
        foreach (var r in new[] { 30, 37, 44, 50 })
            Tolerance.Relative(6.875, (cylinder.HoopStress(r.Millimetres()) + cylinder.RadialStress(r.Millimetres())).Megapascals, 1e-10);
    }

    [Fact]
    [PublishedCase("V24", Shigley + "Lamé's equations; figures re-computed")]
    public void Lame_of_a_closed_end()
    {
        var cylinder = new ThickCylinder(50.Millimetres(), 53.Millimetres(), 60.BarGauge());
        Tolerance.Relative(103.09, cylinder.HoopStress(50.Millimetres()).Megapascals, 1e-4);
        Tolerance.Relative(97.09, cylinder.HoopStress(53.Millimetres()).Megapascals, 1e-4);
        Tolerance.Relative(48.54, cylinder.AxialStress().Megapascals, 2e-4);
        Tolerance.Relative(103.0, ThinCylinder.HoopStress(60.BarGauge(), 51.5.Millimetres(), 3.Millimetres()).Megapascals, 1e-10);
    }

    [Fact]
    [PublishedCase("V25", "ASME Section VIII Division 1 (1983), UG-27, UG-32: formulae; SI figures re-computed")]
    public void Code_thickness_in_SI()
    {
        var (p, r, s) = (60.BarGauge(), 50.Millimetres(), 80.Megapascals());
        Tolerance.Absolute(3.927, CodeThickness.Cylinder(p, r, s).Millimeters, 5e-4);
        Tolerance.Absolute(1.847, CodeThickness.CylinderAxial(p, r, s).Millimeters, 6e-4);
        Tolerance.Absolute(1.889, CodeThickness.Hemisphere(p, r, s).Millimeters, 5e-4);
        Tolerance.Absolute(3.778, CodeThickness.Ellipsoid(p, r, 25.Millimetres(), s).Millimeters, 5e-4);
        Tolerance.Absolute(6.688, CodeThickness.Torisphere(p, 100.Millimetres(), s).Millimeters, 5e-4);
    }

    [Fact]
    [PublishedCase("V25", "Megyesy, Pressure Vessel Handbook, shell, sphere and head at 100 psi; he prints 0.325 for the shell")]
    public void Code_thickness_in_inches()
    {
        var (p, r, s) = (100.PsiGauge(), 48.Inches(), 17_500.Psi());
        Tolerance.Absolute(0.324, CodeThickness.Cylinder(p, r, s, 0.85).Inches, 6e-4);
        Tolerance.Absolute(0.161, CodeThickness.Hemisphere(p, r, s, 0.85).Inches, 6e-4);
        Tolerance.Absolute(0.274, CodeThickness.Ellipsoid(p, r, 24.Inches(), s).Inches, 6e-4);
    }

    [Fact]
    [PublishedCase("V26", "Roark; Timoshenko: membrane stress of an ellipsoid; ASME Appendix 1-4 for K; figures re-computed")]
    public void Ellipsoidal_dome()
    {
        var dome = new EllipsoidalDome(50.Millimetres(), 25.Millimetres(), 2.Millimetres());
        Tolerance.Relative(150, dome.Crown(60.BarGauge()).Megapascals, 1e-10);
        Tolerance.Relative(75, dome.EquatorAlong(60.BarGauge()).Megapascals, 1e-10);
        Tolerance.Relative(-150, dome.EquatorHoop(60.BarGauge()).Megapascals, 1e-10);
        var even = dome with { Depth = (50 / Math.Sqrt(2)).Millimetres() };
        Tolerance.Absolute(0, even.EquatorHoop(60.BarGauge()).Megapascals, 1e-10);
        Tolerance.Relative(1.000, CodeThickness.EllipsoidFactor(50.Millimetres(), 25.Millimetres()), 1e-12);
        Tolerance.Relative(0.500, CodeThickness.EllipsoidFactor(50.Millimetres(), 50.Millimetres()), 1e-12);
    }

    // 75 MPa along and −150 MPa around at the rim: √(75² + 75·150 + 150²) = 198.43 MPa by von Mises, more than the crown's 150.
    [Fact]
    [PublishedCase("V26", "Roark; Timoshenko: membrane stress of an ellipsoid; von Mises by hand")]
    public void Rim_of_a_flat_dome_yields_before_its_crown()
    {
        var dome = new EllipsoidalDome(50.Millimetres(), 25.Millimetres(), 2.Millimetres());
        Tolerance.Relative(60, dome.PressureFor(198.4313.Megapascals()).Bar, 1e-6);
        Tolerance.Relative(60, (dome with { Depth = 50.Millimetres() }).PressureFor(75.Megapascals()).Bar, 1e-12);
    }

    [Fact]
    [PublishedCase("V71", "Timoshenko; Roark: growth of a closed thin cylinder; figures re-computed")]
    public void Growth_of_an_aluminium_tube()
    {
        var strain = ThinCylinder.Expand(60.BarGauge(), 50.Millimetres(), 1.Millimetres(), 70.Gigapascals(), 0.33);
        Tolerance.Relative(3.5786e-3, strain.Hoop.DecimalFractions, 2e-5);
        Tolerance.Relative(7.2857e-4, strain.Axial.DecimalFractions, 2e-5);
        Tolerance.Relative(7.9037e-3, strain.Volume.DecimalFractions, 2e-5);
        // The formula of V70, (pr/Et)(5/2 − 2ν), is the small-strain sum.
        Tolerance.Relative(7.8857e-3, 2 * strain.Hoop.DecimalFractions + strain.Axial.DecimalFractions, 2e-5);
        Tolerance.Relative(300.0 / 70_000 * (2.5 - 0.66), 2 * strain.Hoop.DecimalFractions + strain.Axial.DecimalFractions, 1e-12);
    }

    [Theory]
    [PublishedCase("V72", "Jones, Mechanics of Composite Materials, 2nd ed. 1999, ch. 4; Timoshenko: growth of a closed orthotropic "
        + "tube; figures re-computed")]
    [InlineData(false, 55, 1.0, 1.546e-3, 2.668e-3, 6.882e-3)]
    [InlineData(true, 54.7356, 1.25, 1.405e-3, 4.054e-3, 9.513e-3)]
    [InlineData(true, 55, 1.25, 1.668e-3, 3.895e-3, 9.458e-3)]
    [InlineData(true, 45, 1.25, -7.122e-3, 1.334e-2, 1.955e-2)]
    public void Growth_of_a_braided_tube(bool wet, double degrees, double millimetres, double axial, double hoop, double volume)
    {
        var lamina = wet ? Cases.WetCarbon(45.Percent()).Lamina() : Cases.T300;
        var tube = Cases.Tube(lamina, Cases.T300Strength, (degrees, millimetres));
        var strain = tube.Expand(60.BarGauge());
        Tolerance.Relative(axial, strain.Axial.DecimalFractions, 1e-3);
        Tolerance.Relative(hoop, strain.Hoop.DecimalFractions, 1e-3);
        Tolerance.Relative(volume, 2 * strain.Hoop.DecimalFractions + strain.Axial.DecimalFractions, 1e-3);
        if (!wet || degrees != 55) return;
        Tolerance.Relative(338.6, tube.Stresses(60.BarGauge())[0].Longitudinal.Megapascals, 1e-3);
        // Netting asks the same wall at 360.0 MPa for the pressure: 6.3 % more than the laminate carries along its fibres.
        Tolerance.Relative(1.25, Netting.FibreThickness(60.BarGauge(), 50.Millimetres(), 360.0.Megapascals()).Millimeters, 1e-6);
    }
}
