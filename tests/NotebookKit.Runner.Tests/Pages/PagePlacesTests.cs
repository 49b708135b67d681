using System.Xml.Linq;
using NotebookKit.Runner.Pages;

namespace NotebookKit.Runner.Tests.Pages;

public sealed class PagePlacesTests
{
    private const string Words = "A drawing";

    [Theory]
    [InlineData(100, 120)]
    [InlineData(100, 260)]
    public void A_drawing_of_two_forms_gives_each_as_a_picture_that_can_be_read(int width, int height)
    {
        var places = new PagePlaces();
        places.Look($"<div class=\"nk-out nk-drawing\"><div class=\"nk-wide\">{Svg("wide", 300, 100)}</div><div class=\"nk-narrow\">"
            + $"{Svg("narrow", width, height)}</div></div>", Words);
        Assert.Equal("wide", Read(places.Picture));
        // One that stands high leaves no room beside it for the numbers.
        Assert.Equal(height < 200 ? "narrow" : "wide", Read(places.NarrowPicture));
        Assert.Equal(Words, places.PictureWords);
    }

    [Fact]
    public void A_drawing_of_one_form_gives_it_for_both()
    {
        var places = new PagePlaces();
        places.Look($"<div class=\"nk-out nk-drawing\">{Svg("one", 120, 90)}</div>", Words);
        Assert.Equal(("one", "one"), (Read(places.Picture), Read(places.NarrowPicture)));
    }

    private static string Svg(string name, int width, int height) =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\">\n<title>{name}</title>\n</svg>";

    private static string Read(string link) => XElement.Parse(System.Text.Encoding.UTF8.GetString(Convert.FromBase64String(
        link[(link.IndexOf(',', StringComparison.Ordinal) + 1)..]))).Elements().Single().Value;
}
