using NotebookKit.Provenance;
using NotebookKit.Quantities;
using UnitsNet;

namespace NotebookKit.Building;

/// <summary>The sentences of building's findings, in one place.</summary>
internal static partial class BuildingFindings
{
    // Building/BenchHours
    internal static Finding NoDayAtBench() => Finding.Error("There is no working day; give at least one day of the week.");

    internal static Finding BenchHoursTooShort(TimeOnly from, TimeOnly until) =>
        Finding.Error($"Bench hours are {from:HH\\:mm} to {until:HH\\:mm}; they must last half an hour or more, within one day.");

    // Building/BuildCalendar
    internal static Finding TaskCountOutOfRange(int tasksCount) => Finding.Error($"There are {tasksCount} tasks; there must be 1 to 200.");

    internal static Finding NumberOfPeopleOutOfRange(int people) => Finding.Error($"Number of people is {people}; it must be 1 to 20.");

    internal static Finding TaskNameIsNotUnique(int twiceCount, string twiceKey) =>
        Finding.Error($"{twiceCount} tasks are called '{twiceKey}'; give each task a name of its own.");

    internal static Finding TaskWaitsForUnknownTask(string taskName, string before) =>
        Finding.Error($"'{taskName}' waits for '{before}', which isn't in the plan. Check the name.");

    internal static Finding TaskDoesNotFitEvening(string taskName, string hands, double totalHours) =>
        Finding.Error(
            $"'{taskName}' takes {hands} of work in one go; an evening has {totalHours:0.#} h. Divide the task, or work on a longer day.");

    internal static Finding SomeTasksWaitForEachOther() =>
        Finding.Error(
            "Some tasks wait for each other in a circle; none of these tasks could ever begin. Check which task waits for "
            + "which.");

    // Building/BuildTask
    internal static Finding TaskHasNoName() => Finding.Error("A task has no name; give each task its own name.");

    // Building/CutModel
    internal static Finding PlyHasNoCut(string name) =>
        Finding.Error($"{name} has no size to cut: its layup doesn't give its fit or its width. Take the layup from the vessel.");

    internal static Finding BiasClothNeedsWiderRoll(string name, double aroundMm, Length rollWidth, double aroundOverValueMm) =>
        Finding.Error(
            $"{name} is laid on the bias: {Digits.Round(aroundMm)} mm around need a roll wider than {rollWidth.Show()}, at "
            + $"least {Digits.Round(aroundOverValueMm)} mm. Take fewer turns at a time or a wider roll.");

    // Building/FinFillets
    internal static Finding FinTooThickForBody(Length finThickness, Length body) =>
        Finding.Error(
            $"the fin is {finThickness.Show()} thick on a body of {body.Show()}; the fin must be thinner than half of the "
            + "body's diameter. Check the units.");

    // Building/NestModel
    internal static Finding PieceDoesNotFitSheet(string piecesName, Length sheetLength, Length sheetWidth, Length gap, bool isQuarter) =>
        Finding.Error(
            $"{piecesName} doesn't fit a sheet of {sheetLength.Show()} × {sheetWidth.Show()} with {gap.Show()} to its "
            + $"edges{(isQuarter ? "" : " in the direction that its plies require")}. Use a larger sheet.");

    internal static Finding PiecesTakeTooManySheets(int mostSheets) =>
        Finding.Error($"The pieces take more than {mostSheets} sheets. Cut larger batches sheet by sheet.");

    // Building/NestResult
    internal static Finding PiecesTakeSeveralSheets(int sheets) =>
        Finding.Note(
            $"The pieces take {sheets} sheets; cut the pieces of one set from one sheet, so that they have the same mass "
            + "and stiffness.");

    // Building/ResinPlan
    internal static Finding NothingToLay() => Finding.Error("There is no ply to lay up; give at least one share of resin.");

    internal static Finding ResinMassOutOfRange(string forValue, Mass mass) =>
        Finding.Error($"resin for {forValue} is {mass.Show()}; it must be above 0 to 100 kg. Check its unit.");

    // Building/ResinPlanResult
    internal static Finding ResinThickensBeforeItIsLaid(double byTimeGrams, string systemName) =>
        Finding.Warning(
            $"at this pace only {Digits.Round(byTimeGrams, 2)} g are laid on before {systemName} thickens: use a slower "
            + "hardener or more people.");

    // Building/SheetNest
    internal static Finding TurnsUnknown(string turns, IEnumerable<string> names) =>
        Finding.Error($"turns is {turns}; it must be one of {string.Join(", ", names)}.");

    internal static Finding NoPieceToLay() => Finding.Error("There is no piece to lay; give at least one.");

    internal static Finding TooManyPieces(int piecesSum) =>
        Finding.Error($"There are {piecesSum} pieces; the maximum is 200. Cut larger batches sheet by sheet.");

    // Building/SheetPiece
    internal static Finding PieceCountOutOfRange(string name, int count) =>
        Finding.Error($"number of {name} is {count}; it must be 1 to 100. Cut larger batches sheet by sheet.");

    internal static Finding OutlineCornerCountOutOfRange(string name, int outlineCount) =>
        Finding.Error($"outline of {name} has {outlineCount} corners; it must have 3 to 200. List them in order round the piece.");

    internal static Finding OutlineCornerIsNotNumber(string name) =>
        Finding.Error($"outline of {name} has a corner that isn't a number. Check the outline.");

    internal static Finding OutlineCrossesItselfOrHasNoArea(string name) =>
        Finding.Error(
            $"outline of {name} crosses itself or has no area; its sides must not cross. List the corners in order round the piece.");

    internal static Finding PieceAreaTooSmall(string name, Area area) =>
        Finding.Error($"{name} has an area of {area.Show()}; it must be at least 0.01 cm². Check the unit of its outline.");
}
