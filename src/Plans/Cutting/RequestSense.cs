namespace Nookwright.Cutting;

/// <summary>What must hold of a request that was read before anything is looked up in it.</summary>
internal static class RequestSense
{
    /// <summary>What does not hold, as the first half of a sentence; or null.</summary>
    public static string? Trouble(CutRequest request)
    {
        var parts = request.Parts.Select(p => p.Id).ToHashSet();
        var named = request
            .Runs.SelectMany(r => r.Parts)
            .Concat(request.Matches.SelectMany(m => m.Sides).Select(s => s.Part));
        if (parts.Count < request.Parts.Count)
            return "Two parts of this plan have one id";
        if (request.Stock.DistinctBy(s => s.Id).Count() < request.Stock.Count)
            return "Two kinds of stock of this plan have one id";
        return named.FirstOrDefault(p => !parts.Contains(p)) is { } strange
            ? $"This plan names the part {strange} and does not have it"
            : null;
    }
}
