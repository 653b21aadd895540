using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>What to add when the stock of a material is used up before all parts have their place.</summary>
internal static class MissingSheets
{
    // Past this many parts nobody waits to hear how many sheets; their area is told instead.
    private const int MostParts = 500;

    /// <summary>What is left over, and how many more sheets of which size take it.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="material">The material.</param>
    /// <param name="items">What has no place.</param>
    public static Finding Of(CutRequest request, string material, IReadOnlyList<Item> items)
    {
        List<CutPart> left = [.. items.SelectMany(i => i.Parts).Select(p => request.Parts[p])];
        var names = string.Join(", ", left.Take(5).Select(p => p.Id)) + (left.Count > 5 ? ", …" : "");
        var count = left.Count == 1 ? "1 part" : $"{left.Count} parts";
        return new(
            "cutting.stock-too-few",
            Severity.MustMend,
            $"The stock of {material} is used up with {count} left ({names}); {WhatToAdd(request, material, items, left)}.",
            [.. items.Where(i => i.Run is not null).Select(i => i.Run!), .. left.Select(p => p.Id)]
        );
    }

    private static string WhatToAdd(
        CutRequest request,
        string material,
        IReadOnlyList<Item> items,
        IReadOnlyList<CutPart> left
    )
    {
        var area = $"they need {items.Sum(i => (double)i.Area) / 1e12:0.00} m² and more; add sheets";
        // With as many sheets as anybody wants, more of them are no cure; and asking again would never end.
        var isLimited = request.Stock.Any(s => s.Material == material && s.Quantity is not null);
        if (left.Count > MostParts || !isLimited)
            return area;
        var plan = Planner.Plan(Alone(request, material, left));
        if (plan.Findings.Any(f => f.Severity == Severity.MustMend))
            return area;
        var sizes = plan
            .Sheets.GroupBy(s => (s.Length, s.Width))
            .Select(g => $"{g.Count()} more of {request.Say(g.Key.Length)} by {request.Say(g.Key.Width)}");
        return $"add {string.Join(" and ", sizes)}, or leave parts out";
    }

    /// <summary>What is left over, from as many sheets as it takes.</summary>
    private static CutRequest Alone(CutRequest request, string material, IReadOnlyList<CutPart> left)
    {
        var ids = left.Select(p => p.Id).ToHashSet();
        var pins = left.Select(p => p.From).ToHashSet();
        var ours = request.Stock.Where(s => s.Material == material).ToList();
        var bought = ours.Where(s => !s.IsOffcut || pins.Contains(s.Id)).ToList();
        return request with
        {
            Parts = left,
            Matches = [],
            Runs = [.. request.Runs.Where(r => r.Parts.All(ids.Contains))],
            Apart = [.. request.Apart.Select(a => a with { Parts = [.. a.Parts.Where(ids.Contains)] })],
            Stock = [.. (bought.Count > 0 ? bought : ours).Select(s => s with { Quantity = null, IsOffcut = false })],
            Rules = request.Rules with { Effort = 0 },
        };
    }
}
