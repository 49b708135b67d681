using NotebookKit.Charts.Theme;

namespace NotebookKit.Charts.Tests.Theme;

public sealed class PaletteTests
{
    // Machado, Oliveira, Fernandes, A physiologically-based model for simulation of color vision deficiency, IEEE TVCG 15 (2009), severity
    // 1.0, on linear RGB.
    private static readonly double[][] RedBlind = [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998]];
    private static readonly double[][] GreenBlind = [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881]];

    public static TheoryData<int, int> Pairs
    {
        get
        {
            var pairs = new TheoryData<int, int>();
            for (var i = 0; i < 6; i++)
                for (var j = i + 1; j < 6; j++) pairs.Add(i, j);
            return pairs;
        }
    }

    // 25 is about ten times what an eye can just tell apart side by side, 2.3 in CIE 1976 L*a*b* (Mahy, van Eycken, Oosterlinck, 1994).
    [Theory]
    [MemberData(nameof(Pairs))]
    public void The_first_six_colours_stay_apart_for_every_eye(int a, int b)
    {
        foreach (var eye in new[] { null, RedBlind, GreenBlind })
            Assert.True(Distance(Lab(Palette.Data[a], eye), Lab(Palette.Data[b], eye)) > 25,
                $"{Palette.Data[a]} and {Palette.Data[b]}: {Distance(Lab(Palette.Data[a], eye), Lab(Palette.Data[b], eye)):0.0}");
    }

    [Fact]
    public void Steps_of_a_map_grow_lighter_for_every_eye()
    {
        foreach (var eye in new[] { null, RedBlind, GreenBlind })
        {
            var lightness = Palette.Map.Select(c => Lab(c, eye).L).ToList();
            Assert.Equal(lightness.Order(), lightness);
        }
    }

    // WCAG 2.1, success criteria 1.4.3 and 1.4.11.
    [Fact]
    public void Text_and_lines_stand_out_from_the_paper()
    {
        Assert.True(Contrast(Palette.Ink) >= 7);
        Assert.True(Contrast(Palette.Quiet) >= 4.5);
        Assert.All(Palette.Data.Take(4), c => Assert.True(Contrast(c) >= 3, $"{c}: {Contrast(c):0.00}"));
    }

    [Fact]
    public void Every_colour_has_a_dash_of_its_own() => Assert.Equal(Palette.Data.Count, Palette.Dashes.Distinct().Count());

    private static double Contrast(string colour) => 1.05 / (Luminance(Linear(colour)) + 0.05);

    private static double Luminance(double[] rgb) => (0.2126 * rgb[0]) + (0.7152 * rgb[1]) + (0.0722 * rgb[2]);

    private static double[] Linear(string colour) =>
        [.. Convert.FromHexString(colour[1..]).Select(b => b / 255.0).Select(v => v <= 0.04045 ? v / 12.92
            : Math.Pow((v + 0.055) / 1.055, 2.4))];

    private static (double L, double A, double B) Lab(string colour, double[][]? eye)
    {
        var rgb = Linear(colour);
        if (eye is not null) rgb = [.. eye.Select(row => Math.Clamp(row.Zip(rgb, (m, v) => m * v).Sum(), 0, 1))];
        var x = F(((0.4124 * rgb[0]) + (0.3576 * rgb[1]) + (0.1805 * rgb[2])) / 0.9505);
        var y = F(Luminance(rgb));
        var z = F(((0.0193 * rgb[0]) + (0.1192 * rgb[1]) + (0.9505 * rgb[2])) / 1.089);
        return ((116 * y) - 16, 500 * (x - y), 200 * (y - z));

        static double F(double t) => t > 0.008856 ? Math.Cbrt(t) : (7.787 * t) + (16.0 / 116);
    }

    private static double Distance((double L, double A, double B) p, (double L, double A, double B) q) =>
        Math.Sqrt(Math.Pow(p.L - q.L, 2) + Math.Pow(p.A - q.A, 2) + Math.Pow(p.B - q.B, 2));
}
