namespace Nookwright.Cutting;

/// <summary>Names the parts a split size sets apart, as a maker would: "the two sides of box 2".</summary>
internal static class Apart
{
    /// <summary>Parts of one piece, or alike parts, that get a size at different visits; null when only strangers do.</summary>
    public static string? Say(SplitSize split, IReadOnlyDictionary<string, CutPart> parts)
    {
        var sized = split.Visits.SelectMany(v => v.Parts.Select(p => (v.Visit, Part: parts[p]))).ToList();
        return Family(sized, p => p.Piece) is { } piece ? Together(piece) ?? Pair(piece)
            : Family(sized, p => p.Letter) is { } alike ? Together(alike) ?? $"the parts {alike[0].Part.Letter}"
            : null;
    }

    /// <summary>The first group with parts of different visits.</summary>
    private static List<(int Visit, CutPart Part)>? Family(
        List<(int Visit, CutPart Part)> sized,
        Func<CutPart, string?> of
    ) =>
        sized
            .Where(s => !string.IsNullOrEmpty(of(s.Part)))
            .GroupBy(s => of(s.Part))
            .FirstOrDefault(g => g.Select(s => s.Visit).Distinct().Count() > 1)
            ?.ToList();

    /// <summary>"left side of box 2" and "right side of box 2" are the two sides of box 2; null when names share no such end.</summary>
    private static string? Together(List<(int Visit, CutPart Part)> family)
    {
        var names = family.DistinctBy(s => s.Part.Id).Select(s => s.Part.Name.Split(' ')).ToList();
        var shared = SharedEnd(names);
        var of = Array.IndexOf(shared, "of");
        return of < 1 || names.Count < 2 || names.Any(n => n.Length == shared.Length)
            ? null
            : $"the {FrontText.Number(names.Count)} {string.Join(' ', [.. shared[..(of - 1)], Plural(shared[of - 1]), .. shared[of..]])}";
    }

    private static string[] SharedEnd(List<string[]> names)
    {
        var length = 0;
        while (names.All(n => n.Length > length && n[^(length + 1)] == names[0][^(length + 1)]))
            length++;
        return names[0][^length..];
    }

    private static string Pair(List<(int Visit, CutPart Part)> family)
    {
        var names = string.Join(" and ", family.DistinctBy(s => s.Visit).Take(2).Select(s => s.Part.Name));
        return names.Contains(" of ") ? names : $"{names} of {family[0].Part.Piece}";
    }

    private static string Plural(string noun) => noun.EndsWith("shelf") ? noun[..^1] + "ves" : noun + "s";
}
