using NotebookKit.Notebooks.Tests.Pages;

namespace NotebookKit.Notebooks.Tests;

/// <summary>Every page of the main job as a printer has it: no sheet but the last is less than half full.</summary>
[Collection(AllNotebooksTests.Name), Trait("Length", "long")]
public sealed class PageFillTests(AllNotebooksRun all)
{
    private const double LeastShare = 0.5;

    public static TheoryData<string, string> Prints
    {
        get
        {
            var prints = new TheoryData<string, string>();
            foreach (var name in PageVisits.Printed)
                foreach (var paper in PageVisit.Papers) prints.Add(name, paper);
            return prints;
        }
    }

    [SkippableTheory, MemberData(nameof(Prints))]
    public async Task No_sheet_of_paper_but_the_last_is_less_than_half_full(string name, string paper)
    {
        var shares = (await all.Visits.OfAsync(name)).Shares[paper];
        Assert.NotEmpty(shares);
        Assert.All(shares, s => Assert.InRange(s, 0.001, 1.02));
        Assert.All(shares.SkipLast(1), s => Assert.True(s >= LeastShare,
            $"{name} on {paper}: sheets are full to {string.Join(", ", shares.Select(f => f.ToString("P0", null)))}."));
    }
}
