using BenchmarkDotNet.Running;
using NotebookKit.Benchmarks;
using NotebookKit.Benchmarks.Flight;

if (args is ["side-by-side"]) SideBySide.Run();
else if (args is ["growth", .. var file]) Growth.Run(file.FirstOrDefault());
else if (args is ["million", var parts]) Growth.Million(int.Parse(parts, System.Globalization.CultureInfo.InvariantCulture));
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
