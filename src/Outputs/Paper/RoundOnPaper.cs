using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>One round of cutting on paper, as it was or will be cut: with the pieces, sizes and letters of its time.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Book">The job, its plan that of this round.</param>
internal sealed record RoundOnPaper(int Number, Workbook Book)
{
    /// <summary>The rounds of a job in order: one for a plan of which nothing is issued, none without a plan.</summary>
    public static IEnumerable<RoundOnPaper> Of(Workbook book) =>
        book.ByRound.Select((round, i) => new RoundOnPaper(i + 1, round));

    /// <summary>Its plan in short, its breakdown, and a card for every visit.</summary>
    public IEnumerable<PaperPage> Pages(PaperFormat paper)
    {
        var words = new JobWords(Book);
        return
        [
            .. PlanPages.Of(Book, words, paper, Section("Cutting plan")),
            .. SheetPages.Of(Book, words, paper, Section("Breakdown of the sheets")),
            .. CardPages.Of(Book, words, paper, Section("Setting cards")),
        ];
    }

    private string Section(string name) =>
        Number == 1 ? name : $"Round {Number}: {char.ToLowerInvariant(name[0])}{name[1..]}";
}
