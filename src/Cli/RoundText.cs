using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Paper;

namespace Nookwright.Cli;

/// <summary>One round of a cutting plan in plain text: what was left before and the sheets with their breakdown, then the visits in order.</summary>
/// <param name="book">The job, its plan that of the round.</param>
internal sealed class RoundText(Workbook book)
{
    private readonly Plan _plan = book.Plan!;
    private readonly JobWords _words = new(book);

    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() =>
        [
            .. LeftBefore.Of(_plan).SelectMany(Left),
            .. _plan.Sheets.SelectMany(Sheet),
            .. _plan.Visits.SelectMany(Visit),
        ];

    private IEnumerable<string> Left(LeftBefore left) =>
        [
            .. WrappedText.Lines(
                $"{_words.LeftAs(left.Piece)}, left before: {_words.MaterialOf(_words.Workpiece(left.Piece))}"
            ),
            .. Orders(left.Cuts),
            "",
        ];

    private IEnumerable<string> Sheet(PlanSheet sheet)
    {
        var truths = new SheetTruths(_words);
        var from = truths.From(sheet) is { Length: > 0 } rack ? $", {rack}" : "";
        var cuts = _plan.Breakdown.Where(c => _words.Workpiece(c.On).Sheet == sheet.Number).ToList();
        var lifted = _words.Loose.Lifts.TryGetValue(sheet.Number, out var visit)
            ? $"; {(cuts.Count > 0 ? "break it down" : "take it whole")} for visit {visit}"
            : "";
        return
        [
            .. WrappedText.Lines(
                $"Sheet {sheet.Number}: {_words.Material(sheet.Material)}, {_words.Sides(sheet.Length, sheet.Width)}{from}, its "
                    + $"figure to the right{lifted}"
            ),
            .. truths.Of(sheet).SelectMany(truth => WrappedText.Lines(truth, "  ")),
            .. Orders(cuts),
            .. Held(sheet).SelectMany(text => WrappedText.Lines(text, "  ")),
            "",
        ];
    }

    private IEnumerable<string> Orders(IEnumerable<SawCut> cuts) =>
        cuts.SelectMany(cut => WrappedText.Lines(new CutWords(_words).Breakdown(cut), Numbered($"{cut.Number}")));

    private IEnumerable<string> Held(PlanSheet sheet) =>
        from held in _plan.Workpieces
        where held.Sheet == sheet.Number && held.Use == WorkpieceUse.Held
        select $"keep {held.Id} for {_words.Named(held.Part!)}, {_words.Sides(held)}, until {Awaited(held)} is read";

    /// <summary>What a held blank waits for; a running grain waits for whatever one of its parts waits for.</summary>
    private string Awaited(Workpiece held) => string.Join(" and ", For(held).SelectMany(p => p.Awaits).Distinct());

    private IEnumerable<CutPart> For(Workpiece held)
    {
        var run = book.CutRequest.Runs.FirstOrDefault(r => r.Id == held.Part);
        return book.CutRequest.Parts.Where(p => p.Id == held.Part || run?.Parts.Contains(p.Id) == true);
    }

    private IEnumerable<string> Visit(Visit visit)
    {
        var says = new VisitWords(book, _words, visit);
        var first = says.First.Length > 0 ? $"First {says.First}. " : "";
        var take = says.Take.Length > 0 ? $"Take {says.Take}." : "";
        string[] notes = [$"{first}{take}", .. says.Cautions.Select(c => $"Take care: {c}"), .. says.Runs];
        return
        [
            $"Visit {visit.Number}: {says.Saw} at {Plain(visit)}",
            .. notes.Where(n => n.Length > 0).SelectMany(note => WrappedText.Lines(note, "  ")),
            .. CutChain.Of(visit.Cuts).SelectMany(chain => Chain(chain, says)),
            .. says.Done.Length > 0 ? WrappedText.Lines($"Done: {says.Done}", "  ") : [],
            "",
        ];
    }

    private static IEnumerable<string> Chain(CutChain chain, VisitWords says)
    {
        var (first, last) = (chain.First.Number, chain.Cuts[^1].Number);
        var lead = says.Lead(chain) is { Length: > 0 } told ? $"{told}: " : "";
        return WrappedText.Lines(lead + says.Detail(chain), Numbered(first == last ? $"{first}" : $"{first}-{last}"));
    }

    private string Plain(Visit visit) => string.Concat(WrappedText.Lines(_words.Size(visit.Setting)));

    private static string Numbered(string number) => $"  {number}. ";
}
