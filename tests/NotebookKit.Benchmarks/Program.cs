using BenchmarkDotNet.Running;
using NotebookKit.Benchmarks.Flight;

if (args is ["side-by-side"]) SideBySide.Run();
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
