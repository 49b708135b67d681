using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Aerodynamics;

/// <summary>Bodies that several tests share; dimensions invented, chosen for round numbers.</summary>
internal static class SampleBodies
{
    /// <summary>60 mm body, 1.8 m long, tangent ogive, three clipped fins.</summary>
    public static FinnedBody ThreeFins { get; } = new(
        [Nose.TangentOgive(240.Millimetres(), 60.Millimetres()), new BodyTube(1.56.Metres(), 60.Millimetres())],
        [FinSet.Trapezoidal(3, 100.Millimetres(), 60.Millimetres(), 60.Millimetres(), 40.Millimetres(), 1.5.Millimetres(), 1.7.Metres())])
    {
        Name = "three fins",
    };

    public static Length ThreeFinsGravity { get; } = 1.2.Metres();

    /// <summary>Cone on 60 mm, shoulder to 90 mm, four fins.</summary>
    public static FinnedBody Shouldered { get; } = new(
        [
            Nose.Cone(300.Millimetres(), 60.Millimetres()),
            new BodyTube(400.Millimetres(), 60.Millimetres()),
            new Transition(80.Millimetres(), 60.Millimetres(), 90.Millimetres()),
            new BodyTube(1.3.Metres(), 90.Millimetres()),
        ],
        [FinSet.Trapezoidal(4, 180.Millimetres(), 90.Millimetres(), 100.Millimetres(), 90.Millimetres(), 2.Millimetres(), 1.9.Metres())])
    {
        Name = "shouldered",
        Reference = 60.Millimetres(),
    };

    /// <summary>The standard range model "Basic Finner" on a 30 mm calibre: 10° half-angle cone, four square fins of one calibre.</summary>
    public static FinnedBody BasicFinner { get; } = new(
        [Nose.Cone((2.836 * 30).Millimetres(), 30.Millimetres()), new BodyTube((7.164 * 30).Millimetres(), 30.Millimetres())],
        [FinSet.Trapezoidal(4, 30.Millimetres(), 30.Millimetres(), 30.Millimetres(), 0.Millimetres(), 2.4.Millimetres(),
            270.Millimetres())])
    {
        Name = "Basic Finner",
    };

    public static Nose NoseOf(NoseShape shape, Length length, Length baseDiameter, double parameter) => shape switch
    {
        NoseShape.Cone => Nose.Cone(length, baseDiameter),
        NoseShape.TangentOgive => Nose.TangentOgive(length, baseDiameter),
        NoseShape.Ellipsoid => Nose.Ellipsoid(length, baseDiameter),
        NoseShape.Parabolic => Nose.Parabolic(length, baseDiameter, bluntness: parameter),
        NoseShape.Power => Nose.Power(length, baseDiameter, exponent: parameter),
        _ => Nose.Haack(length, baseDiameter, volumeWeight: parameter),
    };
}
