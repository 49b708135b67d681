namespace NotebookKit.Notebooks.Tests;

/// <summary>The tests that look at the one run of all notebooks.</summary>
[CollectionDefinition(Name)]
public sealed class AllNotebooksTests : ICollectionFixture<AllNotebooksRun>
{
    public const string Name = "all notebooks";
}
