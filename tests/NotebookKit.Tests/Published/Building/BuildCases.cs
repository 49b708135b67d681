using NetTopologySuite.Geometries;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Tests.Published.Building;

/// <summary>Bench work against a textbook's plan, a general-purpose geometry library, and the published geometry of braids.</summary>
public class BuildCases
{
    // The contractor's project of the textbook: fourteen activities, durations in weeks; here a week is an hour.
    private static readonly BuildTask[] Contractor =
    [
        T("excavate", 2), T("foundation", 4, "excavate"), T("rough wall", 10, "foundation"), T("roof", 6, "rough wall"),
            T("exterior plumbing", 4, "rough wall"),
        T("interior plumbing", 5, "exterior plumbing"), T("exterior siding", 7, "roof"),
            T("exterior painting", 9, "exterior plumbing", "exterior siding"),
        T("electrical work", 7, "rough wall"), T("wallboard", 8, "interior plumbing", "electrical work"), T("flooring", 4, "wallboard"),
        T("interior painting", 5, "wallboard"), T("exterior fixtures", 2, "exterior painting"),
            T("interior fixtures", 6, "flooring", "interior painting"),
    ];

    private static BuildTask T(string name, double hours, params string[] after) => new(name, hours.Hours(), 0.Hours(), after);

    private const string Textbook = "F. S. Hillier, G. J. Lieberman, Introduction to Operations Research, 7th ed. 2001, ch. 10, the "
        + "Reliable Construction project; unverified";

    [Fact]
    [PublishedCase("B01", Textbook + ": 44 weeks, critical A-B-C-E-F-J-L-N")]
    public void The_contractors_project_takes_44_weeks()
    {
        var plan = new BuildCalendar(Contractor, new DateTime(2026, 3, 2, 8, 0, 0, DateTimeKind.Unspecified),
            BenchHours.Always) { People = 14 }.Plan();
        Assert.Equal(44, plan.Shortest.Hours, 9);
        Assert.Equal(44, (plan.End - plan.Steps[0].Start).TotalHours, 9);
        Assert.Equal(
            ["electrical work", "exterior fixtures", "exterior painting", "exterior siding", "flooring", "roof"],
            plan.Steps.Where(s => !s.IsCritical).Select(s => s.Task.Name).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("roof", 4)]
    [InlineData("exterior siding", 4)]
    [InlineData("exterior painting", 4)]
    [InlineData("electrical work", 2)]
    [InlineData("flooring", 1)]
    [InlineData("exterior fixtures", 4)]
    [PublishedCase("B01", Textbook + ": slack of the others")]
    public void The_contractors_slack_is_that_of_the_textbook(string name, double weeks)
    {
        var plan = new BuildCalendar(Contractor, new DateTime(2026, 3, 2, 8, 0, 0, DateTimeKind.Unspecified),
            BenchHours.Always) { People = 14 }.Plan();
        Assert.Equal(weeks, plan.Steps.Single(s => s.Task.Name == name).Slack.Hours, 9);
    }

    // Fin, body and arc as fine polygons; the overlay of a general-purpose geometry library cuts the fillet out.
    [Theory]
    [InlineData(70, 2, 6)]
    [InlineData(70, 2, 12)]
    [InlineData(90, 4, 8)]
    [InlineData(30, 1.5, 10)]
    [PublishedCase("B02", "Area by the overlay of NetTopologySuite 2.6, a general-purpose geometry library")]
    public void A_fillets_section_is_that_of_its_overlay(double body, double fin, double radius)
    {
        double r = radius, big = body / 2, half = fin / 2;
        var (cx, cy) = (half + r, Math.Sqrt((big + r) * (big + r) - (half + r) * (half + r)));
        var (bx, by) = (cx * big / (big + r), cy * big / (big + r));
        var factory = GeometryFactory.Default;
        Geometry Circle(double x, double y, double rr) => factory.CreatePolygon([.. Enumerable.Range(0,
            40001).Select(i => new Coordinate(x + rr * Math.Cos(2 * Math.PI * (i % 40000) / 40000),
            y + rr * Math.Sin(2 * Math.PI * (i % 40000) / 40000)))]);
        var room = factory.CreatePolygon([new(half, big / 2), new(half, cy), new(cx, cy), new(bx, by), new(half, big / 2)]);
        var fillet = room.Difference(Circle(0, 0, big)).Difference(Circle(cx, cy, r));
        Tolerance.Relative(fillet.Area, new FinFillets(body.Millimetres(), fin.Millimetres(), 100.Millimetres(), radius.Millimetres(),
            3).Section.SquareMillimeters, 1e-5);
    }

    [Fact]
    [PublishedCase("B03", "Plane geometry: square less quarter circle, (1 − π/4) r²")]
    public void On_a_wide_body_a_fillet_is_a_square_less_a_quarter_circle() =>
        Tolerance.Relative((1 - Math.PI / 4) * 36, new FinFillets(100.Metres(), 0.2.Millimetres(), 1.Metres(), 6.Millimetres(),
            3).Section.SquareMillimeters, 2e-3);

    // A sleeve of 65 mm at 45° over 66 mm: sin θ = 66/65 sin 45°, length as cos θ0 / cos θ.
    [Fact]
    [PublishedCase("B04", "M. Du, P. Popper, J. Text. Inst. 85 (1994) 316: a yarn's length is kept, so length goes with cos θ and "
        + "diameter with sin θ")]
    public void A_sleeve_is_cut_longer_for_a_wider_body()
    {
        var sleeve = MaterialLibrary.Typical.Braid("carbon sleeve 65 mm light");
        var end = new VesselEnd(new FlatClosure(MaterialLibrary.Typical.Solid("aluminium 6061-T6"), 8.Millimetres()),
            new BondedPlug(MaterialLibrary.Typical.Adhesive("structural epoxy"), 40.Millimetres(), BondSurface.AbradedLaminate,
            BondSurface.TreatedMetal));
        var vessel = new PressureVessel("tube", new Liner(MaterialLibrary.Typical.Solid("PET"), 65.Millimetres(), 0.5.Millimetres()),
            500.Millimetres(), MaterialLibrary.Typical.Resin("laminating epoxy"), [new BraidedSleeve(sleeve)], end, end);
        var piece = CutList.Of(vessel.Layup(), new CutAllowances { PerEnd = Length.Zero, PeelPly = false }).Pieces.Single();
        var sine = 66 / sleeve.NominalDiameter.Millimeters * Math.Sin(sleeve.NominalAngle.Radians);
        var covered = 500 + 2 * 40;
        Tolerance.Relative(covered * Math.Cos(sleeve.NominalAngle.Radians) / Math.Sqrt(1 - sine * sine), piece.Along.Millimeters, 1e-9);
    }
}
