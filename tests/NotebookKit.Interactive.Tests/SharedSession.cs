namespace NotebookKit.Interactive.Tests;

/// <summary>One session for all tests, one test at a time: formatters and the console are shared by the whole process.</summary>
[CollectionDefinition(nameof(NotebookSession), DisableParallelization = true)]
public sealed class SharedSession : ICollectionFixture<NotebookSession>;
