using NotebookKit.Runner.Commands;

return await RunnerCommands.InvokeAsync(args);
