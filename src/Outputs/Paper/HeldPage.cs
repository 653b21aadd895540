using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Measure;

namespace Nookwright.Paper;

/// <summary>What stays long, by how much, and which reading makes it final.</summary>
internal static class HeldPage
{
    private static readonly Table Parts = new([
        new("Part", 11, Bold: true),
        new("Name", 38),
        new("Piece", 17, Bold: true),
        new("Cut now to", 36, Anchor.End),
        new("Planned", 36, Anchor.End),
        new("Left long by", 22, Anchor.End),
        new("Waits for", 28),
    ]);

    private static readonly Table Readings = new([
        new("Reading", 30, Bold: true),
        new("What to measure", 70),
        new("Planned", 28, Anchor.End),
        new("Read, with the date", 45),
    ]);

    /// <summary>The pages; none when nothing is held.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper)
    {
        var held = book.PartList.Parts.Where(p => p.IsHeld).ToList();
        if (held.Count == 0)
            return [];
        var flow = new PageFlow(paper, "Held parts", "Held parts");
        flow.Text(
            "These parts depend on a size nobody can know yet. Cut them long as listed, with what dressing takes later, write "
                + "the piece's name on each and set them aside. When the reading is taken, enter it: the final cuts appear as a round of their own, with its own pages."
        );
        flow.Space(3);
        Parts.Draw(
            flow,
            held.Select(part =>
                (string[])
                    [
                        part.Letter == part.Panel.Name ? "" : part.Letter,
                        part.Panel.Name,
                        words.BlankOf(part)?.Id ?? "",
                        words.BlankOf(part) is { } kept
                            ? words.Sides(kept)
                            : words.Sides(part.Blank!.Length, part.Blank.Width),
                        words.Sides(part.CutLength.Length, part.CutWidth.Length),
                        words.Size(part.Blank!.Allowance),
                        string.Join(", ", part.Blank.Awaits),
                    ]
            )
        );
        flow.Head("Readings to take");
        Readings.Draw(flow, Awaited(book).Select(name => Reading(name, book, words)));
        return flow.Pages;
    }

    /// <summary>Names of the readings that held parts wait for, each once.</summary>
    public static IReadOnlyList<string> Awaited(Workbook book) =>
        [.. book.PartList.Parts.SelectMany(p => p.Blank?.Awaits ?? []).Distinct().Order(StringComparer.Ordinal)];

    private static string[] Reading(string name, Workbook book, JobWords words)
    {
        var reading = book.Project.Readings.FirstOrDefault(r => r.Name == name);
        var planned =
            book.Look(name).Take(out var found, out _) && found[0].Amount.IsLength ? found[0].Length : (Length?)null;
        return [name, reading?.What ?? "", planned is { } size ? words.Size(size) : reading?.Planned.Text ?? "", ""];
    }
}
