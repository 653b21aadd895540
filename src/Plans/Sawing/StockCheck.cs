using Nookwright.Cutting;

namespace Nookwright.Sawing;

/// <summary>Whether a plan takes only sheets that there are, and numbers its things as it should.</summary>
internal static class StockCheck
{
    /// <summary>The first thing that is wrong, as a sentence; or null.</summary>
    public static string? Trouble(Plan plan, CutRequest request) =>
        plan.Sheets.Select((sheet, i) => Sheet(sheet, i, request)).FirstOrDefault(t => t is not null)
        ?? Quantities(plan, request)
        ?? Names(plan)
        ?? Visits(plan);

    private static string? Sheet(PlanSheet sheet, int index, CutRequest request)
    {
        var stock = request.Stock.FirstOrDefault(s => s.Id == sheet.Stock);
        if (stock is null)
            return $"Sheet {sheet.Number} is of stock {sheet.Stock}, and there is none.";
        if ((stock.Material, stock.Length, stock.Width) != (sheet.Material, sheet.Length, sheet.Width))
            return $"Sheet {sheet.Number} is not of the size or material of {sheet.Stock}.";
        return sheet.Number == index + 1 ? null : $"Sheet {sheet.Number} stands in place {index + 1}.";
    }

    private static string? Quantities(Plan plan, CutRequest request)
    {
        foreach (var stock in request.Stock)
        {
            var taken = plan.Sheets.Count(s => s.Stock == stock.Id);
            if (taken > stock.Quantity)
                return $"{taken} of {stock.Id} are taken, and there are {stock.Quantity}.";
        }
        return null;
    }

    private static string? Names(Plan plan)
    {
        var twice = plan.Workpieces.GroupBy(p => p.Id).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
            return $"Two pieces are called {twice.Key}.";
        var known = plan.Workpieces.Select(p => p.Id).ToHashSet();
        var missing = plan.Sheets.FirstOrDefault(s => !known.Contains(s.Workpiece));
        return missing is null ? null : $"Sheet {missing.Number} has no piece {missing.Workpiece}.";
    }

    private static string? Visits(Plan plan)
    {
        for (var i = 0; i < plan.Visits.Count; i++)
            if (plan.Visits[i].Number != i + 1)
                return $"Visit {plan.Visits[i].Number} stands in place {i + 1}.";
        return null;
    }
}
