using NotebookKit.Provenance;
using NotebookKit.Record.Givens;

namespace NotebookKit.Record;

/// <summary>Collects givens, evidence, requirements and decisions while a notebook runs, next to the computation they belong to.</summary>
/// <param name="title">What the record is about.</param>
/// <param name="overrides">Values to use instead of the notebook's own; none overrides none. A notebook passes on its
/// <c>session.Givens</c>.</param>
public sealed class DesignRecordBuilder(string title, GivenOverrides? overrides = null)
{
    private const int FingerprintDigits = 64;

    private readonly GivenOverrides _overrides = overrides ?? GivenOverrides.None;
    private readonly List<Given> _givens = [];
    private readonly List<EvidenceMark> _evidence = [];
    private readonly List<Requirement> _requirements = [];
    private readonly List<Decision> _decisions = [];

    /// <summary>States an input and returns the value to compute with: the notebook's own, or the one this run overrides it with.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name; stating it again replaces it, so that a cell can be run twice.</param>
    /// <param name="value">Value; within the range.</param>
    /// <param name="minimum">Smallest value allowed; at most <paramref name="maximum"/>.</param>
    /// <param name="maximum">Largest value allowed; at least <paramref name="minimum"/>.</param>
    /// <param name="why">Why it has this value.</param>
    /// <exception cref="OutOfRangeException">The value is outside its range.</exception>
    /// <exception cref="FormatException">The overriding text can't be read.</exception>
    public T Given<T>(string name, T value, T minimum, T maximum, string why) where T : struct, IComparable<T>
    {
        var replacement = _overrides.Find(name, value);
        var range = new ValidRange<T>(minimum, maximum);
        var used = range.Check(replacement ?? value, name, why);
        _overrides.Take(name);
        Put(_givens, new Given(name, GivenText.Exact(used), range.ToString(), why, replacement is not null), g => g.Name);
        return used;
    }

    /// <summary>States something outside the record that its requirements and decisions may rest on.</summary>
    /// <param name="name">Name; stating it again replaces it.</param>
    /// <param name="fingerprint">SHA-256 of the evidence, 64 hexadecimal digits.</param>
    /// <param name="what">What it is, one line.</param>
    /// <exception cref="FormatException">The name is empty, the fingerprint isn't one, or the text has more than one line.</exception>
    public EvidenceMark Evidence(string name, string fingerprint, string what)
    {
        ArgumentNullException.ThrowIfNull(fingerprint);
        ArgumentNullException.ThrowIfNull(what);
        if (string.IsNullOrWhiteSpace(name)) throw new FormatException("Evidence needs a name, for example \"proof of Curlew C-1\".");
        if (fingerprint.Length != FingerprintDigits || !fingerprint.All(char.IsAsciiHexDigit))
            throw new FormatException($"The fingerprint of the evidence \"{name}\" is \"{fingerprint}\"; it must be a SHA-256 of "
                + $"{FingerprintDigits} hexadecimal digits.");
        if (what.AsSpan().ContainsAny('\n', '\r')) throw new FormatException($"The text of the evidence \"{name}\" has more than one "
            + "line; write one.");
        var mark = new EvidenceMark(name, fingerprint.ToLowerInvariant(), what);
        Put(_evidence, mark, e => e.Name);
        return mark;
    }

    /// <summary>States a condition and notes whether the value meets it.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name; stating it again replaces it.</param>
    /// <param name="value">The computed value; any.</param>
    /// <param name="side">Which side of the limit is right.</param>
    /// <param name="limit">The limit; any.</param>
    /// <param name="why">Why it is required.</param>
    /// <param name="restsOn">Names of the evidence that the value rests on, each stated before; none rests on none.</param>
    /// <exception cref="FormatException">No evidence of such a name was stated.</exception>
    public Requirement Require<T>(string name, T value, Limit side, T limit, string why, IReadOnlyList<string>? restsOn = null)
        where T : struct, IComparable<T>
    {
        var requirement = Condition(name, value, side, limit, why, restsOn);
        CheckEvidence($"The requirement \"{name}\"", requirement.RestsOn);
        Put(_requirements, requirement, r => r.Name);
        return requirement;
    }

    /// <summary>States a choice and the condition under which it stays right.</summary>
    /// <param name="name">What was to be decided; stating it again replaces it.</param>
    /// <param name="chosen">What was chosen.</param>
    /// <param name="beat">What was turned down, each with its reason.</param>
    /// <param name="why">Why it was chosen.</param>
    /// <param name="staysRightWhile">The condition, from <see cref="Require{T}"/> or <see cref="Condition{T}"/>.</param>
    /// <param name="restsOn">Names of the evidence that the choice rests on besides its condition, each stated before; none rests on
    /// none.</param>
    /// <exception cref="FormatException">No evidence of such a name was stated.</exception>
    public Decision Decide(
        string name, string chosen, IReadOnlyList<string> beat, string why, Requirement staysRightWhile,
            IReadOnlyList<string>? restsOn = null)
    {
        ArgumentNullException.ThrowIfNull(staysRightWhile);
        var decision = new Decision(name, chosen, beat, why, staysRightWhile) { RestsOn = Listed(restsOn) };
        CheckEvidence($"The decision \"{name}\"", [.. decision.RestsOn, .. staysRightWhile.RestsOn]);
        Put(_decisions, decision, d => d.Name);
        return decision;
    }

    /// <summary>A condition for a decision, not itself a requirement of the design.</summary>
    /// <typeparam name="T">A quantity, a gauge or absolute pressure, or a plain number.</typeparam>
    /// <param name="name">Name.</param>
    /// <param name="value">The computed value; any.</param>
    /// <param name="side">Which side of the limit is right.</param>
    /// <param name="limit">The limit; any.</param>
    /// <param name="why">Why it matters.</param>
    /// <param name="restsOn">Names of the evidence that the value rests on, known to the record that decides by it; none rests on
    /// none.</param>
    public static Requirement Condition<T>(string name, T value, Limit side, T limit, string why, IReadOnlyList<string>? restsOn = null)
        where T : struct, IComparable<T>
    {
        var order = value.CompareTo(limit);
        var holds = value is not double.NaN && (side == Limit.AtMost ? order <= 0 : order >= 0);
        var condition = $"{(side == Limit.AtMost ? "at most" : "at least")} {GivenText.Short(limit)}";
        return new(name, GivenText.Result(value, limit), condition, holds, why)
        {
            RestsOn = Listed(restsOn),
        };
    }

    /// <summary>The record as it stands.</summary>
    public DesignRecord Build() => new(title, [.. _givens], [.. _requirements], [.. _decisions]) { Evidence = [.. _evidence] };

    /// <summary>States an input that was read, with its range and reason, by whoever read it.</summary>
    internal void Put(Given given) => Put(_givens, given, g => g.Name);

    /// <summary>States a requirement that was judged elsewhere.</summary>
    internal Requirement Put(Requirement requirement)
    {
        Put(_requirements, requirement, r => r.Name);
        return requirement;
    }

    private static IReadOnlyList<string> Listed(IReadOnlyList<string>? restsOn) => [.. (restsOn ?? []).Distinct(StringComparer.Ordinal)];

    private void CheckEvidence(string what, IReadOnlyList<string> restsOn)
    {
        if (restsOn.FirstOrDefault(n => _evidence.All(e => e.Name != n)) is { } unknown)
            throw new FormatException($"{what} rests on \"{unknown}\", but the record has no evidence of that name{Known()}. State it "
                + "first with Evidence(name, fingerprint, what).");
    }

    private string Known() => _evidence.Count == 0 ? "" : $"; it has {string.Join(", ", _evidence.Select(e => $"\"{e.Name}\""))}";

    private static void Put<T>(List<T> list, T item, Func<T, string> name)
    {
        var at = list.FindIndex(x => name(x) == name(item));
        if (at >= 0) list[at] = item;
        else list.Add(item);
    }
}

/// <summary>Which side of a limit is right.</summary>
public enum Limit
{
    /// <summary>The value must not pass the limit upward.</summary>
    AtMost,

    /// <summary>The value must not pass the limit downward.</summary>
    AtLeast,
}
