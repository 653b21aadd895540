using Nookwright.Cutting;

namespace Nookwright.Bounds;

/// <summary>How little wood any plan of a request can do with, material by material, and the proof that follows for a plan.</summary>
/// <remarks>Quick bounds are there from the start. Better ones come while <see cref="BoundWatch"/> sharpens them.</remarks>
public sealed class WoodBounds
{
    // About a second of reckoning for one material at the usual effort of 1000 rounds.
    private const double StepsPerRound = 1e6;

    private readonly CutRequest _request;
    private readonly Dictionary<string, BoundFinder> _finders;

    /// <summary>The quick bounds of a request.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="possible">Ids of the parts some sheet can give; the others have no place in any plan.</param>
    public WoodBounds(CutRequest request, IEnumerable<string> possible)
    {
        _request = request;
        var ids = possible.ToHashSet();
        var asked = request with { Parts = [.. request.Parts.Where(p => ids.Contains(p.Id))] };
        _finders = asked
            .Parts.Select(p => p.Material)
            .Distinct()
            .ToDictionary(material => material, material => new BoundFinder(asked, material));
    }

    /// <summary>The materials that parts are cut from.</summary>
    internal IEnumerable<string> Materials => _finders.Keys;

    /// <summary>A cost of sheets of a material that no plan goes below, as <see cref="StockCost"/> counts.</summary>
    internal long AtLeast(string material) => _finders.TryGetValue(material, out var finder) ? finder.Bound.Cost : 0;

    /// <summary>A number of sheets bought of a material that no plan goes below.</summary>
    internal int SheetsAtLeast(string material) =>
        _finders.TryGetValue(material, out var finder) ? finder.Bound.Sheets : 0;

    /// <summary>Sharpens the bounds of the materials that a plan is not proven best in, as far as the request's effort goes.</summary>
    /// <remarks>Same request, same plan, same bounds, unless it is stopped.</remarks>
    public void Sharpen(Plan plan, CancellationToken stop)
    {
        foreach (var _ in Sharpening(plan))
            if (stop.IsCancellationRequested)
                return;
    }

    /// <summary>The same step by step; each step tells about how many steps of reckoning it took.</summary>
    internal IEnumerable<double> Sharpening(Plan plan)
    {
        foreach (var material in Open(plan))
        foreach (var taken in _finders[material].Sharpen(StepsPerRound * _request.Rules.Effort))
        {
            yield return taken;
            if (!Open(plan).Contains(material))
                break;
        }
    }

    /// <summary>The materials a plan is not proven best in.</summary>
    private List<string> Open(Plan plan) => [.. Prove(plan).Materials.Where(m => !m.IsTight).Select(m => m.Material)];

    /// <summary>How far from the best a plan can be, by the bounds found so far.</summary>
    public PlanProof Prove(Plan plan)
    {
        var runs = _request.Runs.ToDictionary(r => r.Id, r => r.Parts.Count);
        var made = plan.Workpieces.Where(p => p.Part is not null).Sum(Made);
        int Made(Workpiece p) => p.Use == WorkpieceUse.Held ? runs.GetValueOrDefault(p.Part!, 1) : 1;
        var order = _request.Stock.Select(s => s.Material).Distinct();
        var used = plan.Sheets.ToLookup(s => s.Material);
        return new(
            _request.Parts.Count - made,
            VisitBound.Of(plan, _request),
            [.. order.Where(used.Contains).Where(_finders.ContainsKey).Select(m => Prove(m, [.. used[m]]))]
        );
    }

    private MaterialProof Prove(string material, List<PlanSheet> sheets)
    {
        var stock = _request.Stock.ToDictionary(s => s.Id);
        var isPriced = StockCost.HasPrices(material, _request.Stock);
        var unit = isPriced ? 10_000m : 1_000_000m;
        var used = sheets.Sum(s => StockCost.Of(stock[s.Stock], _request.Stock));
        var bought = sheets.Count(s => !stock[s.Stock].IsOffcut);
        var bound = _finders[material].Bound;
        // What the maker keeps as it was planned is beyond question, and the bound is about the others.
        var pinned = sheets.Where(s => s.Pin is not null).Select(s => stock[s.Stock]).ToList();
        return new(
            material,
            bought,
            Math.Min(bought, bound.Sheets + pinned.Count(s => !s.IsOffcut)),
            isPriced ? WoodMeasure.Money : WoodMeasure.SquareMetres,
            used / unit,
            Math.Min(used, bound.Cost + pinned.Sum(s => StockCost.Of(s, _request.Stock))) / unit,
            bound.Way.Name,
            bound.Way.Source
        );
    }
}
