using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Threading;
using Xunit.Abstractions;
using Xunit.Sdk;

// One run of a share of the tests, in a process of its own. Exit code: 0 all pass, 1 one fails (the first ends the run), 3 no test.
var parts = args[0].Split('|');
var assembly = Assembly.LoadFrom(typeof(NotebookKit.Tests.Tolerance).Assembly.Location);
var framework = new XunitTestFramework(new Sink(_ => { }));
var discoverer = framework.GetDiscoverer(Reflector.Wrap(assembly));
List<ITestCase> cases = [];
var types = assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false, IsPublic: true }
    && parts.Any(p => $"{t.FullName}.".Contains(p, StringComparison.Ordinal)));
foreach (var type in types)
{
    using ManualResetEventSlim found = new();
    discoverer.Find(type.FullName, false, new Sink(message =>
    {
        if (message is ITestCaseDiscoveryMessage discovered) cases.Add(discovered.TestCase);
        if (message is IDiscoveryCompleteMessage) found.Set();
    }), new Options());
    found.Wait();
}

// A test that fails without any mutant tells nothing: the first run names it, the others leave it out.
var isFirst = args.Length == 1;
if (!isFirst) cases.RemoveAll(c => args.Skip(1).Contains($"{c.TestMethod.TestClass.Class.Name}.{c.TestMethod.Method.Name}"));
if (cases.Count == 0) return 3;
using ManualResetEventSlim done = new();
framework.GetExecutor(assembly.GetName()).RunTests(cases, new Sink(message =>
{
    if (isFirst && message is ITestFailed { TestMethod: { } method })
        Console.WriteLine($"fails: {method.TestClass.Class.Name}.{method.Method.Name}");
    var failed = message switch
    {
        ITestFailed test => $"{test.Test.DisplayName}: {test.Messages[0]}",
        IErrorMessage error => error.Messages[0],
        _ => null,
    };
    if (failed is not null && !isFirst)
    {
        Console.WriteLine(failed);
        Console.Out.Flush();
        Environment.Exit(1);
    }

    if (message is ITestAssemblyFinished) done.Set();
}), new Options());
done.Wait();
Console.WriteLine($"{cases.Count} tests");
return 0;

/// <summary>Hands each message of the framework on.</summary>
internal sealed class Sink(Action<IMessageSinkMessage> seen) : IMessageSink
{
    public bool OnMessage(IMessageSinkMessage message)
    {
        seen(message);
        return true;
    }
}

/// <summary>The framework's own settings.</summary>
internal sealed class Options : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
{
    private readonly Dictionary<string, object?> _values = [];

    public TValue GetValue<TValue>(string name) => _values.TryGetValue(name, out var value) ? (TValue)value! : default!;

    public void SetValue<TValue>(string name, TValue value) => _values[name] = value;
}
