using System.CommandLine;
using Nookwright.Flow;
using Nookwright.Parts;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright parts FILE</c>: everything to make, by letter.</summary>
public static class PartsCommand
{
    /// <summary>The command.</summary>
    public static Command Make(Terminal console) =>
        AskedOfJob.Command(
            console,
            "parts",
            "Lists every part by letter, with the sizes the saw is set to.",
            [JobArgument.Json, JobArgument.Out],
            asked =>
            {
                var workbook = asked.Workbook;
                JobArgument.SayTrouble(console, asked.Job, asked.Path, workbook);
                var isJson = asked.WantsJson || asked.Folder is not null;
                var text = isJson ? JsonAnswer.Write(Answer(workbook)) : Table(workbook);
                OutFolder.WriteOrSay(console, asked.Folder, "parts.json", text);
                return JobArgument.ExitOf(workbook);
            }
        );

    private static string Table(Workbook workbook)
    {
        var lengths = workbook.Lengths;
        var table = new TextTable(
            "letter",
            "count>",
            "cut length>",
            "cut width>",
            "thick>",
            "material",
            "figure",
            "what"
        );
        foreach (var alike in workbook.PartList.Parts.GroupBy(p => p.Letter))
        {
            var part = alike.First();
            table.Row(
                part.Letter,
                $"{alike.Count()}",
                lengths.PrintInFull(part.Blank?.Length ?? part.CutLength.Length) + (part.IsHeld ? " held" : ""),
                lengths.PrintInFull(part.Blank?.Width ?? part.CutWidth.Length) + (part.IsHeld ? " held" : ""),
                lengths.PrintInFull(part.Panel.Thickness.Length),
                part.Panel.Material,
                $"{part.Panel.Figure}".ToLowerInvariant(),
                alike.Count() > 2
                    ? $"{part.Panel.Name} and {alike.Count() - 1} more"
                    : string.Join(", ", alike.Select(p => p.Panel.Name))
            );
        }
        return string.Join(Environment.NewLine, table.Lines());
    }

    private static object Answer(Workbook workbook) =>
        new
        {
            job = workbook.Project.Name,
            parts = workbook.PartList.Parts.Select(part => Of(part, workbook)),
            matches = workbook.PartList.Matches.Select(m => new
            {
                m.Id,
                size = JsonAnswer.Of(m.Size, workbook.Project.Units),
                sides = m.Sides.Select(s => new { s.Part, s.Side }),
                m.Because,
                m.ByHand,
            }),
            runs = workbook.PartList.Runs,
        };

    private static object Of(Part part, Workbook workbook)
    {
        var unit = workbook.Project.Units;
        return new
        {
            part.Id,
            part.Letter,
            part.Panel.Name,
            part.Panel.Material,
            thickness = JsonAnswer.Of(part.Panel.Thickness.Length, unit),
            finishedLength = JsonAnswer.Of(part.Panel.Length.Length, unit),
            finishedWidth = JsonAnswer.Of(part.Panel.Width.Length, unit),
            cutLength = JsonAnswer.Of(part.CutLength.Length, unit),
            cutWidth = JsonAnswer.Of(part.CutWidth.Length, unit),
            part.Panel.Figure,
            held = part.Blank is { } blank
                ? new
                {
                    length = JsonAnswer.Of(blank.Length, unit),
                    width = JsonAnswer.Of(blank.Width, unit),
                    blank.Awaits,
                }
                : null,
            notch = part.Notch is { } notch
                ? new
                {
                    length = JsonAnswer.Of(notch.Length, unit),
                    width = JsonAnswer.Of(notch.Width, unit),
                    notch.AtEnd,
                    notch.AtHigh,
                }
                : null,
            part.Run,
        };
    }
}
