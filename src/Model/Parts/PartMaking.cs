using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Parts;

/// <summary>Makes each panel a part: what the saw sets, what is held, its letter.</summary>
internal sealed class PartMaking(Project project, RunsOfParts runs)
{
    private readonly Length _allowance = ShopNumbers.LimitsOf(project.Shop, project.Units, out _).Allowance;

    private readonly HashSet<string> _withoutFigure =
    [
        .. project.Shop.Sheets.Where(sheet => !sheet.HasFigure).Select(sheet => sheet.Id),
    ];

    public List<Finding> Findings { get; } = [];

    public List<Part> Make(IEnumerable<Panel> panels)
    {
        var parts = WaitTogether([.. panels.Select(Cut)]);
        var letters = new PartLetters();
        Findings.AddRange(parts.SelectMany(NothingLeft));
        Findings.AddRange(HeldParts.ByReading(parts, _allowance, project.Units));
        return [.. parts.Select(part => part with { Letter = letters.Of(Describe(part)) })];
    }

    private string Describe(Part part) => PartDescription.Of(part, !_withoutFigure.Contains(part.Panel.Material));

    private Part Cut(Panel panel)
    {
        var (length, width) = (CutSizes.Length(panel), CutSizes.Width(panel));
        var part = new Part(panel.Id, "", panel, length, width, null, runs.PlaceOf(panel.Id));
        var awaits = length.Awaits.Union(width.Awaits);
        return awaits.Any() ? Hold(part, awaits) : part;
    }

    private Part Hold(Part part, IEnumerable<string> awaits) =>
        part with
        {
            Blank = new(
                part.CutLength.Length + _allowance,
                part.CutWidth.Length + _allowance,
                _allowance,
                [.. awaits.Distinct().Order(StringComparer.Ordinal)]
            ),
        };

    /// <summary>Parts of one running grain come off one strip, so that all wait for what any of them waits for.</summary>
    private List<Part> WaitTogether(List<Part> parts)
    {
        var awaitsOf = parts
            .Where(part => part is { Run: not null, Blank: not null })
            .ToLookup(part => part.Run!.Run, part => part.Blank!.Awaits);
        Findings.AddRange(awaitsOf.SelectMany(run => HeldParts.InRun(run.Key, parts)));
        return
        [
            .. parts.Select(part =>
                part.Run is { } place && awaitsOf.Contains(place.Run)
                    ? Hold(part, awaitsOf[place.Run].SelectMany(awaits => awaits))
                    : part
            ),
        ];
    }

    private IEnumerable<Finding> NothingLeft(Part part)
    {
        foreach (var (side, size) in new[] { ("length", part.CutLength.Length), ("width", part.CutWidth.Length) })
        {
            if (!size.IsPositive)
                yield return new(
                    "part.nothing-left",
                    Severity.MustMend,
                    $"The {side} of {part.Panel.Name} comes to {Print(size)} at the saw; make the piece larger.",
                    [part.Id, part.Panel.Piece]
                );
        }
    }

    private string Print(Length length) => LengthText.Write(length, project.Units);
}
