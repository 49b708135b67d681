using System.Text;

namespace NotebookKit.Runner.Engine;

/// <summary>Takes what a cell's code still prints when the cell has ended, such as a task that it left running.</summary>
/// <param name="take">Takes a piece of text.</param>
internal sealed class LateConsole(Action<string> take) : TextWriter
{
    /// <inheritdoc />
    public override Encoding Encoding => Encoding.UTF8;

    /// <inheritdoc />
    public override void Write(char value) => take(value.ToString());

    /// <inheritdoc />
    public override void Write(string? value)
    {
        if (!string.IsNullOrEmpty(value)) take(value);
    }

    /// <inheritdoc />
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc />
    public override void WriteLine(string? value) => Write(value + "\n");
}
