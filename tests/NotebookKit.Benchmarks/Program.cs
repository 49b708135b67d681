using BenchmarkDotNet.Running;
using NotebookKit.Benchmarks;
using NotebookKit.Benchmarks.Flight;

if (args is ["side-by-side"]) SideBySide.Run();
else if (args is ["growth", .. var file]) Growth.Run(file.FirstOrDefault());
else if (args is ["million"]) Growth.Million();
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
