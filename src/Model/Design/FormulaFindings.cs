using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Turns "this size could not be worked out" into findings.</summary>
internal static class FormulaFindings
{
    /// <summary>The finding a refusal means, about the named things.</summary>
    public static Finding Of(Refusal refusal, IReadOnlyList<string> about)
    {
        var place = refusal.Column is { } column ? $"{refusal.Field}, column {column}: " : "";
        return new(refusal.Rule ?? "formula.no-result", Severity.MustMend, place + Sentence(refusal.Message), about)
        {
            Field = refusal.Field,
        };
    }

    /// <summary>One finding for each cause, and a note for each piece that had to be left out because of another's.</summary>
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
            foreach (
                var piece in cause
                    .Select(trouble => trouble.About)
                    .Distinct()
                    .Where(piece => isPiece(piece) && !Owns(piece, told))
            )
                yield return new(
                    "pieces.left-out",
                    Severity.MustMend,
                    $"{piece} is left out until {told.Field ?? "what it is worked out from"} is mended.",
                    [piece]
                )
                {
                    Field = told.Field,
                };
        }
    }

    private static bool Owns(string piece, Refusal why) =>
        why.Field == $"pieces/{piece}" || (why.Field?.StartsWith($"pieces/{piece}/", StringComparison.Ordinal) ?? true);

    private static string Sentence(string message) =>
        message.Length > 0 && char.IsLower(message[0]) ? char.ToUpperInvariant(message[0]) + message[1..] : message;
}
