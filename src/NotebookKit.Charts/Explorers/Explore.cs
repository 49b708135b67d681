using NotebookKit.Provenance;

namespace NotebookKit.Charts.Explorers;

/// <summary>
/// Explorers over a model of one's own: inputs, and a lambda from their values to a curve and numbers.
/// <c>Explore.Over("Thrust", ExplorerInput.Between("Pressure", 10.BarGauge(), 50.BarGauge()), p => Explored.Curve(time, ThrustAt(p)))</c>
/// shows a figure whose settings are
/// computed beforehand; <c>.Live()</c> on it calls the lambda itself while the reader drags.
/// </summary>
/// <remarks>
/// The lambda is called from several threads at once. Where it refuses a design (<see cref="InvalidDesignException"/>,
/// <see cref="OutOfRangeException"/>), the figure shows
/// the reason there; the setting the reader starts with has to have an answer.
/// </remarks>
public static class Explore
{
    /// <summary>One input.</summary>
    /// <typeparam name="TFirst">What the input gives.</typeparam>
    /// <param name="title">What it shows.</param>
    /// <param name="a">ExplorerInput.</param>
    /// <param name="model">The answer to a setting.</param>
    /// <exception cref="InvalidDesignException">A input is out of range, the grid is too large, or the model refuses the start.</exception>
    public static Explorer Over<TFirst>(string title, ExplorerInput<TFirst> a, Func<TFirst, Explored> model)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(model);
        return Build(title, [a.Parameter], s => model(a.ValueAt(s[0])));
    }

    /// <summary>Two inputs.</summary>
    /// <typeparam name="TFirst">What the first input gives.</typeparam>
    /// <typeparam name="TSecond">What the second input gives.</typeparam>
    /// <param name="title">What it shows.</param>
    /// <param name="a">First input.</param>
    /// <param name="b">Second input.</param>
    /// <param name="model">The answer to a setting.</param>
    /// <exception cref="InvalidDesignException">A input is out of range, the grid is too large, or the model refuses the start.</exception>
    public static Explorer Over<TFirst, TSecond>(string title, ExplorerInput<TFirst> a, ExplorerInput<TSecond> b, Func<TFirst, TSecond,
        Explored> model)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        ArgumentNullException.ThrowIfNull(model);
        return Build(title, [a.Parameter, b.Parameter], s => model(a.ValueAt(s[0]), b.ValueAt(s[1])));
    }

    /// <summary>Three inputs.</summary>
    /// <typeparam name="TFirst">What the first input gives.</typeparam>
    /// <typeparam name="TSecond">What the second input gives.</typeparam>
    /// <typeparam name="TThird">What the third input gives.</typeparam>
    /// <param name="title">What it shows.</param>
    /// <param name="a">First input.</param>
    /// <param name="b">Second input.</param>
    /// <param name="c">Third input.</param>
    /// <param name="model">The answer to a setting.</param>
    /// <exception cref="InvalidDesignException">A input is out of range, the grid is too large, or the model refuses the start.</exception>
    public static Explorer Over<TFirst, TSecond, TThird>(string title, ExplorerInput<TFirst> a, ExplorerInput<TSecond> b,
        ExplorerInput<TThird> c, Func<TFirst, TSecond, TThird, Explored> model)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        ArgumentNullException.ThrowIfNull(c);
        ArgumentNullException.ThrowIfNull(model);
        return Build(title, [a.Parameter, b.Parameter, c.Parameter], s => model(a.ValueAt(s[0]), b.ValueAt(s[1]), c.ValueAt(s[2])));
    }

    private static Explorer Build(string title, IReadOnlyList<ExplorerParameter> parameters, Func<IReadOnlyList<double>, Explored> model)
    {
        InvalidDesignException.ThrowIfAny($"Explorer '{title}'", [.. parameters.SelectMany(p => p.Validate())]);
        var first = Begin(title, parameters, model);
        return Explorer.Build(
            title, Axis.For(first.X), Axis.For(first.Y), parameters, [.. first.Numbers.Select(n => new ExplorerNumber(n.Name, n.Unit))],
                Answer);

        ExplorerState Answer(IReadOnlyList<double> setting)
        {
            try
            {
                return model(setting).In(first);
            }
            catch (Exception e) when (Reason(e) is { } reason)
            {
                return ExplorerState.Refused(reason);
            }
        }
    }

    private static Explored Begin(string title, IReadOnlyList<ExplorerParameter> parameters, Func<IReadOnlyList<double>, Explored> model)
    {
        try
        {
            return model([.. parameters.Select(p => p.Start)]);
        }
        catch (Exception e) when (Reason(e) is { } reason)
        {
            throw new InvalidDesignException($"Explorer '{title}'",
                [Finding.Error($"The model refuses the setting that the reader starts with: {reason}")]);
        }
    }

    private static string? Reason(Exception e) => e switch
    {
        InvalidDesignException design => design.Findings.FirstOrDefault(f => f.Severity == FindingSeverity.Error)?.Message
            ?? design.Message,
        OutOfRangeException => e.Message,
        _ => null,
    };
}
