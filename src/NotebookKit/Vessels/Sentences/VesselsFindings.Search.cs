using NotebookKit.Provenance;
using NotebookKit.Quantities;

namespace NotebookKit.Vessels;

internal static partial class VesselsFindings
{
    // Vessels/Search/LayupSearch
    internal static Finding NeitherSleeveNorWrapInStock() =>
        Finding.Error("There is neither a sleeve nor a wrap in stock; name at least one.");

    internal static Finding MostSleevesOutOfRange(int maximumSleeves) =>
        Finding.Error($"Most sleeves is {maximumSleeves}; it must be 0 to 6.");

    internal static Finding MostWrapsOutOfRange(int maximumWraps) => Finding.Error($"Most wraps is {maximumWraps}; it must be 0 to 6.");

    internal static Finding WrapKindRefused() =>
        Finding.Error("Wraps are cloth and hoop wraps; sleeves have their own list, and veils come from the vessel.");

    internal static Finding StockMakesTooManyLayups(int mostOptions) =>
        Finding.Error($"The stock makes over {mostOptions} layups; take fewer sleeves, wraps and ends, or fewer of each on a vessel.");

    internal static Finding EndToChooseHasNoName(string end) =>
        Finding.Error($"A {end} to choose from has no name; name each, so that the choice can be told.");

    internal static Finding EndNameIsNotUnique(string end, string name, int count) =>
        Finding.Error($"{count} choices of the {end} are called \"{name}\"; give each its own name.");

    // Vessels/Search/LayupTradeOff
    internal static Finding LayupsTried(int optionsCount, int choicesCount) =>
        Finding.Note($"{optionsCount} layups tried, {choicesCount} worth choosing from.");

    internal static Finding NoLayupMeetsWhatIsWanted(string? refusal) =>
        Finding.Error(
            $"No layup meets what is wanted: {(refusal is not null ? refusal : "the stock is empty")} Take a heavier sleeve or a "
            + "lower pressure.");

    internal static Finding MorePliesOnlyAddMass(GaugePressure? rated, string limit) =>
        Finding.Note($"From {rated} on the {limit} limits the vessel: more plies only add mass.");
}
