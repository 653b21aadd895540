using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Turns "this size could not be worked out" into findings.</summary>
internal static class FormulaFindings
{
    /// <summary>The finding a refusal means, about the named things.</summary>
    public static Finding Of(Refusal refusal, IReadOnlyList<string> about)
    {
        var place = (refusal.Field, refusal.Column) switch
        {
            (null, _) => "",
            (var field, null) => $"{field}: ",
            var (field, column) => $"{field}, column {column}: ",
        };
        return new(refusal.Rule ?? "formula.no-result", Severity.MustMend, place + refusal.Message, about)
        {
            Field = refusal.Field,
            IsUnreadable = true,
        };
    }

    /// <summary>One finding for each cause, and one for all pieces that had to be left out because of it.</summary>
    public static IEnumerable<Finding> Of(
        IReadOnlyList<(string About, Refusal Why)> troubles,
        Func<string, bool> isPiece
    )
    {
        foreach (var cause in troubles.GroupBy(trouble => (trouble.Why.Message, trouble.Why.Rule)))
        {
            var told = cause
                .Select(trouble => trouble.Why)
                .FirstOrDefault(why => why.Field is not null, cause.First().Why);
            yield return Of(told, [.. cause.Select(trouble => trouble.About).Distinct()]);
            var others = cause
                .Select(trouble => trouble.About)
                .Distinct()
                .Where(p => isPiece(p) && !Owns(p, told))
                .ToList();
            if (others.Count > 0)
                yield return LeftOut(others, told);
        }
    }

    private static Finding LeftOut(List<string> pieces, Refusal why)
    {
        var they = pieces.Count == 1 ? $"{pieces[0]} is" : $"{string.Join(", ", pieces)} are";
        var until = why.Field ?? "what they are worked out from";
        return new("pieces.left-out", Severity.MustMend, $"{they} left out until {until} is mended.", pieces)
        {
            Field = why.Field,
        };
    }

    private static bool Owns(string piece, Refusal why) =>
        why.Field == $"pieces/{piece}" || (why.Field?.StartsWith($"pieces/{piece}/", StringComparison.Ordinal) ?? true);
}
