using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>What stands on every page: the job, the section, the revision, the date, and which page of how many it is.</summary>
/// <param name="Job">The job's name.</param>
/// <param name="Edition">Date and revision.</param>
/// <param name="Pages">How many pages there are.</param>
internal sealed record PageFurniture(string Job, PacketEdition Edition, int Pages)
{
    private const double Size = TypeSize.Furniture;

    /// <summary>The page with its head and foot.</summary>
    /// <param name="page">The page's own content.</param>
    /// <param name="number">From 1.</param>
    public PaperPage On(PaperPage page, int number)
    {
        var paper = new PaperFormat(page.Picture.Width, page.Picture.Height);
        var (head, foot) = (paper.Top + Size, paper.Bottom - 0.8);
        var section = TextMetrics.Width(page.Section, Size);
        var job = TextMetrics.Lines(Job, paper.BodyWidth - section - 8, Size, bold: true);
        Mark[] furniture =
        [
            new Mark.Label(job.Count > 1 ? $"{job[0]} …" : job[0], new(paper.Left, head), Size, Bold: true),
            new Mark.Label(page.Section, new(paper.Right, head), Size, Anchor.End),
            Shapes.Rule(paper.Left, paper.Right, head + 1.8),
            Shapes.Rule(paper.Left, paper.Right, foot - 4.2),
            new Mark.Label($"Revision {Edition.Revision} · {Edition.Date:yyyy-MM-dd}", new(paper.Left, foot), Size),
            new Mark.Label($"page {number} of {Pages}", new(paper.Right, foot), Size, Anchor.End),
        ];
        return page with { Picture = page.Picture with { Marks = [.. furniture, .. page.Picture.Marks] } };
    }
}
