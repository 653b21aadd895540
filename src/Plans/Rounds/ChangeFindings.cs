using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Rounds;

/// <summary>What has changed since a plan was issued, in sentences.</summary>
internal static class ChangeFindings
{
    /// <summary>A part that was cut and is now asked for in another size.</summary>
    public static Finding Changed(CutPart now, MadePart made, LengthUnit unit) =>
        new(
            "cutting.issued-part-changed",
            Severity.Warning,
            $"{Named(now)} was issued as {Size(made.As, unit)} in round {made.Round} and is now {Size(now, unit)}: cut it again, as "
                + "planned here, or undo the edit.",
            [now.Id]
        );

    /// <summary>A part that was cut to size and whose reading is awaited again.</summary>
    public static Finding WaitsAgain(CutPart now, MadePart made) =>
        new(
            "cutting.cut-part-waits",
            Severity.Warning,
            $"{Named(now)} is cut to size in round {made.Round}, and waits for {string.Join(", ", now.Awaits)} again: enter the "
                + "reading, or withdraw the round.",
            [now.Id]
        );

    /// <summary>Parts that no longer come out of their blank.</summary>
    public static Finding Outgrown(List<CutPart> parts, KeptBlank blank, BlankFit fit, CutRequest now)
    {
        var sizes = string.Join(" and ", parts.Select(p => Size(p, now.Units)));
        var why = fit.Short.IsPositive
            ? $"once its edges are dressed, that is {now.Say(fit.Short)} too little"
            : $"and it is of {blank.As.Material}";
        var it = parts.Count == 1 ? "it is" : "they are";
        return new(
            "cutting.blank-too-small",
            Severity.Warning,
            $"{string.Join(", ", parts.Select(Named))} now {(parts.Count == 1 ? "is" : "are")} {sizes}, and the blank {blank.Piece.Id} "
                + $"is {now.Say(blank.Piece.Length)} by {now.Say(blank.Piece.Width)}: {why}. So {it} planned from other wood and the "
                + "blank is free. Check the reading; next time leave more allowance.",
            [.. parts.Select(p => p.Id)]
        );
    }

    /// <summary>Parts that still wait, and that an edit has made larger than the blank that is cut already.</summary>
    public static Finding WillOutgrow(List<CutPart> planned, KeptBlank blank, BlankFit fit, CutRequest now)
    {
        var (are, wait) = planned.Count == 1 ? ("is", "waits") : ("are", "wait");
        var sizes = string.Join(" and ", planned.Select(p => Size(p, now.Units)));
        return new(
            "cutting.blank-outgrown",
            Severity.Warning,
            $"{string.Join(", ", planned.Select(Named))} {are} now planned as {sizes} and {wait} in the blank {blank.Piece.Id}, which is "
                + $"{now.Say(blank.Piece.Length)} by {now.Say(blank.Piece.Width)}: once its edges are dressed, that is "
                + $"{now.Say(fit.Short)} too little. Undo the edit, or count on other wood: when the reading is there, the blank "
                + "will not do.",
            [.. planned.Select(p => p.Id)]
        );
    }

    /// <summary>What is issued and asked for no more.</summary>
    public static Finding NotNeeded(IReadOnlyList<CutPart> cut, IReadOnlyList<CutPart> kept)
    {
        string?[] said =
        [
            cut.Count == 0
                ? null
                : $"{Names(cut)} {Are(cut)} issued and no longer asked for: keep {Them(cut)} as spare",
            kept.Count == 0
                ? null
                : $"the {(kept.Count == 1 ? "blank" : "blanks")} of {Names(kept)} {Are(kept)} free for other parts",
        ];
        var sentence = string.Join("; ", said.OfType<string>());
        return new(
            "cutting.issued-part-not-needed",
            Severity.Note,
            $"{char.ToUpperInvariant(sentence[0])}{sentence[1..]}, or undo the edit.",
            [.. cut.Concat(kept).Select(p => p.Id)]
        );
    }

    /// <summary>Dimensions that are set once more because parts waited.</summary>
    public static IEnumerable<Finding> PriceOfWaiting(Plan whole, CutRequest request)
    {
        var again = SettingAgain.Of(whole);
        if (again.Count == 0)
            yield break;
        var named = again
            .Take(4)
            .Select(a => $"{request.Say(a.Setting)} at visits {string.Join(" and ", a.Visits.Select(v => v.Number))}");
        yield return new(
            "cutting.price-of-waiting",
            Severity.Note,
            $"{(again.Count == 1 ? "One dimension is" : $"{again.Count} dimensions are")} set in more than one round, which is the price "
                + $"of waiting: {string.Join(", ", named)}{(again.Count > 4 ? ", …" : "")}. Set the saw by a part of the round before.",
            [],
            "common practice, no source"
        );
    }

    private static string Named(CutPart part) => part.Name.Length > 0 ? part.Name : part.Id;

    private static string Names(IReadOnlyList<CutPart> parts) =>
        string.Join(", ", parts.Take(5).Select(Named)) + (parts.Count > 5 ? $" and {parts.Count - 5} more" : "");

    private static string Are(IReadOnlyList<CutPart> parts) => parts.Count == 1 ? "is" : "are";

    private static string Them(IReadOnlyList<CutPart> parts) => parts.Count == 1 ? "it" : "them";

    private static string Size(CutPart part, LengthUnit unit) =>
        $"{LengthText.Write(part.Length, unit)} by {LengthText.Write(part.Width, unit)}";
}
