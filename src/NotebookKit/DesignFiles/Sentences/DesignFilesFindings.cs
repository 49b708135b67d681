using NotebookKit.Quantities;

namespace NotebookKit.DesignFiles;

/// <summary>The sentences of design files, in one place; the place in the file stands before each.</summary>
internal static class DesignFilesFindings
{
    // DesignFiles/Trees
    internal static string TextTooLong(double megabytes, double most) =>
        $"the file has {Digits.Round(megabytes)} MB, and a design has at most {Digits.Round(most)} MB; choose the design's own file.";

    internal static string NotUtf8() => "here is a character that isn't UTF-8; save the file as UTF-8.";

    internal static string FileIsCutOff(int line, int column) =>
        FormattableString.Invariant($"the file ends here, but what opens in line {line}, column {column} isn't closed; ")
        + "take the file from its copy, or write the rest.";

    internal static string FileIsEmpty(string what) =>
        $"the file ends without a {what}; start from an example, or take the file from its copy.";

    internal static string NotJson(string found) =>
        $"{found} can't stand here: keys and texts stand in straight double quotes, a comma parts "
        + "two values, and every bracket is closed by its own; correct it here or just before.";

    internal static string CurlyQuote() => "here is a curly quotation mark, as a word processor writes it; write straight ones: \".";

    internal static string NoNumber(string word) => $"{word} is no number of a file; write the value, or leave its key out.";

    internal static string TooDeep(int most) => FormattableString.Invariant($"more than {most} brackets stand in one another here; ")
        + "a bracket is missing before, or this is another kind of file.";

    internal static string KeyStandsTwice(string key, int line, int column) =>
        FormattableString.Invariant($"\"{key}\" stands here a second time, after line {line}, column {column}; keep one of both.");

    // DesignFiles/Shapes
    internal static string UnknownKey(string key, string where, string? nearest, IReadOnlyList<string> known) =>
        $"\"{key}\" isn't known in {where}; " + (nearest is null ? $"it takes {Listed(known)}."
            : $"is \"{nearest}\" meant? It takes {Listed(known)}.");

    internal static string KeyIsMissing(string key, string where, string about) => $"{where} has no \"{key}\"; add it: {about}";

    internal static string WrongForm(string what, string found, string wanted) => $"{what} is {found} here; write {wanted}.";

    internal static string UnknownWord(string what, string text, string? nearest, IReadOnlyList<string> known) =>
        $"{what} can't be \"{text}\"; " + (nearest is null ? "" : $"is \"{nearest}\" meant? ") + $"Choices are {Listed(known)}.";

    internal static string OneOfBoth(string one, string other, string where) =>
        $"{where} has both \"{one}\" and \"{other}\", which are two values for one thing; keep one of both.";

    internal static string TooManyItems(string what, int count, int least, int most) =>
        FormattableString.Invariant($"{what} has {count} items; it takes {least} to {most}.");

    internal static string NoUnit(string what, string text, string noun, IReadOnlyList<string> units, string example) =>
        $"{what} can't be \"{text}\": the unit is missing; write {noun} in {Listed(units)}, for example \"{example}\".";

    internal static string OtherKind(string what, string text, string found, string wanted, string example) =>
        $"{what} can't be \"{text}\": that is {found}, and {wanted} is wanted; write for example \"{example}\".";

    internal static string GaugeOrAbsolute(string what, string text, string example) =>
        $"{what} can't be \"{text}\": a pressure has to say whether it is gauge or absolute; write for example \"{example}\".";

    internal static string Comma(string what, string text, string example) =>
        $"{what} can't be \"{text}\": decimals are written with a point, and nothing stands between thousands; write for example "
        + $"\"{example}\".";

    internal static string NotOfKind(string what, string text, string noun, IReadOnlyList<string> units, string example) =>
        $"{what} can't be \"{text}\": that isn't {noun}; write a number with {Listed(units)}, for example \"{example}\".";

    internal static string NotANumber(string what, string text, string noun, string example) =>
        $"{what} can't be \"{text}\": that isn't {noun}; write for example {example} without quotes.";

    internal static string NotAName(string what, string text) =>
        $"{what} can't be \"{text}\": a name has 1 to 80 characters, none of them <, >, /, \\ or a control character.";

    internal static string NotALabel(string text) =>
        $"\"{(text.Length > 60 ? text[..60] : text)}\" isn't the mark of a label; a mark has two groups of four of 0 to 9 and a to f: "
            + "\"3f9a-71c2\". Read the label again, and write what stands there.";

    internal static string NotADay(string text) =>
        $"\"day\" can't be \"{(text.Length > 40 ? text[..40] : text)}\": a day is written year, month, day, such as 2026-05-02.";

    internal static string MoistureNotSaidHow => "the file of the day doesn't say how it was measured";

    internal static string NotProse(string what) =>
        $"{what} is a text of at most 4000 characters without control characters; shorten it, or take those out.";

    internal static string NothingAt(string path, string? nearest) =>
        $"there is no value at \"{path}\" to take over; " + (nearest is null ? "write the whole path of a value."
            : $"is \"{nearest}\" meant?");

    internal static string NotOneValue(string path, string? first = null) => $"\"{path}\" holds more than one value; write the path of one "
        + $"value{(first is null ? "" : $", such as \"{first}\"")}.";

    internal static string CircularReference(IReadOnlyList<string> way) =>
        $"values are taken over in a circle, {string.Join(" from ", way.Select(w => $"\"{w}\""))}; give one of them its own value.";

    internal static string CannotAdd(string what, string text, string noun) =>
        $"{what} can't be another value and \"{text}\": that isn't a {noun} to add; write for example \"= nozzle.throat + 3 mm\".";

    internal static string NoSuchMaterial(string what, string noun, string text, IReadOnlyList<string> nearest) =>
        $"{what} can't be \"{text}\": there is no {noun} of that name; nearest are {Listed([.. nearest.Select(n => $"\"{n}\"")])}, or "
        + "add your own under \"materials\".";

    // DesignFiles/Keys
    internal static string NewerVersion(int found, int known) =>
        FormattableString.Invariant($"the design has version {found}, and this program reads up to version {known}; ")
        + "take a newer program.";

    internal static string NewMaterialNeeds(string name, string key) =>
        $"\"{name}\" is new, so it needs \"{key}\"; add it, or say which material it is \"like\".";

    internal static string LikeUnknown(string name, string like) =>
        $"\"{name}\" is to be like \"{like}\", but no material of that kind and name stands above it or in the library; correct the name.";

    internal static string NoSuchRequirement(string decision, string requirement, string? nearest) =>
        $"the decision \"{decision}\" stays right while \"{requirement}\" holds, but there is no requirement of that name"
        + (nearest is null ? "; add it." : $"; is \"{nearest}\" meant?");

    internal static string TwoOfOneName(string what, string name) => $"two {what} are called \"{name}\"; give each its own name.";

    // DesignFiles
    internal static string NoSuchFile(string path, string? nearest) => $"there is no design file at \"{path}\"; "
        + (nearest is null ? "check the path." : $"is \"{nearest}\" in the same folder meant?");

    internal static string CannotOpen(string path, string reason) =>
        $"\"{path}\" can't be read or written ({reason}); check its folder and your rights there.";

    internal static string RangeStandsIn(string file, int line) =>
        FormattableString.Invariant($"The range stands in {file}, line {line}.");

    internal static string FollowsFrom(string name, string text) => $"This follows from {name} = {text}.";

    internal static string NoSuchValue(string name, string? nearest) =>
        $"the design has no value \"{name}\"" + (nearest is null ? "; write the path of one of its values." : $"; is \"{nearest}\" meant?");

    internal static string SeveralValues(string name, IReadOnlyList<string> paths, int count) =>
        $"the design has {Digits.Round(count)} values called \"{name}\"; write the path of one: {Listed(paths)}.";

    internal static string HasTwoStages(string name) => $"{name} has two stages. Take one of its Stages, or its TwoStageVehicle.";

    internal static string HasOneStage(string name) => $"{name} has one stage. Take its Vehicle.";

    internal static string MissingForVehicle(string stage, IReadOnlyList<string> keys) =>
        $"{stage} can't fly: the design doesn't give {Listed(keys)}; add what is missing.";

    internal static string GearWithoutCanopy(string stage) =>
        $"{stage} has recovery gear and no canopy; add \"canopy\" to the recovery.";

    private static string Listed(IReadOnlyList<string> words) => words.Count < 2 ? string.Concat(words)
        : string.Join(words.Any(w => w.Contains(',', StringComparison.Ordinal)) ? "; " : ", ", words.Take(words.Count - 1))
            + $" or {words[^1]}";
}
