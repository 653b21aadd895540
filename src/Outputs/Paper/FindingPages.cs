using Nookwright.Flow;
using Nookwright.Lettering;
using Nookwright.Trouble;

namespace Nookwright.Paper;

/// <summary>What must be mended, what the maker should decide, and what is good to know.</summary>
internal static class FindingPages
{
    private static readonly (Severity Severity, string Head, string Says)[] Kinds =
    [
        (
            Severity.MustMend,
            "To be mended first",
            "The job cannot be built as it stands. Do not cut before these are settled."
        ),
        (Severity.Warning, "For you to decide", "The job can go on, but look at these before you cut."),
        (Severity.Note, "Good to know", "Nothing has to change."),
    ];

    /// <summary>The pages; none when there is no finding.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, PaperFormat paper)
    {
        if (book.Findings.Count == 0)
            return [];
        var flow = new PageFlow(paper, "Findings", "Findings");
        foreach (var (severity, head, says) in Kinds)
        {
            var findings = book.Findings.Where(f => f.Severity == severity).ToList();
            if (findings.Count == 0)
                continue;
            flow.Head(head);
            flow.Text(says);
            flow.Space(2);
            for (var i = 0; i < findings.Count; i++)
                flow.Item($"{i + 1}", Sentence(findings[i]), indent: 8);
        }
        return flow.Pages;
    }

    private static string Cited(string source) =>
        source.EndsWith("no source", StringComparison.Ordinal) ? source : $"source: {source}";

    private static string Sentence(Finding finding) =>
        LengthLabel.In(finding.Message) + (finding.Source is { } source ? $" ({Cited(source)})" : "");
}
