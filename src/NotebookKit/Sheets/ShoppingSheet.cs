using NotebookKit.Building;
using NotebookKit.Building.Cuts;
using NotebookKit.Building.Resins;
using NotebookKit.Provenance;
using NotebookKit.Quantities;
using NotebookKit.Vessels.Design;
using NotebookKit.Vessels.Laying;
using UnitsNet;
using UnitsNet.Units;

namespace NotebookKit.Sheets;

/// <summary>What a build takes: what to cut, the cups of resin, what to buy and what it costs. A price that isn't given says so, and the
/// total names what it leaves out. Source: cut list, resin plan, stock list.</summary>
public sealed record ShoppingSheet : Result, ISheet
{
    private readonly string _name;

    private ShoppingSheet(string name, CutList cuts, ResinPlanResult? cups, IReadOnlyList<ShoppingItem> items)
    {
        (_name, Cuts, Cups, Items) = (name, cuts, cups, items);
        Currencies = [.. items.Where(i => i.Cost is not null).Select(i => i.Shelf!.Price!.Currency).Distinct(StringComparer.Ordinal)];
        LeftOut = [.. items.Where(i => i.Cost is null).Select(i => i.Name).Distinct(StringComparer.Ordinal)];
        Content = Compose();
    }

    /// <summary>What is cut.</summary>
    public CutList Cuts { get; }

    /// <summary>The cups of resin; none where the share of hardener isn't given.</summary>
    public ResinPlanResult? Cups { get; }

    /// <summary>All that has to be had.</summary>
    public IReadOnlyList<ShoppingItem> Items { get; }

    /// <summary>Currencies of the prices that are given.</summary>
    public IReadOnlyList<string> Currencies { get; }

    /// <summary>What has no price and is left out of the total, by name.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    /// <inheritdoc/>
    public SheetContent Content { get; }

    /// <inheritdoc/>
    public override string Title => $"Cutting, resin and shopping list, {_name}";

    /// <inheritdoc/>
    public override ModelCard Model { get; } = new("Shopping list", ["Cost is that of what is used, offcuts and postage not counted.",
        "What the shelf holds is what its list says."], "One vessel, its resin and its fins.", [BuildingSources.BenchPractice]);

    /// <inheritdoc/>
    public override IReadOnlyList<ResultLine> Lines =>
    [
        .. Items.Select(i => new ResultLine(i.Name, i.Needed, $"to buy: {i.ToBuy}; {CostText(i)}")),
        .. Totals,
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => [.. Cuts.Findings, .. Cups?.Findings ?? []];

    /// <inheritdoc/>
    public override IReadOnlyList<Caution> Cautions => Provenance.Cautions.ForBench;

    /// <inheritdoc/>
    public override Working Working => new(Title, []);

    private IEnumerable<ResultLine> Totals
    {
        get
        {
            var without = LeftOut.Count == 0 ? "nothing is left out" : $"left out, price not given: {string.Join(", ", LeftOut)}";
            if (Currencies.Count == 0) yield return new("Total", "not given", "no price is given");
            foreach (var currency in Currencies)
            {
                var own = Items.Where(i => i.Cost is not null && i.Shelf!.Price!.Currency == currency).ToList();
                yield return new("Total of what is used", MaterialPrice.Money(own.Sum(i => i.Cost!.Value), currency), without);
                yield return new("Of it to buy", MaterialPrice.Money(own.Sum(i => i.Cost!.Value * i.ToBuyShare), currency),
                    "the rest lies on the shelf by its list");
            }
        }
    }

    /// <summary>The list of one stage. Source: as the type.</summary>
    /// <param name="name">What the stage is called.</param>
    /// <param name="cuts">What its vessel is cut from.</param>
    /// <param name="cups">Its resin; none where the share of hardener isn't given.</param>
    /// <param name="others">What the cut list doesn't know: fins, canopy, parts that are bought.</param>
    /// <param name="shelf">The stock list; may be empty.</param>
    public static ShoppingSheet Of(string name, CutList cuts, ResinPlanResult? cups, IReadOnlyList<ShoppingItem> others,
        IReadOnlyList<ShelfItem> shelf)
    {
        ArgumentNullException.ThrowIfNull(cuts);
        ArgumentNullException.ThrowIfNull(others);
        var vessel = cuts.Layup.Vessel;
        List<ShoppingItem> items =
        [
            .. cuts.Pieces.GroupBy(p => p.Material).Select(g => new ShoppingItem(g.Key, string.Join(", ", g.Select(p => p.Ply)))
                { Length = cuts.LengthOf(g.Key) }),
            .. Resin(vessel, cuts.Layup, cups),
            .. vessel.Liner.Material is { } tube ? [new ShoppingItem($"{tube.Name} tube, bore {vessel.Liner.Bore.Show()}, wall "
                + vessel.Liner.Wall.Show(), "liner") { Length = vessel.Length.ToUnit(LengthUnit.Meter) }] : Array.Empty<ShoppingItem>(),
            .. Ends("nozzle end", vessel.NozzleEnd), .. Ends("forward end", vessel.ForwardEnd),
            .. others,
        ];
        return new(name, cuts, cups, OnShelf(items, shelf));
    }

    // A piece on the shelf serves one need only: the second seal finds what the first one leaves.
    private static List<ShoppingItem> OnShelf(IEnumerable<ShoppingItem> items, IReadOnlyList<ShelfItem> shelf)
    {
        Dictionary<string, int> taken = new(StringComparer.Ordinal);
        List<ShoppingItem> all = [];
        foreach (var item in items)
        {
            var found = item.Shelf ?? shelf.FirstOrDefault(s => s.Is(item.Name));
            if (found?.Pieces is { } pieces && item.Pieces is { } needed)
            {
                var before = taken.GetValueOrDefault(found.Name);
                found = found with { Pieces = Math.Max(0, pieces - before) };
                taken[found.Name] = before + needed;
            }
            all.Add(item with { Shelf = found });
        }
        return all;
    }

    private static IEnumerable<ShoppingItem> Resin(PressureVessel vessel, Layup layup, ResinPlanResult? cups)
    {
        if (cups is null)
        {
            yield return new($"{vessel.Resin.Name}, resin and hardener together", "plies, without waste: its hardener isn't given")
                { Mass = layup.ResinMass };
            yield break;
        }

        yield return new(vessel.Resin.Name, "resin of all cups") { Mass = cups.Resin };
        yield return new($"{vessel.Resin.Name} hardener", "hardener of all cups") { Mass = cups.Hardener };
    }

    private static IEnumerable<ShoppingItem> Ends(string end, VesselEnd of)
    {
        yield return new($"{of.Closure.Shape}, {of.Closure.Material.Name}, {of.Closure.Wall.Show()}", end) { Pieces = 1 };
        if (of.Fitting is { } fitting) yield return new(fitting.Name, end) { Pieces = 1 };
        var seals = (of.Seal is null ? 0 : 1) + (of.Fitting?.Seal is null ? 0 : 1);
        if (seals > 0) yield return new((of.Seal ?? of.Fitting!.Seal!).Name, end) { Pieces = seals };
    }

    private static string CostText(ShoppingItem item) =>
        item.Cost is { } cost ? MaterialPrice.Money(cost, item.Shelf!.Price!.Currency) : "price not given";

    private SheetContent Compose() => new(Title, "For the bench and the shop. Sizes are cut sizes; check them on the liner before cutting.",
    [
        new("To cut") { Table = new(["Done", "Ply", "Material", "Cut [mm]", "Off the roll [mm]", "Note"],
            [.. Cuts.Pieces.Select(p => (IReadOnlyList<string>)[SheetTable.Tick, p.Ply, p.Material,
                (p.Count > 1 ? $"{p.Count} × " : "") + Mm(p.Along) + (p.Around is { } a ? $" × {Mm(a)}" : ""),
                Mm(p.OffTheRoll), p.Note])]) },
        Cups is { } cups
            ? new("Cups of resin")
            {
                Text = $"At most {Digits.Round(cups.MaximumBatch.Grams)} g in a cup; each on the work before the next is mixed. Pot life "
                    + $"{Digits.Round(cups.Plan.System.PotLife.Minutes)} min; {cups.Plan.Waste.Show(2)} of waste is in the masses.",
                Table = new(["Done", "Cup", "Resin [g]", "Hardener [g]", "On the work within [min]", "For", "Mixed at"],
                    [.. cups.Batches.Select((b, i) => (IReadOnlyList<string>)[SheetTable.Tick, $"{i + 1}", Digits.Round(b.Resin.Grams),
                        Digits.Round(b.Hardener.Grams), Digits.Round(b.Time.Minutes, 2), string.Join(", ", b.For), SheetTable.Blank])]),
            }
            : new("Cups of resin") { Text = "The stock list gives no share of hardener or no pot life for this resin: cups can't be "
                + "divided. Add both to the stock list, from the resin's data sheet." },
        new("To buy")
        {
            Table = new(["Have", "What", "For", "Needed", "On the shelf", "To buy", "Price", "Cost of what is used"],
                [.. Items.Select(i => (IReadOnlyList<string>)[SheetTable.Tick, i.Name, i.For, i.Needed, i.OnShelf, i.ToBuy,
                    i.Shelf?.Price?.ToString() ?? "not given",
                    i.Cost is null ? "not given" : CostText(i)])]),
            Facts = [.. Totals],
        },
    ])
    {
        Findings = [.. Findings.Where(f => f.Severity != FindingSeverity.Note)],
        Cautions = Cautions,
    };

    private static string Mm(Length length) => Digits.Round(Math.Ceiling(length.Millimeters - 1e-6), 5);
}
