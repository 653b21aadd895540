using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>A leftover that goes on the rack: what to write on it, and what it is.</summary>
/// <param name="Mark">Written on it: the number of its sheet and a letter, <c>3a</c>; it stays the same in later rounds.</param>
/// <param name="Workpiece">Its id in the plan.</param>
/// <param name="Sheet">The number of its sheet.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
public sealed record KeptOffcut(string Mark, string Workpiece, int Sheet, string Material, Length Length, Length Width)
{
    /// <summary>The leftovers of a plan worth keeping that nothing is cut from, the largest of each material first.</summary>
    public static IReadOnlyList<KeptOffcut> Of(Plan plan)
    {
        var cut = plan.Cuts.Select(c => c.On).ToHashSet();
        var material = plan.Sheets.ToDictionary(s => s.Number, s => s.Material);
        var marks = MarksOf(plan);
        var left =
            from piece in plan.Workpieces
            where piece.Use == WorkpieceUse.Offcut && !cut.Contains(piece.Id)
            orderby material[piece.Sheet], piece.Length.Millimetres * piece.Width.Millimetres descending, piece.Id
            select new KeptOffcut(
                marks[piece.Id],
                piece.Id,
                piece.Sheet,
                material[piece.Sheet],
                piece.Length,
                piece.Width
            );
        return [.. left];
    }

    /// <summary>What to write on every leftover of a plan, by its id, also on one that a later round takes.</summary>
    /// <remarks>Blanks count too, for one may become free; what a later round takes keeps its letter from others.</remarks>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyDictionary<string, string> MarksOf(Plan plan)
    {
        var listed = plan.Rounds.Count > 0 ? plan.Rounds.SelectMany(r => r.Plan.Workpieces) : plan.Workpieces;
        return listed
            .Where(p => p.Use is WorkpieceUse.Offcut or WorkpieceUse.Held)
            .GroupBy(p => p.Sheet)
            .SelectMany(sheet => sheet.Select((p, i) => (p.Id, Mark: $"{p.Sheet}{Letter(i)}")))
            .ToDictionary(p => p.Id, p => p.Mark);
    }

    /// <summary>Small letters, so that they are not taken for parts: a to z, then aa.</summary>
    private static string Letter(int index) =>
        index < 26 ? $"{(char)('a' + index)}" : Letter((index / 26) - 1) + Letter(index % 26);
}
