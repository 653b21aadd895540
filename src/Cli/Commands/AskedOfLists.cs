using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Lists;
using Nookwright.Paper;
using Nookwright.Trouble;

namespace Nookwright.Cli.Commands;

/// <summary>What somebody asked of two bare lists.</summary>
/// <param name="PartsFile">The list of parts as typed.</param>
/// <param name="Parts">Its lines.</param>
/// <param name="Sheets">The lines of the list of sheets.</param>
/// <param name="Request">What they ask of the saws.</param>
public sealed record AskedOfLists(
    string PartsFile,
    IReadOnlyList<ListedPart> Parts,
    IReadOnlyList<ListedSheet> Sheets,
    CutRequest Request
)
{
    /// <summary>A finding of the plan for standard error: file, line, sentence.</summary>
    public string Say(Finding finding)
    {
        var line = Parts.FirstOrDefault(p => finding.About.Any(id => IsOf(id, p)))?.Line;
        var place = line is null ? PartsFile : $"{PartsFile}:{line}";
        return $"{place}: {JobArgument.Word(finding.Severity)}: {finding.Message} [{finding.Rule}]";
    }

    /// <summary>The workbook of the lists with their plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">What it was made for.</param>
    public Workbook Book(Plan plan, CutRequest request) =>
        ListWorkbook.Of(Path.GetFileName(PartsFile), request, Sheets).WithThisPlan(plan);

    /// <summary>Writes everything to print for a plan as one PDF; its revision is that of the plan.</summary>
    /// <param name="book">The lists with their plan.</param>
    /// <param name="date">The day it is printed.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void WritePacket(Workbook book, DateOnly date, Stream stream) =>
        Packet.Write(
            book,
            book.Project.Paper,
            PacketEdition.Of(date, PlanJson.Write(book.Plan!, book.CutRequest)),
            stream
        );

    private static bool IsOf(string id, ListedPart part) =>
        id == part.Label
        || (part.Quantity > 1 && id.StartsWith(part.Label + "-", StringComparison.Ordinal))
        || id == part.Run;
}
