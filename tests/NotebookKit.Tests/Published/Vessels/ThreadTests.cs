using NotebookKit.Quantities;
using NotebookKit.Vessels.Ends.Modes;

namespace NotebookKit.Tests.Published.Vessels;

public class ThreadTests
{
    private const string Bickford = "FED-STD-H28/2B form; Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed., " +
        "table of areas, as printed";

    [Theory]
    [PublishedCase("E33", "ISO 898-1, table of stress areas 84.3 157 245 353 561; a second table 84.267 156.67 244.79 352.50 560.59")]
    [InlineData("M12", 84.266)]
    [InlineData("M16", 156.668)]
    [InlineData("M20", 244.794)]
    [InlineData("M24", 352.503)]
    [InlineData("M30", 560.586)]
    public void Stress_area(string name, double area)
    {
        var thread = ThreadLimits.Named(name);
        Tolerance.Absolute(area, ThreadArea.Stress(thread.Nominal, thread.Pitch).SquareMillimeters, 1e-3);
    }

    [Theory]
    [PublishedCase("E34", Bickford)]
    [PublishedCase("E35", Bickford)]
    [InlineData("M12", 227.72, 313.41, 0.015)]
    [InlineData("M16", 417.55, 569.12, 0.0051)]
    [InlineData("M20", 665.58, 907.76, 0.0051)]
    [InlineData("M24", 971.10, 1320.2, 0.051)]
    [InlineData("M30", 1549.2, 2086.5, 0.051)]
    public void Areas_that_strip(string name, double external, double within, double digit)
    {
        var thread = ThreadLimits.Named(name);
        Tolerance.Absolute(external, ThreadArea.ExternalStrips(thread, thread.Nominal).SquareMillimeters, digit);
        Tolerance.Absolute(within, ThreadArea.InternalStrips(thread, thread.Nominal).SquareMillimeters, digit);
    }

    [Theory]
    [PublishedCase("E36", "basic sizes in FED-STD-H28's form, computed independently: the trap of leaving tolerances out")]
    [InlineData("M12", 12, 1.75, 285.73, 1.25)]
    [InlineData("M30", 30, 3.5, 1852.75, 1.19)]
    public void Basic_sizes_are_unsafe(string name, double d, double pitch, double area, double over)
    {
        double pitchDiameter = d - 0.649519 * pitch, minor = d - 1.082532 * pitch;
        var basic = ThreadArea.Stripped(d, pitch, minor, pitchDiameter - minor);
        Tolerance.Relative(area, basic, 1e-3);
        var thread = ThreadLimits.Named(name);
        Assert.True(basic > over * ThreadArea.ExternalStrips(thread, thread.Nominal).SquareMillimeters);
        var given = thread with { ExternalMajor = thread.Nominal, ExternalPitch = pitchDiameter.Millimetres(),
            InternalPitch = pitchDiameter.Millimetres(), InternalMinor = minor.Millimetres() };
        Assert.Contains(given.Validate(), f => f.Message.Contains("basic sizes", StringComparison.Ordinal));
    }

    [Theory]
    [PublishedCase("E37", "ISO 898-1, fine pitch: 92.1 272 384 621 (unverified); figures re-computed")]
    [InlineData(12, 1.25, 92.07)]
    [InlineData(20, 1.5, 271.5)]
    [InlineData(24, 2, 384.4)]
    [InlineData(30, 2, 621.2)]
    public void Fine_pitch(double d, double pitch, double area) =>
        Tolerance.Relative(area, ThreadArea.Stress(d.Millimetres(), pitch.Millimetres()).SquareMillimeters, 1e-3);

    [Theory]
    [PublishedCase("E38", "ISO 898-1, least load of class 8.8, printed 67 400 125 000 203 000 293 000 466 000 N; within 0.5 %")]
    [InlineData("M12", 800, 67_400)]
    [InlineData("M16", 800, 125_000)]
    [InlineData("M20", 830, 203_000)]
    [InlineData("M24", 830, 293_000)]
    [InlineData("M30", 830, 466_000)]
    public void Load_of_class_8_8(string name, double megapascals, double newtons)
    {
        var thread = ThreadLimits.Named(name);
        Tolerance.Relative(newtons, (ThreadArea.Stress(thread.Nominal, thread.Pitch) * megapascals.Megapascals()).Newtons, 5e-3);
    }

    [Theory]
    [PublishedCase("E39", "FED-STD-H28, stress areas .1419 .334 .606 1.405 in² (unverified); figures re-computed")]
    [InlineData(.5, 13, .14190)]
    [InlineData(.75, 10, .33446)]
    [InlineData(1, 8, .60574)]
    [InlineData(1.5, 6, 1.40525)]
    public void Unified_stress_area(double d, double turns, double area) =>
        Tolerance.Relative(area, ThreadArea.UnifiedStress(d.Inches(), turns).SquareInches, 1e-4);

    [Fact]
    [PublishedCase("E40", "FED-STD-H28/2B form; limits of 1/2-13 UNC 2A in 2B unverified; figures computed independently")]
    public void Unified_thread_strips()
    {
        var thread = new ThreadLimits("1/2-13 UNC", 0.5.Inches(), (1 / 13.0).Inches(), 0.4876.Inches(), 0.4435.Inches(), 0.434.Inches(),
            0.4565.Inches());
        Tolerance.Relative(0.77894, ThreadArea.ExternalStrips(thread, 1.Inches()).SquareInches, 1e-3);
        Tolerance.Relative(1.1235, ThreadArea.InternalStrips(thread, 1.Inches()).SquareInches, 1e-3);
        Tolerance.Relative(0.3643, ThreadArea.FullStrengthEngagement(thread).Inches, 1e-3);
    }

    [Fact]
    [PublishedCase("E41", "FED-STD-H28/2B form; figures computed independently")]
    public void Plastic_cap()
    {
        var cap = new ScrewedCap(ThreadLimits.Named("M30"), 20.Millimetres(), 30.Millimetres(), 40.Megapascals(), 40.Megapascals());
        var strips = cap.Strips();
        Tolerance.Relative(1032.8, strips.ExternalArea.SquareMillimeters, 1e-4);
        Tolerance.Relative(1391.0, strips.InternalArea.SquareMillimeters, 1e-4);
        Tolerance.Relative(5654.9, cap.Thrust(80.BarGauge()).Newtons, 1e-4);
        Tolerance.Relative(5.475, strips.ExternalShearAt(80.BarGauge()).Megapascals, 1e-3);
        Tolerance.Relative(4.065, strips.InternalShearAt(80.BarGauge()).Megapascals, 1e-3);
        Tolerance.Relative(58.44, strips.Pressure.Pascals / 1e6, 1e-3);
        Assert.True(strips.ExternalGoes);
        // Half of the cylinder on the nominal diameter is 9 % low, three quarters of it 37 % high.
        Tolerance.Relative(0.9126, Math.PI * 30 * 20 / 2 / strips.ExternalArea.SquareMillimeters, 1e-3);
        Tolerance.Relative(1.3688, Math.PI * 30 * 15 / strips.ExternalArea.SquareMillimeters, 1e-3);
    }
}
