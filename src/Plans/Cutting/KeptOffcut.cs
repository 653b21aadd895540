using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>A leftover that goes on the rack: what to write on it, and what it is.</summary>
/// <param name="Letter">Written on it, large: a, b, c … along the plan.</param>
/// <param name="Workpiece">Its id in the plan.</param>
/// <param name="Sheet">The number of its sheet.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
public sealed record KeptOffcut(
    string Letter,
    string Workpiece,
    int Sheet,
    string Material,
    Length Length,
    Length Width
)
{
    /// <summary>The leftovers of a plan worth keeping that nothing is cut from, the largest of each material first.</summary>
    public static IReadOnlyList<KeptOffcut> Of(Plan plan)
    {
        var cut = plan.Cuts.Select(c => c.On).ToHashSet();
        var sheets = plan.Sheets.ToDictionary(s => s.Number);
        var left =
            from piece in plan.Workpieces
            where piece.Use == WorkpieceUse.Offcut && !cut.Contains(piece.Id)
            orderby sheets[piece.Sheet].Material, piece.Length.Millimetres
                * piece.Width.Millimetres descending, piece.Id
            select piece;
        return
        [
            .. left.Select(
                (p, i) => new KeptOffcut(LetterOf(i), p.Id, p.Sheet, sheets[p.Sheet].Material, p.Length, p.Width)
            ),
        ];
    }

    /// <summary>Small letters, so that they are not taken for parts: a to z, then aa.</summary>
    private static string LetterOf(int index) =>
        index < 26 ? $"{(char)('a' + index)}" : LetterOf((index / 26) - 1) + LetterOf(index % 26);
}
