using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Trouble;

namespace Nookwright.Flow;

/// <summary>Finds the numbers somebody asks about, by any name the drawings, labels and formulas use.</summary>
public static class NumberLookup
{
    // Enough to see what the names are like.
    private const int MostNamed = 6;

    /// <summary>The numbers of that name: one for a size; cut and finished sizes for a part's id or letter.</summary>
    /// <returns>The numbers, or a refusal with the nearest name there is.</returns>
    public static Outcome<IReadOnlyList<Traced>> Look(this Workbook workbook, string name)
    {
        if (workbook.BuiltIn.Sizes.TryGetValue(name, out var size) || workbook.Room.Sizes.TryGetValue(name, out size))
            return Found([size]);
        var part =
            workbook.PartList.Parts.FirstOrDefault(p => p.Id == name)
            ?? workbook.PartList.Parts.FirstOrDefault(p => p.Letter.Equals(name, StringComparison.OrdinalIgnoreCase));
        return part is null ? NotFound(workbook, name) : Found([.. SizesOf(part)]);
    }

    private static Outcome<IReadOnlyList<Traced>> Found(List<Traced> numbers) => numbers;

    private static IEnumerable<Traced> SizesOf(Part part) =>
        [
            part.CutLength.Called($"{part.Id} (letter {part.Letter}), cut length"),
            part.CutWidth.Called($"{part.Id} (letter {part.Letter}), cut width"),
        ];

    private static Refusal NotFound(Workbook workbook, string name)
    {
        var names = workbook
            .BuiltIn.Sizes.Keys.Concat(workbook.Room.Sizes.Keys)
            .Concat(workbook.PartList.Parts.Select(p => p.Id));
        var within = names.Where(n => n.StartsWith($"{name}.", StringComparison.Ordinal)).Take(MostNamed).ToList();
        if (within.Count > 0)
            return new($"{name} is no number itself; it has, among others, {string.Join(", ", within)}.");
        var nearest = NearestName.To(name, names);
        var hint = nearest is null ? "Name a size, a part's id or its letter." : $"Did you mean {nearest}?";
        return new($"There is no number called {name} in this job. {hint}");
    }
}
