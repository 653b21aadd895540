using Nookwright.Cutting;
using Nookwright.Parts;
using Nookwright.Projects;

namespace Nookwright.Buying;

/// <summary>What to buy for a job, and what to take from the rack, each line with its reason.</summary>
/// <param name="Sheets">Sheets to buy, in the order of the shop's materials and sizes.</param>
/// <param name="FromRack">Offcuts the plan uses: not bought, but not to be forgotten.</param>
/// <param name="Edgings">Edging to buy, in the shop's order.</param>
/// <param name="PartsWithoutSheet">Ids of parts the plan found no sheet for; the list does not cover them.</param>
public sealed record ShoppingList(
    IReadOnlyList<SheetLine> Sheets,
    IReadOnlyList<SheetLine> FromRack,
    IReadOnlyList<EdgingLine> Edgings,
    IReadOnlyList<string> PartsWithoutSheet
)
{
    /// <summary>What the sheets with a known price cost together, in the maker's currency.</summary>
    public decimal KnownCost => Sheets.Sum(line => line.Cost ?? 0);

    /// <summary>The lines whose price nobody has written; the sum does not hold them.</summary>
    public IReadOnlyList<SheetLine> Unpriced => [.. Sheets.Where(line => line.Price is null)];

    /// <summary>What the sheets to carry home weigh together, in kilograms; null while the weight of one of them is unknown.</summary>
    public decimal? Kilograms =>
        Sheets.All(line => line.KilogramsEach is not null) ? Sheets.Sum(line => line.KilogramsEach * line.Count) : null;

    /// <summary>The list for a plan.</summary>
    /// <param name="plan">The cutting plan.</param>
    /// <param name="parts">The parts it cuts.</param>
    /// <param name="project">The job, for prices, weights and edging.</param>
    public static ShoppingList Of(Plan plan, PartList parts, Project project)
    {
        var lines = new SheetTally(plan, project).Lines().ToList();
        var planned = plan.Workpieces.Select(piece => piece.Part).OfType<string>().ToHashSet();
        return new(
            [.. lines.Where(line => !line.IsFromRack)],
            [.. lines.Where(line => line.IsFromRack)],
            [.. EdgingTally.Lines(parts, project)],
            [.. parts.Parts.Select(part => part.Id).Where(id => !planned.Contains(id))]
        );
    }
}
