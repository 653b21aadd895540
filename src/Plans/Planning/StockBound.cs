namespace Nookwright.Planning;

/// <summary>The least that the sheets of a material can cost: by area, whatever the cuts.</summary>
internal static class StockBound
{
    /// <summary>A cost no plan goes below.</summary>
    public static long Of(Job job, string material)
    {
        var area = job.Items.Concat(job.Blanks).Where(i => i.Material == material).Sum(i => i.Area);
        var stocks = job.Stocks.Where(s => s.Material == material).ToList();
        area -= stocks.Where(s => job.CostOf(s) <= 0 && s.Piece.Quantity is not null).Sum(s => s.Area * s.Quantity);
        var bought = stocks.Where(s => job.CostOf(s) > 0).ToList();
        if (area <= 0 || bought.Count == 0)
            return 0;
        if (bought.Count == 1)
            return (area + bought[0].Area - 1) / bought[0].Area * job.CostOf(bought[0]);
        return (long)(bought.Min(s => (double)job.CostOf(s) / s.Area) * area);
    }
}
